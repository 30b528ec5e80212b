package org.cairnfield.ui.plan.internal.gef;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;

/** What is chosen on the plan, for all parts of the workbench. */
final class PlanChoice {

	private final PlanScene scene;
	private ArchiveSession session;
	private boolean selecting;

	PlanChoice(PlanScene scene) {
		this.scene = scene;
	}

	void session(ArchiveSession other) {
		session = other;
	}

	/** Whether the change of the selection that is told now was made here. */
	boolean isSelecting() {
		return selecting;
	}

	/** A click on a sample, or on none (-1). */
	void click(int sample, boolean toggles, boolean adds) {
		BitSet one = new BitSet();
		if (sample >= 0) {
			one.set(sample);
		}
		if (sample >= 0 || !toggles && !adds) {
			selectArea(one, toggles, adds);
		}
	}

	void selectArea(BitSet inside, boolean toggles, boolean adds) {
		if (session == null) {
			return;
		}
		BitSet now = (BitSet) inside.clone();
		if (adds) {
			now.or(scene.selected());
		} else if (toggles) {
			now.xor(scene.selected());
		}
		ArchiveSelection selection = session.selection();
		selecting = true;
		try {
			session.select(now.isEmpty() ? selection.withSamples(List.of())
					: selection.withSamples(scene.refs(now)).withFloor(selection.floor()));
		} finally {
			selecting = false;
		}
	}

	void selectAll() {
		BitSet all = new BitSet();
		all.set(0, scene.samples().size());
		selectArea(all, false, false);
	}

	/** Makes it the access point that all parts look at. */
	void choose(String accessPoint) {
		accessPoint(accessPoint).ifPresent(found -> session.select(session.selection().withAccessPoint(found)));
	}

	private Optional<AccessPoint> accessPoint(String id) {
		return session == null ? Optional.empty() : ArchiveIndex.of(session.archive()).accessPoint(id);
	}

	String address(String accessPoint) {
		return accessPoint(accessPoint).map(ModelText::address).orElse(accessPoint);
	}

	String chosenAccessPoint() {
		return session == null || session.selection().accessPoint() == null ? null
				: session.selection().accessPoint().getId();
	}
}
