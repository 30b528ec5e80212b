package org.cairnfield.archive.internal.merge;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.check.LedgerOrder;
import org.cairnfield.model.check.TakeBack;
import org.cairnfield.model.values.Sha256;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Lets a ledger say what other lines say, by nothing but lines at its end: verdicts that are not to count are taken back,
 * those that were taken back and are to count again are given again.
 */
final class LedgerGrowth {

	private static final int ID_DIGITS = 16;

	private final Ledger ledger;
	private final String person;
	private final Instant time;
	private final Set<String> ids = new HashSet<>();

	private LedgerGrowth(Ledger ledger, String person, Instant time) {
		this.ledger = ledger;
		this.person = person;
		this.time = time;
		ledger.getVerdicts().forEach(verdict -> ids.add(verdict.getId()));
	}

	/**
	 * @param wanted lines of that ledger at another time, all of which it has
	 * @param person who brings this about
	 */
	static void settle(Ledger ledger, Collection<Verdict> wanted, String person, Instant time) {
		new LedgerGrowth(ledger, person, time).settle(wanted);
	}

	private void settle(Collection<Verdict> wanted) {
		Map<String, List<Verdict>> now = counting(ledger.getVerdicts());
		Map<String, List<Verdict>> then = counting(wanted);
		Set<String> samples = new HashSet<>(now.keySet());
		samples.addAll(then.keySet());
		List<Verdict> takenBack = new ArrayList<>();
		List<Verdict> givenAgain = new ArrayList<>();
		for (String sample : ordered(samples)) {
			settle(now.getOrDefault(sample, List.of()), then.getOrDefault(sample, List.of()), takenBack, givenAgain);
		}
		takenBack.forEach(verdict -> ledger.getVerdicts().add(takeBack(verdict)));
		givenAgain.forEach(verdict -> ledger.getVerdicts().add(giveAgain(verdict)));
	}

	/** In the order of the ledger, so that the same change always writes the same lines. */
	private List<String> ordered(Set<String> samples) {
		return ledger.getVerdicts().stream().map(LedgerGrowth::sample).distinct().filter(samples::contains).toList();
	}

	/** What counts of some lines, by sample, in their order: later ones may rest on earlier ones. */
	private static Map<String, List<Verdict>> counting(Collection<Verdict> lines) {
		Set<String> gone = new HashSet<>();
		lines.stream().filter(TakeBack::isOne).forEach(verdict -> gone.add(verdict.getSupersedes()));
		Map<String, List<Verdict>> found = new LinkedHashMap<>();
		lines.stream().filter(verdict -> !TakeBack.isOne(verdict) && !gone.contains(verdict.getId()))
				.forEach(verdict -> found.computeIfAbsent(sample(verdict), s -> new ArrayList<>()).add(verdict));
		return found;
	}

	private static String sample(Verdict verdict) {
		return verdict.getSplit() + '\t' + verdict.getSample();
	}

	/** Where what is wanted is what counts but for some lines, those are taken back; otherwise all from the first difference on. */
	private static void settle(List<Verdict> now, List<Verdict> then, List<Verdict> takenBack,
			List<Verdict> givenAgain) {
		List<Verdict> more = new ArrayList<>();
		int met = 0;
		for (Verdict verdict : now) {
			if (met < then.size() && says(verdict).equals(says(then.get(met)))) {
				met++;
			} else {
				more.add(verdict);
			}
		}
		if (met == then.size()) {
			takenBack.addAll(more);
			return;
		}
		int same = 0;
		while (same < now.size() && same < then.size() && says(now.get(same)).equals(says(then.get(same)))) {
			same++;
		}
		takenBack.addAll(now.subList(same, now.size()));
		givenAgain.addAll(then.subList(same, then.size()));
	}

	private static List<Object> says(Verdict v) {
		return Arrays.asList(v.getSplit(), v.getSample(), v.getCluster(), v.getDecision(), v.getReasonCode(),
				v.getText(), v.getPerson(),
				v.getRound(), v.getSampleContent(), v.getEvidence(), v.getBatch());
	}

	private Verdict takeBack(Verdict verdict) {
		Verdict line = EcoreUtil.copy(verdict);
		line.setDecision(Decision.DEFER);
		line.setReasonCode(TakeBack.REASON);
		line.setText(null);
		line.setPerson(person);
		line.setEnteredBy(null);
		return following(line, verdict);
	}

	/** By the name of who gave it first, as nobody has judged it again, and entered by who brings this about. */
	private Verdict giveAgain(Verdict verdict) {
		Verdict line = EcoreUtil.copy(verdict);
		line.setEnteredBy(person.equals(verdict.getPerson()) ? null : person);
		return following(line, verdict);
	}

	private Verdict following(Verdict line, Verdict verdict) {
		line.setSupersedes(verdict.getId());
		line.setTime(LedgerOrder.next(ledger, time));
		String seed = String.join("\t", ledger.getId(), verdict.getId(), String.valueOf(line.getReasonCode()), person,
				time.toString());
		do {
			seed = Sha256.of(seed.getBytes(StandardCharsets.UTF_8)).substring(0, ID_DIGITS);
		} while (!ids.add(seed));
		line.setId(seed);
		return line;
	}
}
