package org.cairnfield.ui.plan.internal.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.raster.Ink;
import org.cairnfield.ui.plan.internal.errors.ErrorsShown;
import org.cairnfield.ui.plan.internal.errors.FloorErrors;
import org.cairnfield.ui.plan.internal.surface.FloorSurface;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

/** The plan, and for an error map of two ways a second one next to it, of the same size and seen from the same place. */
final class PlanBoards {

	private final Composite area;
	private Ink ink;
	private final SampleColouring colouring;
	private final List<PlanBoard> boards = new ArrayList<>();

	PlanBoards(Composite parent, Ink ink, SampleColouring colouring) {
		this.ink = ink;
		this.colouring = colouring;
		area = new Composite(parent, SWT.NONE);
		area.setLayout(PlanPane.layout(1));
		area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		boards.add(new PlanBoard(area, ink, colouring, ""));
	}

	/** All of them. */
	Composite area() {
		return area;
	}

	/** What is not data is drawn so. */
	Ink ink() {
		return ink;
	}

	/** Draws in other colours, at once. @param page of captions; null for that of the desktop */
	void wear(Ink other, Palette page) {
		ink = other;
		boards.forEach(board -> board.wear(other, page));
	}

	/** The plan that is always there. */
	PlanCanvas first() {
		return boards.get(0).plan();
	}

	/** Shows a surface below the samples of the map, or none (null). */
	void showSurface(FloorSurface surface) {
		boards.get(0).showSurface(surface);
	}

	/** Those that are to be kept up to date. */
	List<PlanBoard> shown() {
		return boards.stream().filter(PlanBoard::isShown).toList();
	}

	/** Of each way on show, on the present floor; none where the map is shown, or nothing is measured. */
	List<FloorErrors> errors() {
		return shown().stream().map(board -> board.plan().scene().errors()).filter(Objects::nonNull).toList();
	}

	/** Shows one or two error maps. */
	void showErrors(List<ErrorsShown> errors, ArchiveSession session) {
		showTwin(errors.size() > 1, session);
		for (int i = 0; i < errors.size(); i++) {
			boards.get(i).showErrors(errors.get(i));
		}
	}

	/** Shows the map. */
	void showMap(ArchiveSession session) {
		showTwin(false, session);
		boards.get(0).showErrors(null);
	}

	private void showTwin(boolean wanted, ArchiveSession session) {
		if (wanted == shown().size() > 1) {
			return;
		}
		if (boards.size() == 1) {
			boards.add(new PlanBoard(area, ink, colouring, ".2"));
		}
		PlanBoard twin = boards.get(1);
		((GridLayout) area.getLayout()).numColumns = wanted ? 2 : 1;
		((GridLayout) area.getLayout()).makeColumnsEqualWidth = wanted;
		twin.show(wanted);
		area.layout(true, true);
		if (wanted) {
			twin.plan().mode(first().mode());
			twin.showFloor(session);
		}
		first().twin(wanted ? twin.plan() : null);
		twin.plan().twin(wanted ? first() : null);
		first().look().fit();
		if (!wanted) {
			twin.showErrors(null);
			twin.showFloor(null); // keeps no archive that is closed
		}
	}
}
