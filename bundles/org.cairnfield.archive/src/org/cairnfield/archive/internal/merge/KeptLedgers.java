package org.cairnfield.archive.internal.merge;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.LedgerText;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.internal.text.PartReport;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The ledgers of an archive, which stay while the rest of it goes back to an earlier state. What the verdicts in them no
 * longer say is taken back by lines of its own; see {@link LedgerGrowth}.
 */
public final class KeptLedgers {

	private final SortedMap<String, Ledger> ledgers = new TreeMap<>();
	private final SortedSet<String> grown = new TreeSet<>();

	private KeptLedgers() {
	}

	/** No ledgers. */
	public static KeptLedgers none() {
		return new KeptLedgers();
	}

	/** All that can be read of the ledgers of a state. */
	public static KeptLedgers of(FileSource files, Migrations migrations) throws IOException {
		KeptLedgers found = new KeptLedgers();
		for (String path : paths(files)) {
			try (InputStream in = files.open(path)) {
				Ledger ledger = LedgerText.read(in, migrations, new PartReport(path));
				if (ledger.getId() != null && path.equals(ArchiveLayout.ledger(ledger.getId()))) {
					found.ledgers.put(path, ledger);
				}
			}
		}
		return found;
	}

	/** Paths of the ledgers of a state. */
	public static List<String> paths(FileSource files) {
		List<String> paths = new ArrayList<>();
		files.paths().forEach(path -> {
			if (ArchiveLayout.kind(path) == FileKind.LEDGER) {
				paths.add(path);
			}
		});
		return paths;
	}

	/** Takes in lines that another state has and these do not, at the end. */
	public void addMissing(KeptLedgers other) {
		other.ledgers.forEach((path, ledger) -> {
			Ledger own = ledgers.get(path);
			if (own == null) {
				ledgers.put(path, EcoreUtil.copy(ledger));
				grown.add(path);
				return;
			}
			Set<String> ids = ids(own);
			for (Verdict verdict : ledger.getVerdicts()) {
				if (ids.add(verdict.getId())) {
					own.getVerdicts().add(EcoreUtil.copy(verdict));
					grown.add(path);
				}
			}
		});
	}

	/** A copy without the lines of another state. */
	public KeptLedgers without(KeptLedgers other) {
		KeptLedgers rest = new KeptLedgers();
		ledgers.forEach((path, ledger) -> {
			Ledger copy = EcoreUtil.copy(ledger);
			Ledger out = other.ledgers.get(path);
			if (out != null) {
				Set<String> ids = ids(out);
				copy.getVerdicts().removeIf(verdict -> ids.contains(verdict.getId()));
			}
			rest.ledgers.put(path, copy);
		});
		return rest;
	}

	/** A copy of some lines of one of them. */
	public KeptLedgers only(String path, Collection<String> ids) {
		KeptLedgers some = new KeptLedgers();
		if (ledgers.containsKey(path)) {
			Ledger copy = EcoreUtil.copy(ledgers.get(path));
			copy.getVerdicts().removeIf(verdict -> !ids.contains(verdict.getId()));
			some.ledgers.put(path, copy);
		}
		return some;
	}

	private static Set<String> ids(Ledger ledger) {
		Set<String> ids = new HashSet<>();
		ledger.getVerdicts().forEach(verdict -> ids.add(verdict.getId()));
		return ids;
	}

	/**
	 * Lets the same count as in another state.
	 *
	 * @param wanted has no line that these have not
	 * @param person who brings this about
	 */
	public void settle(KeptLedgers wanted, String person, Instant time) {
		ledgers.forEach((path, ledger) -> {
			int before = ledger.getVerdicts().size();
			Ledger then = wanted.ledgers.get(path);
			LedgerGrowth.settle(ledger, then == null ? List.of() : then.getVerdicts(), person, time);
			if (ledger.getVerdicts().size() > before) {
				grown.add(path);
			}
		});
	}

	/**
	 * Adds those that a structure does not name, empty ones left out.
	 *
	 * @return whether there were any, so that the structure has to be written
	 */
	public boolean nameIn(Archive archive) {
		Set<String> named = new HashSet<>();
		archive.getLedgers().forEach(ledger -> named.add(ledger.getId()));
		boolean added = false;
		for (Ledger ledger : ledgers.values()) {
			if (!ledger.getVerdicts().isEmpty() && named.add(ledger.getId())) {
				archive.getLedgers().add(EcoreUtil.copy(ledger));
				added = true;
			}
		}
		return added;
	}

	/** The ledger of a path; null where there is none, or where it has no line. */
	public Ledger at(String path) {
		Ledger ledger = ledgers.get(path);
		return ledger == null || ledger.getVerdicts().isEmpty() ? null : ledger;
	}

	/** Paths of all. */
	public Collection<String> paths() {
		return ledgers.keySet();
	}

	/** Whether a ledger has lines that it had not when it was read. */
	public boolean isGrown(String path) {
		return grown.contains(path);
	}
}
