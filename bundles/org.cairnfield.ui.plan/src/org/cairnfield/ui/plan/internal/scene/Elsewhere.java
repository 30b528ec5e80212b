package org.cairnfield.ui.plan.internal.scene;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.Companion;
import org.eclipse.osgi.util.NLS;

/**
 * A sample that belongs to what is compared, but is not on the floor on show.
 *
 * @param words what it is, and that it is elsewhere
 * @param place name of its floor, with the site where that is another one
 * @param floor null where the site has no such floor
 */
public record Elsewhere(String words, String place, Floor floor) {

	/** Those of a selection; none unless samples are compared. */
	public static List<Elsewhere> of(ArchiveSelection selection) {
		List<Elsewhere> found = new ArrayList<>();
		if (selection.floor() != null && !selection.beside().isEmpty()) {
			selection.samples()
					.forEach(sample -> add(found, selection.floor(), sample, Messages.Elsewhere_theSampleUnderReview));
			for (Companion each : selection.beside()) {
				add(found, selection.floor(), each.sample(), NLS.bind(Messages.Elsewhere_the, each.label()));
			}
		}
		return found;
	}

	private static void add(List<Elsewhere> found, Floor shown, SampleRef sample, String what) {
		Site site = sample.survey().getSite();
		Floor floor = ArchiveIndex.floor(sample).orElse(null);
		if (floor == shown) {
			return;
		}
		boolean samePlace = site == shown.eContainer();
		String name = floor == null
				? NLS.bind(Messages.Elsewhere_floorWhichTheSiteDoes, sample.survey().table().floorLevel(sample.row()))
				: ModelText.name(floor);
		String id = sample.survey().table().id(sample.row());
		found.add(
				new Elsewhere(
						NLS.bind(Messages.Elsewhere_is,
								new Object[] { Character.toUpperCase(what.charAt(0)), what.substring(1), id,
										samePlace ? Messages.Elsewhere_onAnotherFloor
												: Messages.Elsewhere_inAnotherBuilding }),
						(samePlace || site == null ? "" : ModelText.name(site) + ", ") + name, floor));
	}
}
