/** The review of one split by one person: queue, standing, verdicts and audit, without a window. */
package org.cairnfield.curation.review;
