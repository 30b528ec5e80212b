/** Values of the model: immutable, with a text form where a line of text can hold them. They know no EMF. */
package org.cairnfield.model.values;
