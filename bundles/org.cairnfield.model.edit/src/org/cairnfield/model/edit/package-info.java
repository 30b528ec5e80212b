/** Labels, icons and undoable changes of the model, without a user interface. */
package org.cairnfield.model.edit;
