package org.cairnfield.curation.split;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.eclipse.emf.common.command.AbstractCommand;

/**
 * Keeps splits in the archive. It can be executed where their ids are free. The first ones are for the next release; where
 * there are some already, the release goes on taking those.
 */
public final class AddSplitsCommand extends AbstractCommand {

	private final Archive archive;
	private final List<Split> splits;
	private SplitsInRelease.Choose choice;

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
		List<Split> before = SplitsInRelease.of(archive);
		archive.getSplits().addAll(splits);
		choice = new SplitsInRelease.Choose(archive, before.isEmpty() ? splits : before);
		choice.execute();
	}

	@Override
	public void undo() {
		choice.undo();
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
		return splits.size() == 1 ? Words.bind(Messages.AddSplitsCommand_keepSplit, splits.get(0).getId())
				: Words.bind(Messages.AddSplitsCommand_keepSplits, splits.size(),
						splits.stream().map(Split::getId).collect(Collectors.joining(", ")));
	}
}
