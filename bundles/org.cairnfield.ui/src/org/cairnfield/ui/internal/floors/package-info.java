/** Floor plans of other programs taken in: what a file holds and what it changes is shown before anything is done. */
package org.cairnfield.ui.internal.floors;
