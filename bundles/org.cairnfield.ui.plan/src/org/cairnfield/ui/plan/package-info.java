/** The floor plan of the workbench: what others may add to it, and where it shows things. */
package org.cairnfield.ui.plan;
