/** A workbench of its own that a test starts, lets work, and kills. */
package org.cairnfield.ui.tests.child;
