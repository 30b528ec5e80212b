package org.cairnfield.curation.split;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Scope;

/** Makes splits as an archive keeps them; {@link AddSplitsCommand} puts them there. */
public final class SplitMaker {

	/**
	 * @param splits  in no archive
	 * @param choices what was tried for a split, by its id, where something was
	 * @param notes   what a person should know, such as why parameters were chosen, or a floor left out
	 */
	public record Made(List<Split> splits, Map<String, AutomaticChoice.Choice> choices, List<String> notes) {
	}

	/** Of sites that were left out. */
	private static final int MOST_NAMES = 5;

	private final SplitStudies studies;

	public SplitMaker(SplitStudies studies) {
		this.studies = studies;
	}

	/**
	 * @param archive a copy, where others go on changing it
	 * @throws UnfitSurveyException     where the scope does not exist, or has too few samples
	 * @throws IllegalArgumentException for parameters out of range
	 */
	public Made make(Archive archive, SplitPlan plan, Workers workers) {
		return each(archive, plan, (id, scope, made) -> one(archive, id, scope, plan.request(), made, workers));
	}

	/** Makes one split. */
	@FunctionalInterface
	public interface Making {

		/** @throws UnfitSurveyException where the scope cannot be split */
		void one(String id, Scope scope, Made made);
	}

	/** Makes a split of the scope of a plan, or one of each floor in it that can be split. */
	public static Made each(Archive archive, SplitPlan plan, Making making) {
		requireScope(archive, plan.scope());
		Made made = new Made(new ArrayList<>(), new HashMap<>(), new ArrayList<>());
		if (!plan.perFloor()) {
			making.one(plan.name(), plan.scope(), made);
			return made;
		}
		for (Scope floor : SplitScopes.floors(archive, plan.scope())) {
			try {
				making.one(SplitNames.ofFloor(plan.name(), floor), floor, made);
			} catch (UnfitSurveyException e) {
				made.notes.add(Words.bind(Messages.SplitMaker_isLeftOut, floor, e.getMessage()));
			}
		}
		if (made.splits.isEmpty()) {
			throw new UnfitSurveyException(Words.bind(Messages.SplitMaker_noFloorWithinHasSamples, plan.scope()));
		}
		return made;
	}

	private static void requireScope(Archive archive, Scope scope) {
		if (scope.site() != null && archive.getSites().stream().noneMatch(site -> site.getId().equals(scope.site()))) {
			throw new UnfitSurveyException(Words.bind(Messages.SplitMaker_theArchiveHasNoSite, scope.site(),
					String.join(", ", archive.getSites().stream().map(Site::getId).toList())));
		}
	}

	private void one(Archive archive, String id, Scope scope, SplitRequest request, Made made, Workers workers) {
		SplitStudy study = studies.study(archive, scope, request);
		Parameters chosen = parameters(study, request, workers);
		made.notes.add(String.format(Locale.ROOT, Messages.SplitMaker_minpts, id, chosen.epsilon, chosen.minPts,
				chosen.search, chosen.reason));
		made.splits.add(toModel(id, scope, study, study.split(chosen.epsilon, chosen.minPts, workers), chosen.search,
				chosen.reason,
				request.seed()));
		chosen.choice.ifPresent(choice -> made.choices.put(id, choice));
	}

	private record Parameters(double epsilon, int minPts, Search search, String reason,
			Optional<AutomaticChoice.Choice> choice) {
	}

	private static Parameters parameters(SplitStudy study, SplitRequest request, Workers workers) {
		boolean reduced = study.pcaShare().isPresent();
		int minPts = request.minPts().orElse(reduced ? SplitStudy.USUAL_MIN_PTS : AutomaticChoice.MIN_PTS);
		String given = request.search().filter(Search.PUBLISHED::equals).isPresent()
				? Messages.SplitMaker_thePublishedMethod
				: Messages.SplitMaker_asAskedFor;
		if (request.epsilon().isPresent() && request.search().isPresent()) {
			return new Parameters(request.epsilon().getAsDouble(), minPts, request.search().get(), given,
					Optional.empty());
		}
		if (reduced) {
			return new Parameters(request.epsilon().orElse(study.startEpsilon(workers)), minPts,
					request.search().orElse(Search.PUBLISHED),
					request.search().isPresent() ? given
							: Messages.SplitMaker_thePublishedMethodSinceSearches,
					Optional.empty());
		}
		AutomaticChoice.Choice choice = request.epsilon().isPresent()
				? study.chooseSearch(request.epsilon().getAsDouble(), minPts, request.most(), request.seed(), workers)
				: study.choose(minPts, request.most(), request.seed(), workers);
		return new Parameters(choice.best().epsilon(), minPts, request.search().orElse(choice.best().search()),
				request.search().isPresent() ? given : reason(choice, choice.best()), Optional.of(choice));
	}

	/** Why a combination was taken, for a person. */
	public static String reason(AutomaticChoice.Choice choice, AutomaticChoice.Tried taken) {
		if (Double.isNaN(taken.meanErrorMetres())) {
			return Words.bind(Messages.SplitMaker_nothingToChooseFrom,
					choice.leftOut().isNothing() ? Messages.SplitMaker_noSamplesAreCloseEnough
							: Messages.SplitMaker_noTimeToTryA);
		}
		return String.format(Locale.ROOT,
				Messages.SplitMaker_ofTriedOnHeldOut,
				taken.equals(choice.best()) ? "best" : Messages.SplitMaker_pickedByHand, choice.tried().size(),
				choice.questions(),
				taken.meanErrorMetres(),
				100 * taken.comparisonShare(), leftOut(choice.leftOut()));
	}

	/** Empty for nothing. */
	private static String leftOut(AutomaticChoice.LeftOut leftOut) {
		List<String> words = new ArrayList<>();
		if (!leftOut.sites().isEmpty()) {
			String names = String.join(", ", leftOut.sites().subList(0, Math.min(MOST_NAMES, leftOut.sites().size())));
			words.add(count(leftOut.sites().size(), "site") + " (" + names
					+ (leftOut.sites().size() > MOST_NAMES ? ", …" : "") + ")");
		}
		if (leftOut.holdOuts() > 0) {
			words.add(count(leftOut.holdOuts(), "hold-out"));
		}
		if (leftOut.epsilons() > 0) {
			words.add(leftOut.epsilons() == 1 ? Messages.SplitMaker_1ValueOf
					: Words.bind(Messages.SplitMaker_valuesOf, leftOut.epsilons()));
		}
		return words.isEmpty() ? "" : Words.bind(Messages.SplitMaker_leftOutForWantOf, String.join(", ", words));
	}

	private static String count(int n, String what) {
		return n + " " + what + (n == 1 ? "" : "s");
	}

	/** A trial as an archive keeps it, without proposals. */
	public static Split toModel(String id, Scope scope, SplitStudy study, Trial trial, Search search, String reason,
			long seed) {
		Split split = ModelFactory.eINSTANCE.createSplit();
		split.setId(id);
		split.setScope(scope);
		split.setRepresentation(study.signals().representation().toString());
		split.setDistance(study.signals().distance().toString());
		split.setEpsilon(trial.epsilon());
		split.setMinPts(trial.minPts());
		split.setPcaShare(study.pcaShare().isPresent() ? study.pcaShare().getAsDouble() : null);
		split.setSearch(search);
		split.setSearchReason(reason);
		split.setSeed(seed);
		Clustering clustering = trial.clustering();
		int[] sizes = clustering.sizes();
		for (int c = 0; c < sizes.length; c++) {
			Cluster cluster = ModelFactory.eINSTANCE.createCluster();
			cluster.setNumber(c);
			cluster.setSize(sizes[c]);
			split.getClusters().add(cluster);
		}
		LabelsBuilder labels = Labels.builder();
		for (int s = 0; s < clustering.size(); s++) {
			labels.add(study.map().key(s), clustering.label(s), clustering.role(s));
		}
		split.setLabels(labels.build());
		return split;
	}
}
