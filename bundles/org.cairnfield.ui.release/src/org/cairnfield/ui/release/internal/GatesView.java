package org.cairnfield.ui.release.internal;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.history.Person;
import org.cairnfield.curation.release.Bump;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateResult;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.curation.release.SemanticVersion;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.show.SmallScreen;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** May it go: each gate with its figure and evidence; then prepare, and sign. */
public final class GatesView extends ViewPart implements ReleaseDesk.Listener {

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private Button ask;
	private Button set;
	private Label state;
	private TableViewer gates;
	private Text evidence;
	private Text reason;
	private Button overrule;
	private Label why;
	private Text changes;
	private Text version;
	private Text notes;
	private Button prepare;
	private Button discard;
	private Button sign;
	private ArchiveSession shown;
	private String offered = "";

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(6, 4).applyTo(page);
		Composite top = row(page, 3);
		ask = Forms.button(top, Messages.GatesView_checkGates, "gates.ask", desk::ask);
		set = Forms.button(top, Messages.GatesView_setTheGates, "gates.set", this::setGates);
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
		gates = Forms.table(page, SWT.SINGLE, "gates.table", Messages.GatesView_gates);
		GridDataFactory.fillDefaults().grab(true, true).hint(300, 120).applyTo(gates.getControl());
		Forms.<GateResult>column(gates, Messages.GatesView_gate, SmallScreen.isThere() ? 160 : 340, SWT.LEFT,
				result -> result.gate().title());
		Forms.<GateResult>column(gates, Messages.GatesView_figure, 70, SWT.RIGHT, GateResult::shownFigure);
		Forms.<GateResult>column(gates, Messages.GatesView_mustBe, 90, SWT.LEFT, GateResult::shownBound);
		Forms.<GateResult>column(gates, Messages.GatesView_verdict, 110, SWT.LEFT, GateResult::verdict);
		gates.addSelectionChangedListener(event -> enable());
		evidence = new Text(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY);
		Marked.named(Marked.id(evidence, "gates.evidence"), Messages.GatesView_evidenceForTheGate);
		GridDataFactory.fillDefaults().grab(true, false).hint(200, 3 * evidence.getLineHeight()).applyTo(evidence);
		Composite let = row(page, 2);
		reason = new Text(let, SWT.BORDER);
		reason.setData("org.cairnfield.id", "gates.reason");
		reason.setMessage(Messages.GatesView_whyThisGateMayBe);
		reason.addListener(SWT.Modify, event -> enable());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(reason);
		overrule = Forms.button(let, Messages.GatesView_overrule, "gates.overrule", () -> {
			String text = reason.getText().strip();
			reason.setText("");
			desk.overrule(selected().gate(), text);
		});
	}

	private void createRelease(Composite page) {
		why = new Label(page, SWT.WRAP);
		why.setData("org.cairnfield.id", "gates.bump");
		GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(why);
		Composite texts = row(page, 2);
		((GridLayout) texts.getLayout()).makeColumnsEqualWidth = true;
		heading(texts, Messages.GatesView_whatChangedSinceTheLast);
		heading(texts, Messages.GatesView_notesOnTheReleaseIn);
		changes = text(texts, SWT.READ_ONLY, "gates.changes", Messages.GatesView_whatChangedSinceTheLast);
		notes = text(texts, SWT.NONE, "gates.notes", Messages.GatesView_notesOnTheRelease);
		notes.addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		Composite release = row(page, 5);
		new Label(release, SWT.NONE).setText(Messages.GatesView_version);
		version = new Text(release, SWT.BORDER);
		version.setData("org.cairnfield.id", "gates.version");
		version.addListener(SWT.Modify, event -> enable());
		GridDataFactory.fillDefaults().hint(90, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(version);
		prepare = Forms.button(release, Messages.GatesView_prepare, "gates.prepare", this::prepare);
		discard = Forms.button(release, Messages.GatesView_discard, "gates.discard", this::discard);
		sign = Forms.button(release, Messages.GatesView_sign, "gates.sign", this::sign);
		prepare.setToolTipText(Messages.GatesView_writesTheManifestItCan);
		discard.setToolTipText(Messages.GatesView_throwsAwayWhatWasPrepared);
		sign.setToolTipText(Messages.GatesView_freezesWhatWasPreparedAs);
	}

	private static void heading(Composite parent, String words) {
		Label heading = new Label(parent, SWT.WRAP);
		heading.setText(words);
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).align(SWT.FILL, SWT.END)
				.applyTo(heading);
	}

	private static Text text(Composite parent, int style, String id, String name) {
		Text text = new Text(parent, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER | style);
		Marked.named(Marked.id(text, id), name);
		GridDataFactory.fillDefaults().grab(true, false).hint(100, 3 * text.getLineHeight()).applyTo(text);
		return text;
	}

	/** They are kept at once, and asked anew by whoever wants to know. */
	private void setGates() {
		ReleaseBook book = desk.book();
		try {
			GatesDialog dialog = new GatesDialog(ask.getShell(), book.gates());
			if (dialog.open() == Window.OK && Saving.whileBusy(Messages.GatesView_settingTheGates,
					() -> book.keep(dialog.gates(), Preferences.person()))) {
				desk.forget();
			}
		} catch (IOException e) {
			Problems.show(Messages.GatesView_theGatesCannotBeRead, e);
		}
	}

	private GateResult selected() {
		return (GateResult) gates.getStructuredSelection().getFirstElement();
	}

	@Override
	public void deskChanged() {
		ArchiveSession now = desk.session().orElse(null);
		if (now != shown) {
			shown = now;
			version.setText("");
			notes.setText("");
		}
		Optional<GateCheck> check = desk.check();
		int at = gates.getTable().getSelectionIndex();
		gates.setInput(check.map(GateCheck::results).orElse(List.of()));
		gates.getTable().setSelection(at);
		state.setText(words(check));
		Optional<Bump> bump = desk.bump();
		why.setText(bump.map(b -> NLS.bind(Messages.GatesView_isProposed, b.version(), String.join("; ", b.reasons())))
				.orElse(
						Messages.GatesView_makeASavePointFirst));
		changes.setText(desk.releases().isEmpty() ? Messages.GatesView_theFirstReleaseHasEverything
				: NLS.bind(Messages.GatesView_toWhatIsSaved, desk.releases().get(0).version(),
						desk.changes().isEmpty() ? "nothing" : String.join(", ", desk.changes())));
		offer(desk.prepared().stream().map(ReleaseManifest::version).findFirst()
				.or(() -> bump.map(b -> b.version().toString())).orElse(""));
		enable();
		why.getParent().layout();
	}

	/** The version that the person has typed stays. */
	private void offer(String next) {
		if (version.getText().isBlank() || version.getText().equals(offered)) {
			offered = next;
			if (!version.getText().equals(next)) {
				version.setText(next);
			}
		}
	}

	private String words(Optional<GateCheck> check) {
		if (desk.session().isEmpty()) {
			return Messages.GatesView_noArchiveIsOpen;
		} else if (desk.isAsking()) {
			return Messages.GatesView_measuringAndChecking;
		} else if (check.isEmpty()) {
			return !desk.problem().isEmpty() ? desk.problem()
					: prepared().isPresent()
							? NLS.bind(Messages.GatesView_wasPreparedBySignIt,
									new Object[] { prepared().get().version(), prepared().get().preparedBy(),
											Preferences.person().name() })
							: Messages.GatesView_theContentHasChangedSince;
		}
		if (prepared().isPresent()) {
			return NLS
					.bind(Messages.GatesView_isPreparedBy,
							new Object[] { prepared().get().version(), prepared().get().preparedBy(), gatesWantAnother()
									? Messages.GatesView_anotherPersonSigns
									: NLS.bind(Messages.GatesView_signItAsToRelease, Preferences.person().name()) });
		}
		int holding = check.get().holding().size();
		return holding == 0 ? Messages.GatesView_allGatesAreMet
				: NLS.bind(Messages.GatesView_theReleaseBack, holding,
						holding == 1 ? Messages.GatesView_gateHolds : Messages.GatesView_gatesHold);
	}

	private void enable() {
		GateResult gate = selected();
		boolean mayChange = desk.mayChange();
		boolean open = desk.check().filter(check -> check.holding().isEmpty()).isPresent();
		ask.setEnabled(desk.session().isPresent() && !desk.isAsking());
		set.setEnabled(mayChange);
		evidence.setText(gate == null ? Messages.GatesView_selectAGateToSee
				: gate.evidence()
						+ (gate.overrule() == null ? ""
								: NLS.bind(Messages.GatesView_overruledBy, gate.overrule().person(),
										gate.overrule().reason())));
		boolean holds = gate != null && gate.holds();
		reason.setEnabled(mayChange && holds);
		overrule.setEnabled(mayChange && holds && !reason.getText().isBlank());
		boolean named = SemanticVersion.is(version.getText().strip());
		prepare.setEnabled(mayChange && open && named);
		discard.setEnabled(mayChange && prepared().isPresent());
		sign.setEnabled(mayChange && prepared().isPresent());
	}

	/** What was prepared for the version that is named. */
	private Optional<ReleaseManifest> prepared() {
		return desk.prepared().stream().filter(manifest -> manifest.version().equals(version.getText().strip()))
				.findFirst();
	}

	private void prepare() {
		ArchiveSession session = desk.session().orElseThrow();
		ReleaseBook book = desk.book();
		GateCheck check = desk.check().orElseThrow();
		SemanticVersion wanted = SemanticVersion.parse(version.getText().strip());
		String text = notes.getText().strip();
		ReleaseManifest[] made = new ReleaseManifest[1];
		if (Saving.inName(session, NLS.bind(Messages.GatesView_preparing, wanted),
				person -> made[0] = book.prepare(wanted, check, person, text))) {
			desk.prepared(made[0]);
		}
	}

	/** Its notes stay on show, so that nobody has to write them again. */
	private void discard() {
		ReleaseBook book = desk.book();
		ReleaseManifest thrownAway = prepared().orElseThrow();
		if (Saving.inName(desk.session().orElseThrow(),
				NLS.bind(Messages.GatesView_discarding, thrownAway.version()),
				person -> book.discard(thrownAway.version(), person))) {
			if (notes.getText().isBlank()) {
				notes.setText(thrownAway.notes());
			}
			desk.discarded(thrownAway);
			state.setText(NLS.bind(Messages.GatesView_whatWasPreparedIsDiscarded, thrownAway.version()));
		}
	}

	private boolean gatesWantAnother() {
		return desk.check().filter(check -> check.gates().anotherSigns()).isPresent();
	}

	private void sign() {
		ReleaseBook book = desk.book();
		String signing = version.getText().strip();
		Person person = Preferences.person();
		if (Saving.whileBusy(NLS.bind(Messages.GatesView_signing, signing), () -> book.sign(signing, person, null))) {
			version.setText("");
			notes.setText("");
			desk.signed();
			state.setText(NLS.bind(Messages.GatesView_isReleased, signing));
		}
	}

	@Override
	public void setFocus() {
		Marked.focus(gates.getControl());
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
