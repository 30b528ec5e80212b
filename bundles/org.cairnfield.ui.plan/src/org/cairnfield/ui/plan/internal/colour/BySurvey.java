package org.cairnfield.ui.plan.internal.colour;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.swt.graphics.RGB;

/** Which survey a sample is of. */
public final class BySurvey implements SampleColouring {

	@Override
	public String name() {
		return Messages.BySurvey_survey;
	}

	@Override
	public SampleColours colours(SampleRows samples, ArchiveSession session, RGB background) {
		return Categories.of(Messages.BySurvey_survey,
				samples.parts().stream().map(part -> ModelText.name(part.source())).toList(), samples.size(),
				samples::partNumber, background);
	}
}
