package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;
import static org.cairnfield.model.check.Report.require;

import java.util.Optional;

import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.KnownPlace;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of an access point. */
public final class AccessPointCheck {

	private AccessPointCheck() {
	}

	/** @see AccessPoint#idIsUsable */
	public static boolean idIsUsable(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		return Report.usableId(accessPoint.getId(), diagnostics, accessPoint,
				Report.named("Access point", accessPoint.getAddress(), ""));
	}

	/** @see AccessPoint#addressIsOfOneRadio */
	public static boolean addressIsOfOneRadio(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		String address = accessPoint.getAddress();
		if (!require(isSet(address), diagnostics, accessPoint,
				"Access point " + accessPoint.getId() + " has no address: give it the one that the surveys have")) {
			return false;
		}
		Optional<MacAddress> mac = MacAddress.find(address);
		return require(mac.isEmpty() || mac.get().canBeBssid(), diagnostics, accessPoint,
				"The address of access point " + accessPoint.getId() + ", " + address
						+ ", is one of a group or of nobody, and no access point has such: set it aside and look at its survey");
	}

	/** @see AccessPoint#channelIsInBand */
	public static boolean channelIsInBand(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		int channel = accessPoint.getChannel();
		WifiBand band = accessPoint.getBand();
		boolean exists = band == null ? channel > 0 : channel >= band.first() && channel <= band.last();
		return require(channel == 0 || exists, diagnostics, accessPoint, "Channel " + channel + " of access point "
				+ accessPoint.getId() + " does not exist" + (band == null ? "" : " in the band " + band)
				+ ": correct it, or set 0 for not known");
	}

	/** @see AccessPoint#heardInOrder */
	public static boolean heardInOrder(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		return require(
				accessPoint.getFirstHeard() == null || accessPoint.getLastHeard() == null
						|| !accessPoint.getLastHeard().isBefore(accessPoint.getFirstHeard()),
				diagnostics, accessPoint,
				"Access point " + accessPoint.getId() + " was last heard on " + accessPoint.getLastHeard() + ", before "
						+ accessPoint.getFirstHeard() + " when it was first heard: correct the days");
	}

	/** @see AccessPoint#placeIsOnAFloor */
	public static boolean placeIsOnAFloor(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		KnownPlace place = accessPoint.getPlace();
		return require(
				place == null || !(accessPoint.eContainer() instanceof Archive archive) || isOnAFloor(place, archive),
				diagnostics, accessPoint,
				"The place of access point " + accessPoint.getId() + ", " + place
						+ ", is on no floor of the archive: set it again, or unset it");
	}

	/** Whether the archive has the floor that a place is on. */
	public static boolean isOnAFloor(KnownPlace place, Archive archive) {
		return archive.getSites().stream().filter(site -> place.site().equals(site.getId()))
				.flatMap(site -> site.getFloors().stream())
				.anyMatch(floor -> floor.getLevel() == place.level());
	}

	/** One text for all ways to write a MAC address; any other text as it is. */
	static String key(String address) {
		return MacAddress.find(address).map(MacAddress::toString).orElse(address);
	}
}
