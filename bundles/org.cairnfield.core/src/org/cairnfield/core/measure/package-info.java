/** How well positions are found: errors of estimates against the truth. */
package org.cairnfield.core.measure;
