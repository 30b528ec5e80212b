/** What several views show alike. */
package org.cairnfield.ui.show;
