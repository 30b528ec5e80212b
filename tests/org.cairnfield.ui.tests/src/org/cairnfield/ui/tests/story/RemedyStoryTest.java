package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SamplesCommand;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward reads what the remedies of a whole group do together, and chooses among several remedies of one finding. */
@ExtendWith(PictureOnFailure.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Order(13)
class RemedyStoryTest {

	private static final String REPEATS = "Repeated scans";
	private static final String WRONG_FLOOR = "Floor contradicted by what was heard";

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	private static TreeItem heading(Tree findings, String title) {
		for (TreeItem item : findings.getItems()) {
			if (item.getText().startsWith(title)) {
				return item;
			}
		}
		throw new AssertionError("no heading " + title);
	}

	@Test
	@Order(1)
	void readsWhatAWholeSelectionDoes() throws Exception {
		ReviewStage.open(folder, "remedied");
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.findings");
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Text explanation = Widgets.byId(Text.class, "findings.explanation");
		Stage.waitUntilChecked();
		Hand.activate(Stage.window());
		Hand.click(findings, () -> heading(findings, WRONG_FLOOR));
		Hand.press("ctrl+a");
		Ui.waitUntil("all are explained together", () -> explanation.getText().contains(" findings are selected; ")
				&& explanation.getText().contains("Effect: Touches ")
				&& explanation.getText().contains(" samples and "));
		assertTrue(
				Ui.ask(() -> Widgets.byId(Button.class, "findings.remedy").getText()).matches("Apply \\d+ &remedies"));
	}

	@Test
	@Order(2)
	void choosesAmongTheRemediesOfARepeatedScan() throws Exception {
		ArchiveSession session = Stage.session();
		Ui.ask(() -> session.run(new ScanAgain(session.archive().getSites().get(0).getSurveys().get(0))));
		Stage.waitUntilChecked();
		Hand.activate(Stage.window());
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Text explanation = Widgets.byId(Text.class, "findings.explanation");
		Button apply = Widgets.byId(Button.class, "findings.remedy");
		Hand.click(findings, () -> heading(findings, REPEATS));
		Ui.waitUntil("each way is measured",
				() -> explanation.getText().contains("\n  Keep one of each run at each place: Touches 1 sample.")
						&& explanation.getText()
								.contains("\n  Average the scans of each place into one sample: Touches 2 samples.")
						&& apply.isEnabled());
		Combo ways = Widgets.byId(Combo.class, "findings.way");
		Hand.choose(ways, "Average the scans of each place into one sample");
		Hand.click(apply);
		Ui.waitUntil("the scans are one", () -> repeats(session) == 0 && !session.findings().isChecking());
		assertEquals("Average scans: 2 samples", Ui.ask(() -> session.commands().getUndoCommand().getLabel()));
		Hand.press("ctrl+z");
		Ui.waitUntil("the scans are two", () -> repeats(session) == 1 && !session.findings().isChecking());
		Hand.click(findings, () -> heading(findings, WRONG_FLOOR));
		Ui.waitUntil("one way needs no choice", () -> !ways.isVisible());
	}

	private static long repeats(ArchiveSession session) {
		return session.findings().open().stream().map(Finding::rule).filter("repeated-scan"::equals).count();
	}

	/** As if the device had handed out the first scan of a survey again, at the same place. */
	private static final class ScanAgain extends SamplesCommand {

		ScanAgain(Survey survey) {
			super(List.of(new SampleRef(survey, 1)));
		}

		@Override
		protected boolean changes(SampleTable table, int row) {
			return true;
		}

		@Override
		protected void change(SampleEdit edit, SampleTable table, int row) {
			edit.readings(row, table.readings(row - 1)).position(row, table.xMetres(row - 1), table.yMetres(row - 1));
		}

		@Override
		protected String label(int samples) {
			return "Scan again";
		}
	}
}
