/** How plan images lie on their floors. */
package org.cairnfield.curation.plan;
