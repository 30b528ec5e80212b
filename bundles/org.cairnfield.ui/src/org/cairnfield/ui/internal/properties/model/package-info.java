/** What there is to know about an object of an archive, as lines of a table. */
package org.cairnfield.ui.internal.properties.model;
