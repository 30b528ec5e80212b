package org.cairnfield.ui.review.internal.split;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.measure.SplitFacts;
import org.cairnfield.curation.split.KDistanceCurve;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.SweepTable;
import org.cairnfield.curation.split.Trial;
import org.cairnfield.model.Archive;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.LatestWork;

/**
 * Trying out splits of the archive on show: what was chosen, and what is known of it by now. The newest question wins;
 * answers that were given before come at once. For the user interface thread.
 */
final class SplitWork {

	/** Studies of 20,000 samples take some 100 MB each. */
	private static final int STUDIES = 4;
	/** Of whatever is drawn; the same as in batch. */
	static final long SEED = 1;

	private record Start(SplitStudy study, KDistanceCurve curve, double epsilon) {
	}

	private final SplitStudies studies = new SplitStudies(STUDIES);
	private final List<Runnable> listeners = new ArrayList<>();
	private final LatestWork curveWork = new LatestWork(this::tell);
	private final LatestWork trialWork = new LatestWork(this::tell);
	private final LatestWork sweepWork = new LatestWork(this::tell);
	private final LatestWork factsWork = new LatestWork(this::tell);
	private ArchiveSession session;
	private Archive still;
	private SplitChoice choice;
	private SplitStudy study;
	private KDistanceCurve curve;
	private Trial trial;
	private SplitFacts facts;
	private SweepTable sweep;
	private AutomaticChoice.Choice tried;
	private AutomaticChoice.Tried taken;
	private double epsilon = Double.NaN;
	private String why = "";
	private String reason = "";
	private String problem = "";

	void onChange(Runnable listener) {
		listeners.add(listener);
	}

	/** All that shows it looks again. */
	void tell() {
		listeners.forEach(Runnable::run);
	}

	/** The archive, or a changed state of it; null for none. What was computed of another is dropped. */
	void show(ArchiveSession now) {
		curveWork.cancel();
		trialWork.cancel();
		sweepWork.cancel();
		factsWork.cancel();
		facts = null;
		session = now;
		still = null;
		study = null;
		curve = null;
		trial = null;
		sweep = null;
		tried = null;
		taken = null;
		epsilon = Double.NaN;
		problem = "";
		tell();
	}

	/** Asks for the curve, and for what the last ε, or half of the samples, makes of it. */
	void choose(SplitChoice next) {
		if (session == null || next.equals(choice) && curve != null) {
			return;
		}
		boolean sameDistances = next.sameDistances(choice) && study != null;
		choice = next;
		trialWork.cancel();
		if (!sameDistances) {
			sweepWork.cancel();
			study = null;
			trial = null;
			sweep = null;
			tried = null;
			taken = null;
			epsilon = Double.NaN;
			why = "";
		}
		problem = "";
		Archive archive = still();
		double kept = epsilon;
		curveWork.start(Messages.SplitWork_kDistanceCurve, workers -> {
			SplitStudy of = studies.study(archive, next.scope(),
					next.request(OptionalDouble.empty(), OptionalInt.empty()));
			return new Start(of, of.curve(next.minPts(), workers),
					Double.isNaN(kept) ? of.startEpsilon(workers) : kept);
		}, start -> {
			study = start.study();
			curve = start.curve();
			if (Double.isNaN(epsilon)) {
				why = Messages.SplitWork_aStart;
				reason = Messages.SplitWork_halfOfTheSamplesHave;
			}
			epsilon = start.epsilon();
			tryNow();
		}, this::fail);
	}

	/** The archive as it is now; made once for each state of it. */
	private Archive still() {
		if (still == null) {
			still = ArchiveCopy.of(session.archive());
		}
		return still;
	}

	/** Tries another ε, chosen by a person, with the same minPts. */
	void setEpsilon(double next) {
		if (next > 0 && next != epsilon && study != null) {
			taken = null;
			epsilon = next;
			why = "";
			reason = "";
			tryNow();
		}
	}

	private void tryNow() {
		SplitStudy of = study;
		double tried = epsilon;
		int minPts = choice.minPts();
		facts = null;
		factsWork.cancel();
		tell();
		trialWork.start(Messages.SplitWork_splitting, workers -> of.split(tried, minPts, workers), found -> {
			trial = found;
			problem = "";
			tell();
			findFacts();
		}, this::fail);
	}

	/** Cost and error of the trial, once it stands. */
	private void findFacts() {
		SplitStudy of = study;
		Trial asked = trial;
		factsWork.start(Messages.SplitWork_costAndErrorOfThe, workers -> SplitFacts.of(of, asked, workers), found -> {
			facts = found;
			tell();
		}, this::fail);
	}

	/** Sweeps ε × minPts. @param errors whether held-out errors are wanted too, which takes longer */
	void startSweep(boolean errors) {
		SplitStudy of = study;
		if (of == null) {
			return;
		}
		sweepWork.start(errors ? Messages.SplitWork_sweepWithErrors : Messages.SplitWork_sweep, workers -> {
			double[] epsilons = of.gridEpsilons(workers);
			return errors ? of.sweepWithErrors(epsilons, of.gridMinPts(), SEED, workers)
					: of.sweep(epsilons, of.gridMinPts(), workers);
		}, table -> {
			sweep = table;
			problem = "";
			tell();
		}, this::fail);
	}

	/** Chooses ε and the search on held-out training positions. */
	void chooseAutomatically() {
		SplitStudy of = study;
		if (of != null) {
			Duration most = SplitChoice.time();
			sweepWork.start(Messages.SplitWork_choosingAndSearch,
					workers -> of.choose(AutomaticChoice.MIN_PTS, most, SEED, workers),
					found -> take(found, found.best()),
					this::fail);
		}
	}

	/** Takes one of what was tried. */
	void take(AutomaticChoice.Choice among, AutomaticChoice.Tried one) {
		setBoth(one.epsilon(), one.minPts(),
				one.equals(among.best()) ? Messages.SplitWork_chosenOnHoldOuts
						: Messages.SplitWork_pickedAmongWhatWasTried,
				SplitMaker.reason(among, one));
		tried = among;
		taken = one;
		tell();
	}

	/**
	 * ε and minPts together, from a cell of the sweep or a suggestion.
	 *
	 * @param inShort why, in a word or two
	 * @param inFull  why, in a sentence; may be empty
	 */
	void setBoth(double nextEpsilon, int minPts, String inShort, String inFull) {
		if (study == null) {
			return;
		}
		taken = null;
		epsilon = nextEpsilon;
		why = inShort;
		reason = inFull;
		if (minPts == choice.minPts()) {
			tryNow();
		} else {
			choose(new SplitChoice(choice.scope(), choice.representation(), choice.distance(), minPts));
		}
	}

	private void fail(Exception failure) {
		problem = Problems.text(failure);
		tell();
	}

	void cancel() {
		factsWork.cancel();
		curveWork.cancel();
		trialWork.cancel();
		sweepWork.cancel();
	}

	boolean isBusy() {
		return curveWork.isBusy() || trialWork.isBusy() || sweepWork.isBusy();
	}

	/** What is running, in words; empty for nothing. */
	String busyText() {
		return curveWork.isBusy() ? Messages.SplitWork_computingTheKDistanceCurve
				: sweepWork.isBusy() ? Messages.SplitWork_tryingValuesOf
						: trialWork.isBusy() ? Messages.SplitWork_splitting2 : "";
	}

	/** Whether the trial is that of the present ε and minPts. */
	boolean isCurrent() {
		return trial != null && trial.epsilon() == epsilon && trial.minPts() == choice.minPts() && !curveWork.isBusy();
	}

	SplitStudies studies() {
		return studies;
	}

	ArchiveSession session() {
		return session;
	}

	SplitChoice choice() {
		return choice;
	}

	SplitStudy study() {
		return study;
	}

	KDistanceCurve curve() {
		return curve;
	}

	Trial trial() {
		return trial;
	}

	/** Cost and error of the trial; null until they are known. */
	SplitFacts facts() {
		return facts;
	}

	SweepTable sweep() {
		return sweep;
	}

	/** What was tried for ε and search; null before that. */
	AutomaticChoice.Choice tried() {
		return tried;
	}

	/** Which of that was taken; null where ε is another, and the search is chosen when the split is kept. */
	AutomaticChoice.Tried taken() {
		return taken;
	}

	double epsilon() {
		return epsilon;
	}

	/** Why this ε, in a word or two; empty where a person chose it. */
	String why() {
		return why;
	}

	/** The same in a sentence; may be empty. */
	String reason() {
		return reason;
	}

	/** What went wrong; empty for nothing. */
	String problem() {
		return problem;
	}
}
