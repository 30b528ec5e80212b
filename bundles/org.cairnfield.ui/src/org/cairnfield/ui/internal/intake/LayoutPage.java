package org.cairnfield.ui.internal.intake;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.cairnfield.curation.intake.IntakeDraft;
import org.cairnfield.exchange.Column;
import org.cairnfield.exchange.ColumnRole;
import org.cairnfield.exchange.Guess;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.Layout;
import org.cairnfield.exchange.Preview;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** How each file is understood, why, and what to say where that is wrong. */
final class LayoutPage extends IntakePage {

	private static final int MOST_COLUMNS = 40;
	private static final List<String> ROLES = Arrays.stream(ColumnRole.values()).map(ColumnRole::word).toList();

	private Table files;
	private Table preview;
	private IntakeChoice layout;
	private IntakeChoice separator;
	private IntakeChoice decimal;
	private IntakeChoice header;
	private IntakeChoice notHeard;
	private IntakeChoice unit;
	private IntakeChoice column;
	private IntakeChoice role;
	private Button swap;
	private Label notes;
	private Path shown;
	private String chosenColumn = "";

	LayoutPage(IntakeState state) {
		super("layout", Messages.LayoutPage_howTheFilesAreUnderstood, Messages.LayoutPage_eachLineSaysWhatWas,
				state);
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		page.setLayout(new GridLayout(2, false));
		files = new Table(page, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION);
		Marked.named(Marked.id(files, "intake.layout.files"), Messages.LayoutPage_surveyFiles);
		GridData left = new GridData(SWT.FILL, SWT.FILL, false, false);
		left.widthHint = 170;
		left.heightHint = 100;
		files.setLayoutData(left);
		files.addListener(SWT.Selection, e -> {
			shown = (Path) files.getSelection()[0].getData();
			fill();
		});
		makeForm(page);
		preview = new Table(page, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION | SWT.H_SCROLL);
		preview.setHeaderVisible(true);
		preview.setLinesVisible(true);
		Marked.named(Marked.id(preview, "intake.preview"), Messages.LayoutPage_firstRowsOfTheFile);
		GridData below = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
		below.heightHint = 160;
		preview.setLayoutData(below);
		notes = new Label(page, SWT.WRAP);
		notes.setData("org.cairnfield.id", "intake.notes");
		GridData wide = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
		wide.widthHint = 600;
		notes.setLayoutData(wide);
		setControl(page);
	}

	private void makeForm(Composite page) {
		Composite form = new Composite(page, SWT.NONE);
		GridLayout grid = new GridLayout(3, false);
		grid.verticalSpacing = 2;
		grid.marginHeight = 0;
		form.setLayout(grid);
		form.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		layout = new IntakeChoice(form, Messages.LayoutPage_layout, "intake.layout", false,
				text -> correct(o -> o.withLayout(Layout.valueOf(
						text.toUpperCase(Locale.ROOT)))));
		separator = new IntakeChoice(form, Messages.LayoutPage_separator, "intake.separator", true, text -> {
			Character sign = Separators.of(text);
			if (sign == null) {
				say(NLS.bind(Messages.LayoutPage_isNoSeparatorChooseOne, text));
			} else {
				correct(o -> o.withSeparator(sign));
			}
		});
		decimal = new IntakeChoice(form, Messages.LayoutPage_decimalMark, "intake.decimal", false,
				text -> correct(o -> o.withDecimalMark(text.equals("comma") ? ',' : '.')));
		header = new IntakeChoice(form, Messages.LayoutPage_firstRowNamesColumns, "intake.header", false,
				text -> correct(o -> o.withHeader(text.equals("yes"))));
		notHeard = new IntakeChoice(form, Messages.LayoutPage_notHeard, "intake.notHeard", true,
				text -> correct(o -> o.withNotHeard(text.isEmpty() ? null : text)));
		unit = new IntakeChoice(form, Messages.LayoutPage_metresToAUnitOf, "intake.unit", true, this::correctUnit);
		column = new IntakeChoice(form, Messages.LayoutPage_column, "intake.column", false, text -> {
			chosenColumn = text;
			fill();
		});
		role = new IntakeChoice(form, Messages.LayoutPage_isFor, "intake.role", false,
				text -> correct(o -> o.withRole(columnKey(), ColumnRole.of(text))));
		swap = new Button(form, SWT.CHECK);
		swap.setText(Messages.LayoutPage_swapXAndY);
		swap.setData("org.cairnfield.id", "intake.swap");
		swap.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false, 3, 1));
		swap.addListener(SWT.Selection, e -> correct(o -> o.withSwapXY(swap.getSelection())));
	}

	private void correctUnit(String text) {
		try {
			Double metres = text.isEmpty() || text.equals(Messages.LayoutPage_asTheHeaderSays) ? null
					: Double.valueOf(text.replace(',', '.'));
			correct(o -> o.withMetresPerUnit(metres));
		} catch (IllegalArgumentException e) {
			say(NLS.bind(Messages.LayoutPage_isNoLengthWriteHow, text));
		}
	}

	private void correct(UnaryOperator<IntakeOptions> change) {
		if (shown == null) {
			return;
		}
		state.draft(state.draft().with(state.together(shown), change));
		refresh(state.look(getContainer()));
	}

	/** @param problem of looking, as {@link IntakeState#look} says it */
	void refresh(String problem) {
		refresh();
		if (problem != null) {
			say(problem.isEmpty() ? Messages.LayoutPage_cancelledThePreviewIsAs : problem);
		}
	}

	@Override
	void refresh() {
		List<Path> all = state.files();
		if (shown == null || !all.contains(shown)) {
			shown = all.isEmpty() ? null : all.get(0);
		}
		files.removeAll();
		for (Path file : all) {
			TableItem item = new TableItem(files, SWT.NONE);
			IntakeDraft.Look look = state.look(file);
			item.setText((look != null && look.problem().isPresent() ? "✖ " : "") + file.getFileName());
			item.setData(file);
			if (file.equals(shown)) {
				files.setSelection(item);
			}
		}
		String problem = state.problem();
		say(problem);
		setPageComplete(!all.isEmpty() && problem == null);
		fill();
	}

	private Optional<Preview> look() {
		IntakeDraft.Look look = shown == null ? null : state.look(shown);
		return look == null ? Optional.empty() : look.preview();
	}

	private void fill() {
		Preview now = look().orElse(null);
		for (IntakeChoice each : List.of(layout, separator, decimal, header, notHeard, unit, column, role)) {
			each.enable(now != null);
		}
		swap.setEnabled(now != null);
		preview.setRedraw(false);
		preview.removeAll();
		Arrays.stream(preview.getColumns()).forEach(TableColumn::dispose);
		if (now != null) {
			fillForm(now);
			fillPreview(now);
		}
		preview.setRedraw(true);
		notes.setText(now == null ? "" : String.join("; ", now.notes()).replace("&", "&&"));
		notes.requestLayout();
	}

	private void fillForm(Preview now) {
		IntakeOptions said = state.draft().entry(shown).options();
		fill(layout, List.of("wide", "long", "paired"), now, "layout",
				now.layout() == null ? "" : now.layout().name().toLowerCase(Locale.ROOT));
		fill(separator, Separators.NAMES, now, "separator", null);
		fill(decimal, List.of("point", "comma"), now, Messages.LayoutPage_decimalMark2, null);
		fill(header, List.of("yes", "no"), now, "header", null);
		fill(notHeard, List.of("empty", "100", "-110"), now, Messages.LayoutPage_notHeard2, null);
		unit.fill(List.of(Messages.LayoutPage_asTheHeaderSays, "1", "0.01", "0.001"),
				said.metresPerUnit().map(metres -> metres.toString()).orElse(Messages.LayoutPage_asTheHeaderSays),
				said.metresPerUnit().isPresent() ? Messages.LayoutPage_asTold
						: Messages.LayoutPage_metresWhereTheHeaderNames);
		swap.setSelection(said.swapXY());
		List<String> names = now.columns().stream().map(LayoutPage::label).toList();
		if (!names.contains(chosenColumn)) {
			chosenColumn = names.isEmpty() ? "" : names.get(0);
		}
		column.fill(names, chosenColumn, NLS.bind(Messages.LayoutPage_columnsOfThemLevelsOf, now.columns().size(),
				now.columns(ColumnRole.SIGNAL).size()));
		now.columns().stream().filter(c -> label(c).equals(chosenColumn)).findFirst()
				.ifPresent(c -> role.fill(ROLES, c.role().word(), c.evidence() == null ? "" : c.evidence()));
	}

	private static void fill(IntakeChoice choice, List<String> proposals, Preview now, String what, String value) {
		Optional<Guess> guess = now.guess(what);
		choice.fill(proposals, value != null ? value : guess.map(Guess::value).orElse(""),
				guess.map(Guess::evidence).orElse(""));
	}

	private static String label(Column column) {
		return column.number() + ": " + column.name();
	}

	/** By number, which names one column whatever the header says. */
	private String columnKey() {
		return '#' + chosenColumn.substring(0, chosenColumn.indexOf(':'));
	}

	private void fillPreview(Preview now) {
		int columns = Math.min(MOST_COLUMNS, now.columns().size());
		for (Column each : now.columns().subList(0, columns)) {
			TableColumn made = new TableColumn(preview, SWT.LEFT);
			made.setText(each.name() + "  [" + each.role().word() + "]");
			made.setToolTipText(NLS.bind(Messages.LayoutPage_clickToChangeIt, each.role().word(),
					each.evidence() == null ? "" : ": " + each.evidence()));
			made.addListener(SWT.Selection, e -> chooseRole(each));
		}
		for (List<String> row : now.firstRows()) {
			TableItem item = new TableItem(preview, SWT.NONE);
			for (int c = 0; c < Math.min(columns, row.size()); c++) {
				item.setText(c, row.get(c));
			}
		}
		Arrays.stream(preview.getColumns()).forEach(TableColumn::pack);
		if (columns < now.columns().size()) {
			TableColumn more = new TableColumn(preview, SWT.LEFT);
			more.setText(NLS.bind(Messages.LayoutPage_moreColumns, now.columns().size() - columns));
			more.pack();
		}
	}

	private void chooseRole(Column of) {
		chosenColumn = label(of);
		Menu menu = new Menu(preview);
		for (ColumnRole each : ColumnRole.values()) {
			MenuItem item = new MenuItem(menu, SWT.RADIO);
			item.setText(each.word());
			item.setSelection(each == of.role());
			item.addListener(SWT.Selection, e -> {
				if (item.getSelection()) {
					correct(o -> o.withRole(columnKey(), each));
				}
			});
		}
		menu.addListener(SWT.Hide, e -> preview.getDisplay().asyncExec(menu::dispose));
		menu.setVisible(true);
	}
}
