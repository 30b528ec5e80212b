package org.cairnfield.ui.show;

import java.util.List;

import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** From a sample that is named somewhere to its place on the plan. */
public final class OnPlan {

	private static final String PLAN = "org.cairnfield.ui.plan.view";

	private OnPlan() {
	}

	/**
	 * Selects a sample and brings the plan up; its survey becomes the scope, so that plan and table have it.
	 *
	 * @return false where the archive on show has no such sample
	 */
	public static boolean show(ArchiveSession session, SampleKey sample) {
		return ArchiveIndex.of(session.archive()).sample(sample).map(ref -> {
			session.select(session.selection().withScope(ref.survey()).withSamples(List.of(ref)));
			bringUp();
			return true;
		}).orElse(false);
	}

	/** Brings the plan up, without the focus. */
	static void bringUp() {
		try {
			PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(PLAN, null,
					IWorkbenchPage.VIEW_VISIBLE);
		} catch (PartInitException e) {
			Problems.show(Messages.OnPlan_thePlanCannotBeShown, e);
		}
	}
}
