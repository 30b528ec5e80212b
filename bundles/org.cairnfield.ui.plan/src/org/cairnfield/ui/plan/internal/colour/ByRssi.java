package org.cairnfield.ui.plan.internal.colour;

import java.util.List;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;

/** How strongly the chosen access point is heard. */
public final class ByRssi implements SampleColouring {

	/** Level of the first colour: the same on every floor and for every access point, so that they can be compared. */
	public static final int LOW_DBM = -95;
	/** Level of the last colour. */
	public static final int HIGH_DBM = -35;

	@Override
	public String name() {
		return Messages.ByRssi_rssiOfTheAccessPoint;
	}

	@Override
	public boolean changesWith(ArchiveSelection before, ArchiveSelection now) {
		return before.accessPoint() != now.accessPoint();
	}

	@Override
	public SampleColours colours(SampleRows samples, ArchiveSession session, RGB background) {
		AccessPoint chosen = session.selection().accessPoint();
		if (chosen == null) {
			SampleColours grey = Ramps.of("", LOW_DBM, HIGH_DBM, "dBm", samples.size(), i -> Double.NaN, "",
					background);
			return new SampleColours(grey.looks(), grey.lookOf(),
					new PlanLegend(Messages.ByRssi_chooseAnAccessPointIn, List.of(), null));
		}
		int[] wanted = samples.parts().stream().mapToInt(part -> part.table().accessPoints().indexOf(chosen.getId()))
				.toArray();
		return Ramps.of(NLS.bind(Messages.ByRssi_rssiOf, ModelText.name(chosen)), LOW_DBM, HIGH_DBM, "dBm",
				samples.size(), i -> {
					int accessPoint = wanted[samples.partNumber(i)];
					int reading = accessPoint < 0 ? -1 : samples.table(i).reading(samples.row(i), accessPoint);
					return reading < 0 ? Double.NaN : samples.table(i).rssiDbm(samples.row(i), reading);
				}, Messages.ByRssi_notHeard, background);
	}
}
