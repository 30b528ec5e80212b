package org.cairnfield.ui.internal.explorer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.Platform;

/** The samples of a site that are on levels for which it has no floor. The tree lists them, for no floor shows them. */
record Strays(Site site) implements IAdaptable {

	static final String TITLE = Messages.Strays_onNoFloorOfThe;

	List<SampleRef> samples() {
		Set<Integer> known = new HashSet<>();
		site.getFloors().forEach(floor -> known.add(floor.getLevel()));
		List<SampleRef> samples = new ArrayList<>();
		for (Survey survey : site.getSurveys()) {
			SampleTable table = survey.table();
			for (int row = 0; row < table.size(); row++) {
				if (!known.contains(table.floorLevel(row))) {
					samples.add(new SampleRef(survey, row));
				}
			}
		}
		return samples;
	}

	/** The site is what is selected with it, so its properties are shown. */
	@Override
	public <T> T getAdapter(Class<T> type) {
		return Platform.getAdapterManager().getAdapter(site, type);
	}
}
