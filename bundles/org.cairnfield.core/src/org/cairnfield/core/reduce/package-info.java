/** Fewer dimensions: principal components of fingerprints. */
package org.cairnfield.core.reduce;
