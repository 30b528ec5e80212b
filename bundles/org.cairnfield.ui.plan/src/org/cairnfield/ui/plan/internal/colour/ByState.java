package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;

/** Whether a sample is kept, and if not, why. */
public final class ByState implements SampleColouring {

	@Override
	public String name() {
		return Messages.ByState_state;
	}

	@Override
	public SampleColours colours(SampleRows samples, ArchiveSession session, RGB background) {
		List<String> names = new ArrayList<>(List.of("kept"));
		Map<String, Integer> reasons = new HashMap<>();
		int[] kindOf = new int[samples.size()];
		for (int i = 0; i < kindOf.length; i++) {
			String reason = samples.table(i).reason(samples.row(i));
			if (reason != null) {
				kindOf[i] = reasons.computeIfAbsent(reason, text -> {
					names.add(NLS.bind(Messages.ByState_setAside, text));
					return names.size() - 1;
				});
			}
		}
		return Categories.of(Messages.ByState_state, names, samples.size(), i -> kindOf[i], background);
	}
}
