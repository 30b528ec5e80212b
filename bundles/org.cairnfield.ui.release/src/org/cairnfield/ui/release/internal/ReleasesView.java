package org.cairnfield.ui.release.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateSet;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.report.ReleaseReport;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.curation.release.Verification;
import org.cairnfield.curation.team.CommentSubject;
import org.cairnfield.model.Archive;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.save.Restore;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.CommentBox;
import org.cairnfield.ui.show.DiffTree;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** The releases of the archive, the latest first: what they are, whether they still are it, and the way back. */
public final class ReleasesView extends ViewPart implements ReleaseDesk.Listener {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd")
			.withZone(ZoneId.systemDefault());

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private TableViewer releases;
	private final StackLayout below = new StackLayout();
	private Text about;
	private DiffTree changes;
	private CommentBox comments;
	private Button verify;
	private Button compare;
	private Button open;
	private Button restore;
	private Button report;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(6, 4).applyTo(page);
		releases = Forms.table(page, SWT.MULTI, "releases.table", Messages.ReleasesView_releases);
		GridDataFactory.fillDefaults().grab(true, true).hint(200, 100).applyTo(releases.getControl());
		Forms.<ReleasedState>column(releases, Messages.ReleasesView_release, 80, SWT.LEFT,
				release -> release.version().toString());
		Forms.<ReleasedState>column(releases, Messages.ReleasesView_signedBy, 110, SWT.LEFT,
				release -> release.tag().person());
		Forms.<ReleasedState>column(releases, "On", 100, SWT.LEFT, release -> DAY.format(release.tag().time()));
		releases.addSelectionChangedListener(event -> show());
		releases.addDoubleClickListener(event -> {
			if (!isPast()) {
				open();
			}
		});
		Composite said = new Composite(page, SWT.NONE);
		said.setLayout(below);
		GridDataFactory.fillDefaults().grab(true, true).hint(200, 160).applyTo(said);
		about = new Text(said, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		Marked.named(Marked.id(about, "releases.about"), Messages.ReleasesView_aboutTheRelease);
		changes = new DiffTree(said, "releases");
		below.topControl = about;
		comments = new CommentBox(page, 1, "releases");
		createButtons(page);
		desk.add(this);
	}

	private void createButtons(Composite page) {
		Composite row = new Composite(page, SWT.NONE);
		RowLayoutFactory.fillDefaults().wrap(true).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(row);
		compare = Forms.button(row, Messages.ReleasesView_compare, "releases.compare", this::compare);
		open = Forms.button(row, Messages.ReleasesView_viewIt, "releases.open", this::open);
		restore = Forms.button(row, Messages.ReleasesView_restore, "releases.restore", this::restore);
		verify = Forms.button(row, Messages.ReleasesView_verifyAll, "releases.verify", this::verify);
		Forms.button(row, Messages.ReleasesView_verifyAFile, "releases.verifyFile", this::verifyFile);
		report = Forms.button(row, Messages.ReleasesView_report, "releases.report", this::report);
		compare.setToolTipText(Messages.ReleasesView_twoReleasesWithEachOther);
		open.setToolTipText(Messages.ReleasesView_showsTheReleaseInAll);
		restore.setToolTipText(Messages.ReleasesView_makesTheReleaseTheWorking);
		verify.setToolTipText(Messages.ReleasesView_computesTheDigestsOfAll);
		report.setToolTipText(Messages.ReleasesView_onePageForThoseWho);
	}

	@SuppressWarnings("unchecked")
	private List<ReleasedState> selected() {
		return releases.getStructuredSelection().toList();
	}

	@Override
	public void deskChanged() {
		releases.setInput(desk.releases());
		show();
	}

	private void show() {
		List<ReleasedState> selected = selected();
		verify.setEnabled(desk.session().filter(session -> session.open().hasHistory()).isPresent());
		compare.setEnabled(selected.size() == 1 || selected.size() == 2);
		open.setText(isPast() ? Messages.ReleasesView_backToThePresent : Messages.ReleasesView_viewIt);
		open.setEnabled(isPast() || selected.size() == 1);
		open.getParent().requestLayout();
		restore.setEnabled(desk.mayChange() && selected.size() == 1);
		report.setEnabled(desk.check().isPresent() || selected.size() == 1);
		comments.show(desk.session().orElse(null),
				selected.size() == 1 ? new CommentSubject.OfRelease(selected.get(0).version().toString()) : null,
				false);
		if (selected.size() == 1) {
			say(describe(selected.get(0).manifest()));
		} else if (desk.releases().isEmpty()) {
			say(Messages.ReleasesView_nothingIsReleasedYetCheck);
		} else if (selected.isEmpty()) {
			say(Messages.ReleasesView_selectAReleaseToSee);
		}
	}

	private static String describe(ReleaseManifest manifest) {
		StringBuilder text = new StringBuilder(Messages.ReleasesView_release2).append(manifest.version())
				.append(Messages.ReleasesView_preparedBy)
				.append(manifest.preparedBy()).append(Messages.ReleasesView_signedBy2).append(manifest.signedBy())
				.append('\n');
		manifest.bump().forEach(reason -> text.append(reason).append('\n'));
		text.append(manifest.splits().isEmpty() ? Messages.ReleasesView_noSplitDevicesCompareWith
				: (manifest.splits().size() == 1 ? Messages.ReleasesView_split : Messages.ReleasesView_splits)
						+ String.join(", ", manifest.splits()))
				.append('\n');
		text.append('\n').append(manifest.notes().isEmpty() ? "" : manifest.notes() + "\n\n");
		manifest.changes().forEach(change -> text.append(change).append('\n'));
		manifest.ages().forEach(age -> text.append(age).append('\n'));
		manifest.gates().stream().filter(gate -> !gate.overruledBy().isEmpty())
				.forEach(gate -> text.append(Messages.ReleasesView_overruledBy)
						.append(gate.overruledBy()).append(": ").append(gate.title()).append(" (").append(gate.reason())
						.append(")\n"));
		return text.append(Messages.ReleasesView_contentSha256).append(manifest.digest()).toString();
	}

	private void verify() {
		ReleaseBook book = desk.book();
		verify(Messages.ReleasesView_verifyingTheReleases, workers -> book.verify());
	}

	private void verifyFile() {
		FileDialog dialog = new FileDialog(about.getShell(), SWT.OPEN);
		dialog.setText(Messages.ReleasesView_verifyWhatWasExported);
		String file = Chooser.open(dialog, "export");
		if (file != null) {
			verify(NLS.bind(Messages.ReleasesView_verifying, Path.of(file).getFileName()),
					workers -> List.of(Verification.ofExport(Path.of(file))));
		}
	}

	private void verify(String name, Work.Task<List<Verification>> task) {
		say(Messages.ReleasesView_verifying2);
		Work.start(name, task, found -> {
			StringBuilder text = new StringBuilder();
			for (Verification each : found) {
				text.append(each.isSound() ? "✔ " : "✖ ").append(each.what())
						.append(each.isSound() ? Messages.ReleasesView_isWhatItWas : "")
						.append(each.signature() == null ? ""
								: NLS.bind(Messages.ReleasesView_signature, each.signature()))
						.append('\n');
				each.checks().stream().filter(check -> !check.isSound())
						.forEach(check -> text.append("   ").append(check.what()).append(": ").append(check.problem())
								.append('\n'));
				each.notes().forEach(note -> text.append("   ").append(note).append('\n'));
			}
			say(text.toString());
		}, problem -> say(Problems.text(problem)));
	}

	private void say(String text) {
		if (!about.isDisposed()) {
			about.setText(text);
			top(about);
		}
	}

	private void top(Control control) {
		if (below.topControl != control) {
			below.topControl = control;
			control.getParent().layout();
		}
	}

	private void compare() {
		List<ReleasedState> two = selected();
		OpenArchive archive = desk.session().orElseThrow().open();
		ReleasedState before = two.get(two.size() - 1); // the table has the latest first
		String title = NLS.bind(Messages.ReleasesView_fromTo, before.version(),
				two.size() == 2 ? two.get(0).version().toString() : Messages.ReleasesView_whatIsSavedNow);
		say(Messages.ReleasesView_comparing);
		Work.start(Messages.ReleasesView_comparing2, workers -> {
			try (History history = archive.history()) {
				return two.size() == 2 ? history.compare(before.tag().savePoint(), two.get(0).tag().savePoint())
						: history.compareWithSaved(before.tag().savePoint());
			}
		}, diff -> {
			if (!about.isDisposed()) {
				changes.show(title
						+ (diff.isEmpty() ? Messages.ReleasesView_nothingDiffers : String.join(", ", diff.summary())),
						diff);
				top(changes.control());
			}
		}, problem -> say(Problems.text(problem)));
	}

	private boolean isPast() {
		return desk.session().filter(session -> session.past().isPresent()).isPresent();
	}

	private void open() {
		if (isPast()) {
			Sessions.workbench().backToPresent();
		} else if (selected().size() == 1) {
			ReleaseBook book = desk.book();
			String version = selected().get(0).version().toString();
			Work.start(NLS.bind(Messages.ReleasesView_openingRelease, version), workers -> book.openReadOnly(version),
					Sessions.workbench()::showPast,
					problem -> say(Problems.text(problem)));
		}
	}

	private void restore() {
		ReleasedState release = selected().get(0);
		Restore.state(about.getShell(), desk.session().orElseThrow(), release.tag().savePoint(),
				NLS.bind(Messages.ReleasesView_release3, release.version()));
	}

	private void report() {
		if (!Damaged.mayGoOn(about.getShell(), desk.session().orElseThrow(), Messages.ReleasesView_report2)) {
			return;
		}
		FileDialog dialog = new FileDialog(about.getShell(), SWT.SAVE);
		dialog.setText(Messages.ReleasesView_report2);
		dialog.setFileName("report.html");
		dialog.setOverwrite(true);
		String file = Chooser.open(dialog, "export");
		if (file != null) {
			if (selected().size() == 1) {
				write(Path.of(file), selected().get(0));
			} else {
				write(Path.of(file));
			}
		}
	}

	private void write(Path file, ReleasedState release) {
		ReleaseBook book = desk.book();
		List<Damage> damages = Damaged.damages(desk.session().orElseThrow());
		Work.start(Messages.ReleasesView_writingTheReport, workers -> {
			PastState then = book.openReadOnly(release.version().toString());
			if (!then.damages().isEmpty()) {
				throw new IOException(
						NLS.bind(Messages.ReleasesView_releaseIsDamaged, release.version(), then.damages().get(0)));
			}
			GateCheck check = GateCheck.of(then.archive(), GateSet.parse(release.manifest().gateSet()), null,
					PackRequest.like(release.manifest().settings()), workers);
			return Files.writeString(file, ReleaseReport.html(then.archive(), release.manifest(), check,
					release.manifest().digest(), book.steps(release), damages));
		}, done -> say(NLS.bind(Messages.ReleasesView_theReportIsIn, file)), problem -> say(Problems.text(problem)));
	}

	private void write(Path file) {
		ArchiveSession session = desk.session().orElseThrow();
		GateCheck check = desk.check().orElseThrow();
		ReleaseBook book = desk.book();
		Archive copy = ArchiveCopy.of(session.archive());
		List<Damage> damages = Damaged.damages(session);
		List<ReleaseManifest> manifests = desk.releases().stream().map(ReleasedState::manifest).toList();
		Work.start(Messages.ReleasesView_writingTheReport, workers -> {
			String digest = OpenArchive.digest(copy);
			ReleaseManifest same = manifests.stream().filter(manifest -> manifest.digest().equals(digest)).findFirst()
					.orElse(null);
			return Files.writeString(file, ReleaseReport.html(copy, same, check, digest, book.steps(null), damages));
		}, done -> say(NLS.bind(Messages.ReleasesView_theReportIsIn, file)), problem -> say(Problems.text(problem)));
	}

	@Override
	public void setFocus() {
		Marked.focus(releases.getControl());
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
