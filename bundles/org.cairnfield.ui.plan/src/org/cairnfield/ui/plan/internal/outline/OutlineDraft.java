package org.cairnfield.ui.plan.internal.outline;

import java.util.ArrayDeque;
import java.util.Deque;

/** An outline while it is drawn: the shape now, what was done on the way, and what a drag shows before it ends. */
public final class OutlineDraft {

	private final Deque<OutlineShape> before = new ArrayDeque<>();
	private final Deque<OutlineShape> undone = new ArrayDeque<>();
	private OutlineShape kept;
	private OutlineShape shown;

	public OutlineDraft(OutlineShape start) {
		kept = start;
		shown = start;
	}

	/** What is seen. */
	public OutlineShape shape() {
		return shown;
	}

	/** Shows a shape in passing; {@link #release} goes back. */
	public void show(OutlineShape passing) {
		shown = passing;
	}

	/** Shows what was there before the drag. */
	public void release() {
		shown = kept;
	}

	/** The next step, which can be undone unless only another corner is selected. */
	public void take(OutlineShape next) {
		if (!next.corners().equals(kept.corners()) || next.isClosed() != kept.isClosed()) {
			before.push(kept);
			undone.clear();
		}
		kept = next;
		shown = next;
	}

	/** Back by a step, if there is one. */
	public void undo() {
		go(before, undone);
	}

	/** Forth again by a step, if there is one. */
	public void redo() {
		go(undone, before);
	}

	private void go(Deque<OutlineShape> from, Deque<OutlineShape> to) {
		if (!from.isEmpty()) {
			to.push(kept);
			kept = from.pop();
			shown = kept;
		}
	}
}
