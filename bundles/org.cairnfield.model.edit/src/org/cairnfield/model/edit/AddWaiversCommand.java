package org.cairnfield.model.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.values.Count;
import org.eclipse.emf.common.command.AbstractCommand;

/** Adds waivers of findings to the archive; a finding that is waived already is left as it is. */
public final class AddWaiversCommand extends AbstractCommand {

	private final Archive archive;
	private final List<Waiver> given;
	private final List<Waiver> added = new ArrayList<>();

	public AddWaiversCommand(Archive archive, Collection<Waiver> waivers) {
		this.archive = archive;
		this.given = List.copyOf(waivers);
	}

	@Override
	protected boolean prepare() {
		find();
		return !added.isEmpty();
	}

	private void find() {
		added.clear();
		for (Waiver waiver : given) {
			if (!isIn(archive.getWaivers(), waiver) && !isIn(added, waiver)) {
				added.add(waiver);
			}
		}
	}

	private static boolean isIn(List<Waiver> waivers, Waiver wanted) {
		return waivers.stream().anyMatch(waiver -> Objects.equals(waiver.getRule(), wanted.getRule())
				&& Objects.equals(waiver.getContentKey(), wanted.getContentKey()));
	}

	@Override
	public void execute() {
		find();
		redo();
	}

	@Override
	public void undo() {
		archive.getWaivers().removeAll(added);
	}

	@Override
	public void redo() {
		archive.getWaivers().addAll(added);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(archive);
	}

	@Override
	public String getLabel() {
		return Words.bind(Messages.AddWaiversCommand_waive,
				Count.of(isPrepared ? added.size() : given.size(), "finding"));
	}
}
