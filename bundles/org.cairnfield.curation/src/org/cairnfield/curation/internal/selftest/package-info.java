/**
 * Rules try themselves out on the map at hand: known faults are planted into a copy of it, the rule is asked about the copy, and what
 * it finds says how far its findings can be trusted on this map.
 */
package org.cairnfield.curation.internal.selftest;
