package org.cairnfield.ui.internal.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

import org.cairnfield.curation.intake.IntakeDraft;
import org.cairnfield.exchange.ColumnRole;
import org.cairnfield.exchange.Guess;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.Preview;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SiteOrder;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Where the samples belong, as far as the files do not say. */
final class PlacePage extends IntakePage {

	private static final String AS_FILE = Messages.PlacePage_asTheFileSays;
	private static final String MAP = Messages.PlacePage_trainingMakesTheMap;
	private static final String MEASURE = Messages.PlacePage_testMeasuresTheMap;
	private static final int MOST_FLOOR = 999;

	private Table files;
	private IntakeChoice site;
	private IntakeChoice floor;
	private IntakeChoice device;
	private IntakeChoice kind;

	PlacePage(IntakeState state) {
		super("place", Messages.PlacePage_whereTheSurveysBelong, Messages.PlacePage_giveTheSiteFloorAnd,
				state);
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		page.setLayout(new GridLayout(3, false));
		files = new Table(page, SWT.MULTI | SWT.BORDER | SWT.FULL_SELECTION);
		Marked.named(Marked.id(files, "intake.place.files"), Messages.PlacePage_whereEachFileGoes);
		files.setHeaderVisible(true);
		files.setLinesVisible(true);
		files.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
		for (String title : List.of("file", "site", "floor", "device", Messages.PlacePage_surveyFor)) {
			new TableColumn(files, SWT.LEFT).setText(title);
		}
		files.addListener(SWT.Selection, e -> fillForm());
		Label about = new Label(page, SWT.NONE);
		about.setText(Messages.PlacePage_forTheFilesSelected);
		about.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false, 3, 1));
		site = new IntakeChoice(page, Messages.PlacePage_site, "intake.site", true,
				text -> say(o -> o.withSite(isUnsaid(text) ? null : text)));
		floor = new IntakeChoice(page, Messages.PlacePage_floorLevel, "intake.floor", true, this::sayFloor);
		device = new IntakeChoice(page, Messages.PlacePage_device, "intake.device", true,
				text -> say(o -> o.withDevice(isUnsaid(text) ? null : text)));
		kind = new IntakeChoice(page, Messages.PlacePage_surveyFor2, "intake.kind", false, text -> {
			state.draft(state.draft().withKind(chosen(), text.equals(MEASURE) ? SurveyKind.TEST : SurveyKind.TRAINING));
			refresh();
		});
		setControl(page);
	}

	private static boolean isUnsaid(String text) {
		return text.isEmpty() || text.equals(AS_FILE);
	}

	private void sayFloor(String text) {
		if (isUnsaid(text)) {
			say(o -> o.withFloor(null));
			return;
		}
		try {
			int level = Integer.parseInt(text.replace('−', '-'));
			if (Math.abs(level) > MOST_FLOOR) {
				throw new NumberFormatException();
			}
			say(o -> o.withFloor(level));
		} catch (NumberFormatException e) {
			say(NLS.bind(Messages.PlacePage_isNoFloorWriteIts, text));
		}
	}

	private void say(UnaryOperator<IntakeOptions> change) {
		state.draft(state.draft().with(chosen(), change));
		String problem = state.look(getContainer());
		refresh();
		if (problem != null && !problem.isEmpty()) {
			say(problem);
		}
	}

	/** The files selected, and those of the same paired surveys. */
	private Set<Path> chosen() {
		Set<Path> chosen = new LinkedHashSet<>();
		Arrays.stream(files.getSelection()).forEach(item -> chosen.addAll(state.together((Path) item.getData())));
		return chosen;
	}

	@Override
	void refresh() {
		Set<Path> selected = chosen();
		files.removeAll();
		List<Integer> lines = new ArrayList<>();
		for (IntakeDraft.Entry entry : state.draft().entries()) {
			TableItem item = new TableItem(files, SWT.NONE);
			item.setData(entry.file());
			IntakeDraft.Look look = state.look(entry.file());
			Preview preview = look == null ? null : look.preview().orElse(null);
			item.setText(new String[] { entry.file().getFileName().toString(), guess(preview, "site"),
					guess(preview, "floor"),
					entry.options().device()
							.orElse(preview == null || preview.columns(ColumnRole.DEVICE).isEmpty()
									? Messages.PlacePage_notSaid
									: Messages.PlacePage_byColumn),
					entry.kind() == SurveyKind.TEST ? "test" : "training" });
			if (selected.isEmpty() || selected.contains(entry.file())) {
				lines.add(files.getItemCount() - 1);
			}
		}
		Arrays.stream(files.getColumns()).forEach(TableColumn::pack);
		files.select(lines.stream().mapToInt(Integer::intValue).toArray());
		String problem = state.problem();
		say(problem);
		setPageComplete(problem == null);
		fillForm();
	}

	/** A guess without a column is one that a person should see. */
	private static String guess(Preview preview, String what) {
		return preview == null ? ""
				: preview.guess(what)
						.map(guess -> guess.value()
								+ (guess.evidence().startsWith("no ") ? Messages.PlacePage_guessed : ""))
						.orElse("");
	}

	private void fillForm() {
		List<IntakeDraft.Entry> entries = chosen().stream().map(file -> state.draft().entry(file)).toList();
		List<String> sites = new ArrayList<>(List.of(AS_FILE));
		Set<Integer> levels = new TreeSet<>();
		SiteOrder.of(state.session().archive()).forEach(each -> {
			sites.add(ModelText.name(each));
			each.getFloors().forEach(of -> levels.add(of.getLevel()));
		});
		List<String> floors = new ArrayList<>(List.of(AS_FILE));
		levels.forEach(level -> floors.add(level.toString()));
		List<String> devices = new ArrayList<>(List.of(AS_FILE));
		state.session().archive().getDevices().forEach(each -> devices.add(ModelText.name(each)));
		site.fill(sites, same(entries.stream().map(e -> e.options().site().orElse(AS_FILE)).toList()),
				evidence(entries, "site"));
		floor.fill(floors,
				same(entries.stream().map(e -> e.options().floor().map(level -> level.toString()).orElse(AS_FILE))
						.toList()),
				evidence(entries, "floor"));
		device.fill(devices, same(entries.stream().map(e -> e.options().device().orElse(AS_FILE)).toList()),
				Messages.PlacePage_oneThatTheArchiveDoes);
		kind.fill(List.of(MAP, MEASURE),
				same(entries.stream().map(e -> e.kind() == SurveyKind.TEST ? MEASURE : MAP).toList()), "");
		for (IntakeChoice each : List.of(site, floor, device, kind)) {
			each.enable(!entries.isEmpty());
		}
	}

	private static String same(List<String> values) {
		return values.stream().distinct().count() == 1 ? values.get(0) : "";
	}

	private String evidence(List<IntakeDraft.Entry> entries, String what) {
		return same(entries.stream().map(entry -> state.look(entry.file())).filter(look -> look != null)
				.flatMap(look -> look.preview().stream()).flatMap(preview -> preview.guess(what).stream())
				.map(Guess::evidence).toList());
	}
}
