package org.cairnfield.ui.internal.fingerprint;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SetAccessPointStateCommand;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.charts.Bins;
import org.cairnfield.ui.charts.Histogram;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.internal.fingerprint.model.Hearing;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Where and how strongly the chosen access point is heard, survey by survey, and whether it belongs in the map. */
public final class AccessPointView extends ViewPart implements SessionListener {

	private static final double BIN_DB = 5;

	private Text facts;
	private TableViewer places;
	private Histogram levels;
	private Text reason;
	private Button state;
	private ArchiveSession session;
	private int asked;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		facts = new Text(page, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP);
		Marked.named(Marked.id(facts, "accessPoint.facts"), Messages.AccessPointView_aboutTheAccessPoint);
		GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(100, SWT.DEFAULT).applyTo(facts);
		SashForm sash = new SashForm(page, SWT.VERTICAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		createPlaces(sash);
		levels = new Histogram(sash, SWT.NONE);
		levels.setName(Messages.AccessPointView_levelsOfTheAccessPoint);
		levels.setEmptyText(Messages.AccessPointView_noLevelToShow);
		createState(page);
		Sessions.workbench().add(this);
	}

	private void createPlaces(Composite parent) {
		places = new TableViewer(parent, SWT.FULL_SELECTION | SWT.BORDER);
		places.getTable().setHeaderVisible(true);
		Marked.named(Marked.id(places.getTable(), "accessPoint.places"), Messages.AccessPointView_whereItIsHeard);
		places.setContentProvider(ArrayContentProvider.getInstance());
		column(Messages.AccessPointView_survey, 110, Hearing.Place::survey);
		column(Messages.AccessPointView_floor, 50, place -> Integer.toString(place.level()));
		column(Messages.AccessPointView_heardBy, 85,
				place -> NLS.bind(Messages.AccessPointView_of, place.samples(), place.of()));
		column(Messages.AccessPointView_medianDbm, 90, place -> String.format(Locale.ROOT, "%.0f", place.medianDbm()));
		column(Messages.AccessPointView_strongestDbm, 110, place -> Integer.toString(place.strongestDbm()));
		places.addDoubleClickListener(event -> showStrongest());
	}

	private void column(String title, int width, Function<Hearing.Place, String> text) {
		TableViewerColumn column = new TableViewerColumn(places, SWT.NONE);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(place -> text.apply((Hearing.Place) place)));
	}

	/** The sample that heard it best tells where it hangs, roughly. */
	private void showStrongest() {
		Hearing.Place place = (Hearing.Place) places.getStructuredSelection().getFirstElement();
		ArchiveIndex.of(session.archive()).sample(new SampleKey(place.surveyId(), place.strongest()))
				.ifPresent(sample -> session.select(session.selection().withSamples(List.of(sample))));
	}

	private void createState(Composite parent) {
		Composite row = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(6, 2).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		reason = new Text(row, SWT.BORDER | SWT.SINGLE);
		reason.setMessage(Messages.AccessPointView_whyItShouldNotBe);
		reason.setData("org.cairnfield.id", "accessPoint.reason");
		reason.addListener(SWT.Modify, event -> enable());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(reason);
		state = new Button(row, SWT.PUSH);
		state.setData("org.cairnfield.id", "accessPoint.state");
		state.addListener(SWT.Selection, event -> changeState());
	}

	private void changeState() {
		AccessPoint accessPoint = session.selection().accessPoint();
		if (session
				.run(accessPoint.isKept() ? SetAccessPointStateCommand.setAside(List.of(accessPoint), reason.getText())
						: SetAccessPointStateCommand.keep(List.of(accessPoint)))) {
			reason.setText("");
		}
	}

	private AccessPoint shown() {
		return session == null ? null : session.selection().accessPoint();
	}

	private void enable() {
		AccessPoint accessPoint = shown();
		boolean mayChange = accessPoint != null && session.readOnlyReason().isEmpty();
		boolean kept = accessPoint == null || accessPoint.isKept();
		state.setText(kept ? Messages.AccessPointView_setAside : Messages.AccessPointView_backIntoTheMap);
		reason.setEnabled(mayChange && kept);
		state.setEnabled(mayChange && (!kept || !reason.getText().isBlank()));
		state.getParent().layout();
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		show();
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		if (before.accessPoint() != now.accessPoint()) {
			show();
		}
	}

	@Override
	public void structureChanged() {
		show();
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		show();
	}

	@Override
	public void findingsChanged() {
		describe();
	}

	private void show() {
		describe();
		enable();
		AccessPoint accessPoint = shown();
		int question = ++asked;
		if (accessPoint == null) {
			fill(new Hearing(List.of(), new double[0]));
			return;
		}
		Archive still = ArchiveCopy.of(session.archive());
		String id = accessPoint.getId();
		Work.start(NLS.bind(Messages.AccessPointView_lookingWhereIsHeard, accessPoint.getAddress()),
				workers -> Hearing.of(still, id), hearing -> {
					if (question == asked && !facts.isDisposed()) {
						fill(hearing);
					}
				});
	}

	private void fill(Hearing hearing) {
		places.setInput(hearing.places());
		levels.setBins(Bins.of(hearing.levelsDbm(), BIN_DB), Axis.linear("RSSI", "dBm"), "samples");
	}

	private void describe() {
		AccessPoint accessPoint = shown();
		if (accessPoint == null) {
			facts.setText(Messages.AccessPointView_chooseAnAccessPointIn);
		} else {
			StringBuilder text = new StringBuilder(accessPoint.getAddress());
			if (accessPoint.getBand() != null) {
				text.append("  ").append(band(accessPoint.getBand()));
			}
			text.append(
					accessPoint.getChannel() > 0 ? NLS.bind(Messages.AccessPointView_channel, accessPoint.getChannel())
							: "");
			text.append(accessPoint.getGroup() == null ? ""
					: NLS.bind(Messages.AccessPointView_oneRadioWith, accessPoint.getGroup()));
			text.append(accessPoint.getPlace() == null ? ""
					: NLS.bind(Messages.AccessPointView_mountedAt,
							ModelText.place(accessPoint.getPlace(), session.archive())));
			text.append(accessPoint.getCountsAs() == null ? ""
					: NLS.bind(Messages.AccessPointView_countsAsInTheMap,
							ArchiveIndex.of(session.archive()).accessPoint(accessPoint.getCountsAs())
									.map(AccessPoint::getAddress).orElse(accessPoint.getCountsAs())));
			text.append(
					accessPoint.isKept() ? "" : NLS.bind(Messages.AccessPointView_setAside2, accessPoint.getReason()));
			for (Finding finding : session.findings().of(accessPoint)) {
				text.append('\n').append(finding.severity().code()).append(": ").append(finding.message());
			}
			facts.setText(text.toString());
		}
		facts.getParent().layout();
	}

	private static String band(WifiBand band) {
		return switch (band) {
		case GHZ_2_4 -> Messages.AccessPointView_24Ghz;
		case GHZ_5 -> Messages.AccessPointView_5Ghz;
		case GHZ_6 -> Messages.AccessPointView_6Ghz;
		};
	}

	@Override
	public void setFocus() {
		Marked.focus(places.getControl());
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(this);
		super.dispose();
	}
}
