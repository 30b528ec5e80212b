/** Floor plans of other programs taken into a site: outlines and plan images of its floors, as one change that can be undone. */
package org.cairnfield.curation.floors;
