package org.cairnfield.ui.internal.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.cairnfield.curation.intake.FaultRemedy;
import org.cairnfield.curation.intake.SameNames;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Quarantine;
import org.cairnfield.exchange.QuarantinedRow;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** What would be taken in, what not, and why. */
final class OutcomePage extends IntakePage {

	private static final int MOST_ROWS = 500;
	private static final int WIDEST = 300;

	private Table taken;
	private Label about;
	private Table quarantined;
	private Label detail;
	private Composite keeping;
	private SameNamesQuestion question;
	private Text folder;

	OutcomePage(IntakeState state) {
		super("outcome", Messages.OutcomePage_whatComesOfIt, Messages.OutcomePage_nothingIsInTheArchive, state);
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		page.setLayout(new GridLayout());
		taken = table(page, "intake.taken", Messages.OutcomePage_whatIsTakenIn, 110, "file", "rows", "quarantined",
				"samples", "becomes", "site");
		about = new Label(page, SWT.WRAP);
		about.setData("org.cairnfield.id", "intake.outcome");
		about.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		question = new SameNamesQuestion(page, this::answer);
		quarantined = table(page, "intake.quarantined", Messages.OutcomePage_rowsInQuarantine, 130, "file", "line",
				"reason", Messages.OutcomePage_whatToDo, "row");
		detail = new Label(page, SWT.WRAP);
		detail.setData("org.cairnfield.id", "intake.quarantined.detail");
		GridData wide = new GridData(SWT.FILL, SWT.TOP, true, false);
		wide.widthHint = 600;
		detail.setLayoutData(wide);
		quarantined.addListener(SWT.Selection, e -> detail());
		keeping = new Composite(page, SWT.NONE);
		keeping.setLayoutData(new GridData(SWT.FILL, SWT.BOTTOM, true, false));
		GridLayout grid = new GridLayout(3, false);
		grid.marginWidth = 0;
		keeping.setLayout(grid);
		Label label = new Label(keeping, SWT.NONE);
		label.setText(Messages.OutcomePage_keepQuarantinedRowsIn);
		folder = new Text(keeping, SWT.BORDER);
		folder.setMessage(Messages.OutcomePage_besideEachSurveyFileAs);
		folder.setData("org.cairnfield.id", "intake.quarantineFolder");
		folder.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
		folder.addListener(SWT.Modify, e -> check());
		Button browse = new Button(keeping, SWT.PUSH);
		browse.setText(Messages.OutcomePage_folder);
		browse.addListener(SWT.Selection, e -> {
			String chosen = Chooser.open(new DirectoryDialog(getShell()), "surveys");
			if (chosen != null) {
				folder.setText(chosen);
			}
		});
		setPageComplete(false);
		setControl(page);
	}

	private static Table table(Composite page, String id, String name, int height, String... titles) {
		Table table = new Table(page, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION);
		Marked.named(Marked.id(table, id), name);
		table.setHeaderVisible(true);
		table.setLinesVisible(true);
		GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
		data.heightHint = height;
		table.setLayoutData(data);
		for (String title : titles) {
			new TableColumn(table, title.equals("rows") || title.equals("samples") || title.equals("line")
					|| title.equals("quarantined") ? SWT.RIGHT : SWT.LEFT).setText(title);
		}
		return table;
	}

	/** Folder for quarantined rows; empty to write them beside the survey files. */
	Optional<Path> quarantineFolder() {
		return folder.getText().isBlank() ? Optional.empty() : Optional.of(Path.of(folder.getText().strip()));
	}

	@Override
	void refresh() {
		taken.removeAll();
		quarantined.removeAll();
		IntakeState.Reading reading = state.reading();
		if (reading == null) {
			setPageComplete(false);
			return;
		}
		question.ask(reading);
		reading.intake().reports().forEach(report -> tell(report, reading.taking()));
		int rows = 0;
		for (Quarantine quarantine : reading.intake().quarantines()) {
			for (QuarantinedRow row : quarantine.rows()) {
				if (rows++ < MOST_ROWS) {
					new TableItem(quarantined, SWT.NONE)
							.setText(new String[] { quarantine.file().getFileName().toString(),
									Long.toString(row.line()), row.reason(), FaultRemedy.of(row.fault()),
									shortened(row.record()) });
				}
			}
		}
		Arrays.stream(taken.getColumns()).forEach(TableColumn::pack);
		Arrays.stream(quarantined.getColumns()).forEach(column -> {
			column.pack();
			column.setWidth(Math.min(column.getWidth(), WIDEST)); // the line below has it in full
		});
		long bad = reading.intake().quarantined();
		int samples = reading.taking().surveys().stream().mapToInt(SurveyTaking.Taken::samples).sum();
		about.setText(NLS.bind(Messages.OutcomePage_wouldBeTakenInWould,
				new Object[] { Count.of(samples, "sample"), Count.of(bad, "row"),
						bad > MOST_ROWS ? NLS.bind(Messages.OutcomePage_theFirst, MOST_ROWS) : "",
						reading.intake().notHeard() }));
		if (bad == 0) {
			about.setText(NLS.bind(Messages.OutcomePage_wouldBeTakenInNo, Count.of(samples, "sample"),
					reading.intake().notHeard()));
		}
		about.requestLayout();
		for (var control : List.of(quarantined, detail, keeping)) {
			((GridData) control.getLayoutData()).exclude = bad == 0;
			control.setVisible(bad > 0);
		}
		quarantined.requestLayout();
		if (quarantined.getItemCount() > 0) {
			quarantined.setSelection(0);
		}
		detail();
		check();
	}

	private void answer(SameNames.Answer answer) {
		String problem = state.answer(getContainer(), answer);
		refresh();
		if (problem != null && !problem.isEmpty()) {
			setErrorMessage(problem);
		}
	}

	private void detail() {
		String text = quarantined.getSelectionCount() == 0 ? ""
				: NLS.bind(Messages.OutcomePage_line, new Object[] { quarantined.getSelection()[0].getText(1),
						quarantined.getSelection()[0].getText(2), quarantined.getSelection()[0].getText(3) });
		detail.setText(text.replace("&", "&&"));
		detail.requestLayout();
	}

	private void tell(FileReport report, SurveyTaking taking) {
		String file = report.file().getFileName().toString();
		Optional<SurveyTaking.Known> known = taking.known().stream().filter(k -> k.file().equals(report.file()))
				.findFirst();
		List<SurveyTaking.Taken> surveys = taking.surveys().stream().filter(t -> t.file().equals(report.file()))
				.toList();
		String rows = Long.toString(report.rowsRead());
		String bad = Long.toString(report.quarantined());
		if (known.isPresent()) {
			row(file, rows, bad, "0", NLS.bind(Messages.OutcomePage_nothingItsContentIsIn, known.get().surveyId()), "");
		} else if (surveys.isEmpty()) {
			row(file, rows, bad, "0",
					report.samples() == 0 && !report.part().equals("table")
							? NLS.bind(Messages.OutcomePage_ofItsSurvey, report.part())
							: Messages.OutcomePage_nothingNoRowCanBe,
					"");
		}
		surveys.forEach(t -> row(file, rows, bad, Integer.toString(t.samples()),
				NLS.bind(Messages.OutcomePage_survey, t.surveyId()), t.site()));
	}

	private void row(String... cells) {
		new TableItem(taken, SWT.NONE).setText(cells);
	}

	private void check() {
		IntakeState.Reading reading = state.reading();
		String problem = null;
		if (reading != null && !reading.taking().command().canExecute()) {
			problem = reading.taking().known().isEmpty() ? Messages.OutcomePage_noRowCanBeTaken
					: Messages.OutcomePage_theArchiveHasAllOf;
		} else if (state.session().readOnlyReason().isPresent()) {
			problem = NLS.bind(Messages.OutcomePage_theArchiveCannotBeChanged, state.session().readOnlyReason().get());
		} else if (reading != null && reading.awaitsAnswer()) {
			problem = Messages.OutcomePage_sayWhetherNamesThatAre;
		} else if (quarantineFolder().isPresent() && !Files.isDirectory(quarantineFolder().get())) {
			problem = NLS.bind(Messages.OutcomePage_thereIsNoFolderChoose, quarantineFolder().get());
		}
		say(problem);
		setPageComplete(problem == null && reading != null);
	}

	private static String shortened(String record) {
		String line = record.replaceAll("\\s+", " ");
		return line.length() > 80 ? line.substring(0, 80) + "…" : line;
	}
}
