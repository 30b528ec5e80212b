package org.cairnfield.curation.split;

import java.util.Collection;
import java.util.List;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Split;
import org.eclipse.emf.common.command.AbstractCommand;

/** Takes a split out of the archive, and who was to review it. Its ledger stays: what people decided is not lost with it. */
public final class RemoveSplitCommand extends AbstractCommand {

	private final Archive archive;
	private final Split split;
	private int at;
	private List<Assignment> assignments = List.of();

	public RemoveSplitCommand(Archive archive, Split split) {
		super(Words.bind(Messages.RemoveSplitCommand_removeSplit, split.getId()));
		this.archive = archive;
		this.split = split;
	}

	@Override
	protected boolean prepare() {
		return archive.getSplits().contains(split);
	}

	@Override
	public void execute() {
		at = archive.getSplits().indexOf(split);
		archive.getSplits().remove(at);
		assignments = List.copyOf(archive.getAssignments());
		archive.getAssignments().removeIf(each -> split.getId().equals(each.getSplit()));
	}

	@Override
	public void undo() {
		archive.getSplits().add(at, split);
		if (archive.getAssignments().size() < assignments.size()) {
			archive.getAssignments().clear();
			archive.getAssignments().addAll(assignments);
		}
	}

	@Override
	public void redo() {
		execute();
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(archive);
	}
}
