/** Facts of Wi-Fi that do not depend on a map: addresses and channels. */
package org.cairnfield.core.radio;
