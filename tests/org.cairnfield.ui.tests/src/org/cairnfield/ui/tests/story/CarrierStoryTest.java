package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.scope.CompanionRole;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Link;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A sample is reviewed whose carrier is on another floor: the plan names it, leads there and back. */
@ExtendWith(PictureOnFailure.class)
@Order(5)
class CarrierStoryTest {

	/** Leaves noise on each floor of the building. */
	private static final double EPSILON_DB = 188;

	@TempDir
	static Path folder;

	@BeforeAll
	static void sitDown() {
		ReviewStage.person("M.Q.");
	}

	@AfterAll
	static void goBack() {
		ReviewStage.showAll(); // the queue keeps its filter
		ReviewStage.goBack();
	}

	@Test
	void goesToTheCarrierOnAnotherFloorAndBack() throws Exception {
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "floors"), Scope.site("lantern-store"),
				EPSILON_DB);
		ArchiveSession session = review.session;
		Proposal apart = Ui.ask(() -> review.split.getProposals().all().stream()
				.filter(proposal -> level(session, proposal.sample()) != level(session, proposal.carrier())).findFirst()
				.orElseThrow());
		SampleRef own = Ui.ask(() -> sample(session, apart.sample()));
		SampleRef carrier = Ui.ask(() -> sample(session, apart.carrier()));
		PlanGeometry plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		review.filter("id = \"" + apart.sample().sample() + "\"", 1);
		Ui.waitUntil("the plan has the sample, and its carrier elsewhere",
				() -> plan.isDrawn() && plan.toDisplay(own).isPresent()
						&& plan.toDisplay(carrier).isEmpty() && session.selection().beside().stream()
								.anyMatch(
										each -> each.role() == CompanionRole.CARRIER && each.sample().equals(carrier)));
		Link elsewhere = Widgets.byId(Link.class, "plan.elsewhere");
		String there = "The carrier, " + apart.carrier().sample() + ", is on another floor: ";
		assertTrue(Ui.ask(elsewhere::getText).startsWith(there), () -> Ui.ask(elsewhere::getText));
		PictureOnFailure.take("carrier-elsewhere");
		Hand.click(() -> elsewhere.toDisplay(width(elsewhere, there) + 20, elsewhere.getSize().y / 2));
		Ui.waitUntil("the plan has the carrier",
				() -> plan.isDrawn() && plan.toDisplay(carrier).isPresent() && plan.toDisplay(own).isEmpty());
		assertEquals(List.of(own), Ui.ask(() -> session.selection().samples()), "the sample stays in hand");
		assertNotEquals(Ui.ask(() -> ArchiveIndex.floor(own).get()), Ui.ask(() -> session.selection().floor()));
		assertTrue(
				Ui.ask(elsewhere::getText)
						.startsWith("The sample under review, " + apart.sample().sample() + ", is on another floor: "),
				() -> Ui.ask(elsewhere::getText));
		PictureOnFailure.take("carrier-shown");
		Ui.run(elsewhere::forceFocus);
		Hand.press("Return");
		Ui.waitUntil("the plan is back at the sample", () -> plan.isDrawn() && plan.toDisplay(own).isPresent());
	}

	private static int width(Link link, String text) {
		GC gc = new GC(link);
		int width = gc.textExtent(text).x;
		gc.dispose();
		return width;
	}

	private static SampleRef sample(ArchiveSession session, SampleKey key) {
		return ArchiveIndex.of(session.archive()).sample(key).orElseThrow();
	}

	private static int level(ArchiveSession session, SampleKey key) {
		SampleRef sample = sample(session, key);
		return sample.survey().table().floorLevel(sample.row());
	}
}
