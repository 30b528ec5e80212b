package org.cairnfield.model.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.command.AbstractCommand;

/** A change that somebody else knows how to make and to take back. It can be executed where there is something to change. */
public final class ChangeCommand extends AbstractCommand {

	private final Runnable change;
	private final Runnable back;
	private final Collection<?> affected;

	/**
	 * @param change   makes the change, the first time or again
	 * @param back     takes it back
	 * @param affected the objects that change; where there are none there is nothing to do
	 */
	public ChangeCommand(String label, Runnable change, Runnable back, Collection<?> affected) {
		super(label);
		this.change = change;
		this.back = back;
		this.affected = List.copyOf(affected);
	}

	@Override
	protected boolean prepare() {
		return !affected.isEmpty();
	}

	@Override
	public void execute() {
		change.run();
	}

	@Override
	public void undo() {
		back.run();
	}

	@Override
	public void redo() {
		change.run();
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return affected;
	}
}
