/** What people decide about proposals: the ledger of their verdicts, and what follows from it. */
package org.cairnfield.curation.decide;
