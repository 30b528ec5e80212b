package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.named;
import static org.cairnfield.model.check.Report.require;

import java.util.HashSet;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a site. */
public final class SiteCheck {

	private SiteCheck() {
	}

	/** @see Site#idIsUsable */
	public static boolean idIsUsable(Site site, DiagnosticChain diagnostics) {
		return Report.usableId(site.getId(), diagnostics, site, named(Messages.SiteCheck_site, site.getName(), ""));
	}

	/** @see Site#levelsAreUnique */
	public static boolean levelsAreUnique(Site site, DiagnosticChain diagnostics) {
		boolean unique = true;
		Set<Integer> levels = new HashSet<>();
		for (Floor floor : site.getFloors()) {
			unique &= require(levels.add(floor.getLevel()), diagnostics, floor,
					Words.bind(Messages.SiteCheck_hasTwoFloorsOfLevel,
							named(Messages.SiteCheck_site, site.getName(), site.getId()), floor.getLevel()));
		}
		return unique;
	}
}
