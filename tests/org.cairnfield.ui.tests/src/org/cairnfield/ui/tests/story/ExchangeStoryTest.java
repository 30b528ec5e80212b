package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.child.SecondWorkbench;
import org.cairnfield.ui.tests.child.StewardAtWork;
import org.cairnfield.ui.tests.robot.Batch;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A reviewer and a steward, each at a workbench, and a lead without one work on one archive, through a bare repository. */
@ExtendWith(PictureOnFailure.class)
@Order(16)
class ExchangeStoryTest {

	private static final String STEWARD = "A. Steward";
	private static final String REVIEWER = "B. Reviewer";
	private static final String LEAD = "C. Lead";
	private static final int MOVED = StewardAtWork.MOVED;
	private static final int ASIDE = StewardAtWork.ASIDE;
	private static final String SHED = """
			id,time,device,building,floor,x,y,00:00:5E:00:53:70,00:00:5E:00:53:71,00:00:5E:00:53:72
			BS-1,2031-11-20T09:00:00Z,Wrist guide A,Boat Shed,0,1,1,-61,-70,-66
			BS-2,2031-11-20T09:00:05Z,Wrist guide A,Boat Shed,0,3,1,-64,-72,-65
			BS-3,2031-11-20T09:00:10Z,Wrist guide A,Boat Shed,0,5,1,-66,-71,-64
			""";

	@TempDir
	Path folder;
	private Path meeting;
	private Path reviewer;
	private Path steward;
	private Path lead;

	@AfterEach
	void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void threePeopleWorkAtOnceDecideAConflictAndReleaseOneMap() throws Exception {
		meeting = folder.resolve("quay.git");
		reviewer = folder.resolve("reviewer");
		steward = folder.resolve("steward");
		lead = folder.resolve("lead");
		ReviewStage.person(REVIEWER);
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "reviewer"), 188);
		assertFalse(Stage.canRun("org.cairnfield.ui.exchange"), "not connected");
		connect();
		Stage.exchange("Exchanged: received nothing, sent");
		Batch.run("copy", "-q", meeting, steward);
		Path shed = Files.writeString(folder.resolve("boat-shed.csv"), SHED);
		try (SecondWorkbench stewards = new SecondWorkbench(folder.resolve("steward's"), steward, STEWARD, shed)) {
			reviewerWorks(review);
			stewards.await(StewardAtWork.SENT);
			reviewerLooksWhatWouldComeIn();
			Stage.exchange("Exchanged: received 2 save points from " + STEWARD);
			assertEquals(3, Ui.ask(() -> verdicts(Stage.session().archive())), "no verdict is lost");
			assertTrue(Ui.ask(() -> Stage.session().archive().getSites().stream()
					.anyMatch(site -> site.getName().equals("Boat Shed"))), "a survey came in");
			seesWhatCameIn();
			seesWhereWorkMet();
			decidesTheConflicts();
			Stage.exchange("Exchanged: received nothing, sent");
			Batch.run("copy", "-q", meeting, lead);
			Batch.run("release", "-q", "--archive", lead, "--person", LEAD,
					Arrays.stream(Gate.values())
							.flatMap(gate -> Stream.of("--override", gate.key() + "=for a trial only")).toList());
			Batch.run("exchange", "-q", "--archive", lead, "--person", LEAD);
			stewards.goOn(StewardAtWork.AGAIN);
			Stage.exchange("Exchanged: received");
			stewards.awaitLeft();
		}
		allHaveTheSame();
		batchNamesWhoHasItOpen();
	}

	private void connect() throws Exception {
		Ui.later(() -> Stage.commandHere("org.cairnfield.ui.connect"));
		Shell dialog = Widgets.shell("Connect ");
		Text url = Widgets.byId(Text.class, "connect.url");
		Label advice = Widgets.byId(Label.class, "connect.advice");
		assertTrue(Ui.ask(advice::getText).contains("stays in its history for good"), () -> Ui.ask(advice::getText));
		Hand.fill(url, "ftp://quay.example/museums");
		assertFalse(Ui.ask(Widgets.byId(Button.class, "connect.do")::isEnabled), "nobody can connect to that");
		Label problem = Widgets.byId(Label.class, "connect.problem");
		assertTrue(Ui.ask(problem::getText).contains("'ftp' is not supported"), () -> Ui.ask(problem::getText));
		PictureOnFailure.take("exchange-connect");
		Hand.fill(url, meeting.toString());
		Hand.click(Widgets.byId(Button.class, "connect.do"));
		Ui.waitUntil("the dialog is closed", dialog::isDisposed);
		Ui.waitUntil("it can be exchanged", () -> Stage.canRun("org.cairnfield.ui.exchange"));
	}

	private static void reviewerWorks(ReviewStage review) {
		review.focusQueue();
		for (int i = 0; i < 3; i++) {
			review.decide("a", Decision.APPROVE);
		}
		ArchiveSession session = Stage.session();
		Survey survey = Ui.ask(() -> survey(session.archive()));
		Ui.run(() -> session.run(new MoveSampleCommand(new SampleRef(survey, MOVED), survey.table().xMetres(MOVED),
				survey.table().yMetres(MOVED) + 1)));
		Ui.run(() -> session
				.run(SetSampleStateCommand.setAside(List.of(new SampleRef(survey, ASIDE)), "walked too fast")));
		Ui.waitUntilIdle();
	}

	private static void reviewerLooksWhatWouldComeIn() throws Exception {
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.history");
		Table points = Widgets.byId(Table.class, "history.points");
		Hand.activate(Stage.window());
		String before = Ui.ask(() -> points.getItem(0).getText(4));
		Hand.click(Widgets.byId(Button.class, "history.look"));
		Label remote = Widgets.byId(Label.class, "history.remote");
		Ui.waitUntil("it says how far they are apart", () -> remote.getText().contains("Ahead 0, behind 2."));
		assertEquals(List.of(STEWARD, "incoming"),
				Ui.ask(() -> List.of(points.getItem(0).getText(2), points.getItem(0).getText(5))));
		assertEquals(before, Ui.ask(() -> points.getItem(2).getText(4)), "what is here follows");
		Hand.click(points, 0);
		assertFalse(Ui.ask(Widgets.byId(Button.class, "history.restore")::isEnabled), "it is not here yet");
		PictureOnFailure.take("exchange-look");
	}

	private static void seesWhatCameIn() throws Exception {
		Link notice = Widgets.byId(Link.class, "notice.exchanged");
		Hand.activate(Stage.window());
		Ui.waitUntil("the notice has the focus", notice::forceFocus);
		Hand.press("Return");
		Shell dialog = Widgets.shell("Exchange with others");
		Table lines = Widgets.byId(Table.class, "exchanged.table");
		assertEquals(List.of("Received", "Received", "Sent", "Sent"),
				Ui.ask(() -> Arrays.stream(lines.getItems()).map(line -> line.getText(0)).toList()));
		PictureOnFailure.take("exchange-received");
		Hand.press("Escape");
		Ui.waitUntil("the dialog is closed", dialog::isDisposed);
	}

	private static void seesWhereWorkMet() throws Exception {
		Stage.show("org.cairnfield.ui.history");
		Table points = Widgets.byId(Table.class, "history.points");
		Ui.waitUntil("the exchange is listed",
				() -> points.getItemCount() > 0 && points.getItem(0).getText(3).startsWith("Take in 2 save points"));
		Hand.activate(Stage.window());
		Hand.click(points, 0);
		Text heading = Widgets.byId(Text.class, "history.heading");
		Ui.waitUntil("its parents are named",
				() -> heading.getText().contains("Brings together") && heading.getText().contains("by " + STEWARD));
		assertTrue(Ui.ask(heading::getText).contains("\nNot signed\nBrings together"), () -> Ui.ask(heading::getText));
		PictureOnFailure.take("exchange-history");
	}

	/** The one by mouse, undone and done again, the other by keys alone. */
	private static void decidesTheConflicts() throws Exception {
		Link notice = Widgets.byId(Link.class, "notice.conflicts");
		assertTrue(Ui.ask(notice::getText).startsWith("2 conflicts to decide"), () -> Ui.ask(notice::getText));
		Ui.waitUntil("the notice has the focus", notice::forceFocus);
		Hand.press("Return");
		Table conflicts = Widgets.byId(Table.class, "conflicts.list");
		Table values = Widgets.byId(Table.class, "conflicts.values");
		Ui.waitUntil("both are listed", () -> conflicts.getItemCount() == 2);
		ArchiveSession session = Stage.session();
		Survey survey = Ui.ask(() -> survey(session.archive()));
		double before = Ui.ask(() -> survey.table().xMetres(MOVED));
		int position = Ui.ask(() -> conflicts.getItem(0).getText(1).equals("position") ? 0 : 1);
		Hand.click(conflicts, position);
		Ui.waitUntil("the values are listed", () -> values.getItemCount() == 3);
		assertEquals(List.of(new SampleRef(survey, MOVED)), Ui.ask(() -> session.selection().samples()),
				"the plan shows the sample");
		assertEquals(List.of("before", STEWARD, REVIEWER),
				Ui.ask(() -> Arrays.stream(values.getItems()).map(line -> line.getText(0)).toList()));
		PictureOnFailure.take("exchange-conflicts");
		Hand.click(values, 1);
		Hand.click(Widgets.byId(Button.class, "conflicts.keep"));
		Ui.waitUntil("one is left", () -> conflicts.getItemCount() == 1);
		assertEquals(before + 2, Ui.ask(() -> survey.table().xMetres(MOVED)), 1e-9);
		Hand.press("ctrl+z");
		Ui.waitUntil("it is open again", () -> conflicts.getItemCount() == 2);
		assertEquals(before, Ui.ask(() -> survey.table().xMetres(MOVED)), 1e-9);
		Hand.press("ctrl+shift+z");
		Ui.waitUntil("one is left", () -> conflicts.getItemCount() == 1);

		Hand.click(conflicts, 0);
		Hand.press("Tab");
		Ui.waitUntil("the values have the focus", values::isFocusControl);
		for (int i = 0; i < 3 && !Ui.ask(
				() -> values.getSelectionIndex() >= 0 && values.getSelection()[0].getText(0).equals(REVIEWER)); i++) {
			Hand.press("Down");
		}
		Hand.press("Return");
		Ui.waitUntil("none is left", () -> conflicts.getItemCount() == 0);
		assertEquals("walked too fast", Ui.ask(() -> survey.table().reason(ASIDE)));
		Ui.waitUntil("the strip is gone", () -> !Widgets.isThere("notice.conflicts", Link.class, any -> true));
		Label state = Widgets.byId(Label.class, "conflicts.state");
		assertTrue(Ui.ask(state::getText).startsWith("No conflicts."), () -> Ui.ask(state::getText));
	}

	private void allHaveTheSame() throws Exception {
		String digest = Ui.ask(() -> Stage.session().open().digest());
		String head = git(meeting, "rev-parse", "main");
		String log = git(meeting, "log", "--format=%H %an %s", "main");
		for (String person : List.of(STEWARD, REVIEWER, LEAD)) {
			assertTrue(log.contains(person), log);
		}
		for (Path each : List.of(reviewer, steward, lead)) {
			try (OpenArchive open = new ArchiveStore().open(each, Mode.READ); History history = open.history()) {
				assertEquals(List.of(), open.damages(), each::toString);
				assertEquals(digest, open.digest(), each::toString);
				assertEquals(0, open.archive().getConflicts().size());
				assertEquals(3, verdicts(open.archive()));
				assertEquals(List.of("1.0.0 " + LEAD),
						history.releases().stream().map(tag -> tag.version() + ' ' + tag.person()).toList());
			}
			assertEquals(head, git(each, "rev-parse", "HEAD"));
			assertEquals(log, git(each, "log", "--format=%H %an %s"));
			assertEquals("", git(each, "status", "--porcelain"));
			git(each, "fsck", "--strict");
			Batch.run("verify", "-q", "--archive", each);
		}
		git(meeting, "fsck", "--strict");
	}

	private void batchNamesWhoHasItOpen() {
		AssertionError refused = assertThrows(AssertionError.class,
				() -> Batch.run("exchange", "-q", "--archive", reviewer, "--person", LEAD));
		assertTrue(refused.getMessage().contains("is in use by " + System.getProperty("user.name") + " on "),
				refused::getMessage);
	}

	@Test
	void whoReadsAnArchiveIsToldThatAnotherProgramHasChangedIt() throws Exception {
		Path archive = Demo.copy(folder.resolve("read"));
		try (OpenArchive other = new ArchiveStore().open(archive, Mode.EDIT)) {
			Stage.open(archive);
			assertTrue(Ui.ask(() -> Stage.session().readOnlyReason()).isPresent());
			comeBackToTheWindow();
			assertFalse(Ui.ask(() -> Widgets.isThere("notice.disk", Link.class, any -> true)),
					"nothing has changed yet");
			other.archive().setName("The quay by another name");
			other.savePoint(Person.named(STEWARD), null);
			comeBackToTheWindow();
			Ui.waitUntil("it says so", () -> Widgets.isThere("notice.disk", Link.class,
					link -> link.getText().startsWith("Another program has changed")));
			PictureOnFailure.take("exchange-disk");
		}
		Link notice = Widgets.byId(Link.class, "notice.disk");
		Ui.waitUntil("the notice has the focus", notice::forceFocus);
		Hand.press("Return");
		Ui.waitUntil("it was read again", () -> "The quay by another name".equals(
				Sessions.workbench().current().map(now -> now.archive().getName()).orElse("")));
		assertTrue(Ui.ask(() -> Stage.session().readOnlyReason()).isEmpty(), "the other has gone");
		Ui.waitUntil("the strip is gone", () -> !Widgets.isThere("notice.disk", Link.class, any -> true));
	}

	@Test
	void whoCopiesAnArchiveMendsTheUrlInTheDialogAndHasItOpen() throws Exception {
		meeting = folder.resolve("quay.git");
		Path first = Demo.copy(folder.resolve("first"));
		Batch.run("connect", "-q", "--archive", first, "--to", meeting);
		Batch.run("exchange", "-q", "--archive", first, "--person", STEWARD);
		Path copy = folder.resolve("copy");
		Ui.later(() -> Stage.commandHere("org.cairnfield.ui.copyRemote"));
		Text url = Widgets.byId(Text.class, "copy.url");
		Text into = Widgets.byId(Text.class, "copy.folder");
		Hand.fill(url, folder.resolve("gone.git").toString());
		assertEquals("gone", Ui.ask(() -> Path.of(into.getText()).getFileName().toString()), "a folder is proposed");
		Hand.fill(into, copy.toString());
		Hand.click(Widgets.byId(Button.class, "copy.do"));
		Label problem = Widgets.byId(Label.class, "copy.problem");
		assertTrue(Ui.ask(problem::getText).contains("gone.git"), () -> Ui.ask(problem::getText));
		PictureOnFailure.take("exchange-copy");
		assertEquals(copy.toString(), Ui.ask(Widgets.byId(Text.class, "copy.folder")::getText),
				"what was entered is there");
		Hand.fill(Widgets.byId(Text.class, "copy.url"), meeting.toString());
		Hand.click(Widgets.byId(Button.class, "copy.do"));
		Ui.waitUntil("the copy is on show",
				() -> Sessions.workbench().current().filter(now -> now.folder().equals(copy)).isPresent());
		Ui.waitUntil("it is connected", () -> Stage.canRun("org.cairnfield.ui.exchange"));
		Stage.exchange("Nothing to exchange.");
	}

	@Test
	void whoDoesNotWaitForARemoteCancelsAndHasAllAsItWas() throws Exception {
		Path archive = Demo.copy(folder.resolve("waiting"));
		try (ServerSocket silent = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
			Batch.run("connect", "-q", "--archive", archive, "--to",
					"http://127.0.0.1:" + silent.getLocalPort() + "/quay.git");
			Stage.open(archive);
			String head = git(archive, "rev-parse", "HEAD");
			Ui.waitUntil("it can be exchanged", () -> Stage.canRun("org.cairnfield.ui.exchange"));
			Ui.later(() -> Stage.commandHere("org.cairnfield.ui.exchange"));
			Button cancel = Widgets.button("Cancel");
			PictureOnFailure.take("exchange-waiting");
			Hand.clickWhileBusy(cancel);
			Ui.waitUntil("the exchange has ended", () -> !Saving.isBusy());
			Ui.waitUntilIdle();
			assertFalse(Ui.ask(() -> Widgets.isThere("notice.exchanged", Link.class, any -> true)));
			assertEquals(head, git(archive, "rev-parse", "HEAD"));
			assertEquals("", git(archive, "status", "--porcelain"));
			try (Stream<Path> files = Files.walk(archive.resolve(".git"))) {
				assertEquals(List.of(), files.filter(file -> file.toString().endsWith(".lock")).toList());
			}
		}
		ArchiveSession session = Stage.session();
		Ui.run(() -> session.run(
				SetSampleStateCommand.setAside(List.of(new SampleRef(survey(session.archive()), ASIDE)), "after it")));
		Stage.save();
	}

	/** From another window of the desktop. */
	private static void comeBackToTheWindow() {
		Shell elsewhere = Ui.ask(() -> {
			Shell shell = new Shell(Stage.window().getDisplay(), SWT.SHELL_TRIM);
			shell.setText("Elsewhere");
			shell.setBounds(10, 10, 200, 100);
			shell.open();
			return shell;
		});
		Hand.activate(elsewhere);
		Ui.run(elsewhere::dispose);
		Hand.activate(Stage.window());
		Ui.waitUntilIdle();
	}

	private static Survey survey(Archive archive) {
		return ArchiveIndex.of(archive).site("lantern-store").orElseThrow().getSurveys().get(0);
	}

	private static int verdicts(Archive archive) {
		return archive.getLedgers().stream().mapToInt(ledger -> ledger.getVerdicts().size()).sum();
	}

	private static String git(Path root, String... arguments) throws IOException {
		List<String> command = new ArrayList<>(List.of("git", "-c", "safe.directory=*"));
		command.addAll(List.of(arguments));
		Process process = new ProcessBuilder(command).directory(root.toFile()).redirectErrorStream(true).start();
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
		assertEquals(0, process.onExit().join().exitValue(), () -> command + ": " + said);
		return said;
	}
}
