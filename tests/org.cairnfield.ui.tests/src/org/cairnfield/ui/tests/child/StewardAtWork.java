package org.cairnfield.ui.tests.child;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.CleanLog;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.cairnfield.ui.tests.story.Stage;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.PlatformUI;

/**
 * A steward at a workbench that a test has started as a {@link SecondWorkbench}: takes a survey in, applies a remedy, changes
 * two samples, and exchanges; exchanges once more when told to, and leaves.
 */
public final class StewardAtWork implements IStartup {

	/** The sample that is put two metres further. */
	public static final int MOVED = 3;
	/** The sample that is set aside. */
	public static final int ASIDE = 5;
	public static final String REASON = "the guide was covered";
	/** Her work is sent. */
	public static final String SENT = "sent";
	/** She is to exchange again. */
	public static final String AGAIN = "again";

	/** Set in the child: a folder for what both sides tell each other. */
	static final String FOLDER = "cairnfield.steward.folder";
	/** Set likewise: the file to take in. */
	static final String SURVEY = "cairnfield.steward.survey";
	static final String PROBLEM = "problem";
	private static final int FAILED = 3;

	@Override
	public void earlyStartup() {
		String given = System.getProperty(FOLDER);
		if (given == null) {
			return;
		}
		Path folder = Path.of(given);
		try {
			CleanLog.listen();
			work(folder);
			CleanLog.check();
			Ui.later(() -> PlatformUI.getWorkbench().close());
		} catch (Throwable e) {
			PictureOnFailure.report(folder.resolve(PROBLEM), e);
			Runtime.getRuntime().halt(FAILED);
		}
	}

	private static void work(Path folder) throws Exception {
		Stage.session();
		Stage.waitUntilChecked();
		takeIn(Path.of(System.getProperty(SURVEY)));
		remedy("swapped-axes");
		Hand.click(Widgets.byId(Tree.class, "explorer.tree"), "Marrow Quay Museums"); // not the new survey alone
		SampleTables samples = new SampleTables();
		samples.move(MOVED, 2);
		samples.setAside(ASIDE, REASON);
		Stage.exchange("Exchanged: received nothing, sent");
		PictureOnFailure.take("exchange-steward");
		Files.createFile(folder.resolve(SENT));
		Ui.waitUntil("she is to exchange again", () -> Files.exists(folder.resolve(AGAIN)));
		Stage.exchange("Exchanged: received");
		Ui.waitUntil("nothing is going to disk, which keeps the program", () -> !Saving.isBusy());
	}

	private static void takeIn(Path file) {
		Hand.activate(Stage.window());
		Stage.takeIn(List.of(file));
		Shell wizard = Widgets.shell("Take in survey files");
		Table preview = Widgets.byId(Table.class, "intake.preview");
		Ui.waitUntil("the preview shows the rows", () -> preview.getItemCount() >= 3);
		Hand.click(Widgets.button("Next >"));
		Widgets.byId(Table.class, "intake.place.files");
		Hand.click(Widgets.button("Next >"));
		Label outcome = Widgets.byId(Label.class, "intake.outcome");
		Ui.waitUntil("the outcome is known", () -> outcome.getText().startsWith("3 samples would be taken in"));
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
		Ui.waitUntil("it is applied", () -> Stage.session().isModified());
		Stage.waitUntilChecked();
	}

	/** Samples of the first survey of the store, looked up in the table and changed there. */
	private static final class SampleTables {

		private final ArchiveSession session = Stage.session();
		private final Survey survey = Ui
				.ask(() -> ArchiveIndex.of(session.archive()).site("lantern-store").orElseThrow().getSurveys().get(0));

		void move(int row, double metres) {
			select(row);
			double before = Ui.ask(() -> survey.table().xMetres(row));
			Stage.command("org.cairnfield.ui.editPosition");
			Hand.fill(Widgets.byId(Text.class, "samples.edit.x"), Double.toString(before + metres));
			Hand.press("Return");
			Ui.waitUntil("it has moved", () -> survey.table().xMetres(row) == before + metres);
		}

		void setAside(int row, String reason) {
			select(row);
			Hand.press("ctrl+d");
			Hand.fill(Widgets.byId(Control.class, "samples.bar.field"), reason);
			Hand.press("Return");
			Ui.waitUntil("it is set aside", () -> reason.equals(survey.table().reason(row)));
		}

		private void select(int row) {
			Stage.show("org.cairnfield.ui.samples");
			Hand.activate(Stage.window());
			Hand.fill(Widgets.byId(Text.class, "samples.filter"), "id = " + Ui.ask(() -> survey.table().id(row)));
			Hand.press("Return");
			Table table = Widgets.byId(Table.class, "samples.table");
			Ui.waitUntil("it alone is listed", () -> table.getItemCount() == 1);
			Hand.click(table, 0);
			Ui.waitUntil("it is selected",
					() -> session.selection().samples().equals(List.of(new SampleRef(survey, row))));
		}
	}
}
