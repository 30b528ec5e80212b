package org.cairnfield.ui.internal.explorer;

import java.util.stream.IntStream;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Selects all samples of what is selected in the archive, such as a survey, so that they can be set aside or put elsewhere at once. */
public final class SelectSamplesHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Sessions.workbench().current().ifPresent(session -> {
			SampleRows rows = SampleRows.of(session.archive(), session.selection().scope());
			session.select(
					session.selection().withSamples(IntStream.range(0, rows.size()).mapToObj(rows::ref).toList()));
		});
		return null;
	}
}
