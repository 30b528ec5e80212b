package org.cairnfield.curation.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Scope;

/** Makes splits as an archive keeps them; {@link AddSplitsCommand} puts them there. */
public final class SplitMaker {

	/**
	 * @param splits in no archive
	 * @param notes  what a person should know, such as why parameters were chosen, or a floor left out
	 */
	public record Made(List<org.cairnfield.model.Split> splits, List<String> notes) {
	}

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
		requireScope(archive, plan.scope());
		List<org.cairnfield.model.Split> splits = new ArrayList<>();
		List<String> notes = new ArrayList<>();
		if (!plan.perFloor()) {
			splits.add(one(archive, plan.name(), plan.scope(), plan.request(), notes, workers));
			return new Made(splits, notes);
		}
		for (Scope floor : SplitScopes.floors(archive, plan.scope())) {
			try {
				splits.add(one(archive, SplitNames.ofFloor(plan.name(), floor), floor, plan.request(), notes, workers));
			} catch (UnfitSurveyException e) {
				notes.add(floor + " is left out: " + e.getMessage());
			}
		}
		if (splits.isEmpty()) {
			throw new UnfitSurveyException("no floor within " + plan.scope() + " has samples enough to be split");
		}
		return new Made(splits, notes);
	}

	private static void requireScope(Archive archive, Scope scope) {
		if (scope.site() != null && archive.getSites().stream().noneMatch(site -> site.getId().equals(scope.site()))) {
			throw new UnfitSurveyException("the archive has no site '" + scope.site() + "'; its sites are "
					+ String.join(", ", archive.getSites().stream().map(Site::getId).toList()));
		}
	}

	private org.cairnfield.model.Split one(Archive archive, String id, Scope scope, SplitRequest request, List<String> notes,
			Workers workers) {
		SplitStudy study = studies.study(archive, scope, request);
		double epsilon;
		int minPts;
		if (request.epsilon().isPresent() && request.minPts().isPresent()) {
			epsilon = request.epsilon().getAsDouble();
			minPts = request.minPts().getAsInt();
		} else {
			Suggestion chosen = study.suggest(request.seed(), workers);
			epsilon = request.epsilon().orElse(chosen.epsilon());
			minPts = request.minPts().orElse(chosen.minPts());
			notes.add(String.format(Locale.ROOT, "%s: ε %.6g, minPts %d: %s", id, epsilon, minPts, chosen.reason()));
		}
		if (!(epsilon > 0)) {
			throw new UnfitSurveyException("ε must be above 0 for a split to be kept, was " + epsilon
					+ "; the samples of " + scope + " may repeat each other");
		}
		return toModel(id, scope, study, study.split(epsilon, minPts, workers), request.seed());
	}

	/** A trial as an archive keeps it, without proposals. */
	public static org.cairnfield.model.Split toModel(String id, Scope scope, SplitStudy study, Trial trial, long seed) {
		org.cairnfield.model.Split split = ModelFactory.eINSTANCE.createSplit();
		split.setId(id);
		split.setScope(scope);
		split.setRepresentation(study.signals().representation().toString());
		split.setDistance(study.signals().distance().toString());
		split.setEpsilon(trial.epsilon());
		split.setMinPts(trial.minPts());
		split.setPcaShare(study.pcaShare().isPresent() ? study.pcaShare().getAsDouble() : null);
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
