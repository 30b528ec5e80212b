package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.choose.Budget;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.curation.study.DbscanContender.Noise;

/** All methods on one map. What several of them ask of it is computed once. */
final class MapUnderStudy {

	private final StudyMap map;
	private final long seed;
	private final double limitSeconds;
	private final Signals signals;
	private final StudyMeasure measure;
	private final Map<StudyMethod, Contest> contests = new EnumMap<>(StudyMethod.class);
	private final Shared shared = Shared.kept();
	private List<HeldOut> heldOuts;

	MapUnderStudy(StudyMap map, StudySettings settings) {
		this.map = map;
		seed = settings.seed();
		limitSeconds = settings.most().toMillis() / 1e3;
		signals = Signals.of(map.training());
		measure = new StudyMeasure(map, signals, seed);
	}

	/**
	 * Chooses the settings of a method on training positions, and measures it on the test samples.
	 *
	 * @param others rows of this map that are done, for {@link StudyMethod#CHOSEN}
	 * @throws UnfitSurveyException where the method cannot do anything with the map
	 */
	StudyRow row(StudyMethod method, List<StudyRow> others, Workers workers) {
		return switch (method) {
		case PLAIN -> plain(method, measure.plain(workers));
		case PLAIN_3W -> plain(method, measure.plainWeighted(workers));
		case CHOSEN -> chosen(others, workers);
		default -> split(method, workers);
		};
	}

	/** A row without figures. */
	StudyRow skipped(StudyMethod method, String why) {
		return new StudyRow(map.name(), method.code(), signals.size(), map.test().size(), map.isHeldOut(),
				map.setAside(), budgetShare(), null, "", null,
				List.of(), null, 0, 0, why, limitSeconds);
	}

	private double budgetShare() {
		return Budget.share(signals.size());
	}

	private StudyRow plain(StudyMethod method, StudyRow.Figures figures) {
		return new StudyRow(map.name(), method.code(), signals.size(), map.test().size(), map.isHeldOut(),
				map.setAside(), budgetShare(), figures,
				method.how(), null, List.of(), null, 0, 0, null, limitSeconds);
	}

	private StudyRow split(StudyMethod method, Workers workers) {
		Contest contest = contest(method, workers);
		Contest.Entry taken = taken(method, contest, workers);
		List<StudyRow.Tried> tried = contest.published().stream().map(entry -> entry.tried(method)).toList();
		return measured(method, taken.contender(), Search.PUBLISHED, taken.contender().setting(), tried,
				contest.best().isEmpty() ? null : contest.best().get(0).tried(method), contest.seconds(), workers);
	}

	/** DBSCAN's three rows are of one split, the best with noise dropped, so that they show what giving it back adds. */
	private Contest.Entry taken(StudyMethod method, Contest contest, Workers workers) {
		if (method != StudyMethod.DBSCAN_CORRELATION && method != StudyMethod.DBSCAN_NEAREST) {
			return contest.published().get(0);
		}
		String setting = contest(StudyMethod.DBSCAN, workers).published().get(0).contender().setting();
		return contest.published().stream().filter(entry -> entry.contender().setting().equals(setting)).findFirst()
				.orElse(contest.published().get(0));
	}

	private StudyRow chosen(List<StudyRow> others, Workers workers) {
		List<StudyRow.Tried> bests = new ArrayList<>();
		others.stream().filter(row -> row.best() != null).forEach(row -> bests.add(row.best()));
		if (bests.isEmpty()) {
			throw new UnfitSurveyException(Messages.MapUnderStudy_noMethodWasTriedThat);
		}
		List<StudyRow.Tried> ranked = TrialScore.ranked(bests, StudyRow.Tried::score, signals.size());
		StudyRow.Tried best = ranked.get(0);
		StudyMethod method = StudyMethod.of(best.method());
		Contender contender = contenders(method).stream().filter(c -> c.setting().equals(best.setting())).findFirst()
				.orElseThrow();
		Search search = Search.parse(best.search());
		return measured(StudyMethod.CHOSEN, contender, search, best.method() + ", " + best.setting() + "; " + search,
				ranked, null,
				others.stream().mapToDouble(StudyRow::choiceS).sum(), workers);
	}

	private StudyRow measured(StudyMethod method, Contender contender, Search search, String how,
			List<StudyRow.Tried> tried, StudyRow.Tried best,
			double choiceSeconds, Workers workers) {
		long begin = System.nanoTime();
		Searchable built = contender.build(signals, Shared.NOTHING, workers).orElseThrow(
				() -> new UnfitSurveyException(Messages.MapUnderStudy_noSamplesAreCloseEnough));
		Searchable.Searched ready = built.ready(search, seed, workers);
		double offlineSeconds = (System.nanoTime() - begin) / 1e9;
		StudyRow.Figures figures = measure.of(method.code(), ready, ready::bytes, workers);
		return new StudyRow(map.name(), method.code(), signals.size(), map.test().size(), map.isHeldOut(),
				map.setAside(), budgetShare(), figures,
				how + (built.note().isEmpty() ? "" : "; " + built.note()), built.shape(), tried, best, offlineSeconds,
				choiceSeconds, null, limitSeconds);
	}

	/** @throws UnfitSurveyException where no setting finds positions */
	private Contest contest(StudyMethod method, Workers workers) {
		Contest known = contests.get(method);
		if (known == null) {
			if (heldOuts == null) {
				heldOuts = HeldOut.several(signals, seed);
			}
			List<Contender> contenders = contenders(method);
			if (contenders.isEmpty()) {
				throw new UnfitSurveyException(Messages.MapUnderStudy_theMapHasTooFew);
			}
			known = Contest.of(heldOuts, contenders, signals.size(), seed, shared, workers);
			contests.put(method, known);
		}
		if (known.published().isEmpty()) {
			throw new UnfitSurveyException(Messages.MapUnderStudy_noSamplesAreCloseEnough);
		}
		return known;
	}

	private List<Contender> contenders(StudyMethod method) {
		return switch (method) {
		case DBSCAN -> DbscanContender.all(Noise.DROPPED);
		case DBSCAN_CORRELATION -> DbscanContender.all(Noise.CORRELATED);
		case DBSCAN_NEAREST -> DbscanContender.all(Noise.NEAREST);
		case DBSCAN_PCA -> DbscanContender.reduced();
		case K_MEANS -> KMeansContender.all(signals.size(), seed);
		case K_MEANS_OVERLAP -> ZonesContender.all(seed);
		case AFFINITY -> AffinityContender.all(seed);
		case ORTHOGONAL_SEARCH -> OrthogonalContender.all(signals.map().accessPointCount(), seed);
		case KERNEL_REDUCTION -> KernelContender.all(seed);
		default -> throw new IllegalArgumentException(method + " has no settings");
		};
	}
}
