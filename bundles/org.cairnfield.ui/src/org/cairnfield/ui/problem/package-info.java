/** How the workbench says that something went wrong. */
package org.cairnfield.ui.problem;
