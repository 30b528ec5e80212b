package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.common.command.Command;
import org.junit.jupiter.api.Test;

class CarrySourceTest {

	private final ReviewFixture f = new ReviewFixture();

	private List<String> to(Split split) {
		return CarrySource.of(f.archive, split).stream().map(source -> source.split().getId() + ' ' + source.samples())
				.toList();
	}

	private Split again(String id) {
		return SmallArchives.split(f.archive, id, 90, 4);
	}

	private void decide(Split split, int samples) {
		Review review = new Review(f.archive, split, "M.Q.", f.policy, f.recorded, f.clock);
		for (int i = 0; i < samples; i++) {
			f.run(review.approve(f.sample(i), "fits", null));
		}
	}

	@Test
	void leavesOutSplitsWithoutVerdictsAndVerdictsThatWereTakenBack() {
		Split second = again("second");
		assertEquals(List.of(), to(second));
		decide(f.split, 2);
		assertEquals(List.of("whole 2"), to(second));
		f.recorded.savePointMade(f.archive);
		Command back = f.by("M.Q.").takeBack(f.sample(0));
		f.run(back);
		assertEquals(List.of("whole 1"), to(second));
		assertEquals(List.of(), to(f.split));
	}

	@Test
	void namesTheLatestBeforeOfTheSameScopeFirst() {
		Split second = again("second");
		Split floor = again("floor");
		floor.setScope(Scope.floor(f.archive.getSites().get(0).getId(), 0));
		Split third = again("third");
		Split fourth = again("fourth");
		List.of(f.split, second, floor, fourth).forEach(split -> decide(split, 1));
		assertEquals(List.of("second 1", "whole 1", "fourth 1", "floor 1"), to(third));
	}

	@Test
	void leavesOutOtherFloorsAndSites() {
		Split floor = again("floor");
		floor.setScope(Scope.floor("east", 1));
		decide(floor, 1);
		Split other = ModelFactory.eINSTANCE.createSplit();
		other.setId("other");
		f.archive.getSplits().add(other);
		for (Scope apart : List.of(Scope.floor("east", 2), Scope.site("west"), Scope.floor("west", 1))) {
			other.setScope(apart);
			assertEquals(List.of(), to(other), apart::toString);
		}
		for (Scope meets : List.of(Scope.ARCHIVE, Scope.site("east"), Scope.floor("east", 1))) {
			other.setScope(meets);
			assertEquals(List.of("floor 1"), to(other), meets::toString);
		}
	}
}
