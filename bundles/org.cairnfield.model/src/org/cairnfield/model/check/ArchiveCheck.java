package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;
import static org.cairnfield.model.check.Report.require;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.ecore.EObject;

/** Constraints of an archive. */
public final class ArchiveCheck {

	private ArchiveCheck() {
	}

	/** @see Archive#idsAreUnique */
	public static boolean idsAreUnique(Archive archive, DiagnosticChain diagnostics) {
		Taken taken = new Taken(diagnostics);
		for (Site site : archive.getSites()) {
			taken.take(site.getId(), "site", site);
			for (Survey survey : site.getSurveys()) {
				taken.take(survey.getId(), "survey", survey);
			}
		}
		for (Device device : archive.getDevices()) {
			taken.take(device.getId(), "device", device);
		}
		for (AccessPoint accessPoint : archive.getAccessPoints()) {
			taken.take(accessPoint.getId(), Messages.ArchiveCheck_accessPoint, accessPoint);
		}
		boolean unique = taken.unique;
		taken = new Taken(diagnostics);
		for (Split split : archive.getSplits()) {
			taken.take(split.getId(), "split", split);
		}
		unique &= taken.unique;
		taken = new Taken(diagnostics);
		for (Ledger ledger : archive.getLedgers()) {
			taken.take(ledger.getId(), "ledger", ledger);
		}
		return unique & taken.unique;
	}

	/** @see Archive#addressesAreUnique */
	public static boolean addressesAreUnique(Archive archive, DiagnosticChain diagnostics) {
		boolean unique = true;
		Map<String, AccessPoint> first = new HashMap<>();
		for (AccessPoint accessPoint : archive.getAccessPoints()) {
			if (isSet(accessPoint.getAddress())) {
				AccessPoint other = first.putIfAbsent(AccessPointCheck.key(accessPoint.getAddress()), accessPoint);
				unique &= require(other == null, diagnostics, accessPoint,
						Words.bind(Messages.ArchiveCheck_accessPointsAndBothHave, other == null ? "" : other.getId(),
								accessPoint.getId(), accessPoint.getAddress()));
			}
		}
		return unique;
	}

	/** Ids met so far, whatever the case of their letters. */
	private static final class Taken {
		private final DiagnosticChain diagnostics;
		private final Map<String, String> kinds = new HashMap<>();
		boolean unique = true;

		Taken(DiagnosticChain diagnostics) {
			this.diagnostics = diagnostics;
		}

		void take(String id, String kind, EObject object) {
			if (isSet(id)) {
				String other = kinds.putIfAbsent(id.toLowerCase(Locale.ROOT), kind + ' ' + id);
				unique &= require(other == null, diagnostics, object,
						Words.bind(Messages.ArchiveCheck_theIdOfIsTaken, kind, id, other));
			}
		}
	}
}
