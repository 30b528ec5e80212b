package org.cairnfield.ui.plan.internal.colour;

import java.util.List;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.plan.Legend;
import org.cairnfield.ui.plan.PlanSamples;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.ScopeSamples;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.swt.graphics.RGB;

/** How strongly the chosen access point is heard. */
public final class ByRssi implements SampleColouring {

	// the same on every floor and for every access point, so that they can be compared
	private static final int LOW_DBM = -95;
	private static final int HIGH_DBM = -35;

	@Override
	public String name() {
		return "RSSI of the access point";
	}

	@Override
	public boolean changesWith(ArchiveSelection before, ArchiveSelection now) {
		return before.accessPoint() != now.accessPoint();
	}

	@Override
	public SampleColours colours(PlanSamples samples, ArchiveSession session, RGB background) {
		AccessPoint chosen = session.selection().accessPoint();
		if (chosen == null) {
			SampleColours grey = Ramps.of("", LOW_DBM, HIGH_DBM, "dBm", samples.size(), i -> Double.NaN, "", background);
			return new SampleColours(grey.looks(), grey.lookOf(),
					new Legend("Choose an access point in the archive or on the plan to see its RSSI", List.of(), null));
		}
		List<SampleTable> tables = samples.surveys().stream().map(survey -> survey.table()).toList();
		int[] wanted = tables.stream().mapToInt(table -> table.accessPoints().indexOf(chosen.getId())).toArray();
		return Ramps.of("RSSI of " + ModelText.name(chosen), LOW_DBM, HIGH_DBM, "dBm", samples.size(), i -> {
			int accessPoint = wanted[samples.surveyIndex(i)];
			int level = accessPoint < 0 ? ScopeSamples.NOT_HEARD
					: ScopeSamples.level(samples.table(i), samples.row(i), accessPoint);
			return level == ScopeSamples.NOT_HEARD ? Double.NaN : level;
		}, "not heard", background);
	}
}
