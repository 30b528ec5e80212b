/**
 * The constraints of the model, called by its operations of the same names; EMF's validator finds those. A message says
 * what is wrong, where, and what to do.
 */
package org.cairnfield.model.check;
