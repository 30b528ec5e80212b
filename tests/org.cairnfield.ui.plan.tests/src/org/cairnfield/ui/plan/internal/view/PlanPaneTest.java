package org.cairnfield.ui.plan.internal.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.ui.plan.internal.colour.Colourings;
import org.cairnfield.ui.plan.internal.gef.PlanMode;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.plan.internal.scene.SampleLabel;
import org.cairnfield.ui.scope.Companion;
import org.cairnfield.ui.scope.CompanionRole;
import org.cairnfield.ui.scope.MarkedPlace;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan with widgets and GEF, driven by events of SWT. Skipped where there is no display. */
class PlanPaneTest {

	@TempDir
	Path folder;
	private Display display;
	private Shell shell;
	private OpenArchive open;
	private ArchiveSession session;
	private Survey survey;
	private PlanPane pane;
	private Canvas canvas;

	@BeforeEach
	void open() throws Exception {
		assumeTrue(System.getenv("DISPLAY") != null, "no display: the plan's widgets are not tested");
		open = new ArchiveStore().create(folder.resolve("archive"), "Marrow Quay Museums");
		Device device = ModelFactory.eINSTANCE.createDevice();
		device.setId("guide-a");
		device.setName("Wrist guide A");
		open.archive().getDevices().add(device);
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		site.setName("Tide House");
		survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId("th-spring");
		survey.setName("th-spring");
		survey.setDate(LocalDate.of(2031, 4, 9));
		survey.setDevice(device);
		SampleTableBuilder table = SampleTable.builder();
		for (int i = 0; i < 25; i++) { // 5 × 5, 4 m apart; the last on the floor above
			table.sample(String.format(Locale.ROOT, "S%02d", i), i == 24 ? 1 : 0, 2 + i % 5 * 4, 2 + i / 5 * 4)
					.reading("ap", -50 - i);
		}
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(table.build());
		survey.setSamples(samples);
		site.getSurveys().add(survey);
		for (int level = 0; level < 2; level++) {
			Floor floor = ModelFactory.eINSTANCE.createFloor();
			floor.setLevel(level);
			floor.setOutline(Outline.parse("0,0 20,0 20,20 0,20"));
			site.getFloors().add(floor);
		}
		open.archive().getSites().add(site);
		display = new Display();
		shell = new Shell(display, SWT.NO_TRIM);
		shell.setLayout(new FillLayout());
		shell.setSize(700, 600);
		pane = new PlanPane(shell, Colourings.all(), colouring -> {
		});
		canvas = pane.plan().canvas();
		shell.open();
		session = ArchiveSession.of(open);
		Sessions.workbench().show(session);
		until(() -> pane.plan().isDrawn() && canvas.getSize().x > 0);
	}

	@AfterEach
	void close() throws Exception {
		if (display != null) {
			Sessions.workbench().show(null);
			shell.dispose();
			display.dispose();
			open.close();
		}
	}

	private void until(BooleanSupplier condition) {
		long end = System.nanoTime() + 20_000_000_000L;
		while (!condition.getAsBoolean()) {
			assertTrue(System.nanoTime() < end, "waited too long");
			if (!display.readAndDispatch()) {
				Thread.onSpinWait();
			}
		}
		while (display.readAndDispatch()) {
			// until quiet
		}
	}

	private SampleRef sample(int row) {
		return new SampleRef(survey, row);
	}

	private Point at(int row) {
		return pane.plan().toCanvas(sample(row)).orElseThrow();
	}

	private void mouse(int type, Point at, int keys) {
		Event event = new Event();
		event.x = at.x;
		event.y = at.y;
		event.button = type == SWT.MouseMove ? 0 : 1;
		event.stateMask = keys | (type == SWT.MouseDown ? 0 : SWT.BUTTON1);
		event.count = 1;
		canvas.notifyListeners(type, event);
	}

	private void click(Point at, int keys) {
		mouse(SWT.MouseDown, at, keys);
		mouse(SWT.MouseUp, at, keys);
	}

	private void drag(Point... along) {
		mouse(SWT.MouseDown, along[0], 0);
		for (Point each : along) {
			mouse(SWT.MouseMove, each, 0);
		}
		mouse(SWT.MouseUp, along[along.length - 1], 0);
	}

	private void key(int keyCode, int keys) {
		Event event = new Event();
		event.keyCode = keyCode;
		event.character = keyCode < 128 ? (char) keyCode : 0;
		event.stateMask = keys;
		canvas.notifyListeners(SWT.KeyDown, event);
	}

	private static Point beside(Point of, int columns, int rows) {
		return new Point(of.x + columns, of.y + rows);
	}

	@Test
	void clickSelectsAndWithKeysAddsOrTakesAway() {
		click(at(7), 0);
		assertEquals(List.of(sample(7)), session.selection().samples());
		click(at(8), SWT.SHIFT);
		assertEquals(List.of(sample(7), sample(8)), session.selection().samples());
		click(at(7), SWT.MOD1);
		assertEquals(List.of(sample(8)), session.selection().samples());
		click(beside(at(8), 30, 30), 0);
		assertEquals(List.of(), session.selection().samples());
	}

	@Test
	void dragOverTheFloorSelectsARectangle() {
		drag(beside(at(6), -15, 15), at(7), beside(at(12), 15, -15));
		assertEquals(List.of(sample(6), sample(7), sample(11), sample(12)), session.selection().samples());
	}

	@Test
	void lassoSelectsWhatItGoesRound() {
		pane.plan().mode(PlanMode.LASSO);
		// a triangle round 0, 5 and 6, with 1 outside of its slope
		drag(beside(at(0), -12, 25), beside(at(5), -12, -12), beside(at(6), 25, -12), beside(at(6), 25, 0),
				beside(at(0), 14, 25));
		assertEquals(List.of(sample(0), sample(5), sample(6)), session.selection().samples());
	}

	@Test
	void dragOfASelectedSampleMovesItAndUndoTakesItBack() {
		click(at(12), 0);
		until(() -> true);
		double scale = pane.plan().camera().pixelsPerMetre();
		drag(at(12), beside(at(12), 20, 0), beside(at(12), 40, -20));
		assertEquals(10 + 40 / scale, survey.table().xMetres(12), 0.006);
		assertEquals(10 + 20 / scale, survey.table().yMetres(12), 0.006);
		assertEquals(survey.table().xMetres(12), Math.rint(survey.table().xMetres(12) * 100) / 100, "to a centimetre");
		session.commands().undo();
		assertEquals(10, survey.table().xMetres(12));
		assertEquals(10, survey.table().yMetres(12));
		assertFalse(session.commands().canUndo(), "one change");
	}

	@Test
	void dropsASampleWhereTheButtonIsReleased() {
		click(at(12), 0);
		until(() -> true);
		double scale = pane.plan().camera().pixelsPerMetre();
		Point from = at(12);
		mouse(SWT.MouseDown, from, 0);
		mouse(SWT.MouseMove, beside(from, 20, 0), 0);
		mouse(SWT.MouseUp, beside(from, 40, -20), 0);
		assertEquals(10 + 40 / scale, survey.table().xMetres(12), 0.006);
		assertEquals(10 + 20 / scale, survey.table().yMetres(12), 0.006);
	}

	@Test
	void dropsASampleThatIsReleasedBeforeAnyMoveArrives() {
		click(at(12), 0);
		until(() -> true);
		double scale = pane.plan().camera().pixelsPerMetre();
		Point from = at(12);
		mouse(SWT.MouseDown, from, 0);
		mouse(SWT.MouseUp, beside(from, 40, -20), 0);
		assertEquals(10 + 40 / scale, survey.table().xMetres(12), 0.006);
		assertEquals(10 + 20 / scale, survey.table().yMetres(12), 0.006);
		assertEquals(List.of(sample(12)), session.selection().samples());
	}

	@Test
	void bandIsDrawnThoughItIsReleasedBeforeAnyMoveArrives() {
		mouse(SWT.MouseDown, beside(at(5), -12, -12), 0);
		mouse(SWT.MouseUp, beside(at(1), 12, 12), 0);
		assertEquals(List.of(sample(0), sample(1), sample(5), sample(6)), session.selection().samples());
	}

	@Test
	void lassoEndsWhereTheButtonIsReleased() {
		pane.plan().mode(PlanMode.LASSO);
		mouse(SWT.MouseDown, beside(at(0), -12, 25), 0);
		mouse(SWT.MouseMove, beside(at(5), -12, -12), 0);
		mouse(SWT.MouseUp, beside(at(6), 25, -12), 0);
		assertEquals(List.of(sample(0), sample(5), sample(6)), session.selection().samples());
	}

	@Test
	void dragOfSeveralSelectedSamplesIsOneChange() {
		session.select(session.selection().withSamples(List.of(sample(0), sample(1))));
		until(() -> pane.plan().isDrawn());
		drag(at(0), beside(at(0), 20, 0), beside(at(0), 30, 0));
		assertNotEquals(2, survey.table().xMetres(0));
		assertNotEquals(6, survey.table().xMetres(1));
		session.commands().undo();
		assertEquals(2, survey.table().xMetres(0));
		assertEquals(6, survey.table().xMetres(1));
	}

	@Test
	void wheelZoomsAtThePointer() {
		Point before = at(3);
		double scale = pane.plan().camera().pixelsPerMetre();
		Event event = new Event();
		event.x = before.x;
		event.y = before.y;
		event.count = 3;
		canvas.notifyListeners(SWT.MouseWheel, event);
		assertEquals(1.2 * scale, pane.plan().camera().pixelsPerMetre(), 1e-9);
		assertEquals(before.x, at(3).x, 1);
		assertEquals(before.y, at(3).y, 1);
	}

	@Test
	void arrowsWalkFromSampleToSampleAndEnterSelects() {
		click(at(6), 0);
		key(SWT.ARROW_RIGHT, 0);
		key(SWT.ARROW_UP, 0);
		key(SWT.CR, 0);
		assertEquals(List.of(sample(12)), session.selection().samples());
	}

	@Test
	void selectionElsewhereIsBroughtIntoSight() {
		for (int i = 0; i < 12; i++) {
			pane.plan().look().zoom(1.2, 0, 0);
		}
		assertFalse(canvas.getClientArea().contains(at(0)));
		session.select(session.selection().withSamples(List.of(sample(0))));
		assertTrue(canvas.getClientArea().contains(at(0)));
	}

	@Test
	void selectionOnAnotherFloorShowsThatFloor() {
		assertTrue(pane.plan().toCanvas(sample(24)).isEmpty());
		session.select(session.selection().withSamples(List.of(sample(24))));
		assertTrue(pane.plan().toCanvas(sample(24)).isPresent());
		assertTrue(pane.plan().toCanvas(sample(0)).isEmpty());
	}

	@Test
	void labelsWhatIsCompared() {
		session.select(session.selection().withSamples(List.of(sample(6))));
		assertEquals(List.of(), pane.plan().scene().labels(), "nothing is compared");
		session.select(
				session.selection().withBeside(List.of(new Companion(sample(24), CompanionRole.CARRIER, "carrier"),
						new Companion(sample(8), CompanionRole.MEMBER, "nearest of C2"))));
		assertEquals(List.of(label(6, "under review"), label(8, "nearest of C2")), pane.plan().scene().labels());
		assertEquals(List.of(sample(6), sample(8)), pane.plan().scene().refs(pane.plan().scene().marked()));
		session.select(session.selection().withFloor(survey.getSite().getFloors().get(1)));
		assertEquals(List.of(label(0, "carrier")), pane.plan().scene().labels(), "the one sample of that floor");
	}

	private SampleLabel label(int index, String text) {
		PlanScene scene = pane.plan().scene();
		return new SampleLabel(scene.xMetres()[index], scene.yMetres()[index], text);
	}

	@Test
	void marksPlacesOfTheFloorOnShow() {
		List<Floor> floors = survey.getSite().getFloors();
		MarkedPlace here = new MarkedPlace(floors.get(0), 3, 4, "A. Steward");
		session.select(session.selection().withSamples(List.of(sample(6)))
				.withMarked(List.of(here, new MarkedPlace(floors.get(1), 3, 4, "B. Reviewer"))));
		assertEquals(List.of(here), pane.plan().scene().crosses());
		assertEquals(List.of(new SampleLabel(3, 4, "A. Steward")), pane.plan().scene().labels());
		session.select(session.selection().withSamples(List.of(sample(8))));
		assertEquals(List.of(), pane.plan().scene().crosses(), "they go with the sample");
	}

	@Test
	void keyZeroShowsTheWholeFloor() {
		double whole = pane.plan().camera().pixelsPerMetre();
		key('+', 0);
		assertTrue(pane.plan().camera().pixelsPerMetre() > whole);
		key('0', 0);
		assertEquals(whole, pane.plan().camera().pixelsPerMetre());
	}
}
