package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;
import static org.cairnfield.model.check.Report.require;

import java.util.Optional;

import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.text.Words;
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
				Report.named(Messages.AccessPointCheck_accessPoint, accessPoint.getAddress(), ""));
	}

	/** @see AccessPoint#addressIsOfOneRadio */
	public static boolean addressIsOfOneRadio(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		String address = accessPoint.getAddress();
		if (!require(isSet(address), diagnostics, accessPoint,
				Words.bind(Messages.AccessPointCheck_accessPointHasNoAddress, accessPoint.getId()))) {
			return false;
		}
		Optional<MacAddress> mac = MacAddress.find(address);
		return require(mac.isEmpty() || mac.get().canBeBssid(), diagnostics, accessPoint,
				Words.bind(Messages.AccessPointCheck_theAddressOfAccessPoint, accessPoint.getId(), address));
	}

	/** @see AccessPoint#channelIsInBand */
	public static boolean channelIsInBand(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		int channel = accessPoint.getChannel();
		WifiBand band = accessPoint.getBand();
		boolean exists = band == null ? channel > 0 : channel >= band.first() && channel <= band.last();
		return require(channel == 0 || exists, diagnostics, accessPoint,
				Words.bind(Messages.AccessPointCheck_channelOfAccessPointDoes, channel, accessPoint.getId(),
						band == null ? "" : Words.bind(Messages.AccessPointCheck_inTheBand, band)));
	}

	/** @see AccessPoint#heardInOrder */
	public static boolean heardInOrder(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		return require(
				accessPoint.getFirstHeard() == null || accessPoint.getLastHeard() == null
						|| !accessPoint.getLastHeard().isBefore(accessPoint.getFirstHeard()),
				diagnostics, accessPoint,
				Words.bind(Messages.AccessPointCheck_accessPointWasLastHeard, accessPoint.getId(),
						accessPoint.getLastHeard(), accessPoint.getFirstHeard()));
	}

	/** @see AccessPoint#placeIsOnAFloor */
	public static boolean placeIsOnAFloor(AccessPoint accessPoint, DiagnosticChain diagnostics) {
		KnownPlace place = accessPoint.getPlace();
		return require(
				place == null || !(accessPoint.eContainer() instanceof Archive archive) || isOnAFloor(place, archive),
				diagnostics, accessPoint,
				Words.bind(Messages.AccessPointCheck_thePlaceOfAccessPoint, accessPoint.getId(), place));
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
