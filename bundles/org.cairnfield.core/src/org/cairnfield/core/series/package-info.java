/** Numbers ready to be drawn; nothing here knows how. */
package org.cairnfield.core.series;
