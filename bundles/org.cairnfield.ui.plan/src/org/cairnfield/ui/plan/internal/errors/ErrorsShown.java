package org.cairnfield.ui.plan.internal.errors;

import org.cairnfield.curation.measure.ErrorMap;

/**
 * What the plan shows in place of the map: the errors of one way of matching.
 *
 * @param map       of all floors; null where nothing is measured
 * @param topMetres error of the last colour
 * @param empty     what to say where nothing is measured
 */
public record ErrorsShown(ErrorMap map, double topMetres, String empty) {
}
