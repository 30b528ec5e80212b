package org.cairnfield.curation.team;

import org.cairnfield.model.values.SampleKey;

/**
 * A proposal as shares tell it from others.
 *
 * @param band  name of the band of its strength; empty below all
 * @param site  id of the site where the sample is now; empty where the sample is gone
 * @param level of the floor there; null where the sample is gone
 */
record ProposalPlace(SampleKey sample, String band, String site, Integer level) {
}
