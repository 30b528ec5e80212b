package org.cairnfield.model.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelPackage.Literals;
import org.cairnfield.model.Site;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;

/** The order in which people see the sites of an archive. What is computed goes by ids and does not depend on it. */
public final class SiteOrder {

	private SiteOrder() {
	}

	/** The sites that the archive names in its order, then the others by id. */
	public static List<Site> of(Archive archive) {
		List<String> named = archive.getSiteOrder() == null ? List.of()
				: List.of(archive.getSiteOrder().strip().split("\\s+"));
		List<Site> sites = byId(archive);
		sites.sort(Comparator
				.comparingInt(site -> named.contains(site.getId()) ? named.indexOf(site.getId()) : named.size()));
		return sites;
	}

	/**
	 * Shows a site further up or down. It cannot be executed where there is no other site on that side.
	 *
	 * @param by −1 for up, 1 for down
	 */
	public static Command move(Site site, int by) {
		Archive archive = (Archive) site.eContainer();
		List<Site> sites = of(archive);
		int at = sites.indexOf(site);
		if (at + by < 0 || at + by >= sites.size()) {
			return UnexecutableCommand.INSTANCE;
		}
		Collections.swap(sites, at, at + by);
		String order = sites.equals(byId(archive)) ? null
				: sites.stream().map(Site::getId).collect(Collectors.joining(" "));
		String move = Words.bind(Messages.SiteOrder_move, ModelText.name(site),
				by < 0 ? Messages.SiteOrder_up : Messages.SiteOrder_down);
		return new FieldCommand(List.of(archive), Literals.ARCHIVE__SITE_ORDER, order) {
			@Override
			protected String label(int changing) {
				return move;
			}
		};
	}

	private static List<Site> byId(Archive archive) {
		List<Site> sites = new ArrayList<>(archive.getSites());
		sites.sort(Comparator.comparing(Site::getId, Comparator.nullsFirst(Comparator.naturalOrder())));
		return sites;
	}
}
