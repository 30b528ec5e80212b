package org.cairnfield.model.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.values.Count;
import org.eclipse.emf.common.command.AbstractCommand;

/** Takes waivers out of the archive, so that what they cover is reported again. */
public final class WithdrawWaiversCommand extends AbstractCommand {

	private final Archive archive;
	private final List<Waiver> waivers;
	private List<Waiver> before = List.of();

	/** @param waivers of that archive */
	public WithdrawWaiversCommand(Archive archive, Collection<Waiver> waivers) {
		this.archive = archive;
		this.waivers = List.copyOf(waivers);
	}

	@Override
	protected boolean prepare() {
		return !waivers.isEmpty() && archive.getWaivers().containsAll(waivers);
	}

	@Override
	public void execute() {
		before = new ArrayList<>(archive.getWaivers());
		redo();
	}

	@Override
	public void redo() {
		archive.getWaivers().removeAll(waivers);
	}

	@Override
	public void undo() {
		archive.getWaivers().clear();
		archive.getWaivers().addAll(before);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(archive);
	}

	@Override
	public String getLabel() {
		return Words.bind(Messages.WithdrawWaiversCommand_withdraw, Count.of(waivers.size(), "waiver"));
	}
}
