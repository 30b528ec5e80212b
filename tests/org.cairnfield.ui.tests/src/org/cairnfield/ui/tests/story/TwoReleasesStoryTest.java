package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;

import org.cairnfield.archive.history.PastState;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.curation.split.SplitsInRelease;
import org.cairnfield.model.Split;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A lead keeps two splits of one archive and releases first the one, then the other. */
@ExtendWith(PictureOnFailure.class)
@Order(7)
class TwoReleasesStoryTest {

	@TempDir
	static Path folder;
	private ArchiveSession session;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void releasesOfEachSplitWhatThatSplitIs() throws Exception {
		session = ReviewStage.open(folder, "two-releases");
		ReviewStage.showSplitting();
		Split wide = SearchStoryTest.keep(session, "wide");
		Text epsilon = Widgets.byId(Text.class, "split.epsilon");
		Hand.fill(epsilon, String.format(Locale.ROOT, "%.0f", 0.8 * Ui.ask(wide::getEpsilon)));
		Hand.press("Return");
		Split narrow = SearchStoryTest.keep(session, "narrow");
		assertTrue(Ui.ask(() -> narrow.getEpsilon() < wide.getEpsilon()), "two different splits");

		take(0, wide);
		ReleasedState first = release(1);
		take(1, narrow);
		ReleasedState second = release(2);

		assertNotEquals(first.manifest().digest(), second.manifest().digest());
		Way ofWide = releasedFigures(first, "wide");
		Way ofNarrow = releasedFigures(second, "narrow");
		assertNotEquals(ofWide.comparisons(), ofNarrow.comparisons(), "the figures tell the splits apart");
		assertNotEquals(ofWide.errors().meanMetres(), ofNarrow.errors().meanMetres());
	}

	/** Takes a kept split for the next release; the first one that was kept is taken already. */
	private void take(int row, Split split) {
		Stage.perspective("org.cairnfield.ui.review.perspective");
		Stage.show("org.cairnfield.ui.review.split");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(CTabFolder.class, "split.tabs"), "Kept splits");
		Table kept = Widgets.byId(Table.class, "split.kept");
		Hand.click(kept, row);
		assertEquals(Ui.ask(split::getId), Ui.ask(() -> kept.getItem(row).getText(0)));
		if (!Ui.ask(() -> SplitsInRelease.of(session.archive())).equals(List.of(split))) {
			Hand.click(Widgets.byId(Button.class, "split.release"));
		}
		Ui.waitUntil(split.getId() + " is taken", () -> kept.getItem(row).getText(1).equals("✔"));
		assertEquals(List.of(split), Ui.ask(() -> SplitsInRelease.of(session.archive())));
		Stage.save();
	}

	/** Checks the gates, overrules what holds the release back, prepares and signs. */
	private ReleasedState release(int number) throws Exception {
		Stage.perspective("org.cairnfield.ui.release.perspective");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "gates.ask"));
		Table gates = Widgets.byId(Table.class, "gates.table");
		Ui.waitUntil("the gates have answered", () -> gates.getItemCount() >= 7);
		ReleaseStoryTest.overruleAll(gates);
		Hand.click(Widgets.byId(Button.class, "gates.prepare"));
		Hand.click(Widgets.byId(Button.class, "gates.sign"));
		Table releases = Widgets.byId(Table.class, "releases.table");
		Ui.waitUntil("the release is listed", () -> releases.getItemCount() == number);
		return book().list().get(0);
	}

	private ReleaseBook book() {
		return new ReleaseBook(session.open(), Clock.systemUTC());
	}

	/** What the content of a release measures by a split of its own; manifest and window say the same of it. */
	private Way releasedFigures(ReleasedState release, String split) throws Exception {
		ReleaseManifest manifest = release.manifest();
		assertEquals(List.of(split), manifest.splits());
		PastState content = book().openReadOnly(manifest.version());
		List<Split> named = SplitsInRelease.named(content.archive(), List.of(split));
		assertEquals(named, SplitsInRelease.of(content.archive()), "the content of the release takes that split");
		Way measured = Measures
				.of(ReleasedMap.of(content.archive(), named, ReviewPolicy.USUAL), ReleasedMap.test(content.archive()),
						PackRequest.USUAL, Workers.inline())
				.way(Measures.RELEASED);
		ReleaseManifest.Measured said = manifest.measures().stream().filter(way -> way.name().equals(Measures.RELEASED))
				.findFirst().orElseThrow();
		assertEquals(measured.errors().meanMetres(), said.meanMetres(), 1e-9);
		assertEquals(measured.comparisons(), said.comparisons(), 1e-9);
		assertEquals(measured.how(), said.how());

		Table releases = Widgets.byId(Table.class, "releases.table");
		int row = Ui.ask(() -> releases.getItem(0).getText(0).equals(manifest.version()) ? 0 : 1);
		Hand.click(releases, row);
		Text about = Widgets.byId(Text.class, "releases.about");
		Ui.waitUntil("the window names the split", () -> about.getText().contains("Release " + manifest.version())
				&& about.getText().lines().anyMatch(("Split: " + split)::equals));
		return measured;
	}
}
