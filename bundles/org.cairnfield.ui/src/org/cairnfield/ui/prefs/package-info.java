/** What the workbench remembers of the person. */
package org.cairnfield.ui.prefs;
