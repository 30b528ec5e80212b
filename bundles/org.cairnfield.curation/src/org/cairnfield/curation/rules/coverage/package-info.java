/** Rules about what of a floor nobody surveyed. */
package org.cairnfield.curation.rules.coverage;
