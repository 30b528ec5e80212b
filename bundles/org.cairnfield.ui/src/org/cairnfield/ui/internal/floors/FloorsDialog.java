package org.cairnfield.ui.internal.floors;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.curation.floors.FloorTaking;
import org.cairnfield.curation.floors.FloorWish;
import org.cairnfield.exchange.floors.MappedFloors;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.TableDialog;
import org.cairnfield.ui.show.TextTable;
import org.cairnfield.ui.work.Soon;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

/** Asks for a file of floor plans and the site that it is about, and shows floor by floor what would change. */
final class FloorsDialog extends TableDialog {

	private static final String ID = "floors";
	private static final String PURPOSE = "floor-plans";
	/** A file is read once nothing more is typed. */
	private static final int READ_MILLIS = 500;
	private static final int MOST_SHIFT = 100;
	private static final String BY_NAME = Messages.FloorsDialog_theOneOfTheSitesName;

	private final ArchiveSession session;
	private final List<Site> sites;
	private Site site;
	private final FloorsPreview preview;
	private final Soon reading = new Soon(READ_MILLIS, this::read);
	private MappedFloors listed;
	private Text file;
	private Combo building;
	private Spinner shift;
	private Button place;
	private Text notes;

	FloorsDialog(Shell parent, ArchiveSession session, Site site) {
		super(parent, Messages.FloorsDialog_takeInFloorPlans, ID);
		this.session = session;
		this.sites = new ArrayList<>(session.archive().getSites());
		this.site = site;
		preview = new FloorsPreview(session, this::refresh);
	}

	@Override
	protected void describe() {
		setTitle(Messages.FloorsDialog_takeInOutlinesAndPlan);
		setMessage(Messages.FloorsDialog_chooseAnImdfArchiveOr);
	}

	@Override
	protected TextTable createTable(Composite parent, String tableId) {
		Composite fields = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
		GridLayoutFactory.fillDefaults().numColumns(4).applyTo(fields);
		createFields(fields);
		return new TextTable(parent, tableId,
				new String[] { Messages.FloorsDialog_floor, Messages.FloorsDialog_change,
						Messages.FloorsDialog_outline, Messages.FloorsDialog_samples, Messages.FloorsDialog_planImage },
				new int[] { 150, 90, 300, 190, 420 });
	}

	private void createFields(Composite page) {
		new Label(page, SWT.NONE).setText(Messages.FloorsDialog_fileOrFolder);
		file = new Text(page, SWT.BORDER | SWT.SINGLE);
		named(file, "file");
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(file);
		file.addListener(SWT.Modify, event -> {
			preview.read(""); // what another file would do is not to be taken for this one
			reading.postpone();
		});
		push(page, Messages.FloorsDialog_file, "browse", this::chooseFile);
		push(page, Messages.FloorsDialog_folder, "folder", this::chooseFolder);
		Combo of = combo(page, Messages.FloorsDialog_site, "site");
		sites.forEach(each -> of.add(ModelText.name(each)));
		of.select(sites.indexOf(site));
		of.addListener(SWT.Selection, event -> {
			site = sites.get(of.getSelectionIndex());
			compare();
		});
		building = combo(page, Messages.FloorsDialog_buildingOfTheFile, "building");
		building.addListener(SWT.Selection, event -> compare());
		new Label(page, SWT.NONE).setText(Messages.FloorsDialog_addToItsLevelNumbers);
		shift = new Spinner(page, SWT.BORDER);
		shift.setValues(0, -MOST_SHIFT, MOST_SHIFT, 0, 1, 1);
		named(shift, "shift");
		GridDataFactory.swtDefaults().span(3, 1).applyTo(shift);
		shift.addListener(SWT.Selection, event -> compare());
		new Label(page, SWT.NONE);
		place = new Button(page, SWT.CHECK);
		place.setText(Messages.FloorsDialog_letTheFileSayWhere);
		named(place, "place");
		GridDataFactory.fillDefaults().span(3, 1).applyTo(place);
		place.addListener(SWT.Selection, event -> compare());
	}

	private static void named(Control control, String name) {
		control.setData("org.cairnfield.id", ID + '.' + name);
	}

	private static void push(Composite page, String label, String name, Runnable action) {
		Button button = new Button(page, SWT.PUSH);
		button.setText(label);
		named(button, name);
		button.addListener(SWT.Selection, event -> action.run());
	}

	private static Combo combo(Composite page, String label, String name) {
		new Label(page, SWT.NONE).setText(label);
		Combo combo = new Combo(page, SWT.READ_ONLY);
		named(combo, name);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).applyTo(combo);
		return combo;
	}

	@Override
	protected void createBelow(Composite page) {
		new Label(page, SWT.NONE).setText(Messages.FloorsDialog_notes);
		notes = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.BORDER | SWT.V_SCROLL);
		named(notes, "notes");
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 6 * notes.getLineHeight()).applyTo(notes);
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		copyButton(parent);
		button(parent, IDialogConstants.OK_ID, Messages.FloorsDialog_takeIn, "do", true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		refresh();
	}

	private void chooseFile() {
		FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
		dialog.setText(Messages.FloorsDialog_chooseAnImdfArchiveOr2);
		dialog.setFilterExtensions(new String[] { "*.zip;*.geojson;*.json", "*" });
		dialog.setFilterNames(
				new String[] { Messages.FloorsDialog_imdfArchivesAndGeojson, Messages.FloorsDialog_allFiles });
		choose(Chooser.open(dialog, PURPOSE));
	}

	private void chooseFolder() {
		DirectoryDialog dialog = new DirectoryDialog(getShell(), SWT.OPEN);
		dialog.setText(Messages.FloorsDialog_chooseTheFolderOfAn);
		choose(Chooser.open(dialog, PURPOSE));
	}

	private void choose(String chosen) {
		if (chosen != null) {
			file.setText(chosen);
		}
	}

	private void read() {
		if (!file.isDisposed()) {
			preview.read(file.getText());
		}
	}

	private void compare() {
		int chosen = building.getSelectionIndex();
		preview.compare(site.getId(), new FloorWish(chosen > 0 ? building.getItem(chosen) : null, shift.getSelection(),
				place.getSelection()));
		refresh();
	}

	/** Shows what is known now. */
	private void refresh() {
		if (file.isDisposed()) {
			return;
		}
		MappedFloors now = preview.floors().orElse(null);
		if (now != listed) { // another file: what is meant of it is to be chosen anew, and it is compared
			listed = now;
			building.removeAll();
			building.add(BY_NAME);
			building.select(0);
			if (now != null) {
				now.buildings().forEach(building::add);
				compare();
				return;
			}
		}
		building.setEnabled(now != null && now.buildings().size() > 1);
		place.setEnabled(site.getGeoreference() == null);
		table().show(lines());
		notes.setText(preview.problem()
				.or(() -> preview.taking().map(FloorTaking::notes).map(all -> String.join("\n", all))).orElse(""));
		say();
		getButton(IDialogConstants.OK_ID).setEnabled(
				session.readOnlyReason().isEmpty() && preview.taking().filter(FloorTaking::isChange).isPresent());
	}

	private void say() {
		setErrorMessage(
				session.readOnlyReason().map(reason -> NLS.bind(Messages.FloorsDialog_nothingCanBeChanged, reason))
						.or(preview::problem).orElse(null));
		if (preview.isBusy()) {
			setMessage(Messages.FloorsDialog_reading);
		} else if (preview.taking().isPresent()) {
			FloorTaking taking = preview.taking().get();
			setMessage(
					NLS.bind(Messages.FloorsDialog_of,
							new Object[] { listed.format(), Count.of(taking.changes().size(), "floor"),
									ModelText.name(site),
									taking.isChange() ? Messages.FloorsDialog_takingThemInIsOne
											: Messages.FloorsDialog_allOfItIsSo }),
					!taking.notes().isEmpty() ? IMessageProvider.INFORMATION : IMessageProvider.NONE);
		} else {
			describe();
		}
	}

	@Override
	protected List<String[]> lines() {
		return preview.taking().map(taking -> taking.changes().stream()
				.map(change -> new String[] { change.level() + "  " + change.name(), change.whatText(),
						change.outlineText(), change.samplesText(),
						change.imageText() })
				.toList()).orElse(List.of());
	}

	@Override
	protected void okPressed() {
		preview.taking().ifPresent(taking -> Work.start(Messages.FloorsDialog_writingThePlanImages, workers -> {
			taking.write(session.open());
			return taking;
		}, written -> session.run(written.command(session.archive()))));
		super.okPressed();
	}

	@Override
	public boolean close() {
		reading.cancel();
		preview.forget();
		return super.close();
	}
}
