/** Rules about whether a sample is where it is said to be, judged by those that hear what it hears. */
package org.cairnfield.curation.internal.rules.place;
