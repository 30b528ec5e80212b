package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Batch;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole of the work on one archive, by mouse and keys: an empty folder, surveys, remedies, a split, some
 * verdicts, three releases with gates overruled by name; then the same in batch. Both come to the same content, by its digest, at each release. What
 * differs of itself is who decided when, which the ledger keeps and the digest covers; so batch takes in the verdicts that
 * were given in the window, by the table that is made for it, with names and times. Everything else batch does anew.
 */
@ExtendWith(PictureOnFailure.class)
@Order(7)
class QuayStoryTest {

	private static final List<String> REMEDIES = List.of("swapped-axes", "duplicate-survey", "hotspot");
	private static final String EDIT = "wrong-floor";
	private static final String REASON = "first map, for a trial only";
	private static final int VERDICTS = 6;
	/** Column of the queue. */
	private static final int WARNINGS = 6;

	@TempDir
	Path folder;

	@AfterEach
	void goBack() {
		Stage.beginWithTheDemo(); // the archive of the story goes with its folder
	}

	@Test
	void comesToTheSameReleasesAsBatch() throws Exception {
		Batch.run("simulate", "--out", folder, "-q");
		Path window = Files.createDirectories(folder.resolve("window/marrow-quay"));
		inTheWindow(window);
		List<String> made = digests(window);
		assertEquals(made.get(0), made.get(2), "1.2.0 is 1.0.0 again");
		assertNotEquals(made.get(0), made.get(1), "1.1.0 is not");
		Path batch = folder.resolve("batch/marrow-quay");
		inBatch(batch, window);
		assertEquals(made, digests(batch), "the same content in batch");
	}

	private void inTheWindow(Path archive) throws IOException {
		create(archive);
		takeIn(files("surveys"), false);
		takeIn(files("test"), true);
		Stage.perspective("org.cairnfield.ui.curate");
		REMEDIES.forEach(QuayStoryTest::remedy);
		split();
		approveSome();
		release("1.0.0");
		Stage.perspective("org.cairnfield.ui.curate");
		remedy(EDIT);
		Stage.save();
		release("1.1.0");
		measureBeside("1.0.0");
		lookBack();
		compareAndRestore();
		release("1.2.0");
	}

	private static void create(Path archive) {
		if (Ui.ask(() -> Sessions.workbench().current().filter(ArchiveSession::isModified).isPresent())) {
			Stage.save();
		}
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.create(archive);
	}

	private static void takeIn(List<Path> files, boolean test) {
		Hand.activate(Stage.window());
		Stage.takeIn(files);
		Shell wizard = Widgets.shell("Take in survey files");
		Table preview = Widgets.byId(Table.class, "intake.preview");
		Ui.waitUntil("the preview shows rows", () -> preview.getItemCount() > 4);
		Hand.click(Widgets.button("Next >"));
		Table belongs = Widgets.byId(Table.class, "intake.place.files");
		if (test) {
			Combo kind = Widgets.byId(Combo.class, "intake.kind");
			Ui.run(kind::setFocus);
			Hand.press("Down");
			Ui.waitUntil("they are test surveys", () -> belongs.getItem(files.size() - 1).getText(4).equals("test"));
		}
		Hand.click(Widgets.button("Next >"));
		Widgets.byId(Label.class, "intake.outcome");
		Hand.click(Widgets.button("Finish"));
		Ui.waitUntil("the wizard is closed", wizard::isDisposed);
		Stage.waitUntilChecked();
	}

	private static void remedy(String rule) {
		Stage.show("org.cairnfield.ui.findings");
		Hand.activate(Stage.window());
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Hand.click(findings, CleaningRules.registry().rule(rule).title());
		Hand.click(Widgets.byId(Button.class, "findings.remedy"));
		Stage.waitUntilChecked();
	}

	private static void split() {
		ReviewStage.showSplitting();
		Hand.fill(Widgets.byId(Spinner.class, "split.minPts"), "3");
		Hand.press("Tab");
		Hand.fill(Widgets.byId(Text.class, "split.epsilon"), "163");
		Hand.press("Return");
		Hand.fill(Widgets.byId(Text.class, "split.name"), "all");
		Hand.click(Widgets.byId(Button.class, "split.keep"));
		ArchiveSession session = Stage.session();
		Ui.waitUntil("the split is kept, with proposals", () -> session.archive().getSplits().size() == 1
				&& session.archive().getSplits().get(0).getProposals() != null);
	}

	/** The first of them; a gate that waits for the others is overruled. */
	private static void approveSome() {
		ArchiveSession session = Stage.session();
		Stage.show("org.cairnfield.ui.review.queue");
		Table queue = Widgets.byId(Table.class, "review.queue");
		Ui.waitUntil("the queue is filled", () -> queue.getItemCount() > 100);
		Hand.click(queue, 0);
		Ui.waitUntil("a proposal can be decided",
				() -> Widgets.isThere("review.approve", Button.class, Button::isEnabled));
		for (int n = 1; n <= VERDICTS; n++) {
			int given = n;
			boolean warned = Ui.ask(() -> !queue.getSelection()[0].getText(WARNINGS).isEmpty());
			Hand.press(n == VERDICTS || warned ? "p" : "a");
			Ui.waitUntil("verdict " + n + " is in the ledger", () -> verdicts(session) == given);
		}
	}

	private static int verdicts(ArchiveSession session) {
		return session.archive().getLedgers().stream().mapToInt(ledger -> ledger.getVerdicts().size()).sum();
	}

	/** Checks the gates, overrules what holds, prepares and signs. */
	private static void release(String version) {
		Stage.perspective("org.cairnfield.ui.release.perspective");
		Hand.activate(Stage.window());
		Table releases = Widgets.byId(Table.class, "releases.table");
		int before = Ui.ask(releases::getItemCount);
		Hand.click(Widgets.byId(Button.class, "gates.ask"));
		Table gates = Widgets.byId(Table.class, "gates.table");
		Ui.waitUntil("the gates have answered", () -> gates.getItemCount() >= 7);
		for (int row = 0; row < Ui.ask(gates::getItemCount); row++) {
			int at = row;
			if (Ui.ask(() -> gates.getItem(at).getText(3).contains("NOT"))) {
				Hand.click(gates, at);
				Hand.fill(Widgets.byId(Text.class, "gates.reason"), REASON);
				Hand.click(Widgets.byId(Button.class, "gates.overrule"));
			}
		}
		Ui.waitUntil(version + " is proposed",
				() -> Widgets.isThere("gates.version", Text.class, text -> text.getText().equals(version)));
		Hand.click(Widgets.byId(Button.class, "gates.prepare"));
		Hand.click(Widgets.byId(Button.class, "gates.sign"));
		Ui.waitUntil(version + " is listed", () -> releases.getItemCount() == before + 1
				&& releases.getItem(0).getText(0).equals(version));
	}

	/** The map and an earlier release, on the same test samples. */
	private static void measureBeside(String version) {
		Hand.choose(Widgets.byId(Combo.class, "measures.earlier"), "release " + version);
		Table ways = Widgets.byId(Table.class, "measures.table");
		Ui.waitUntil(version + " is measured", () -> ways.getItemCount() > 1
				&& ways.getItem(ways.getItemCount() - 1).getText(0).equals("release " + version));
		String now = Ui.ask(() -> ways.getItem(ways.getItemCount() - 2).getText(1));
		String then = Ui.ask(() -> ways.getItem(ways.getItemCount() - 1).getText(1));
		assertEquals(Double.parseDouble(now), Double.parseDouble(then), 0.02,
				"eleven samples on another floor show in centimetres at most");
	}

	/** A release is opened to read, and all of them are verified. */
	private static void lookBack() {
		Table releases = Widgets.byId(Table.class, "releases.table");
		Hand.click(releases, 1);
		Hand.click(Widgets.byId(Button.class, "releases.open"));
		Ui.waitUntil("1.0.0 is on show, to read",
				() -> Sessions.workbench().current().filter(session -> session.past().isPresent()
						&& session.readOnlyReason().isPresent()).isPresent());
		String title = Ui.ask(() -> PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getText());
		assertTrue(title.contains(" – release 1.0.0 – read-only"), title);
		Stage.show("org.cairnfield.ui.release.export");
		Combo exported = Widgets.byId(Combo.class, "export.what");
		Ui.waitUntil("what is on show is offered for export", () -> exported.getText().equals("release 1.0.0"));
		Stage.show("org.cairnfield.ui.release.releases");
		Hand.click(Widgets.byId(Button.class, "releases.open"));
		Ui.waitUntil("the present is offered again", () -> exported.getText().equals("the content as it is now"));
		Ui.waitUntil("the present is on show again",
				() -> Sessions.workbench().current().filter(session -> session.past().isEmpty()).isPresent());
		Ui.waitUntil("both are listed again", () -> releases.getItemCount() == 2);
		Hand.click(Widgets.byId(Button.class, "releases.verify"));
		Text about = Widgets.byId(Text.class, "releases.about");
		Ui.waitUntil("both are verified",
				() -> about.getText().lines().filter(line -> line.startsWith("✔ release ")).count() == 2);
	}

	private static void compareAndRestore() {
		Table releases = Widgets.byId(Table.class, "releases.table");
		Hand.click(releases, 0);
		Hand.press("shift+Down");
		Hand.click(Widgets.byId(Button.class, "releases.compare"));
		Text heading = Widgets.byId(Text.class, "releases.heading");
		Ui.waitUntil("the comparison is there", () -> heading.getText().startsWith("From 1.0.0 to 1.1.0"));
		assertTrue(Ui.ask(heading::getText).contains("11 samples moved"), () -> Ui.ask(heading::getText));
		Hand.click(releases, 1);
		ArchiveSession before = Stage.session();
		Hand.click(Widgets.byId(Button.class, "releases.restore"));
		Hand.click(Widgets.find(Button.class, "the button of the question",
				button -> button.getText().equals("&Restore")
						&& button.getShell().getText().startsWith("Restore release")));
		Ui.waitUntil("the restored state is on show",
				() -> Sessions.workbench().current().filter(now -> now != before).isPresent());
		Stage.waitUntilChecked();
	}

	private void inBatch(Path archive, Path window) throws IOException {
		Batch.run("intake", "-q", "--map", files("surveys"), "--archive", archive);
		Batch.run("intake", "-q", "--map", files("test"), "--test-survey", "--archive", archive);
		REMEDIES.forEach(rule -> Batch.run("remedy", "-q", "--archive", archive, "--rule", rule));
		Batch.run("split", "-q", "--archive", archive, "--name", "all", "--epsilon", "163", "--min-pts", "3",
				"--search", "automatic");
		Batch.run("propose", "-q", "--archive", archive);
		Path verdicts = folder.resolve("verdicts.csv");
		Batch.run("verdicts", "-q", "--archive", window, "--export", verdicts);
		Batch.run("verdicts", "-q", "--archive", archive, "--import", verdicts);
		releaseInBatch(archive, window, 0);
		Batch.run("remedy", "-q", "--archive", archive, "--rule", EDIT);
		releaseInBatch(archive, window, 1);
		Batch.run("restore", "-q", "--archive", archive, "1.0.0");
		releaseInBatch(archive, window, 2);
	}

	/** The same gates hold, so the same are overruled. */
	private static void releaseInBatch(Path archive, Path window, int at) throws IOException {
		List<Object> arguments = new ArrayList<>(List.of("release", "-q", "--archive", archive, "--person", "L. Lead"));
		releases(window).get(at).manifest().gates().stream().filter(gate -> !gate.overruledBy().isEmpty())
				.forEach(gate -> arguments.addAll(List.of("--override", gate.gate() + "=" + REASON)));
		Batch.run(arguments.toArray());
	}

	private List<Path> files(String below) throws IOException {
		try (Stream<Path> files = Files.list(folder.resolve(below))) {
			return files.sorted().toList();
		}
	}

	/** The first first. */
	private static List<ReleasedState> releases(Path archive) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			return new ReleaseBook(open, Clock.systemUTC()).list().stream()
					.sorted(Comparator.comparing(ReleasedState::version)).toList();
		}
	}

	private static List<String> digests(Path archive) throws IOException {
		return releases(archive).stream().map(release -> release.manifest().digest()).toList();
	}
}
