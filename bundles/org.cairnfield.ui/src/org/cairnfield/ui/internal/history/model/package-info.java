/** The save points as lines that part and meet. */
package org.cairnfield.ui.internal.history.model;
