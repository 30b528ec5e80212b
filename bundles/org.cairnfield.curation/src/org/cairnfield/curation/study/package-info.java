/** Ways of splitting side by side, on many maps with one budget. */
package org.cairnfield.curation.study;
