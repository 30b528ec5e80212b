package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.SetReviewPolicyCommand;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Scope;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** What the stories of the review share: one floor of the demo, its proposals in the queue, and what a reviewer sees and does. */
final class ReviewStage {

	static final Scope FLOOR = Scope.floor("lantern-store", 3);
	static final int MIN_PTS = 5;
	private static final int STATE = 5;
	private static final int WARNINGS = 6;

	final ArchiveSession session;
	final Split split;
	final Table queue;

	private ReviewStage(ArchiveSession session, Split split) {
		this.session = session;
		this.split = split;
		Stage.perspective("org.cairnfield.ui.review.perspective");
		Stage.show("org.cairnfield.ui.review.queue");
		Hand.activate(Stage.window());
		queue = Widgets.byId(Table.class, "review.queue");
		waitForTheQueue();
	}

	/** Shows where a split is tried, whichever page of the view was open before. */
	static void showSplitting() {
		Stage.perspective("org.cairnfield.ui.review.perspective");
		Stage.show("org.cairnfield.ui.review.split");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(CTabFolder.class, "split.tabs"), "Try a split");
	}

	/** Opens a copy of the demo below a folder. */
	static ArchiveSession open(Path folder, String story) throws IOException {
		Stage.open(Demo.copy(folder.resolve(story)));
		return Stage.session();
	}

	/** What can be known of the floor without the workbench. */
	static SplitStudy study(ArchiveSession session) throws Exception {
		return study(session, FLOOR);
	}

	private static SplitStudy study(ArchiveSession session, Scope scope) throws Exception {
		Archive still = Ui.ask(() -> ArchiveCopy.of(session.archive()));
		return new SplitStudies(1).study(still, scope, SplitRequest.named(SplitRequest.representations().get(0),
				SplitRequest.distances().get(0), OptionalDouble.empty(), OptionalInt.empty(), OptionalDouble.empty(),
				Optional.empty(), 1));
	}

	/** The queue of a split that was made before the story begins. */
	static ReviewStage of(ArchiveSession session, double epsilon) throws Exception {
		return new ReviewStage(session, split(session, "third-floor", epsilon));
	}

	/** Likewise of a split of another scope. */
	static ReviewStage of(ArchiveSession session, Scope scope, double epsilon) throws Exception {
		return new ReviewStage(session, split(session, "elsewhere", scope, epsilon));
	}

	/** Keeps a split of the floor, with proposals. */
	static Split split(ArchiveSession session, String id, double epsilon) throws Exception {
		return split(session, id, FLOOR, epsilon);
	}

	private static Split split(ArchiveSession session, String id, Scope scope, double epsilon) throws Exception {
		SplitStudy study = study(session, scope);
		Split split = SplitMaker.toModel(id, scope, study, study.split(epsilon, MIN_PTS, Workers.inline()),
				Search.USUAL,
				"as usual", 1);
		Archive still = Ui.ask(() -> ArchiveCopy.of(session.archive()));
		new SetProposalsCommand(split, SplitProposals.of(SplitOnMap.of(still, split), 0.1, 0.1, Workers.inline()))
				.execute();
		Ui.run(() -> session.run(new AddSplitsCommand(session.archive(), List.of(split))));
		return split;
	}

	/** The same after the archive was opened again. */
	static ReviewStage again(ArchiveSession session) {
		return new ReviewStage(session, Ui.ask(() -> session.archive().getSplits().get(0)));
	}

	private void waitForTheQueue() {
		Ui.waitUntil("the evidence is there", () -> queue.getItemCount() >= split.getProposals().all().size()
				&& Widgets.isThere("review.approve", Button.class, Button::isEnabled));
		Ui.waitUntilIdle();
	}

	/** Sits down at the workbench. */
	static void person(String name) {
		Ui.run(() -> Preferences.put(Preferences.PERSON, name));
		Ui.waitUntilIdle();
	}

	/** Sets which band of the archive on show needs a second reviewer. */
	static void second(String band) {
		Ui.run(() -> Stage.session().run(
				new SetReviewPolicyCommand(Stage.session().archive(), ReviewPolicy.USUAL.withSecond(Set.of(band)))));
		Ui.waitUntilIdle();
	}

	/** Leaves the workbench as it was before the stories. */
	static void goBack() {
		person("");
		Stage.openDemo();
		Stage.perspective("org.cairnfield.ui.curate");
	}

	/** Gives the queue the focus, by a click on its first line; the last click of a story that is told by keys. */
	void focusQueue() {
		Hand.click(queue, 0);
		Ui.waitUntil("the first line is in hand", () -> queue.getSelectionIndex() == 0);
	}

	/** Gives the queue the focus, by a click on the first line that is as wanted. */
	void focusQueue(String what, Predicate<Proposal> wanted) {
		int line = Ui.ask(() -> IntStream.range(0, queue.getItemCount())
				.filter(row -> split.getProposals().all().stream()
						.anyMatch(p -> p.sample().sample().equals(queue.getItem(row).getText(0)) && wanted.test(p)))
				.findFirst().orElse(-1));
		assertTrue(line >= 0, "no sample in the queue " + what);
		Hand.click(queue, line);
		Ui.waitUntil("a sample " + what + " is in hand", () -> queue.getSelectionIndex() == line);
	}

	/** The whole ledger. */
	List<Verdict> verdicts() {
		return Ui.ask(this::ledger);
	}

	/** Likewise, on the user interface thread. */
	List<Verdict> ledger() {
		return session.archive().getLedgers().stream().flatMap(ledger -> ledger.getVerdicts().stream()).toList();
	}

	/** Id of the sample that the queue has in hand. */
	String inHand() {
		return Ui.ask(() -> queue.getSelection()[0].getText(0));
	}

	/** Ids of the samples that are listed. */
	List<String> listed() {
		return Ui.ask(
				() -> IntStream.range(0, queue.getItemCount()).mapToObj(row -> queue.getItem(row).getText(0)).toList());
	}

	/** What the queue says of a sample. */
	String state(String sample) {
		return Ui.ask(() -> stateNow(sample));
	}

	private String stateNow(String sample) {
		return IntStream.range(0, queue.getItemCount()).mapToObj(queue::getItem)
				.filter(line -> line.getText(0).equals(sample))
				.findFirst().orElseThrow().getText(STATE);
	}

	void waitForState(String sample, String state) {
		Ui.waitUntil("the queue says of " + sample + ": " + state, () -> stateNow(sample).equals(state));
	}

	/** Presses the key of a decision, and makes sure that it is on the sample in hand and that the next one follows. */
	Verdict decide(String key, Decision decision) {
		int before = verdicts().size();
		String sample = inHand();
		key(key);
		Ui.waitUntil("the verdict on " + sample + " is in the ledger", () -> ledger().size() == before + 1);
		Verdict given = verdicts().get(before);
		assertEquals(sample, given.getSample().sample());
		assertEquals(decision, given.getDecision());
		Ui.waitUntil("another sample is in hand", () -> !queue.getSelection()[0].getText(0).equals(sample));
		return given;
	}

	/** Presses the key of a decision; gives a reason first where one is to approve against a warning. */
	void key(String key) {
		boolean warned = key.equals("a") && Ui.ask(() -> !queue.getSelection()[0].getText(WARNINGS).isEmpty()
				&& Widgets.byId(Combo.class, "review.reason").getSelectionIndex() == 0);
		if (warned) {
			because("approve: the reviewer knows the place", "");
		}
		Hand.tap(key);
	}

	/** Says why, by keys alone: key T, arrows to the reason, and back. @param text own words, empty for none */
	void because(String reason, String text) {
		Hand.press("t");
		Combo reasons = Widgets.byId(Combo.class, "review.reason");
		Ui.waitUntil("the reason has the focus", reasons::isFocusControl);
		for (int i = 0; i < Ui.ask(reasons::getItemCount) && !Ui.ask(reasons::getText).equals(reason); i++) {
			Hand.press("Down");
		}
		assertEquals(reason, Ui.ask(reasons::getText));
		if (!text.isEmpty()) {
			Hand.press("Tab");
			Text words = Widgets.byId(Text.class, "review.text");
			Ui.waitUntil("the text has the focus", words::isFocusControl);
			Hand.type(text);
			assertEquals(text, Ui.ask(words::getText));
		}
		Hand.press("Return");
		Ui.waitUntil("the keys decide again", () -> !reasons.isFocusControl());
	}

	/** Types words into the filter of the queue and goes down to the lines that are left. */
	void filter(String words, int lines) {
		Hand.fill(Widgets.byId(Text.class, "review.filter"), words); // and waits until it is applied
		Ui.waitUntil("lines with " + words + " are listed", () -> queue.getItemCount() == lines);
		Hand.press("Down");
		Ui.waitUntil("the queue has the focus", queue::isFocusControl);
		Hand.press("Home");
		Ui.waitUntil("the first line is in hand", () -> queue.getSelectionIndex() == 0);
	}

	/** Takes the filter away, and lists all again. */
	static void showAll() {
		Text filter = Widgets.byId(Text.class, "review.filter");
		if (!Ui.ask(filter::getText).isEmpty()) {
			Hand.fill(filter, "");
			Hand.press("BackSpace");
			Hand.press("Return");
		}
		Combo shown = Widgets.byId(Combo.class, "review.shown");
		if (Ui.ask(shown::isEnabled)) {
			Hand.choose(shown, "all");
		}
	}

	/** Such as "69 of 70 left". */
	String count() {
		return text("review.count");
	}

	/** What came of the last key. */
	String message() {
		return text("review.message");
	}

	/** What a label says. */
	static String text(String id) {
		Label label = Widgets.byId(Label.class, id);
		return Ui.ask(label::getText);
	}

	static void waitForText(String id, String part) {
		Label label = Widgets.byId(Label.class, id);
		Ui.waitUntil(id + " says " + part, () -> label.getText().contains(part));
	}

	String evidence() {
		StyledText evidence = Widgets.byId(StyledText.class, "review.evidence");
		return Ui.ask(evidence::getText);
	}
}
