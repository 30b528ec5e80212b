package org.cairnfield.ui.internal.findings;

import java.util.List;
import java.util.Optional;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.effect.HoldOuts;
import org.cairnfield.curation.effect.RemedyEffect;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.work.Soon;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;

/**
 * Computes what the remedies of the findings selected do together, beside the user interface, and only the latest that was asked for.
 * What all remedies are measured with is kept until the rules have looked again. For the user interface thread only.
 */
final class EffectReader {

	private static final int PATIENCE_MILLIS = 150;

	/** What a job brings back. */
	private record Read(RuleCheck check, HoldOuts holdOuts, RemedyEffect effect) {
	}

	private final Runnable changed;
	private final Soon soon = new Soon(PATIENCE_MILLIS, this::start);
	private RuleCheck check;
	private List<Finding> findings = List.of();
	private Job job;
	private Read last;
	private boolean wanted;
	private String trouble = "";

	/** @param changed hears that there is something new to show */
	EffectReader(Runnable changed) {
		this.changed = changed;
	}

	/** Reads the effect of other findings; of none, nothing is read. */
	void read(RuleCheck of, List<Finding> selected) {
		List<Finding> offering = selected.stream().filter(finding -> finding.remedy().isPresent()).toList();
		if (of == check && offering.equals(findings)) {
			return;
		}
		stop();
		check = of;
		findings = offering;
		wanted = of != null && !offering.isEmpty();
		if (wanted) {
			soon.postpone();
		}
	}

	/** Breaks off what is being read. */
	void stop() {
		soon.cancel();
		if (job != null) {
			Job old = job;
			job = null;
			old.cancel();
		}
		wanted = false;
		trouble = "";
	}

	private void start() {
		RuleCheck of = check;
		HoldOuts known = last != null && last.check == of ? last.holdOuts : null;
		List<Remedy> remedies = findings.stream().flatMap(finding -> finding.remedy().stream()).toList();
		Job[] own = new Job[1];
		own[0] = Work.start("Computing the effect of the remedy", workers -> {
			HoldOuts holdOuts = known == null ? HoldOuts.of(of.map().surveyed(), of.findings(), workers) : known;
			return new Read(of, holdOuts, holdOuts.effect(remedies, workers));
		}, read -> accept(own[0], read), problem -> fail(own[0], problem));
		job = own[0];
		job.addJobChangeListener(new JobChangeAdapter() {
			@Override
			public void done(IJobChangeEvent event) {
				if (!event.getResult().isOK()) {
					Display.getDefault().asyncExec(() -> cancelled(own[0]));
				}
			}
		});
	}

	private void accept(Job of, Read read) {
		if (job == of) {
			job = null;
			wanted = false;
			last = read;
			changed.run();
		}
	}

	private void fail(Job of, Exception problem) {
		if (job == of) {
			Problems.log("The effect of a remedy could not be computed", problem);
			end("The effect could not be computed: " + Problems.text(problem));
		}
	}

	private void cancelled(Job of) {
		if (job == of) {
			end("The effect was not computed: the computation was cancelled. Select the finding again to compute it.");
		}
	}

	private void end(String why) {
		job = null;
		wanted = false;
		trouble = why;
		check = null; // so that the same selection asks again
		changed.run();
	}

	/** Whether it is still to come. */
	boolean isReading() {
		return wanted;
	}

	/** What is known of the findings last asked about, for a person; empty for none. */
	Optional<String> words() {
		if (wanted) {
			return Optional.of("Computing the effect on held-out samples …");
		}
		if (!trouble.isEmpty()) {
			return Optional.of(trouble);
		}
		return findings.isEmpty() || last == null || last.check != check ? Optional.empty() : Optional.of(last.effect.words());
	}
}
