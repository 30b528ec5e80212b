/** What goes to disk at the word of the person. */
package org.cairnfield.ui.save;
