package org.cairnfield.ui.plan.internal.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.internal.gef.Colours;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.image.ImagePlacing;
import org.cairnfield.ui.plan.internal.raster.Ink;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.plan.internal.scene.SampleText;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** The plan with its choices above and its legend below, following the archive on show. */
public final class PlanPane {

	private final Composite pane;
	private final List<SampleColouring> colourings;
	private final Combo floors;
	private final Combo colours;
	private final Button places;
	private final PlanCanvas plan;
	private final Label reading;
	private final LegendStrip legend;
	private final FloorBackdrop backdrop;
	private final SessionListener listener = new Listener();
	private List<Floor> floorList = List.of();
	private ArchiveSession session;

	public PlanPane(Composite parent, List<SampleColouring> colourings) {
		this.colourings = List.copyOf(colourings);
		pane = new Composite(parent, SWT.NONE);
		pane.setLayout(layout(1));
		Composite row = new Composite(pane, SWT.NONE);
		row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		RowLayout rowLayout = new RowLayout(SWT.HORIZONTAL);
		rowLayout.center = true;
		rowLayout.spacing = 14;
		row.setLayout(rowLayout);
		floors = combo(row, "&Floor:", "plan.floor");
		colours = combo(row, "&Colour by:", "plan.colourBy");
		places = new Button(row, SWT.CHECK);
		places.setText("&Access points");
		places.setToolTipText("Show where access points seem to be, from the samples that hear them most strongly");
		places.setSelection(true);
		places.setData("org.cairnfield.id", "plan.accessPoints");
		plan = new PlanCanvas(pane, new PlanScene(ink(parent.getDisplay()), this.colourings.get(0)));
		plan.canvas().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		backdrop = new FloorBackdrop(plan);
		reading = new Label(pane, SWT.NONE);
		reading.setData("org.cairnfield.id", "plan.reading");
		GridData readingData = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		readingData.horizontalIndent = 8;
		readingData.verticalIndent = 2;
		reading.setLayoutData(readingData);
		legend = new LegendStrip(pane);
		legend.setLayoutData(new GridData(SWT.FILL, SWT.BOTTOM, true, false));
		this.colourings.forEach(each -> colours.add(each.name()));
		colours.select(0);
		floors.addListener(SWT.Selection, event -> chooseFloor());
		colours.addListener(SWT.Selection, event -> colourBy(this.colourings.get(colours.getSelectionIndex())));
		places.addListener(SWT.Selection, event -> plan.showPlaces(places.getSelection()));
		plan.watch(this::showReading);
		name();
		Sessions.workbench().add(listener);
		pane.addListener(SWT.Dispose, event -> {
			Sessions.workbench().remove(listener);
			backdrop.cancel();
		});
	}

	private static GridLayout layout(int columns) {
		GridLayout layout = new GridLayout(columns, false);
		layout.marginWidth = 0;
		layout.marginHeight = 0;
		layout.verticalSpacing = 0;
		return layout;
	}

	private static Combo combo(Composite row, String label, String id) {
		Composite pair = new Composite(row, SWT.NONE);
		GridLayout layout = layout(2);
		pair.setLayout(layout);
		new Label(pair, SWT.NONE).setText(label);
		Combo combo = new Combo(pair, SWT.READ_ONLY | SWT.DROP_DOWN);
		combo.setData("org.cairnfield.id", id);
		return combo;
	}

	private static Ink ink(Display display) {
		Color background = display.getSystemColor(SWT.COLOR_LIST_BACKGROUND);
		int text = Colours.rgb(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND));
		RGB accent = Contrast.rim(display.getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB(), background.getRGB());
		return new Ink(Colours.rgb(background), Rgb.between(Colours.rgb(background), text, 0.85), Colours.rgb(new Color(accent)));
	}

	private void name() {
		plan.canvas().getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = "Floor plan. " + (plan.scene().floor() == null ? "" : floorName(plan.scene().floor()) + ", "
						+ plan.scene().samples().size() + " samples. ") + reading.getText();
			}
		});
	}

	/** The plan itself. */
	public PlanCanvas plan() {
		return plan;
	}

	public void setFocus() {
		plan.canvas().setFocus();
	}

	/** Colours samples in another way. */
	public void colourBy(SampleColouring colouring) {
		colours.select(colourings.indexOf(colouring));
		plan.scene().colourBy(colouring);
		plan.drawAgain();
		showLegend();
	}

	/** What the choice of colours offers. */
	public List<SampleColouring> colourings() {
		return colourings;
	}

	/** Lets a person lay a plan image on the floor. */
	public void placeImage() {
		if (session != null && plan.scene().floor() != null) {
			ImagePlacing.open(pane.getShell(), session, plan.scene().floor());
		}
	}

	private void chooseFloor() {
		if (session != null && floors.getSelectionIndex() >= 0) {
			session.select(session.selection().withFloor(floorList.get(floors.getSelectionIndex())));
		}
	}

	private static String floorName(Floor floor) {
		Site site = (Site) floor.eContainer();
		return ModelText.name(site) + ", " + ModelText.name(floor);
	}

	private void listFloors() {
		List<Floor> now = new ArrayList<>();
		if (session != null) {
			session.archive().getSites().forEach(site -> now.addAll(site.getFloors()));
		}
		floorList = now;
		floors.setItems(now.stream().map(PlanPane::floorName).toArray(String[]::new));
		floors.setEnabled(!now.isEmpty());
		floors.requestLayout();
		if (session != null && session.selection().floor() != null) {
			floors.select(now.indexOf(session.selection().floor()));
		}
	}

	private void showFloor() {
		listFloors();
		plan.showFloor(session);
		backdrop.read(session, true);
		showLegend();
	}

	private void showLegend() {
		boolean some = plan.scene().samples().size() > 0;
		if (legend.show(some && plan.scene().colours() != null ? plan.scene().colours().legend()
				: new PlanLegend("", List.of(), null), some)) {
			pane.layout(true);
		}
	}

	private void showReading() {
		int sample = plan.read();
		String text = sample < 0 ? summary() : SampleText.line(plan.scene().samples(), sample);
		if (!text.equals(reading.getText())) {
			reading.setText(text);
			plan.canvas().getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
		}
	}

	private String summary() {
		int all = plan.scene().samples().size();
		int selected = plan.scene().selected().cardinality();
		return all == 0 ? "" : ShownNumbers.text(all, 0) + " samples"
				+ (selected == 0 ? "" : ", " + ShownNumbers.text(selected, 0) + " selected");
	}

	private final class Listener implements SessionListener {

		@Override
		public void sessionChanged(ArchiveSession now) {
			session = now;
			showFloor();
		}

		@Override
		public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
			if (before.floor() != now.floor()) {
				showFloor();
			}
			if (before.accessPoint() != now.accessPoint()) {
				plan.placesChanged();
			}
			if (plan.scene().colouring().changesWith(before, now)) {
				colourAgain();
			}
			if (!before.samples().equals(now.samples()) || !before.beside().equals(now.beside())) {
				plan.selectionChanged();
			}
			showReading();
		}

		@Override
		public void samplesChanged(Set<Survey> surveys) {
			if (plan.scene().site() != null && surveys.stream().anyMatch(each -> each.getSite() == plan.scene().site())) {
				plan.readAgain();
				backdrop.read(session, false);
				showLegend();
			}
		}

		@Override
		public void structureChanged() {
			listFloors();
			plan.readAgain();
			backdrop.read(session, false);
			showLegend();
		}

		@Override
		public void findingsChanged() {
			plan.findingsChanged();
			colourAgain();
		}

		private void colourAgain() {
			if (plan.scene().colour()) {
				plan.drawAgain();
			}
			showLegend();
		}
	}
}
