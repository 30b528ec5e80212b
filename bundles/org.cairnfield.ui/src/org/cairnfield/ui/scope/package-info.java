/** What the parts of the workbench look at together. */
package org.cairnfield.ui.scope;
