package org.cairnfield.ui.plan.internal.view;

import java.util.Arrays;
import java.util.function.Consumer;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.plan.internal.surface.FloorSurface;
import org.cairnfield.ui.plan.internal.surface.SurfaceKind;
import org.cairnfield.ui.plan.internal.surface.SurfaceQuestion;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.LatestWork;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** Which surface lies below the samples; worked out beside the user interface. */
final class SurfaceChoice {

	private final Combo combo;
	private final PlanScene scene;
	private final Consumer<FloorSurface> show;
	private final LatestWork work = new LatestWork();
	private ArchiveSession session;

	/** @param show hears the surface, or null for none */
	SurfaceChoice(Composite row, PlanScene scene, Consumer<FloorSurface> show) {
		this.scene = scene;
		this.show = show;
		combo = PlanPane.combo(row, Messages.SurfaceChoice_surface, "plan.surface");
		combo.setToolTipText(Messages.SurfaceChoice_showBelowTheSamplesHow);
		Arrays.stream(SurfaceKind.values()).forEach(kind -> combo.add(kind.title()));
		combo.select(0);
		combo.addListener(SWT.Selection, event -> read(session));
		combo.addListener(SWT.Dispose, event -> work.cancel());
	}

	/** The label and the list. */
	Composite control() {
		return combo.getParent();
	}

	private SurfaceKind kind() {
		return SurfaceKind.values()[combo.getSelectionIndex()];
	}

	/** Whether it depends on the access point chosen. */
	boolean isOfAnAccessPoint() {
		return kind() == SurfaceKind.LEVEL;
	}

	/** Floor, samples or access point are others: the surface is made anew. */
	void read(ArchiveSession now) {
		session = now;
		AccessPoint chosen = session == null ? null : session.selection().accessPoint();
		if (kind() == SurfaceKind.NONE || scene.samples().size() == 0 || scene.shown() != null) {
			work.cancel();
			if (scene.surface() != null) {
				show.accept(null);
			}
			return;
		} else if (isOfAnAccessPoint() && chosen == null) {
			work.cancel();
			show.accept(FloorSurface.none(Messages.SurfaceChoice_chooseAnAccessPointIn));
			return;
		}
		SurfaceQuestion question = SurfaceQuestion.of(scene.samples(), isOfAnAccessPoint() ? chosen : null);
		work.start(Messages.SurfaceChoice_workingOutTheSurface, question::answer, show,
				problem -> Problems.log(Messages.SurfaceChoice_surfaceOfTheFloor, problem));
	}
}
