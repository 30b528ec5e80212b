/**
 * Surveys that were never walked: campuses, waves in them after ITU-R P.1238, devices, and faults planted with
 * their ground truth. Start at {@link org.cairnfield.core.simulate.MarrowQuay} for the demo, at
 * {@link org.cairnfield.core.simulate.RandomMap} for maps of any size, at
 * {@link org.cairnfield.core.simulate.FaultyCampus} for surveys with a fault of every kind, and at
 * {@link org.cairnfield.core.simulate.Planting} to spoil a map on purpose.
 */
package org.cairnfield.core.simulate;
