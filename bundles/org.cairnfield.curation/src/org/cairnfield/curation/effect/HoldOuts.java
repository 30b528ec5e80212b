package org.cairnfield.curation.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;

/**
 * Questions to a map whose answers are known: whole blocks of training positions are held out in turn and matched against the rest.
 * Made once, it tells the effect of many remedies. Test surveys play no part. Samples whose place or readings are in doubt are no
 * questions. Immutable; safe for several threads.
 */
public final class HoldOuts {

	private static final int FOLDS = 5;
	/** Enough for two digits of the right floor; more take longer and say little more. */
	private static final int MOST_QUESTIONS = 4000;
	/** Neighbours kept of each question, so that most remedies need no further search. */
	private static final int KEPT = 16;
	private static final long SEED = 7;

	private final SurveyedMap surveyed;
	private final RadioMap map;
	private final int[] fold;
	private final PositionBlocks blocks;
	/** Samples that are asked about. */
	private final int[] question;
	/** Of each question the nearest samples in other folds, nearest first. */
	private final int[][] nearest;

	/**
	 * Asks the map as it is.
	 *
	 * @param doubtful ids of samples that are not asked about
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	public HoldOuts(SurveyedMap surveyed, Set<String> doubtful, Workers workers) {
		this.surveyed = surveyed;
		map = surveyed.map();
		blocks = PositionBlocks.of(map);
		fold = blocks.folds(FOLDS, SEED);
		int[] sound = IntStream.range(0, map.size())
				.filter(s -> map.heard(s) > 0 && !doubtful.contains(surveyed.sampleId(s))).toArray();
		int step = Math.max(1, (sound.length + MOST_QUESTIONS - 1) / MOST_QUESTIONS);
		question = IntStream.range(0, sound.length).filter(i -> i % step == 0).map(i -> sound[i]).toArray();
		nearest = new int[question.length][];
		workers.progress().begin(Messages.HoldOuts_askingHoldOuts, FOLDS);
		for (int f = 0; f < FOLDS; f++) {
			int held = f;
			int[] kept = IntStream.range(0, map.size()).filter(s -> fold[s] != held).toArray();
			int[] asked = IntStream.range(0, question.length).filter(q -> fold[question[q]] == held).toArray();
			int[][] found = NearestOf.find(map.view(kept),
					map.view(Arrays.stream(asked).map(q -> question[q]).toArray()), KEPT, workers);
			for (int i = 0; i < asked.length; i++) {
				nearest[asked[i]] = Arrays.stream(found[i]).map(s -> s < 0 ? -1 : kept[s]).toArray();
			}
			workers.progress().advance(1);
		}
	}

	/** Samples that an error is about are not asked about. */
	public static HoldOuts of(SurveyedMap map, Collection<Finding> findings, Workers workers) {
		Set<String> doubtful = new HashSet<>();
		findings.stream().filter(finding -> finding.severity() == Severity.ERROR)
				.flatMap(finding -> finding.subjects().stream())
				.filter(Subject.OfSample.class::isInstance)
				.forEach(subject -> doubtful.add(((Subject.OfSample) subject).id()));
		return new HoldOuts(map, doubtful, workers);
	}

	/**
	 * What several remedies do together. Samples that they touch are not asked about.
	 *
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	public RemedyEffect effect(Collection<Remedy> remedies, Workers workers) {
		return effects(List.of(remedies), workers).get(0);
	}

	/**
	 * What each of several choices of remedies does, all asked the same questions, so that they can be compared: samples that any of
	 * them touches are not asked about.
	 *
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	public List<RemedyEffect> effects(List<? extends Collection<Remedy>> choices, Workers workers) {
		List<RemediedMap> after = choices.stream().map(remedies -> RemediedMap.of(surveyed, remedies)).toList();
		boolean[][] touched = new boolean[choices.size()][map.size()];
		boolean[] passed = new boolean[map.size()];
		for (int s = 0; s < map.size(); s++) {
			for (int c = 0; c < touched.length; c++) {
				touched[c][s] = after.get(c).touched().contains(surveyed.sampleId(s));
				passed[s] |= touched[c][s];
			}
		}
		return IntStream.range(0, touched.length)
				.mapToObj(c -> effect(choices.get(c), after.get(c), touched[c], passed, workers)).toList();
	}

	/** @param passed samples that are not asked about */
	private RemedyEffect effect(Collection<Remedy> remedies, RemediedMap after, boolean[] touched, boolean[] passed,
			Workers workers) {
		PairedErrors errors = new PairedErrors();
		if (remedies.stream().anyMatch(HoldOuts::changesReadings) || !byNeighbours(after, touched, passed, errors)) {
			errors = bySearch(after, passed, workers);
		}
		int samples = (int) IntStream.range(0, touched.length).filter(s -> touched[s]).count();
		return new RemedyEffect(samples, after.accessPoints().size(),
				(int) (map.readingCount() - after.map().map().readingCount()), errors.effect());
	}

	private static boolean changesReadings(Remedy remedy) {
		return remedy instanceof Remedy.DropReadings || remedy instanceof Remedy.SetAsideAccessPoints
				|| remedy instanceof Remedy.AverageSamples
				|| remedy instanceof Remedy.CountAs || remedy instanceof Remedy.CorrectDevice;
	}

	/** Rows after by rows before; −1 for samples that are left out. */
	private int[] rowsAfter(RemediedMap after) {
		Map<String, Integer> rows = new HashMap<>();
		for (int s = 0; s < after.map().size(); s++) {
			rows.put(after.map().sampleId(s), s);
		}
		return IntStream.range(0, map.size()).map(s -> rows.getOrDefault(surveyed.sampleId(s), -1)).toArray();
	}

	/** Where readings stay as they are, answers follow from the neighbours known. False where too few are left of these. */
	private boolean byNeighbours(RemediedMap after, boolean[] touched, boolean[] passed, PairedErrors errors) {
		RadioMap now = after.map().map();
		int[] rows = rowsAfter(after);
		for (int q = 0; q < question.length; q++) {
			int asked = question[q];
			if (passed[asked]) {
				continue;
			}
			int before = -1;
			int next = -1;
			int i = 0;
			for (; i < KEPT && nearest[q][i] >= 0 && next < 0; i++) {
				int sample = nearest[q][i];
				if (!comesNear(now, rows[sample], asked, touched[sample])) {
					before = before < 0 ? sample : before;
					next = rows[sample];
				}
			}
			if (next < 0 && i == KEPT) {
				return false;
			}
			errors.add(blocks.block(asked), Answer.at(map, before, map, asked), Answer.at(now, next, map, asked));
		}
		return true;
	}

	/** Whether a remedy puts a sample into the neighbourhood that is held out: no map that is asked may have it, before or after. */
	private boolean comesNear(RadioMap now, int row, int asked, boolean touched) {
		return touched && row >= 0 && now.floor(row) == map.floor(asked)
				&& now.sites().get(now.site(row)).equals(map.sites().get(map.site(asked)))
				&& Math.hypot(now.x(row) - map.x(asked), now.y(row) - map.y(asked)) < blocks.sideMetres() / 2;
	}

	private PairedErrors bySearch(RemediedMap after, boolean[] passed, Workers workers) {
		PairedErrors errors = new PairedErrors();
		RadioMap now = after.map().map();
		int[] rows = rowsAfter(after);
		workers.progress().begin(Messages.HoldOuts_askingHoldOutsAgain, FOLDS);
		for (int f = 0; f < FOLDS; f++) {
			int held = f;
			int[] kept = IntStream.range(0, map.size()).filter(s -> fold[s] != held && rows[s] >= 0).map(s -> rows[s])
					.toArray();
			List<Integer> asked = new ArrayList<>();
			for (int q = 0; q < question.length; q++) {
				if (fold[question[q]] == held && !passed[question[q]]) {
					asked.add(q);
				}
			}
			int[] samples = asked.stream().mapToInt(q -> question[q]).toArray();
			int[][] found = NearestOf.find(now.view(kept), map.view(samples), 1, workers);
			for (int i = 0; i < samples.length; i++) {
				int next = found[i][0] < 0 ? -1 : kept[found[i][0]];
				errors.add(blocks.block(samples[i]), Answer.at(map, nearest[asked.get(i)][0], map, samples[i]),
						Answer.at(now, next, map, samples[i]));
			}
			workers.progress().advance(1);
		}
		return errors;
	}
}
