/** Workbenches of their own that a test starts, lets work, and ends or kills. */
package org.cairnfield.ui.tests.child;
