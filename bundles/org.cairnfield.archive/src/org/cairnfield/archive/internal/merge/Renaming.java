package org.cairnfield.archive.internal.merge;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.check.LedgerOrder;
import org.cairnfield.model.check.TakeBack;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Sha256;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Gives surveys and splits that others do not know yet other ids where theirs would clash: two things of one name, or one
 * survey file that was taken in twice. Verdicts follow; the lines of ledgers stay, are taken back, and are given again under
 * the new name.
 */
public final class Renaming {

	private static final int DIGITS = 6;
	private static final int ID_DIGITS = 16;

	private final Archive archive;
	private final List<String> notes = new ArrayList<>();
	private final Map<String, String> surveys = new LinkedHashMap<>();
	private final Map<String, String> splits = new LinkedHashMap<>();
	private final String person;

	private Renaming(Archive archive, String person) {
		this.archive = archive;
		this.person = person;
	}

	/**
	 * @param mine   is not touched
	 * @param person who brings this about; null where it is only looked at
	 */
	public static Renaming of(Archive base, Archive mine, Archive theirs, String person) {
		Renaming renaming = new Renaming(EcoreUtil.copy(mine), person);
		renaming.findSurveys(surveys(base), surveys(theirs));
		renaming.findSplits(splits(base), splits(theirs));
		if (renaming.isAny()) {
			renaming.apply(base, theirs);
		}
		return renaming;
	}

	/** My side as it can be merged. */
	public Archive archive() {
		return archive;
	}

	/** Whether anything has another id now. */
	public boolean isAny() {
		return !surveys.isEmpty() || !splits.isEmpty();
	}

	/** What people should know of it. */
	public List<String> notes() {
		return notes;
	}

	private void findSurveys(Map<String, Survey> base, Map<String, Survey> theirs) {
		Map<String, Survey> mine = surveys(archive);
		for (Survey survey : mine.values()) {
			String id = survey.getId();
			if (base.containsKey(id)) {
				continue;
			}
			Survey other = theirs.get(id);
			Optional<Survey> twin = theirs.values().stream()
					.filter(each -> !base.containsKey(each.getId()) && isSameFile(each, survey)).findFirst();
			if (twin.isPresent()) {
				if (!twin.get().getId().equals(id) && !mine.containsKey(twin.get().getId())) {
					surveys.put(id, twin.get().getId());
					notes.add(Words.bind(Messages.Renaming_surveyIsOneThatOthers, id, twin.get().getId()));
				}
			} else if (other != null && !other.table().equals(survey.table())) {
				String digest = survey.getSourceDigest() == null
						? digest(survey.table().toString() + survey.getSourceFile())
						: survey.getSourceDigest();
				surveys.put(id, free(id + '-' + digest.substring(0, DIGITS), mine.keySet(), theirs.keySet()));
				notes.add(Words.bind(Messages.Renaming_othersHaveTakenInAnother, id, surveys.get(id)));
			}
		}
	}

	private static boolean isSameFile(Survey one, Survey other) {
		return one.getSourceDigest() != null && one.getSourceDigest().equals(other.getSourceDigest())
				&& one.getSite().getId().equals(other.getSite().getId());
	}

	private void findSplits(Map<String, Split> base, Map<String, Split> theirs) {
		Map<String, Split> mine = splits(archive);
		for (Split split : mine.values()) {
			Split other = theirs.get(split.getId());
			if (other != null && !base.containsKey(split.getId()) && !says(split).equals(says(other))) {
				splits.put(split.getId(),
						free(split.getId() + '-' + digest(says(split).toString()).substring(0, DIGITS), mine.keySet(),
								theirs.keySet()));
				notes.add(Words.bind(Messages.Renaming_othersHaveKeptAnotherSplit, split.getId(),
						splits.get(split.getId())));
			}
		}
	}

	private static List<Object> says(Split split) {
		return List.of(split.getEpsilon(), split.getMinPts(), String.valueOf(split.getScope()),
				String.valueOf(split.getRepresentation()),
				String.valueOf(split.getDistance()), String.valueOf(split.getPcaShare()),
				String.valueOf(split.getMethod()), split.getGate(), split.getThreshold(),
				split.getLabels() == null ? 0 : split.getLabels(),
				split.getProposals() == null ? 0 : split.getProposals());
	}

	private static String free(String wanted, Set<String> mine, Set<String> theirs) {
		String id = wanted;
		for (int n = 2; mine.contains(id) || theirs.contains(id); n++) {
			id = wanted + '-' + n;
		}
		return id;
	}

	private void apply(Archive base, Archive theirs) {
		surveys(archive).values().stream().filter(survey -> surveys.containsKey(survey.getId()))
				.forEach(survey -> survey.setId(surveys.get(survey.getId())));
		for (Split split : archive.getSplits()) {
			split.setId(splits.getOrDefault(split.getId(), split.getId()));
			if (!surveys.isEmpty()) {
				split.setLabels(renamed(split.getLabels()));
				split.setProposals(renamed(split.getProposals()));
			}
		}
		Set<String> known = new HashSet<>();
		for (Archive side : List.of(base, theirs)) {
			side.getLedgers().forEach(ledger -> ledger.getVerdicts().forEach(verdict -> known.add(verdict.getId())));
		}
		for (Ledger ledger : List.copyOf(archive.getLedgers())) {
			giveAgain(ledger, known);
		}
	}

	private Labels renamed(Labels labels) {
		if (labels == null) {
			return null;
		}
		LabelsBuilder builder = Labels.builder();
		for (int row = 0; row < labels.size(); row++) {
			builder.add(renamed(labels.key(row)), labels.cluster(row), labels.role(row));
		}
		return builder.build();
	}

	private Proposals renamed(Proposals proposals) {
		return proposals == null ? null
				: Proposals.of(proposals.all().stream()
						.map(p -> new Proposal(renamed(p.sample()), p.cluster(), p.strengthR(), p.margin(),
								renamed(p.carrier()), p.nearestCluster()))
						.toList());
	}

	private SampleKey renamed(SampleKey key) {
		return key == null || !surveys.containsKey(key.survey()) ? key
				: new SampleKey(surveys.get(key.survey()), key.sample());
	}

	/** @param known ids of verdicts that others have, which stay as they are */
	private void giveAgain(Ledger ledger, Set<String> known) {
		Set<String> gone = new HashSet<>();
		ledger.getVerdicts().stream().filter(TakeBack::isOne).forEach(verdict -> gone.add(verdict.getSupersedes()));
		for (Verdict verdict : List.copyOf(ledger.getVerdicts())) {
			boolean moved = splits.containsKey(verdict.getSplit())
					|| verdict.getSample() != null && surveys.containsKey(verdict.getSample().survey());
			if (moved && !known.contains(verdict.getId()) && !gone.contains(verdict.getId())
					&& !TakeBack.isOne(verdict)) {
				Verdict again = EcoreUtil.copy(verdict);
				again.setSplit(splits.getOrDefault(verdict.getSplit(), verdict.getSplit()));
				again.setSample(renamed(verdict.getSample()));
				again.setId(id("again", verdict));
				enteredBy(again);
				add(ledger(splits.getOrDefault(ledger.getId(), ledger.getId())), again);
				add(ledger, takeBack(verdict));
			}
		}
	}

	private static void add(Ledger ledger, Verdict line) {
		line.setTime(line.getTime() == null ? null : LedgerOrder.next(ledger, line.getTime()));
		ledger.getVerdicts().add(line);
	}

	private void enteredBy(Verdict line) {
		if (person != null && !person.equals(line.getPerson())) {
			line.setEnteredBy(person);
		}
	}

	private Verdict takeBack(Verdict verdict) {
		Verdict line = EcoreUtil.copy(verdict);
		line.setDecision(Decision.DEFER);
		line.setReasonCode(TakeBack.REASON);
		line.setText(null);
		line.setSupersedes(verdict.getId());
		line.setId(id("back", verdict));
		enteredBy(line);
		return line;
	}

	private static String id(String what, Verdict verdict) {
		return digest(what + '\t' + verdict.getSplit() + '\t' + verdict.getId()).substring(0, ID_DIGITS);
	}

	private Ledger ledger(String id) {
		return archive.getLedgers().stream().filter(ledger -> ledger.getId().equals(id)).findFirst().orElseGet(() -> {
			Ledger made = ModelFactory.eINSTANCE.createLedger();
			made.setId(id);
			archive.getLedgers().add(made);
			return made;
		});
	}

	private static String digest(String text) {
		return Sha256.of(text.getBytes(StandardCharsets.UTF_8));
	}

	private static Map<String, Survey> surveys(Archive archive) {
		Map<String, Survey> found = new HashMap<>();
		archive.getSites().forEach(site -> site.getSurveys().forEach(survey -> found.put(survey.getId(), survey)));
		return found;
	}

	private static Map<String, Split> splits(Archive archive) {
		Map<String, Split> found = new HashMap<>();
		archive.getSplits().forEach(split -> found.put(split.getId(), split));
		return found;
	}
}
