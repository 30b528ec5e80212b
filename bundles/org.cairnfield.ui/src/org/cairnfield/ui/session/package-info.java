/** The archive that the workbench shows, its undo stack, and what the rules say of it. */
package org.cairnfield.ui.session;
