/** Fewer dimensions: principal components of fingerprints, directions and access points that explain places, regression on them. */
package org.cairnfield.core.reduce;
