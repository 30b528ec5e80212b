package org.cairnfield.ui.plan.internal.colour;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.swt.graphics.RGB;

/** How many access points a sample has heard. */
public final class ByNumberHeard implements SampleColouring {

	@Override
	public String name() {
		return Messages.ByNumberHeard_numberHeard;
	}

	@Override
	public SampleColours colours(SampleRows samples, ArchiveSession session, RGB background) {
		int most = 0;
		int least = Integer.MAX_VALUE;
		for (int i = 0; i < samples.size(); i++) {
			int heard = samples.table(i).heard(samples.row(i));
			most = Math.max(most, heard);
			least = Math.min(least, heard);
		}
		return Ramps.of(Messages.ByNumberHeard_numberHeard, Math.min(least, most), most,
				Messages.ByNumberHeard_accessPoints, samples.size(),
				i -> samples.table(i).heard(samples.row(i)), "", background);
	}
}
