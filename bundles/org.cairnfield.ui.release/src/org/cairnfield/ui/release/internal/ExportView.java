package org.cairnfield.ui.release.internal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.release.ArchiveExport;
import org.cairnfield.curation.release.ExportRequest;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.exchange.export.Caution;
import org.cairnfield.exchange.export.ExportFormat;
import org.cairnfield.exchange.export.ExportOptions;
import org.cairnfield.exchange.export.Pseudonyms;
import org.cairnfield.exchange.export.TimeGrain;
import org.cairnfield.model.Archive;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** What leaves the archive, in which form, and what must be minded before it does. */
public final class ExportView extends ViewPart implements ReleaseDesk.Listener {

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private final Map<ExportFormat, Button> formats = new EnumMap<>(ExportFormat.class);
	private Combo what;
	private ArchiveSession offered;
	private boolean chosen;
	private Button withoutLocal;
	private Combo times;
	private Button devices;
	private Text key;
	private Button export;
	private Text caution;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(6, 4).applyTo(page);
		ScrolledComposite scroll = new ScrolledComposite(page, SWT.V_SCROLL);
		GridDataFactory.fillDefaults().grab(false, true).hint(SWT.DEFAULT, 60).applyTo(scroll);
		Composite form = new Composite(scroll, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(form);
		label(form, Messages.ExportView_contents);
		what = new Combo(form, SWT.READ_ONLY);
		what.setData("org.cairnfield.id", "export.what");
		what.addListener(SWT.Selection, event -> chosen = true);
		label(form, Messages.ExportView_inWhichForm);
		Composite forms = new Composite(form, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(5).applyTo(forms);
		for (ExportFormat format : ExportFormat.values()) {
			Button button = check(forms, title(format), format == ExportFormat.WIDE);
			button.setData("org.cairnfield.id", "export." + format);
			formats.put(format, button);
		}
		label(form, Messages.ExportView_times);
		times = new Combo(form, SWT.READ_ONLY);
		for (TimeGrain grain : TimeGrain.values()) {
			times.add(grain == TimeGrain.FULL ? Messages.ExportView_asRecorded
					: grain == TimeGrain.NONE ? Messages.ExportView_leftOut
							: NLS.bind(Messages.ExportView_toThe, grain.name().toLowerCase(Locale.ROOT)));
		}
		times.select(0);
		label(form, Messages.ExportView_keyForPseudonyms);
		key = new Text(form, SWT.BORDER | SWT.PASSWORD);
		key.setMessage(NLS.bind(Messages.ExportView_atLeastCharactersAddressesLeave, Pseudonyms.LEAST_KEY_BYTES));
		key.addListener(SWT.Modify, event -> enable());
		GridDataFactory.fillDefaults().grab(true, false).hint(330, SWT.DEFAULT).applyTo(key);
		label(form, "");
		withoutLocal = check(form, Messages.ExportView_withoutLocallyAdministered, true);
		label(form, "");
		devices = check(form, Messages.ExportView_namesOfDevicesToo, false);
		label(form, "");
		export = Forms.button(form, Messages.ExportView_export, "export.do", this::ask);
		scroll.setContent(form);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		scroll.setShowFocusedControl(true);
		scroll.setMinSize(form.computeSize(SWT.DEFAULT, SWT.DEFAULT));
		caution = new Text(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		caution.setText(String.join("\n\n", Caution.general()));
		Marked.named(Marked.id(caution, "export.caution"), Messages.ExportView_cautions);
		GridDataFactory.fillDefaults().grab(true, true).hint(250, 100).applyTo(caution);
		desk.add(this);
	}

	private static void label(Composite parent, String text) {
		new Label(parent, SWT.NONE).setText(text);
	}

	private static Button check(Composite parent, String text, boolean selected) {
		Button button = new Button(parent, SWT.CHECK);
		button.setText(text);
		button.setSelection(selected);
		return button;
	}

	private static String title(ExportFormat format) {
		return switch (format) {
		case WIDE -> Messages.ExportView_wideCsv;
		case LONG -> Messages.ExportView_longCsv;
		case GEOJSON -> "GeoJSON";
		case GEOPACKAGE -> "GeoPackage";
		case PACK -> Messages.ExportView_devicePack;
		};
	}

	@Override
	public void deskChanged() {
		ArchiveSession now = desk.session().orElse(null);
		chosen &= now == offered;
		offered = now;
		Optional<PastState> past = desk.session().flatMap(ArchiveSession::past);
		int at = chosen ? what.getSelectionIndex() : past.map(this::number).orElse(0);
		what.removeAll();
		what.add(past.map(state -> NLS.bind(Messages.ExportView_savePoint, state.savePoint().shortId()))
				.orElse(Messages.ExportView_theContentAsItIs));
		desk.releases().forEach(release -> what.add(NLS.bind(Messages.ExportView_release, release.version())));
		what.select(Math.min(at, what.getItemCount() - 1));
		what.getParent().layout();
		enable();
	}

	/** Of the entry for what is on show. */
	private int number(PastState past) {
		List<ReleasedState> releases = desk.releases();
		return 1 + IntStream.range(0, releases.size())
				.filter(i -> releases.get(i).tag().savePoint().id().equals(past.savePoint().id())).findFirst()
				.orElse(-1);
	}

	private void enable() {
		int length = key.getText().getBytes(StandardCharsets.UTF_8).length;
		export.setEnabled(desk.session().isPresent() && (length == 0 || length >= Pseudonyms.LEAST_KEY_BYTES));
	}

	private Set<ExportFormat> chosen() {
		Set<ExportFormat> chosen = EnumSet.noneOf(ExportFormat.class);
		formats.forEach((format, button) -> {
			if (button.getSelection()) {
				chosen.add(format);
			}
		});
		return chosen;
	}

	private void ask() {
		if (!Damaged.mayGoOn(export.getShell(), desk.session().orElseThrow(), Messages.ExportView_export2)) {
			return;
		}
		if (chosen().isEmpty()) {
			caution.setText(Messages.ExportView_chooseAtLeastOneForm);
			return;
		}
		DirectoryDialog dialog = new DirectoryDialog(export.getShell());
		dialog.setText(Messages.ExportView_export2);
		dialog.setMessage(Messages.ExportView_chooseTheFolderThatIt);
		String folder = Chooser.open(dialog, "export");
		if (folder != null) {
			write(Path.of(folder));
		}
	}

	private void write(Path folder) {
		ArchiveSession session = desk.session().orElseThrow();
		byte[] secret = key.getText().getBytes(StandardCharsets.UTF_8);
		ExportOptions options = new ExportOptions(withoutLocal.getSelection(),
				secret.length == 0 ? null : new Pseudonyms(secret),
				TimeGrain.values()[times.getSelectionIndex()], devices.getSelection());
		int at = what.getSelectionIndex();
		ReleasedState release = at == 0 ? null : desk.releases().get(at - 1);
		ExportRequest request = new ExportRequest(chosen(), SurveyKind.TRAINING, false, options,
				release == null ? PackRequest.USUAL : PackRequest.like(release.manifest().settings()));
		Archive copy = ArchiveCopy.of(session.archive());
		ReleaseBook book = desk.book();
		List<Damage> damages = Damaged.damages(session);
		Work.start(Messages.ExportView_exporting, workers -> {
			if (release == null) {
				return ArchiveExport.write(copy, new ArchiveExport.Source("", OpenArchive.digest(copy), Instant.now()),
						book.gates().policy(copy),
						folder, request, damages, workers);
			}
			PastState then = book.openReadOnly(release.version().toString());
			List<Damage> all = Stream.concat(damages.stream(), then.damages().stream()).toList();
			if (damages.isEmpty() && !all.isEmpty()) { // which nobody has been asked about
				throw new DamagedException(
						NLS.bind(Messages.ExportView_nothingWasExportedReleaseIs, release.version(), all.get(0)),
						Messages.ExportView_verifyTheReleases,
						all);
			}
			return ArchiveExport
					.write(then.archive(),
							new ArchiveExport.Source(release.version().toString(), release.manifest().digest(),
									release.tag().time()),
							book.gates().policy(then.archive()), folder, request, all, workers);
		}, this::say, problem -> caution.setText(Problems.text(problem)));
	}

	private void say(ArchiveExport.Exported exported) {
		if (!caution.isDisposed()) {
			List<String> paragraphs = new ArrayList<>(exported.notes());
			paragraphs.addAll(Caution.general());
			caution.setText(NLS.bind(Messages.ExportView_writtenTo,
					new Object[] { exported.files().get(0).getParent(),
							String.join("\n  ",
									exported.files().stream().map(file -> file.getFileName().toString()).toList()),
							String.join("\n\n", paragraphs) }));
		}
	}

	@Override
	public void setFocus() {
		Marked.focus(what);
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
