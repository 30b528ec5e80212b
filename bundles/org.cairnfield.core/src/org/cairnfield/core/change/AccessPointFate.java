package org.cairnfield.core.change;

/**
 * One access point in two surveys, at the places that they share.
 *
 * @param address     of the access point
 * @param placesThen  where half of the earlier samples or more heard it
 * @param placesNow   where half of the later samples or more heard it
 * @param chance      how likely one survey hears it nowhere though it was there; 1 where both heard it
 * @param successor   address of the one that took its place; empty but for {@link Fate#REPLACED}
 */
public record AccessPointFate(String address, Fate fate, int placesThen, int placesNow, double chance,
		String successor) {
}
