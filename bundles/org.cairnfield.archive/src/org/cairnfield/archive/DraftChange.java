package org.cairnfield.archive;

import java.util.Set;
import java.util.function.Consumer;

import org.cairnfield.archive.internal.merge.ModelPatch;
import org.eclipse.emf.ecore.EObject;

/**
 * What brings a draft back, as one change of the model that can be undone; for an undo stack,
 * {@code new ChangeCommand(label, change::apply, change::undo, change.affected())}.
 */
public final class DraftChange {

	private final ModelPatch becoming;
	private final Consumer<Boolean> made;

	/** @param made hears whether the change is made, whenever that has changed */
	DraftChange(ModelPatch becoming, Consumer<Boolean> made) {
		this.becoming = becoming;
		this.made = made;
	}

	/** Whether there is nothing to bring back. */
	public boolean isEmpty() {
		return becoming.isEmpty();
	}

	/** Makes the change, the first time or again after {@link #undo}. */
	public void apply() {
		becoming.apply();
		made.accept(true);
	}

	/** Takes it back, exactly. */
	public void undo() {
		becoming.undo();
		made.accept(false);
	}

	/** The objects that change; all others stay the same objects. */
	public Set<EObject> affected() {
		return becoming.affected();
	}
}
