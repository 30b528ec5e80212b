package org.cairnfield.curation.conflict;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.FilledTable;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.conflict.DecidedLater;
import org.cairnfield.model.conflict.Unit;

/** Conflicts as a table: a row a value, with who set it; the one that is chosen is marked. Column names are a contract. */
public final class ConflictTable {

	/** In this order. */
	public static final List<String> COLUMNS = List.of("place", "unit", "value", "person", "time", "keep");

	/** In place of a person: the value before anybody set another. */
	public static final String BEFORE = "(before)";

	private ConflictTable() {
	}

	/**
	 * Writes all that is open. In the last column somebody enters {@code yes} in one row a conflict; without, it stays open.
	 *
	 * @throws IntakeException where the file cannot be written
	 */
	public static void write(Path file, Archive archive) throws IntakeException {
		List<List<?>> rows = new ArrayList<>();
		for (Conflict conflict : DecidedLater.open(archive)) {
			for (Claim claim : conflict.getClaims()) {
				rows.add(Arrays.asList(conflict.getPlace(), conflict.getUnit(), claim.getValue(), claim.getPerson(),
						claim.getTime() == null ? null : claim.getTime().toString(), null));
			}
			rows.add(Arrays.asList(conflict.getPlace(), conflict.getUnit(), conflict.getBase(), BEFORE, null, null));
		}
		ResultTable.write(file, COLUMNS, rows.stream());
	}

	/**
	 * What was decided in a table.
	 *
	 * @return what makes it so; it cannot be executed where nothing was
	 * @throws IntakeException naming the file and the line where a row is wrong; then nothing is to be taken in
	 */
	public static DecideConflictsCommand read(Path file, Archive archive) throws IntakeException {
		Map<Unit, Conflict> open = new LinkedHashMap<>();
		DecidedLater.open(archive).forEach(conflict -> open.put(Unit.of(conflict), conflict));
		Map<Conflict, String> chosen = new LinkedHashMap<>();
		for (FilledTable.Row row : FilledTable.read(file, COLUMNS)) {
			String mark = row.field("keep");
			if (mark.isEmpty() || mark.equalsIgnoreCase("no")) {
				continue;
			}
			if (!mark.equalsIgnoreCase("yes") && !mark.equalsIgnoreCase("x")) {
				throw new IntakeException(file, row.line(),
						Words.bind(Messages.ConflictTable_inColumnKeepIsNeither, mark),
						Messages.ConflictTable_enterYesInTheRow);
			}
			Conflict conflict = open.get(new Unit(row.field("place"), row.field("unit")));
			if (conflict == null) {
				throw new IntakeException(file, row.line(),
						Words.bind(Messages.ConflictTable_thereIsNoOpenConflict, row.field("unit"),
								row.field("place")),
						Messages.ConflictTable_exportTheTableAgainSomebody);
			}
			if (chosen.containsKey(conflict)) {
				throw new IntakeException(file, row.line(),
						Words.bind(Messages.ConflictTable_aSecondValueIsKept, row.field("unit"), row.field("place")),
						Messages.ConflictTable_keepOneOfThem);
			}
			chosen.put(conflict, value(file, row, conflict));
		}
		return new DecideConflictsCommand(archive, chosen);
	}

	private static String value(Path file, FilledTable.Row row, Conflict conflict) throws IntakeException {
		String value = row.field("value").isEmpty() ? null : row.field("value");
		String person = row.field("person");
		if (person.equals(BEFORE)) {
			return conflict.getBase();
		}
		Optional<Claim> claim = conflict.getClaims().stream()
				.filter(each -> Objects.equals(blank(each.getValue()), value)).findFirst();
		if (claim.isEmpty()) {
			throw new IntakeException(file, row.line(),
					Words.bind(Messages.ConflictTable_nobodyHasSetOfTo, conflict.getUnit(), conflict.getPlace(),
							row.field("value")),
					Messages.ConflictTable_keepOneOfTheValues);
		}
		return claim.get().getValue();
	}

	private static String blank(String value) {
		return value == null || value.isBlank() ? null : value.strip();
	}
}
