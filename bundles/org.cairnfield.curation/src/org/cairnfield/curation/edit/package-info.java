/** What a person may change of the objects of an archive, by name and as text. */
package org.cairnfield.curation.edit;
