package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.Trial;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Scope;

/**
 * Splits as an archive keeps them by other methods than DBSCAN alone, in the setting and search that win on held-out training
 * positions. What a method leaves as noise stays noise, for reviewers.
 */
public final class MethodSplits {

	/** Methods besides DBSCAN whose splits can be kept. */
	public static final List<StudyMethod> KEPT = List.of(StudyMethod.K_MEANS, StudyMethod.AFFINITY,
			StudyMethod.KERNEL_REDUCTION);

	private static final Map<StudyMethod, String> WHY_NOT = Map.of(
			StudyMethod.K_MEANS_OVERLAP,
			Messages.MethodSplits_itsZonesOverlapAndA,
			StudyMethod.ORTHOGONAL_SEARCH,
			Messages.MethodSplits_itLeavesAccessPointsOut,
			StudyMethod.CHOSEN, Messages.MethodSplits_itIsAChoiceNot);

	private final SplitMaker dbscan = new SplitMaker(new SplitStudies(1));
	private final SplitStudies studies = new SplitStudies(1);

	/** Why a method cannot be kept; empty where it can. */
	public static Optional<String> whyNot(StudyMethod method) {
		return KEPT.contains(method) ? Optional.empty()
				: Optional.of(WHY_NOT.getOrDefault(method,
						method.isPlain() ? Messages.MethodSplits_itSplitsNothing
								: Messages.MethodSplits_dbscanIsWhatIsKept));
	}

	/** A setting that was found best, and what a split of it looks like. */
	private record Found(StudyMethod method, Contest.Entry entry, int tried, SplitStudy study) {
	}

	/**
	 * Makes splits by one method.
	 *
	 * @param archive a copy, where others go on changing it
	 * @param method  of {@link #KEPT}
	 * @throws UnfitSurveyException where the scope cannot be split so, or not in the time
	 */
	public SplitMaker.Made make(Archive archive, SplitPlan plan, StudyMethod method, Workers workers) {
		return SplitMaker.each(archive, plan, (id, scope, made) -> keep(id, scope, plan,
				found(archive, scope, plan, method, workers), made, workers));
	}

	/** Makes splits by whatever wins on held-out training positions: DBSCAN, or one of {@link #KEPT}. What was tried is among the notes. */
	public SplitMaker.Made best(Archive archive, SplitPlan plan, Workers workers) {
		return SplitMaker.each(archive, plan, (id, scope, made) -> best(archive, id, scope, plan, made, workers));
	}

	private void best(Archive archive, String id, Scope scope, SplitPlan plan, SplitMaker.Made made, Workers workers) {
		SplitMaker.Made byDensity = dbscan.make(archive, new SplitPlan(id, scope, false, plan.request()), workers);
		AutomaticChoice.Tried density = byDensity.choices().get(id).best();
		List<Found> others = new ArrayList<>();
		List<String> told = new ArrayList<>(
				List.of(told("dbscan", density.meanErrorMetres(), density.comparisonShare())));
		for (StudyMethod method : KEPT) {
			try {
				Found found = found(archive, scope, plan, method, workers);
				others.add(found);
				told.add(told(method.code(), found.entry.score().meanErrorMetres(),
						found.entry.score().comparisonShare()));
			} catch (UnfitSurveyException e) {
				told.add(Words.bind(Messages.MethodSplits_skipped, method.code(), e.getMessage()));
			}
		}
		made.notes().add(Words.bind(Messages.MethodSplits_heldOutErrorByMethod, id, String.join("; ", told)));
		double allowed = others.isEmpty() ? 0 : TrialScore.allowedShare(others.get(0).study.map().map().size());
		Optional<Found> better = others.stream().filter(found -> found.entry.score().comparisonShare() <= allowed)
				.min(Comparator.comparingDouble(found -> found.entry.score().meanErrorMetres()))
				.filter(found -> !(density.meanErrorMetres() <= found.entry.score().meanErrorMetres()));
		if (better.isPresent()) {
			keep(id, scope, plan, better.get(), made, workers);
		} else {
			made.notes().addAll(byDensity.notes());
			made.splits().addAll(byDensity.splits());
			made.choices().putAll(byDensity.choices());
		}
	}

	private static String told(String method, double metres, double share) {
		return Double.isNaN(metres) ? Words.bind(Messages.MethodSplits_findsNothing, method)
				: String.format(Locale.ROOT, Messages.MethodSplits_mAtOfTheComparisons, method, metres, 100 * share);
	}

	private Found found(Archive archive, Scope scope, SplitPlan plan, StudyMethod method, Workers workers) {
		SplitStudy study = studies.study(archive, scope, plan.request());
		long seed = plan.request().seed();
		List<Contender> contenders = switch (method) {
		case K_MEANS -> KMeansContender.all(study.signals().size(), seed);
		case AFFINITY -> AffinityContender.all(seed);
		case KERNEL_REDUCTION -> KernelContender.all(seed);
		default -> throw new IllegalArgumentException(method + " is not kept: " + whyNot(method).orElse(""));
		};
		Contest contest = TimeLimit.of(plan.request().most())
				.run(workers,
						within -> Contest.of(HeldOut.several(study.signals(), seed), contenders, study.signals().size(),
								seed, Shared.kept(), within))
				.orElseThrow(() -> new UnfitSurveyException(
						Words.bind(Messages.MethodSplits_tooSlowNotDoneIn, plan.request().most().toSeconds())));
		if (contest.best().isEmpty()) {
			throw new UnfitSurveyException(Messages.MethodSplits_noSamplesAreCloseEnough);
		}
		return new Found(method, contest.best().get(0), contest.best().size(), study);
	}

	private static void keep(String id, Scope scope, SplitPlan plan, Found found, SplitMaker.Made made,
			Workers workers) {
		SplitSearchable built = (SplitSearchable) found.entry.contender()
				.build(found.study.signals(), Shared.NOTHING, workers)
				.orElseThrow(
						() -> new UnfitSurveyException(Messages.MethodSplits_noSamplesAreCloseEnough));
		String how = found.method.code() + ", " + found.entry.contender().setting()
				+ (built.note().isEmpty() ? "" : " (" + built.note() + ")");
		TrialScore score = found.entry.score();
		String reason = String.format(Locale.ROOT,
				Messages.MethodSplits_bestOfTriedOnHeld,
				found.tried, score.meanErrorMetres(), 100 * score.comparisonShare());
		Split split = SplitMaker.toModel(id, scope, found.study, new Trial(0, 1, built.found()), found.entry.search(),
				reason, plan.request().seed());
		split.setMethod(how);
		made.splits().add(split);
		made.notes().add(id + ": " + how + "; " + found.entry.search() + ": " + reason);
	}
}
