/** Rules about samples as records: empty, twice, at odds with one another, outside, faster than a walk. */
package org.cairnfield.curation.internal.rules.sample;
