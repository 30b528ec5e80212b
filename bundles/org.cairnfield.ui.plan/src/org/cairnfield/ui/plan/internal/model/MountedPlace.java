package org.cairnfield.ui.plan.internal.model;

import java.util.List;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.KnownPlace;

/**
 * Where somebody knows that an access point is mounted.
 *
 * @param accessPoint id
 * @param xMetres     in the frame of the floor
 * @param yMetres     likewise
 */
public record MountedPlace(String accessPoint, double xMetres, double yMetres) implements ShownPlace {

	/** Those on a floor, in the order of the archive. */
	public static List<MountedPlace> on(Floor floor, Archive archive) {
		String site = ((Site) floor.eContainer()).getId();
		return archive.getAccessPoints().stream().filter(each -> isOn(each.getPlace(), site, floor.getLevel()))
				.map(MountedPlace::of).toList();
	}

	private static boolean isOn(KnownPlace place, String site, int level) {
		return place != null && place.level() == level && place.site().equals(site);
	}

	private static MountedPlace of(AccessPoint accessPoint) {
		return new MountedPlace(accessPoint.getId(), accessPoint.getPlace().xMetres(),
				accessPoint.getPlace().yMetres());
	}
}
