package org.cairnfield.ui.release.internal.study;

import java.util.Optional;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitNames;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.study.MethodSplits;
import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.Scope;

/** Makes a split of the archive on show by a method of a study, in the setting that wins on held-out positions of all its map. */
final class SplitKeeping {

	private SplitKeeping() {
	}

	/** Why a method cannot be kept; empty where it can. */
	static Optional<String> whyNot(StudyMethod method) {
		return method == StudyMethod.CHOSEN ? Optional.empty() : MethodSplits.whyNot(method);
	}

	/** @param archive a copy */
	static SplitMaker.Made make(Archive archive, StudyMethod method, Workers workers) {
		SplitPlan plan = new SplitPlan(SplitNames.free(archive, method.code()), Scope.ARCHIVE, false,
				SplitRequest.automatic(StudyWork.SEED));
		MethodSplits splits = new MethodSplits();
		return method == StudyMethod.CHOSEN ? splits.best(archive, plan, workers)
				: splits.make(archive, plan, method, workers);
	}
}
