package org.cairnfield.ui.release.internal;

import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.history.Person;
import org.cairnfield.curation.release.Bump;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateResult;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.SemanticVersion;
import org.cairnfield.exchange.pack.PackSettings;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** May it go: each gate with its figure and evidence; then prepare, and sign. */
public final class GatesView extends ViewPart implements ReleaseDesk.Listener {

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private Button ask;
	private Label state;
	private TableViewer gates;
	private Text evidence;
	private Text reason;
	private Button overrule;
	private Label why;
	private Text version;
	private Text notes;
	private Button prepare;
	private Button sign;
	private String prepared = "";

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(6, 4).applyTo(page);
		Composite top = row(page, 2);
		ask = Forms.button(top, "&Ask the gates", "gates.ask", desk::ask);
		state = new Label(top, SWT.NONE);
		state.setData("org.cairnfield.id", "gates.state");
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(state);
		createGates(page);
		createRelease(page);
		desk.add(this);
	}

	private static Composite row(Composite parent, int columns) {
		Composite row = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(columns).spacing(8, 2).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		return row;
	}

	private void createGates(Composite page) {
		gates = Forms.table(page, SWT.SINGLE, "gates.table");
		GridDataFactory.fillDefaults().grab(true, true).hint(300, 120).applyTo(gates.getControl());
		Forms.<GateResult>column(gates, "Gate", 330, SWT.LEFT, result -> result.gate().title());
		Forms.<GateResult>column(gates, "Figure", 70, SWT.RIGHT, GateResult::shownFigure);
		Forms.<GateResult>column(gates, "Must be", 90, SWT.LEFT, GateResult::shownBound);
		Forms.<GateResult>column(gates, "", 100, SWT.LEFT, GateResult::verdict);
		gates.addSelectionChangedListener(event -> enable());
		evidence = new Text(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY);
		evidence.setData("org.cairnfield.id", "gates.evidence");
		GridDataFactory.fillDefaults().grab(true, false).hint(200, 3 * evidence.getLineHeight()).applyTo(evidence);
		Composite let = row(page, 2);
		reason = new Text(let, SWT.BORDER);
		reason.setData("org.cairnfield.id", "gates.reason");
		reason.setMessage("Why this gate may be passed all the same; the release carries it for ever");
		reason.addListener(SWT.Modify, event -> enable());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(reason);
		overrule = Forms.button(let, "&Overrule", "gates.overrule", () -> {
			String text = reason.getText().strip();
			reason.setText("");
			desk.overrule(selected().gate(), text);
		});
	}

	private void createRelease(Composite page) {
		why = new Label(page, SWT.WRAP);
		why.setData("org.cairnfield.id", "gates.bump");
		GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(why);
		Composite release = row(page, 4);
		version = new Text(release, SWT.BORDER);
		version.setMessage("version");
		version.setData("org.cairnfield.id", "gates.version");
		version.addListener(SWT.Modify, event -> enable());
		GridDataFactory.fillDefaults().hint(70, SWT.DEFAULT).applyTo(version);
		notes = new Text(release, SWT.BORDER);
		notes.setMessage("Notes on the release");
		GridDataFactory.fillDefaults().grab(true, false).applyTo(notes);
		prepare = Forms.button(release, "&Prepare", "gates.prepare", this::prepare);
		sign = Forms.button(release, "&Sign", "gates.sign", this::sign);
		prepare.setToolTipText("Writes the manifest; it can still be thrown away");
		sign.setToolTipText("Freezes what was prepared as a tag of the history");
	}

	private GateResult selected() {
		return (GateResult) gates.getStructuredSelection().getFirstElement();
	}

	@Override
	public void deskChanged() {
		Optional<GateCheck> check = desk.check();
		int at = gates.getTable().getSelectionIndex();
		gates.setInput(check.map(GateCheck::results).orElse(List.of()));
		gates.getTable().setSelection(at);
		state.setText(words(check));
		Optional<Bump> bump = desk.bump();
		why.setText(bump.map(b -> b.version() + " is proposed: " + String.join("; ", b.reasons())).orElse(
				"Make a save point first; a release is one."));
		if (version.getText().isBlank() && bump.isPresent()) {
			version.setText(bump.get().version().toString());
		}
		enable();
		why.getParent().layout();
	}

	private String words(Optional<GateCheck> check) {
		if (desk.session().isEmpty()) {
			return "No archive is open.";
		} else if (desk.isAsking()) {
			return "Measuring and checking …";
		} else if (check.isEmpty()) {
			return desk.problem().isEmpty() ? "The content has changed since the gates were asked, or they never were." : desk.problem();
		}
		int holding = check.get().holding().size();
		return holding == 0 ? "All gates are open." : holding + (holding == 1 ? " gate holds" : " gates hold") + " the release back.";
	}

	private void enable() {
		GateResult gate = selected();
		boolean mayChange = desk.mayChange();
		boolean open = desk.check().filter(check -> check.holding().isEmpty()).isPresent();
		ask.setEnabled(desk.session().isPresent() && !desk.isAsking());
		evidence.setText(gate == null ? "Select a gate to see what its figure rests on." : gate.evidence()
				+ (gate.overrule() == null ? "" : "\nOverruled by " + gate.overrule().person() + ": " + gate.overrule().reason()));
		boolean holds = gate != null && gate.holds();
		reason.setEnabled(mayChange && holds);
		overrule.setEnabled(mayChange && holds && !reason.getText().isBlank());
		boolean named = SemanticVersion.is(version.getText().strip());
		prepare.setEnabled(mayChange && open && named);
		sign.setEnabled(mayChange && version.getText().strip().equals(prepared) && !prepared.isEmpty());
	}

	private void prepare() {
		ArchiveSession session = desk.session().orElseThrow();
		ReleaseBook book = desk.book();
		GateCheck check = desk.check().orElseThrow();
		SemanticVersion wanted = SemanticVersion.parse(version.getText().strip());
		Person person = Preferences.person();
		String text = notes.getText().strip();
		if (Saving.whileBusy("Preparing " + wanted, () -> book.prepare(wanted, check, PackSettings.USUAL, person, text))) {
			prepared = wanted.toString();
			session.saved();
			state.setText(prepared + " is prepared; " + (gatesWantAnother() ? "another person signs." : "sign it to release it."));
			enable();
		}
	}

	private boolean gatesWantAnother() {
		return desk.check().filter(check -> check.gates().anotherSigns()).isPresent();
	}

	private void sign() {
		ReleaseBook book = desk.book();
		String signing = prepared;
		Person person = Preferences.person();
		if (Saving.whileBusy("Signing " + signing, () -> book.sign(signing, person, null))) {
			prepared = "";
			version.setText("");
			notes.setText("");
			desk.load();
			state.setText(signing + " is released.");
		}
	}

	@Override
	public void setFocus() {
		gates.getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
