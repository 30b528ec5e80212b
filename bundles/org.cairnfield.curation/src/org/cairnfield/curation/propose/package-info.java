/** Where noise samples could go, and the evidence that a reviewer is shown. */
package org.cairnfield.curation.propose;
