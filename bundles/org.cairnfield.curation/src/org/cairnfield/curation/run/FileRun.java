package org.cairnfield.curation.run;

import java.util.List;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.internal.rules.sample.FewReadingsRule;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.split.KDistanceCurve;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * The whole job on survey files, by the services of an archive one after the other: clean, split, propose, and measure as if
 * every proposal were approved.
 *
 * @param files     as an archive in memory
 * @param setAside  samples set aside for what they heard
 * @param split     kept in that archive
 * @param tried     for ε and search, best first; one entry where both were given
 * @param onMap     the same on the cleaned map
 * @param study     of that map
 * @param proposals for its noise
 * @param released  what a device would get
 * @param measured  on the test samples; no ways where that was not asked for
 */
public record FileRun(FileArchive files, int setAside, Split split, List<AutomaticChoice.Tried> tried, SplitOnMap onMap,
		SplitStudy study, SplitProposals proposals,
		ReleasedMap released, Measures measured) {

	private static final String NAME = "split";

	/** Splits and proposes; nothing is cleaned away, nothing measured. */
	public static FileRun proposed(FileArchive files, SplitRequest request, ProposalRule rule, Workers workers) {
		return of(files, 0, request, rule, workers);
	}

	/**
	 * The whole job.
	 *
	 * @throws UnfitSurveyException where too little is left to work with
	 */
	public static FileRun measured(FileArchive files, SplitRequest request, ProposalRule rule, Workers workers) {
		int setAside = files.setAsideFewReadings(workers);
		int left = files.training() - setAside;
		if (left < 2) {
			throw new UnfitSurveyException(
					Words.bind(Messages.FileRun_aMapNeedsTwoSamples, left, files.keys().length,
							cleaned(setAside, files.training()), files.isHeldOut()
									? Words.bind(Messages.FileRun_heldOutForTestingUnless, files.tests())
									: ""));
		}
		FileRun run = of(files, setAside, request, rule, workers);
		Measures measured = Measures.timed(run.released,
				ArchiveMap.of(files.archive(), Scope.ARCHIVE, SurveyKind.TEST).map(), PackRequest.USUAL, workers);
		return new FileRun(files, setAside, run.split, run.tried, run.onMap, run.study, run.proposals, run.released,
				measured);
	}

	private static FileRun of(FileArchive files, int setAside, SplitRequest request, ProposalRule rule,
			Workers workers) {
		SplitStudies studies = new SplitStudies(1);
		SplitMaker.Made made = new SplitMaker(studies).make(files.archive(),
				new SplitPlan(NAME, Scope.ARCHIVE, false, request), workers);
		Split split = made.splits().get(0);
		List<AutomaticChoice.Tried> tried = made.choices().containsKey(NAME) ? made.choices().get(NAME).tried()
				: List.of(new AutomaticChoice.Tried(split.getEpsilon(), split.getMinPts(), split.getSearch(),
						Double.NaN, Double.NaN, Double.NaN));
		new AddSplitsCommand(files.archive(), List.of(split)).execute();
		SplitProposals proposals = SplitProposals.of(SplitOnMap.of(files.archive(), split), rule, workers);
		new SetProposalsCommand(split, proposals).execute();
		return new FileRun(files, setAside, split, tried, SplitOnMap.of(files.archive(), split),
				studies.study(files.archive(), Scope.ARCHIVE, request),
				proposals, ReleasedMap.approved(files.archive(), split), null);
	}

	/** The k-distance curve that ε stands on. */
	public KDistanceCurve curve(Workers workers) {
		return study.curve(split.getMinPts(), workers);
	}

	/** What files of results call a way: nobody has approved or released anything in a run. */
	public static String nameOf(Way way) {
		return way.name().equals(Measures.APPROVED) ? "split+proposals"
				: way.name().equals(Measures.RELEASED) ? "chosen" : way.name();
	}

	/** What was cleaned away, for a person. */
	public String cleaned() {
		return cleaned(setAside, files.training());
	}

	private static String cleaned(int setAside, int of) {
		return Words.bind(Messages.FileRun_ofSamplesSetAsideFewer, setAside, of,
				Math.round(FewReadingsRule.FEWEST.usual()));
	}
}
