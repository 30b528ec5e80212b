/** Where and how strongly access points are heard. */
package org.cairnfield.curation.hearing;
