package org.cairnfield.ui.release.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.curation.release.ReleaseReport;
import org.cairnfield.curation.release.ReleasedState;
import org.cairnfield.curation.release.Verification;
import org.cairnfield.model.Archive;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** The releases of the archive, the latest first: what they are, whether they still are it, and the way back. */
public final class ReleasesView extends ViewPart implements ReleaseDesk.Listener {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd").withZone(ZoneId.systemDefault());

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private TableViewer releases;
	private Text about;
	private Button verify;
	private Button compare;
	private Button restore;
	private Button report;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(6, 4).applyTo(page);
		releases = Forms.table(page, SWT.MULTI, "releases.table");
		GridDataFactory.fillDefaults().grab(true, true).hint(200, 100).applyTo(releases.getControl());
		Forms.<ReleasedState>column(releases, "Release", 80, SWT.LEFT, release -> release.version().toString());
		Forms.<ReleasedState>column(releases, "Signed by", 110, SWT.LEFT, release -> release.tag().person());
		Forms.<ReleasedState>column(releases, "On", 100, SWT.LEFT, release -> DAY.format(release.tag().time()));
		releases.addSelectionChangedListener(event -> show());
		about = new Text(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		about.setData("org.cairnfield.id", "releases.about");
		GridDataFactory.fillDefaults().grab(true, true).hint(200, 120).applyTo(about);
		Composite row = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).applyTo(row);
		verify = Forms.button(row, "&Verify", "releases.verify", this::verify);
		compare = Forms.button(row, "&Compare", "releases.compare", this::compare);
		restore = Forms.button(row, "&Restore", "releases.restore", this::restore);
		report = Forms.button(row, "Re&port …", "releases.report", this::report);
		verify.setToolTipText("Computes the digests of all releases again");
		compare.setToolTipText("Two releases with each other, or one with what is saved now");
		restore.setToolTipText("Makes the release the working state, by a new save point; nothing is lost");
		report.setToolTipText("One page for those who decide, of the content as the gates saw it");
		desk.add(this);
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
		verify.setEnabled(!desk.releases().isEmpty());
		compare.setEnabled(selected.size() == 1 || selected.size() == 2);
		restore.setEnabled(desk.mayChange() && selected.size() == 1);
		report.setEnabled(desk.check().isPresent());
		if (selected.size() == 1) {
			about.setText(describe(selected.get(0).manifest()));
		} else if (desk.releases().isEmpty()) {
			about.setText("Nothing is released yet. Ask the gates, prepare, and sign.");
		}
	}

	private static String describe(ReleaseManifest manifest) {
		StringBuilder text = new StringBuilder("Release ").append(manifest.version()).append(", prepared by ")
				.append(manifest.preparedBy()).append(", signed by ").append(manifest.signedBy()).append('\n');
		manifest.bump().forEach(reason -> text.append(reason).append('\n'));
		text.append('\n').append(manifest.notes().isEmpty() ? "" : manifest.notes() + "\n\n");
		manifest.changes().forEach(change -> text.append(change).append('\n'));
		manifest.gates().stream().filter(gate -> !gate.overruledBy().isEmpty()).forEach(gate -> text.append("Overruled by ")
				.append(gate.overruledBy()).append(": ").append(gate.title()).append(" (").append(gate.reason()).append(")\n"));
		return text.append("\nContent (SHA-256): ").append(manifest.digest()).toString();
	}

	private void verify() {
		ReleaseBook book = desk.book();
		about.setText("Verifying …");
		Work.start("Verifying the releases", workers -> book.verify(), found -> {
			StringBuilder text = new StringBuilder();
			for (Verification each : found) {
				text.append(each.isSound() ? "✔ " : "✖ ").append(each.what()).append(each.isSound() ? " is what it was" : "").append('\n');
				each.checks().stream().filter(check -> !check.isSound())
						.forEach(check -> text.append("   ").append(check.what()).append(": ").append(check.problem()).append('\n'));
			}
			say(text.toString());
		}, problem -> say(Problems.text(problem)));
	}

	private void say(String text) {
		if (!about.isDisposed()) {
			about.setText(text);
		}
	}

	private void compare() {
		List<ReleasedState> two = selected();
		OpenArchive open = desk.session().orElseThrow().open();
		about.setText("Comparing …");
		Work.start("Comparing", workers -> {
			try (History history = open.history()) {
				ReleasedState before = two.get(two.size() - 1); // the table has the latest first
				List<String> changes = (two.size() == 2
						? history.compare(before.tag().savePoint(), two.get(0).tag().savePoint())
						: history.compareWithSaved(before.tag().savePoint())).summary();
				return "From " + before.version() + " to " + (two.size() == 2 ? two.get(0).version().toString() : "what is saved now") + ":\n"
						+ (changes.isEmpty() ? "nothing differs" : String.join("\n", changes));
			}
		}, this::say, problem -> say(Problems.text(problem)));
	}

	private void restore() {
		ArchiveSession session = desk.session().orElseThrow();
		String version = selected().get(0).version().toString();
		ReleaseBook book = desk.book();
		Person person = Preferences.person();
		if (Saving.whileBusy("Restoring " + version, () -> {
			if (session.open().isModified()) {
				session.open().save(); // the history has it then
			}
			book.restore(version, person, null);
		})) {
			Sessions.workbench().show(ArchiveSession.of(session.open()));
		}
	}

	private void report() {
		FileDialog dialog = new FileDialog(about.getShell(), SWT.SAVE);
		dialog.setText("Report");
		dialog.setFileName("report.html");
		dialog.setOverwrite(true);
		String file = dialog.open();
		if (file != null) {
			write(Path.of(file));
		}
	}

	private void write(Path file) {
		ArchiveSession session = desk.session().orElseThrow();
		GateCheck check = desk.check().orElseThrow();
		ReleaseBook book = desk.book();
		Archive copy = ArchiveCopy.of(session.archive());
		try {
			String digest = session.open().digest();
			Optional<ReleaseManifest> same = desk.releases().stream().map(ReleasedState::manifest)
					.filter(manifest -> manifest.digest().equals(digest)).findFirst();
			Work.start("Writing the report", workers -> Files.writeString(file,
					ReleaseReport.html(copy, same.orElse(null), check, digest, book.steps(null))), done -> say("The report is in " + file));
		} catch (IOException e) {
			say(Problems.text(e));
		}
	}

	@Override
	public void setFocus() {
		releases.getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
