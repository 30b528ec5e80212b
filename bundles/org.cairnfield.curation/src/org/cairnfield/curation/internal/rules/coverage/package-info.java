/** Rules about what of a floor nobody surveyed. */
package org.cairnfield.curation.internal.rules.coverage;
