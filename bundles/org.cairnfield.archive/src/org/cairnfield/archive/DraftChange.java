package org.cairnfield.archive;

import java.util.Set;

import org.cairnfield.archive.internal.merge.Becoming;
import org.eclipse.emf.ecore.EObject;

/**
 * What brings a draft back, as one change of the model that can be undone; for an undo stack,
 * {@code new ChangeCommand(label, change::apply, change::undo, change.affected())}.
 */
public final class DraftChange {

	private final Becoming becoming;

	DraftChange(Becoming becoming) {
		this.becoming = becoming;
	}

	/** Whether there is nothing to bring back. */
	public boolean isEmpty() {
		return becoming.isEmpty();
	}

	/** Makes the change, the first time or again after {@link #undo}. */
	public void apply() {
		becoming.apply();
	}

	/** Takes it back, exactly. */
	public void undo() {
		becoming.undo();
	}

	/** The objects that change; all others stay the same objects. */
	public Set<EObject> affected() {
		return becoming.affected();
	}
}
