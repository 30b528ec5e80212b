package org.cairnfield.ui.plan.internal.model;

/**
 * Where an access point seems to be.
 *
 * @param accessPoint  id
 * @param floorLevel   where its strongest readings are
 * @param xMetres      in the frame of the floor
 * @param yMetres      likewise
 * @param readings     how many it was computed from
 * @param strongestDbm the strongest of them
 */
public record EstimatedPlace(String accessPoint, int floorLevel, double xMetres, double yMetres, int readings,
		int strongestDbm) implements ShownPlace {
}
