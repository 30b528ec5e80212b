package org.cairnfield.exchange;

import java.util.EnumSet;
import java.util.Set;

import org.cairnfield.core.text.Words;

/** Whether the names of columns say clearly what they hold; otherwise somebody has to decide, and nothing is guessed. */
final class ColumnNames {

	private static final Set<ColumnRole> OFTEN = EnumSet.of(ColumnRole.SIGNAL, ColumnRole.IGNORED);
	private static final String TOLD = Messages.ColumnNames_asTold;

	private final FilePlan plan;

	private ColumnNames(FilePlan plan) {
		this.plan = plan;
	}

	/** @throws IntakeException where two columns have the name of one thing, or an access point has one that nothing can keep */
	static void require(FilePlan plan) throws IntakeException {
		ColumnNames names = new ColumnNames(plan);
		for (int i = 0; i < plan.roles.length && plan.dialect.header(); i++) {
			if (plan.roles[i] == ColumnRole.SIGNAL) {
				names.requireUsable(i);
			} else if (!plan.exact && !OFTEN.contains(plan.roles[i])) {
				names.requireOnce(i);
			}
		}
	}

	private void requireUsable(int column) throws IntakeException {
		String name = plan.signalNames == null ? plan.names.get(column) : plan.signalNames.get(column);
		if (!PlaceReader.isName(name)) {
			throw new IntakeException(plan.file, 1,
					Words.bind(Messages.ColumnNames_theNameOfColumnHas, column + 1, CellWords.shown(name),
							CellWords.count(name.length()), PlaceReader.LONGEST_NAME),
					Words.bind(Messages.ColumnNames_giveItAShorterOne, column + 1));
		}
	}

	private void requireOnce(int column) throws IntakeException {
		String name = plan.names.get(column).strip();
		for (int other = 0; other < plan.roles.length; other++) {
			if (other != column && !name.isEmpty() && name.equalsIgnoreCase(plan.names.get(other).strip())
					&& !TOLD.equals(plan.evidence[other])) {
				throw new IntakeException(plan.file, 1,
						Words.bind(Messages.ColumnNames_columnsAndAreBothNamed, Math.min(column, other) + 1,
								Math.max(column, other) + 1, CellWords.shown(name)),
						Words.bind(Messages.ColumnNames_giveOneOfThemAnother, other + 1));
			}
		}
	}
}
