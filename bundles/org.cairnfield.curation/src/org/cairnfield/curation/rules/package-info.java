/**
 * Cleaning rules: what they look at ({@link org.cairnfield.curation.rules.SurveyedMap}), what they say
 * ({@link org.cairnfield.curation.rules.Finding}), what they offer
 * ({@link org.cairnfield.curation.rules.Remedy}), and how they are run
 * ({@link org.cairnfield.curation.rules.RuleRun}). Plain values in and out: nothing here knows how an archive is
 * stored or changed. The rules themselves are in the packages below, listed by
 * {@link org.cairnfield.curation.rules.cleaning.CleaningRules}.
 */
package org.cairnfield.curation.rules;
