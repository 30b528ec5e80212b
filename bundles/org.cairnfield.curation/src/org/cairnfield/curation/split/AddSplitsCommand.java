package org.cairnfield.curation.split;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.eclipse.emf.common.command.AbstractCommand;

/** Keeps splits in the archive. It can be executed where their ids are free. */
public final class AddSplitsCommand extends AbstractCommand {

	private final Archive archive;
	private final List<Split> splits;

	/** @param splits in no archive */
	public AddSplitsCommand(Archive archive, Collection<Split> splits) {
		this.archive = archive;
		this.splits = List.copyOf(splits);
	}

	@Override
	protected boolean prepare() {
		return !splits.isEmpty() && SplitNames.areFree(archive, splits.stream().map(Split::getId).toList());
	}

	@Override
	public void execute() {
		archive.getSplits().addAll(splits);
	}

	@Override
	public void undo() {
		archive.getSplits().removeAll(splits);
	}

	@Override
	public void redo() {
		execute();
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return splits;
	}

	@Override
	public String getLabel() {
		return splits.size() == 1 ? "Keep split " + splits.get(0).getId()
				: "Keep " + splits.size() + " splits: " + splits.stream().map(Split::getId).collect(Collectors.joining(", "));
	}
}
