package org.cairnfield.curation.propose;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Proposals;
import org.eclipse.emf.common.command.AbstractCommand;

/** Gives a split its proposals, in place of those it had. It can be executed where something would change. */
public final class SetProposalsCommand extends AbstractCommand {

	private final Split split;
	private final SplitProposals made;
	private Proposals before;
	private double gateBefore;
	private double thresholdBefore;

	public SetProposalsCommand(Split split, SplitProposals made) {
		this.split = split;
		this.made = made;
	}

	@Override
	protected boolean prepare() {
		Proposals now = split.getProposals() == null
				? Proposals.NONE
				: split.getProposals();
		return !Objects.equals(now, made.best()) || split.getGate() != made.rule().gate()
				|| split.getThreshold() != made.rule().threshold();
	}

	@Override
	public void execute() {
		before = split.getProposals();
		gateBefore = split.getGate();
		thresholdBefore = split.getThreshold();
		redo();
	}

	@Override
	public void undo() {
		set(gateBefore, thresholdBefore, before);
	}

	@Override
	public void redo() {
		set(made.rule().gate(), made.rule().threshold(), made.best());
	}

	private void set(double gate, double threshold, Proposals proposals) {
		split.setGate(gate);
		split.setThreshold(threshold);
		split.setProposals(proposals);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(split);
	}

	@Override
	public String getLabel() {
		return Words.bind(Messages.SetProposalsCommand_proposeClustersFor, made.made(),
				made.made() == 1 ? Messages.SetProposalsCommand_noiseSample
						: Messages.SetProposalsCommand_noiseSamples);
	}
}
