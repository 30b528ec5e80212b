package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.measure.ErrorMap;
import org.cairnfield.curation.measure.Landing;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Batch;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Where two releases put the test samples is compared on the plan, which forgets it when the archive changes. */
@ExtendWith(PictureOnFailure.class)
@Order(6)
class ErrorMapStoryTest {

	@TempDir
	Path folder;
	private ArchiveSession session;

	@AfterEach
	void goBack() {
		Stage.beginWithTheDemo(); // the archive of the story goes with its folder
	}

	/** A release of the map as it was taken in, and one of it mended and split. */
	private void openWithTwoReleases() throws Exception {
		Path archive = Demo.copy(folder.resolve("museums"));
		List<String> overrides = Arrays.stream(Gate.values())
				.flatMap(gate -> Stream.of("--override", gate.key() + "=for a trial only")).toList();
		Batch.run("release", "-q", "--archive", archive, "--person", "L. Lead", overrides);
		Batch.run("remedy", "-q", "--archive", archive, "--rule", "swapped-axes", "--person", "M.Q.");
		Batch.run("split", "-q", "--archive", archive, "--name", "whole", "--epsilon", "188", "--min-pts", "5",
				"--person", "M.Q.");
		Batch.run("release", "-q", "--archive", archive, "--person", "L. Lead", overrides);
		Stage.open(archive);
		session = Stage.session();
	}

	/** What both releases come to on the test samples, without the window. */
	private SideBySide measured(String... versions) throws Exception {
		Archive still = Ui.ask(() -> ArchiveCopy.of(session.archive()));
		return new ReleaseBook(session.open(), Clock.systemUTC()).measure(still, null, List.of(versions),
				PackRequest.USUAL, Workers.inline());
	}

	private static ErrorMap map(SideBySide side, String way) {
		return ErrorMap.of(side,
				side.ways().stream().filter(each -> each.name().equals(way)).findFirst().orElseThrow());
	}

	/** How the plan sums it up. */
	private static String caption(ErrorMap all, Floor floor) {
		String site = Ui.ask(() -> ((Site) floor.eContainer()).getName());
		int level = Ui.ask(floor::getLevel);
		ErrorMap here = new ErrorMap(all.way(),
				all.placed().stream().filter(each -> each.site().equals(site) && each.level() == level).toList());
		return String.format(Locale.ROOT,
				"%s: mean %.2f\u00a0m, 95 %% %.2f\u00a0m, right floor %d/%d; all floors %.2f\u00a0m", all.way(),
				here.meanMetres(), here.p95Metres(), here.count(Landing.RIGHT_FLOOR), here.placed().size(),
				all.meanMetres());
	}

	private static String text(String id) {
		return Ui.ask(() -> Widgets.isThere(id, Label.class, label -> true))
				? Ui.ask(Widgets.byId(Label.class, id)::getText)
				: "";
	}

	private static void waitForText(String id, String part) {
		Ui.waitUntil(id + " says " + part,
				() -> Widgets.isThere(id, Label.class, label -> label.getText().contains(part)));
	}

	private static PlanGeometry geometry(String canvas) {
		Canvas found = Widgets.byId(Canvas.class, canvas);
		return Ui.ask(() -> (PlanGeometry) found.getData(PlanGeometry.GEOMETRY));
	}

	@Test
	void comparesTwoReleasesAndForgetsThemWhenTheArchiveChanges() throws Exception {
		openWithTwoReleases();
		Floor floor = Ui.ask(() -> session.archive().getSites().stream()
				.filter(site -> site.getName().equals("Lantern Store")).findFirst()
				.get().getFloors().get(1));
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.plan.view");
		Ui.run(() -> session.select(session.selection().withScope(floor).withSamples(List.of())));
		Hand.activate(Stage.window());
		SideBySide side = measured("1.0.0", "1.1.0");
		Combo colourBy = Widgets.byId(Combo.class, "plan.colourBy");
		Ui.run(colourBy::forceFocus);
		Hand.press("End");
		waitForText("plan.caption", "released: ");
		assertEquals(caption(map(side, "released"), floor), text("plan.caption"));
		assertTrue(
				text("plan.reading")
						.contains("test samples: arrows lead from where each was taken to where it was put"),
				() -> text("plan.reading"));

		Combo way = Widgets.byId(Combo.class, "plan.errors.way");
		assertEquals(
				List.of("plain", "plain-3w", "split", "split+approved", "released", "release 1.1.0", "release 1.0.0"),
				Ui.ask(() -> List.of(way.getItems())));
		Hand.choose(Widgets.byId(Combo.class, "plan.errors.beside"), "plain");
		waitForText("plan.caption.2", "plain: ");
		assertEquals(caption(map(side, "plain"), floor), text("plan.caption.2"));
		Hand.choose(way, "release 1.0.0");
		waitForText("plan.caption", "release 1.0.0: ");
		Hand.choose(Widgets.byId(Combo.class, "plan.errors.beside"), "release 1.1.0");
		waitForText("plan.caption.2", "release 1.1.0: ");
		assertEquals(caption(map(side, "release 1.0.0"), floor), text("plan.caption"));
		assertEquals(caption(map(side, "release 1.1.0"), floor), text("plan.caption.2"));
		assertNotEquals(map(side, "release 1.0.0").meanMetres(), map(side, "release 1.1.0").meanMetres());

		PlanGeometry left = geometry("plan.canvas");
		PlanGeometry right = geometry("plan.canvas.2");
		Ui.waitUntil("both are drawn", () -> left.isDrawn() && right.isDrawn());
		PictureOnFailure.take("error-map-of-two-releases");
		Stage.command("org.eclipse.ui.window.maximizePart");
		Ui.waitUntil("both are drawn", () -> left.isDrawn() && right.isDrawn());
		PictureOnFailure.take("error-map-maximised");
		Stage.command("org.eclipse.ui.window.maximizePart");
		Ui.waitUntil("both are drawn", () -> left.isDrawn() && right.isDrawn());
		SampleRef sample = Ui.ask(() -> map(side, "release 1.0.0").placed().stream()
				.map(each -> ArchiveIndex.of(session.archive()).sample(each.sample()).get())
				.filter(each -> left.toCanvas(each).isPresent()).findFirst().orElseThrow());
		SampleRef training = Ui.ask(() -> session.archive().getSites().stream()
				.flatMap(site -> site.getSurveys().stream())
				.filter(survey -> survey.getId().equals("ls-spring"))
				.flatMap(
						survey -> IntStream.range(0, survey.table().size()).mapToObj(row -> new SampleRef(survey, row)))
				.filter(each -> ArchiveIndex.floor(each).filter(at -> at == floor).isPresent()).findFirst()
				.orElseThrow());
		assertEquals(Optional.empty(), Ui.ask(() -> left.toCanvas(training)), "the map itself is not drawn");
		looksAtBothAtOnce(left, right, sample);

		Ui.run(() -> session.run(SetSampleStateCommand.setAside(List.of(training), "a trial")));
		waitForText("plan.errors.message", "The archive has changed since the errors were measured");
		assertEquals("", text("plan.caption") + text("plan.caption.2"), "nothing outdated is shown");
		assertEquals(Optional.empty(), Ui.ask(() -> left.toCanvas(sample)));
		Button measure = Widgets.byId(Button.class, "plan.errors.measure");
		Ui.run(measure::forceFocus);
		Hand.press("space");
		waitForText("plan.caption.2", "release 1.1.0: ");
		assertEquals(caption(map(side, "release 1.0.0"), floor), text("plan.caption"), "a release stays what it was");

		breaksOff(measure);
		Hand.click(Widgets.byId(Button.class, "plan.errors.close"));
		Ui.waitUntil("the map is back", () -> left.toCanvas(training).isPresent());
		assertFalse(Ui.ask(() -> Widgets.isThere("plan.errors.way", Combo.class, combo -> true)));
		Stage.takeBackChanges();
	}

	/** By keys in the one and by the mouse in the other. */
	private static void looksAtBothAtOnce(PlanGeometry left, PlanGeometry right, SampleRef sample) {
		Point whole = Ui.ask(() -> left.toCanvas(sample).orElseThrow());
		assertEquals(whole, Ui.ask(() -> right.toCanvas(sample).orElseThrow()));
		Ui.run(Widgets.byId(Canvas.class, "plan.canvas")::forceFocus);
		Hand.press("plus");
		Hand.press("ctrl+Left");
		Ui.waitUntil("both have moved alike", () -> !left.toCanvas(sample).get().equals(whole)
				&& left.toCanvas(sample).equals(right.toCanvas(sample)));
		Stage.mode("PAN");
		Canvas canvas = Widgets.byId(Canvas.class, "plan.canvas.2");
		Point before = Ui.ask(() -> left.toCanvas(sample).orElseThrow());
		Hand.drag(() -> canvas.toDisplay(canvas.getSize().x / 2, canvas.getSize().y / 2), 30, 20);
		Ui.waitUntil("both were dragged",
				() -> left.toCanvas(sample).get().equals(new Point(before.x + 30, before.y + 20))
						&& left.toCanvas(sample).equals(right.toCanvas(sample)));
		Stage.mode("SELECT");
		Stage.command("org.cairnfield.ui.plan.fit");
		Hand.click(() -> right.toDisplay(sample).orElseThrow());
		waitForText("plan.reading", "release 1.0.0: ");
		assertTrue(
				text("plan.reading").contains("release 1.1.0: ")
						&& text("plan.reading").startsWith(Ui.ask(() -> sample.key().sample())),
				() -> text("plan.reading"));
	}

	/** In one turn of the event loop, so that no result comes between. */
	private static void breaksOff(Button measure) {
		Ui.run(() -> {
			measure.notifyListeners(SWT.Selection, new Event());
			assertEquals("Cancel", measure.getText());
			measure.notifyListeners(SWT.Selection, new Event());
		});
		Ui.waitUntilIdle();
		assertEquals("Measuring was cancelled.", text("plan.errors.message"));
		assertEquals("", text("plan.caption"));
	}
}
