package org.cairnfield.ui.internal.findings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.effect.HoldOuts;
import org.cairnfield.curation.effect.RemedyEffect;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.work.Soon;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/**
 * Computes what the remedies of the findings selected do together, each choice of them where there are several, beside the user
 * interface, and only the latest that was asked for.
 * What all remedies are measured with is kept until the rules have looked again. For the user interface thread only.
 */
final class EffectReader {

	private static final int PATIENCE_MILLIS = 150;

	/** What a job brings back. */
	private record Read(RuleCheck check, HoldOuts holdOuts, List<RemedyEffect> effects) {
	}

	private final Runnable changed;
	private final Soon soon = new Soon(PATIENCE_MILLIS, this::start);
	private RuleCheck check;
	private List<RemedyChoice> choices = List.of();
	private Job job;
	private Read last;
	private boolean wanted;
	private String trouble = "";

	/** @param changed hears that there is something new to show */
	EffectReader(Runnable changed) {
		this.changed = changed;
	}

	/** Reads the effect of other choices; of none, nothing is read. */
	void read(RuleCheck of, List<RemedyChoice> wantedChoices) {
		if (of == check && wantedChoices.equals(choices)) {
			return;
		}
		stop();
		check = of;
		choices = wantedChoices;
		wanted = of != null && !choices.isEmpty();
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
		List<List<Remedy>> remedies = choices.stream().map(RemedyChoice::remedies).toList();
		Job[] own = new Job[1];
		own[0] = Work.start(Messages.EffectReader_computingTheEffectOfThe, workers -> {
			HoldOuts holdOuts = known == null ? HoldOuts.of(of.map().surveyed(), of.findings(), workers) : known;
			return new Read(of, holdOuts, holdOuts.effects(remedies, workers));
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
			Problems.log(Messages.EffectReader_theEffectOfARemedy, problem);
			end(NLS.bind(Messages.EffectReader_theEffectCouldNotBe, Problems.text(problem)));
		}
	}

	private void cancelled(Job of) {
		if (job == of) {
			end(Messages.EffectReader_theEffectWasNotComputed);
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

	/** What is known of the choices last asked about, for a person; empty for none. */
	Optional<String> words() {
		if (wanted) {
			return Optional.of(Messages.EffectReader_computingTheEffectOnHeld);
		}
		if (!trouble.isEmpty()) {
			return Optional.of(trouble);
		}
		if (choices.isEmpty() || last == null || last.check != check) {
			return Optional.empty();
		}
		if (choices.size() == 1) {
			return Optional.of(last.effects.get(0).words());
		}
		return Optional.of(IntStream.range(0, choices.size())
				.mapToObj(i -> "\n  " + choices.get(i).title() + ": " + last.effects.get(i).words())
				.collect(Collectors.joining()).stripTrailing());
	}
}
