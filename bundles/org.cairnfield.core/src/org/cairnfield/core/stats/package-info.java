/** Descriptive statistics, agreement and uncertainty; every rule is named where more than one is in use. */
package org.cairnfield.core.stats;
