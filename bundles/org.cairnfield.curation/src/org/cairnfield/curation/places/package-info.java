/** Where access points seem to be. */
package org.cairnfield.curation.places;
