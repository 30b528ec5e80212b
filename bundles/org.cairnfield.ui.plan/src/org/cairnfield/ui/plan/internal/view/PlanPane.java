package org.cairnfield.ui.plan.internal.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SiteOrder;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.internal.colour.ErrorColours;
import org.cairnfield.ui.plan.internal.gef.Colours;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.gef.PlanMode;
import org.cairnfield.ui.plan.internal.image.ImagePlacing;
import org.cairnfield.ui.plan.internal.raster.Ink;
import org.cairnfield.ui.plan.internal.scene.Elsewhere;
import org.cairnfield.ui.plan.internal.errors.FloorErrors;
import org.cairnfield.ui.plan.internal.surface.FloorSurface;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** The plan with its choices above and its legend below, following the archive on show. */
public final class PlanPane {

	private static final String ERROR_MAP = Messages.PlanPane_errorMapTestSurvey;

	private final Composite pane;
	private final List<SampleColouring> colourings;
	private final Combo floors;
	private final Combo colours;
	private final SurfaceChoice surfaces;
	private final Button places;
	private final ErrorBar errorBar;
	private final ElsewhereLine elsewhere;
	private final OutlineBar outlineBar;
	private final PlanBoards boards;
	private final PlanCanvas plan;
	private final ReadingLine reading;
	private final LegendStrip legend;
	private final SessionListener listener = new Listener();
	private List<Floor> floorList = List.of();
	private ArchiveSession session;

	/** @param chosen hears how the person wants samples coloured */
	public PlanPane(Composite parent, List<SampleColouring> colourings, Consumer<SampleColouring> chosen) {
		this.colourings = List.copyOf(colourings);
		pane = new Composite(parent, SWT.NONE);
		pane.setLayout(layout(1));
		Composite row = new Composite(pane, SWT.NONE);
		row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		RowLayout rowLayout = new RowLayout(SWT.HORIZONTAL);
		rowLayout.center = true;
		rowLayout.spacing = 14;
		row.setLayout(rowLayout);
		NarrowRow.watch(row);
		floors = combo(row, Messages.PlanPane_floor, "plan.floor");
		colours = combo(row, Messages.PlanPane_colourBy, "plan.colourBy");
		places = new Button(row, SWT.CHECK);
		places.setText(Messages.PlanPane_accessPoints);
		places.setToolTipText(Messages.PlanPane_showWhereAccessPointsSeem);
		places.setSelection(true);
		places.setData("org.cairnfield.id", "plan.accessPoints");
		errorBar = new ErrorBar(row, pane, this::showErrors);
		elsewhere = new ElsewhereLine(pane, this::goTo);
		boards = new PlanBoards(pane, ink(Palette.of(parent.getDisplay())), this.colourings.get(0));
		plan = boards.first();
		outlineBar = new OutlineBar(pane, plan);
		surfaces = new SurfaceChoice(row, plan.scene(), surface -> {
			boards.showSurface(surface);
			showLegend();
		});
		surfaces.control().moveAbove(places);
		reading = new ReadingLine(pane, plan, boards::errors);
		legend = new LegendStrip(pane);
		legend.setLayoutData(new GridData(SWT.FILL, SWT.BOTTOM, true, false));
		this.colourings.forEach(each -> colours.add(each.name()));
		colours.add(ERROR_MAP); // in place of colours of the map
		colours.select(0);
		floors.addListener(SWT.Selection, event -> chooseFloor());
		colours.addListener(SWT.Selection, event -> {
			if (colours.getSelectionIndex() == this.colourings.size()) {
				errorBar.turn(true);
			} else {
				colourBy(this.colourings.get(colours.getSelectionIndex()));
				chosen.accept(plan.scene().colouring());
			}
		});
		places.addListener(SWT.Selection, event -> {
			plan.showPlaces(places.getSelection());
			showLegend();
		});
		Sessions.workbench().add(listener);
		Display display = pane.getDisplay();
		org.eclipse.swt.widgets.Listener theme = event -> themeChanged();
		display.addListener(SWT.Settings, theme);
		pane.addListener(SWT.Dispose, event -> {
			Sessions.workbench().remove(listener);
			display.removeListener(SWT.Settings, theme);
		});
	}

	/** Without margins. */
	static GridLayout layout(int columns) {
		GridLayout layout = new GridLayout(columns, false);
		layout.marginWidth = 0;
		layout.marginHeight = 0;
		layout.verticalSpacing = 0;
		return layout;
	}

	/** A list to drop down with its label, in a row. */
	static Combo combo(Composite row, String label, String id) {
		Composite pair = new Composite(row, SWT.NONE);
		GridLayout layout = layout(2);
		pair.setLayout(layout);
		new Label(pair, SWT.NONE).setText(label);
		Combo combo = new Combo(pair, SWT.READ_ONLY | SWT.DROP_DOWN);
		combo.setData("org.cairnfield.id", id);
		return combo;
	}

	/** Whether a control of a row is there at all. */
	static void inRow(Control control, boolean shown) {
		RowData data = new RowData();
		data.exclude = !shown;
		control.setLayoutData(data);
		control.setVisible(shown);
		control.requestLayout();
	}

	private Ink ink(Palette palette) {
		return Ink.of(palette, palette.accent(pane.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB()));
	}

	/** The plan itself. */
	public PlanCanvas plan() {
		return plan;
	}

	public void setFocus() {
		Marked.focus(plan.canvas());
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

	/** What a drag does. */
	void mode(PlanMode mode) {
		boards.shown().forEach(board -> board.plan().mode(mode));
	}

	/** Shows the error map, or the map again. */
	public void turnErrorMap() {
		errorBar.turn(!errorBar.isOn());
	}

	/** One board a way that is shown, or the usual one. */
	private void showErrors() {
		boolean on = errorBar.isOn();
		if (!on && plan.scene().shown() == null) {
			return;
		}
		if (on) {
			boards.showErrors(errorBar.shown(), session);
		} else {
			boards.showMap(session);
		}
		colours.select(on ? colourings.size() : colourings.indexOf(plan.scene().colouring()));
		inRow(colours.getParent(), !on);
		inRow(places, !on);
		inRow(surfaces.control(), !on);
		surfaces.read(session);
		showLegend();
		reading.show();
	}

	/** What is seen, on white, with a title above and the legend below; for the caller to dispose of. */
	Image picture() {
		wear(ink(Palette.PAPER), Palette.PAPER);
		try {
			return pictureNow();
		} finally {
			wear(ink(Palette.of(pane.getDisplay())), null);
		}
	}

	/** The theme of the desktop may be another one now. */
	private void themeChanged() {
		Ink now = ink(Palette.of(pane.getDisplay()));
		if (!now.equals(boards.ink())) {
			wear(now, null);
		}
	}

	/** @param page of the legend and of captions; null for that of the desktop */
	private void wear(Ink ink, Palette page) {
		boards.wear(ink, page);
		legend.setForeground(page == null ? null : new Color(page.foreground()));
		legend.setBackground(page == null ? null : new Color(page.background()));
		showLegend();
	}

	private Image pictureNow() {
		String title = plan.scene().floor() == null ? ""
				: ModelText.name(session.archive()) + ": " + floorName(plan.scene().floor());
		return PlanPrint.picture(pane.getDisplay(), title, List.of(boards.area(), legend));
	}

	/** Lets a person draw the outline of the floor, or keeps what is drawn. */
	void editOutline() {
		errorBar.turn(false);
		if (plan.tools().outline().isOn()) {
			plan.tools().outline().keep();
		} else {
			plan.tools().outline().begin();
		}
	}

	/** Asks how far from the samples the outline of the floor is to lie, and makes it. */
	void outlineFromSamples() {
		errorBar.turn(false);
		outlineBar.fromSamples();
	}

	/** Lets a person click where an access point is mounted. */
	void mount(AccessPoint accessPoint) {
		errorBar.turn(false);
		places.setSelection(true);
		plan.showPlaces(true);
		plan.tools().mount().begin(accessPoint);
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

	/** Shows a floor, and on it what is compared. */
	private void goTo(Floor floor) {
		session.select(session.selection().withFloor(floor));
		plan.look().fitSelection();
	}

	static String floorName(Floor floor) {
		Site site = (Site) floor.eContainer();
		return ModelText.name(site) + ", " + ModelText.name(floor);
	}

	private void listFloors() {
		List<Floor> now = new ArrayList<>();
		if (session != null) {
			SiteOrder.of(session.archive()).forEach(site -> now.addAll(site.getFloors()));
		}
		floorList = now;
		String[] names = now.stream().map(PlanPane::floorName).toArray(String[]::new);
		if (!Arrays.equals(names, floors.getItems())) {
			floors.setItems(names);
			NarrowRow.fit(floors.getParent().getParent());
		}
		floors.setEnabled(!now.isEmpty());
		int shown = session == null ? -1 : now.indexOf(session.selection().floor());
		if (shown < 0) {
			floors.deselectAll();
		} else {
			floors.select(shown);
		}
	}

	private void showFloor() {
		listFloors();
		boards.shown().forEach(board -> board.showFloor(session));
		surfaces.read(session);
		showLegend();
	}

	private void showLegend() {
		boolean some = plan.scene().samples().size() > 0;
		FloorSurface surface = plan.scene().surface();
		if (legend.show(some && plan.scene().colours() != null ? legendNow() : new PlanLegend("", List.of(), null),
				surface == null ? null : surface.legend(background()), some && plan.scene().errors() == null,
				plan.scene().marksTests(), plan.showsPlaces() && !plan.scene().mounted().isEmpty())) {
			pane.layout(true);
		}
	}

	/** One for both of two error maps. */
	private PlanLegend legendNow() {
		List<FloorErrors> errors = boards.errors();
		return errors.isEmpty() ? plan.scene().colours().legend() : ErrorColours.legend(errors, background());
	}

	private RGB background() {
		return Colours.of(plan.scene().ink().background()).getRGB();
	}

	private void showElsewhere() {
		elsewhere.show(session == null ? List.of() : Elsewhere.of(session.selection()));
	}

	private final class Listener implements SessionListener {

		@Override
		public void sessionChanged(ArchiveSession now) {
			session = now;
			showFloor();
			errorBar.turn(false);
			errorBar.session(now);
			showElsewhere();
		}

		@Override
		public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
			if (before.floor() != now.floor()) {
				showFloor();
			}
			if (before.accessPoint() != now.accessPoint()) {
				boards.shown().forEach(board -> board.plan().placesChanged());
				if (surfaces.isOfAnAccessPoint()) {
					surfaces.read(session);
				}
			}
			if (plan.scene().colouring().changesWith(before, now)) {
				colourAgain();
			}
			if (!before.samples().equals(now.samples()) || !before.beside().equals(now.beside())) {
				boards.shown().forEach(board -> board.plan().selectionChanged());
			}
			showElsewhere();
			reading.show();
		}

		@Override
		public void samplesChanged(Set<Survey> surveys) {
			errorBar.outdate();
			if (plan.scene().site() != null
					&& surveys.stream().anyMatch(each -> each.getSite() == plan.scene().site())) {
				boards.shown().forEach(board -> board.readAgain(session));
				surfaces.read(session);
				showLegend();
			}
		}

		@Override
		public void settle() {
			plan.tools().outline().keep();
		}

		@Override
		public void structureChanged() {
			errorBar.outdate();
			listFloors();
			boards.shown().forEach(board -> board.readAgain(session));
			surfaces.read(session);
			showLegend();
		}

		@Override
		public void ledgersChanged() {
			errorBar.outdate();
		}

		@Override
		public void findingsChanged() {
			boards.shown().forEach(board -> board.plan().findingsChanged());
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
