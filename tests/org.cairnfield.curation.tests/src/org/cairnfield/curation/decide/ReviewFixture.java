package org.cairnfield.curation.decide;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;

/** A split with proposals and people who review it. */
final class ReviewFixture {

	/** Each question for the time is answered a second later. */
	static final class Ticking extends Clock {
		private Instant now = Instant.parse("2031-05-01T10:00:00Z");

		@Override
		public ZoneId getZone() {
			return ZoneOffset.UTC;
		}

		@Override
		public Clock withZone(ZoneId zone) {
			return this;
		}

		@Override
		public Instant instant() {
			now = now.plus(Duration.ofSeconds(1));
			return now;
		}
	}

	final Archive archive = SmallArchives.simulated();
	final Split split = SmallArchives.split(archive, "whole", 90, 4);
	final RecordedVerdicts recorded = RecordedVerdicts.of(archive);
	final Clock clock = new Ticking();
	final BasicCommandStack stack = new BasicCommandStack();
	ReviewPolicy policy = ReviewPolicy.USUAL;

	Review by(String person) {
		return new Review(archive, split, person, policy, recorded, clock);
	}

	void run(Command command) {
		org.junit.jupiter.api.Assertions.assertTrue(command.canExecute());
		stack.execute(command);
	}

	Standings standings() {
		return Standings.of(archive, split, policy);
	}

	Standing standing(SampleKey key) {
		return standings().of(key).orElseThrow();
	}

	ReviewState state(SampleKey key) {
		return standing(key).state();
	}

	List<Proposal> proposals() {
		return split.getProposals().all();
	}

	SampleKey sample(int i) {
		return proposals().get(i).sample();
	}

	SampleRef ref(SampleKey key) {
		return ArchiveIndex.of(archive).sample(key).orElseThrow();
	}

	ReviewFixture withSecond() {
		policy = policy.withSecond(Set.of("loose", "fair", "close"));
		return this;
	}
}
