/** What every table can do: be copied, be saved as a file, show only some of its columns. */
package org.cairnfield.ui.internal.tables;
