package org.cairnfield.ui.internal.samples;

import java.util.Objects;
import java.util.stream.Stream;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.internal.samples.model.Placing;
import org.cairnfield.ui.internal.samples.model.SampleColumn;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.osgi.util.NLS;

/** Lets a person edit the place of a sample in its row, and holds off what would disturb meanwhile. */
final class PlaceEditing {

	private final SampleGrid grid;
	private final InlineBar bar;
	private final Runnable reload;
	private RowEditor editor;
	private boolean late;

	/** @param reload what is held off */
	PlaceEditing(SampleGrid grid, InlineBar bar, Runnable reload) {
		this.grid = grid;
		this.bar = bar;
		this.reload = reload;
		grid.window().onScroll(top -> close());
	}

	/**
	 * Opens the fields over the row that keys go on from, or says why not.
	 *
	 * @param session null where no archive is on show
	 * @param samples those of the table
	 * @param first   the column to begin in
	 */
	void begin(ArchiveSession session, SampleRows samples, SampleColumn first) {
		int position = grid.picks().focusPosition();
		if (session == null || samples == null || position < 0) {
			bar.say(Messages.PlaceEditing_selectTheSampleWhosePosition);
			return;
		} else if (session.readOnlyReason().isPresent()) {
			bar.say(NLS.bind(Messages.PlaceEditing_nothingCanBeChanged, session.readOnlyReason().get()));
			return;
		}
		close();
		grid.window().reveal(position);
		SampleRef ref = samples.ref(grid.arrangement().index(position));
		editor = RowEditor.open(grid.window().table(), grid.window().item(position), first,
				(floor, x, y) -> take(session, ref, floor, x, y), this::closed);
	}

	private boolean take(ArchiveSession session, SampleRef ref, String floor, String x, String y) {
		String problem = Stream
				.of(Placing.floorProblem(ref, floor), Placing.metresProblem("x", x), Placing.metresProblem("y", y))
				.filter(Objects::nonNull).findFirst().orElse(null);
		if (problem != null) {
			bar.say("✖ " + problem);
			return false;
		}
		bar.close();
		session.run(Placing.command(ref, floor, x, y));
		return true;
	}

	/** Reloads now, or once the fields are gone. */
	void whenDone() {
		if (editor != null && editor.isOpen()) {
			late = true;
		} else {
			reload.run();
		}
	}

	/** Gives up what is being written. */
	void close() {
		if (editor != null) {
			RowEditor open = editor;
			editor = null;
			open.close();
		}
	}

	private void closed() {
		if (late) {
			late = false;
			grid.window().getDisplay().asyncExec(() -> {
				if (!grid.window().isDisposed()) {
					reload.run();
				}
			});
		}
	}
}
