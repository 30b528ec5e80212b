package org.cairnfield.curation.decide;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;

/**
 * Takes verdicts from one split to another where the sample and the evidence are the same; all others are listed with
 * what has changed. Verdicts that were superseded, taken back or stale stay behind. Who decided, when and why goes with
 * a verdict; who carries it over has entered it.
 *
 * @param carried verdicts as the other split gets them
 * @param left    samples whose verdicts are not carried
 * @param command carries them, as one change; cannot be executed where there are none
 */
public record CarryOver(List<LedgerEntry> carried, List<Left> left, GiveVerdictsCommand command) {

	/** Carries at once, for work without an undo stack. */
	public void apply() {
		if (command.canExecute()) {
			command.execute();
		}
	}

	/**
	 * A sample whose verdict stays behind.
	 *
	 * @param why what has changed, for a person
	 */
	public record Left(SampleKey sample, ReviewState was, String why) {
	}

	/**
	 * @param from the split that was reviewed; only its labels, proposals and ledger are needed
	 * @param to   another split of the archive, with proposals
	 * @param person who carries them over
	 */
	public static CarryOver of(Archive archive, Split from, Split to, ReviewPolicy policy, String person,
			RecordedVerdicts recorded,
			Clock clock) {
		Standings before = Standings.of(archive, from, policy);
		Standings after = Standings.of(archive, to, policy);
		ContentOfReview content = new ContentOfReview(archive, to);
		List<LedgerEntry> carried = new ArrayList<>();
		List<Left> left = new ArrayList<>();
		Numbers numbers = new Numbers(before.members(), after.members());
		for (Standing standing : before.all()) {
			if (standing.first().isEmpty()) {
				continue;
			}
			Optional<String> obstacle = obstacle(standing, after, content, to).or(() -> numbers.obstacle(standing));
			if (obstacle.isPresent()) {
				left.add(new Left(standing.sample(), standing.state(), obstacle.get()));
			} else {
				carry(standing, from, to, content, numbers).forEach(entry -> carried.add(entry.enteredBy(person)));
			}
		}
		return new CarryOver(List.copyOf(carried), List.copyOf(left),
				new GiveVerdictsCommand(archive, to.getId(), carried, recorded, clock,
						Words.bind(Messages.CarryOver_carryOverFrom, Count.of(carried.size(), "verdict"),
								from.getId())));
	}

	/** Clusters of the one split that have the same samples in the other, under another number perhaps. */
	private record Numbers(SplitMembers from, SplitMembers to) {

		OptionalInt of(int cluster) {
			return to.cluster(from.key(cluster));
		}

		Optional<String> obstacle(Standing standing) {
			return counting(standing)
					.filter(entry -> entry.decision() == Decision.MOVE && of(entry.cluster()).isEmpty()).findFirst()
					.map(entry -> Words.bind(Messages.CarryOver_clusterWhereItWasMoved, entry.cluster()));
		}
	}

	/** The verdicts that count. */
	private static Stream<LedgerEntry> counting(Standing standing) {
		return Stream.of(standing.first(), standing.second(), standing.resolution()).flatMap(Optional::stream);
	}

	private static Optional<String> obstacle(Standing standing, Standings after, ContentOfReview content, Split to) {
		SampleKey sample = standing.sample();
		LedgerEntry first = standing.first().orElseThrow();
		if (standing.stale()) {
			return Optional.of(Messages.CarryOver_itWasStaleAlready);
		}
		if (first.sampleContent() == null || first.evidence() == null) {
			return Optional.of(Messages.CarryOver_itIsNotKnownWhat);
		}
		Optional<Standing> there = after.of(sample);
		if (there.isEmpty()) {
			int row = to.getLabels() == null ? -1 : to.getLabels().row(sample);
			return Optional.of(row < 0 ? Messages.CarryOver_theSplitDoesNotHave
					: Words.bind(Messages.CarryOver_itIsNoiseNoLonger, to.getLabels().cluster(row)));
		}
		if (!there.get().entries().isEmpty()) {
			return Optional.of(Messages.CarryOver_itWasDecidedThereAlready);
		}
		if (!content.sample(sample).filter(first.sampleContent()::equals).isPresent()) {
			return Optional.of(Messages.CarryOver_theSampleHasChanged);
		}
		if (!content.evidence(sample).filter(first.evidence()::equals).isPresent()) {
			return Optional.of(Words.bind(Messages.CarryOver_theEvidenceHasChanged,
					difference(standing.proposal(), there.get().proposal())));
		}
		return Optional.empty();
	}

	private static String difference(Optional<Proposal> before, Optional<Proposal> after) {
		if (before.isEmpty() || after.isEmpty()) {
			return after.isEmpty() ? Messages.CarryOver_noClusterFitsNow : Messages.CarryOver_noClusterFittedThen;
		}
		Proposal was = before.get();
		Proposal is = after.get();
		List<String> changes = new ArrayList<>();
		if (!was.carrier().equals(is.carrier())) {
			changes.add(Words.bind(Messages.CarryOver_carrierIsNow, was.carrier(), is.carrier()));
		}
		if (Math.round(100 * was.strengthR()) != Math.round(100 * is.strengthR())) {
			changes.add(String.format(Locale.ROOT, Messages.CarryOver_rIsNow, was.strengthR(), is.strengthR()));
		}
		if (!same(was.margin(), is.margin())) {
			changes.add(String.format(Locale.ROOT, Messages.CarryOver_marginIsNow, was.margin(), is.margin()));
		}
		if (was.nearestAgrees() != is.nearestAgrees()) {
			changes.add(is.nearestAgrees() ? Messages.CarryOver_theNearestLabelledSampleAgrees
					: Messages.CarryOver_theNearestLabelledSampleDiffers);
		}
		return changes.isEmpty() ? Messages.CarryOver_theClusterHasOtherSamples
				: String.join(", ", changes);
	}

	private static boolean same(double a, double b) {
		return Double.isNaN(a) ? Double.isNaN(b) : !Double.isNaN(b) && Math.round(100 * a) == Math.round(100 * b);
	}

	/** Those that count, in the order given. */
	private static List<LedgerEntry> carry(Standing standing, Split from, Split to, ContentOfReview content,
			Numbers numbers) {
		int proposed = content.proposal(standing.sample()).map(Proposal::cluster).orElse(Labels.NOISE);
		return counting(standing).sorted(Comparator.comparingInt(standing.entries()::indexOf))
				.map(e -> new LedgerEntry(null, to.getId(), e.sample(),
						e.decision() == Decision.MOVE ? numbers.of(e.cluster()).getAsInt() : proposed, e.decision(),
						e.reasonCode(),
						Words.bind(Messages.CarryOver_carriedOverFromVerdict, e.text() == null ? "" : e.text() + " ",
								from.getId(), e.id()),
						e.person(), e.time(), null, e.round(), e.sampleContent(), e.evidence(), null, null))
				.toList();
	}
}
