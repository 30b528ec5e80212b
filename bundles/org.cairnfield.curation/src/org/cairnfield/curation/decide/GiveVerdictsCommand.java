package org.cairnfield.curation.decide;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.check.LedgerOrder;
import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.common.command.Command;

/**
 * Appends verdicts to the ledger of a split, which it makes where there is none, and sets faulty samples aside. Undo takes the lines out again as
 * long as no save point holds them and no audit has failed by them; from then on the ledger only grows, and undo appends
 * lines that take them back.
 */
public final class GiveVerdictsCommand extends AbstractCommand {

	private final Archive archive;
	private final String split;
	private final List<LedgerEntry> wanted;
	private final RecordedVerdicts recorded;
	private final Clock clock;
	private final String name;
	/** As they are in the ledger, the last time they were given. */
	private List<Verdict> given = List.of();
	private Ledger madeLedger;
	/** Sets faulty samples aside; null where there are none. */
	private Command settingAside;
	/** Where undo had to append. */
	private List<Verdict> takingBack = List.of();

	GiveVerdictsCommand(Archive archive, String split, List<LedgerEntry> wanted, RecordedVerdicts recorded,
			Clock clock) {
		this(archive, split, wanted, recorded, clock, null);
	}

	/** @param name what the change is called; null for what its verdicts say */
	GiveVerdictsCommand(Archive archive, String split, List<LedgerEntry> wanted, RecordedVerdicts recorded, Clock clock,
			String name) {
		this.archive = archive;
		this.split = split;
		this.wanted = List.copyOf(wanted);
		this.recorded = recorded;
		this.clock = clock;
		this.name = name;
	}

	/** The same change, not made yet, for the archive of which the one it was made for is a copy. */
	public GiveVerdictsCommand on(Archive original) {
		return new GiveVerdictsCommand(original, split, wanted, recorded, clock, name);
	}

	/** What it gives, without ids. */
	List<LedgerEntry> wanted() {
		return wanted;
	}

	@Override
	protected boolean prepare() {
		return !wanted.isEmpty();
	}

	@Override
	public void execute() {
		settingAside = FaultySamples.setAside(archive, wanted);
		if (settingAside != null) {
			settingAside.execute();
		}
		append();
	}

	private void append() {
		Ledger ledger = Standings.ledger(archive, split).orElse(null);
		madeLedger = null;
		if (ledger == null) {
			ledger = ModelFactory.eINSTANCE.createLedger();
			ledger.setId(split);
			archive.getLedgers().add(ledger);
			madeLedger = ledger;
		}
		given = append(ledger, wanted);
	}

	/** A line is never earlier than the last one, where a clock ran back; but what a table says of when stays as it is. */
	private List<Verdict> append(Ledger ledger, List<LedgerEntry> entries) {
		Set<String> ids = new HashSet<>();
		ledger.getVerdicts().forEach(verdict -> ids.add(verdict.getId()));
		List<Verdict> added = new ArrayList<>();
		for (LedgerEntry entry : entries) {
			String id = id(entry, ids.size());
			while (!ids.add(id)) {
				id = ContentKeys.text(ContentKeys.of(id));
			}
			Verdict verdict = entry.withId(id).toModel();
			if (name == null && !LedgerOrder.follows(ledger, verdict.getTime())) {
				verdict.setTime(LedgerOrder.next(ledger, verdict.getTime()));
			}
			added.add(verdict);
		}
		ledger.getVerdicts().addAll(added);
		return added;
	}

	/** Made from what it says, so that two ledgers that people bring together seldom share one. */
	private static String id(LedgerEntry entry, int before) {
		return ContentKeys.text(ContentKeys.join(ContentKeys.of(entry.toString()), before));
	}

	@Override
	public void undo() {
		if (settingAside != null) {
			settingAside.undo();
		}
		Ledger ledger = Standings.ledger(archive, split).orElseThrow();
		takingBack = List.of();
		if (given.stream().noneMatch(this::isKept)) {
			ledger.getVerdicts().removeAll(given);
			if (madeLedger != null && ledger.getVerdicts().isEmpty()) {
				archive.getLedgers().remove(ledger);
			}
			return;
		}
		takingBack = append(ledger, given.stream().map(LedgerEntry::of).map(entry -> takeBack(entry, clock)).toList());
	}

	/** Whether the ledger keeps a line for good: a save point holds it, or an audit has failed by it. */
	private boolean isKept(Verdict verdict) {
		return recorded.has(verdict.getId()) || AuditRecord.failsAudit(LedgerEntry.of(verdict));
	}

	/** The line that makes as if another had not been given. */
	static LedgerEntry takeBack(LedgerEntry entry, Clock clock) {
		return new LedgerEntry(null, entry.split(), entry.sample(), entry.cluster(), Decision.DEFER,
				ReasonCode.TAKEN_BACK.code(),
				null, entry.person(), clock.instant(), entry.id(), entry.round(), entry.sampleContent(),
				entry.evidence(),
				entry.batch(), entry.enteredBy());
	}

	@Override
	public void redo() {
		if (settingAside != null) {
			settingAside.redo();
		}
		if (!takingBack.isEmpty() && takingBack.stream().noneMatch(verdict -> recorded.has(verdict.getId()))) {
			Standings.ledger(archive, split).orElseThrow().getVerdicts().removeAll(takingBack);
			takingBack = List.of();
		} else {
			append();
		}
	}

	@Override
	public Collection<?> getAffectedObjects() {
		List<Object> affected = new ArrayList<>();
		affected.add(Standings.ledger(archive, split).map(Object.class::cast).orElse(archive));
		if (settingAside != null) {
			affected.addAll(settingAside.getAffectedObjects());
		}
		return affected;
	}

	@Override
	public String getLabel() {
		if (name != null) {
			return name;
		}
		String whom = wanted.size() == 1 ? wanted.get(0).sample().toString()
				: Words.bind(Messages.GiveVerdictsCommand_proposals, wanted.size());
		if (wanted.get(0).decision() == Decision.FAULTY) {
			return Words.bind(Messages.GiveVerdictsCommand_markAsFaulty, whom);
		}
		String what = wanted.get(0).takesBack() ? Messages.GiveVerdictsCommand_takeBack
				: switch (wanted.get(0).decision()) {
				case APPROVE -> Messages.GiveVerdictsCommand_approve;
				case MOVE -> Messages.GiveVerdictsCommand_move;
				case POOL -> Messages.GiveVerdictsCommand_pool;
				case REJECT -> Messages.GiveVerdictsCommand_reject;
				default -> Messages.GiveVerdictsCommand_defer;
				};
		return what + ' ' + whom;
	}
}
