package org.cairnfield.curation.conflict;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.conflict.DecidedLater;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;
import org.cairnfield.model.values.Count;
import org.eclipse.emf.common.command.AbstractCommand;

/**
 * Decides conflicts: what they are about gets the value that was chosen, and they are closed. All or none. What is over a file
 * is closed when the archive is saved, see {@link DecidedLater}.
 */
public final class DecideConflictsCommand extends AbstractCommand {

	private final Archive archive;
	private final Map<Conflict, String> values;
	private List<Conflict> before = List.of();
	private final Deque<Runnable> undo = new ArrayDeque<>();

	/** @param values by conflict of the archive: one of its claims, or what was before; null for none */
	public DecideConflictsCommand(Archive archive, Map<Conflict, String> values) {
		this.archive = archive;
		this.values = new LinkedHashMap<>(values);
	}

	@Override
	protected boolean prepare() {
		return !values.isEmpty() && DecidedLater.open(archive).containsAll(values.keySet());
	}

	/** @throws IllegalArgumentException for a value that cannot be set; nothing is changed then */
	@Override
	public void execute() {
		before = new ArrayList<>(archive.getConflicts());
		try {
			values.forEach((conflict, value) -> {
				Unit unit = Unit.of(conflict);
				if (DecidedLater.isOverFile(conflict)) {
					undo.push(DecidedLater.decide(conflict, value));
					return;
				}
				if (Units.isThere(archive, unit)) { // otherwise it was removed meanwhile, and there is nothing left to decide
					undo.push(Units.set(archive, unit, value));
				}
			});
			archive.getConflicts().removeAll(
					values.keySet().stream().filter(conflict -> !DecidedLater.isOverFile(conflict)).toList());
		} catch (RuntimeException e) {
			undo();
			throw e;
		}
	}

	@Override
	public void redo() {
		execute();
	}

	@Override
	public void undo() {
		while (!undo.isEmpty()) {
			undo.pop().run();
		}
		archive.getConflicts().clear();
		archive.getConflicts().addAll(before);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(archive);
	}

	@Override
	public String getLabel() {
		return Words.bind(Messages.DecideConflictsCommand_decide, Count.of(values.size(), "conflict"));
	}
}
