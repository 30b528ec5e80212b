package org.cairnfield.ui.plan.internal.gef;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.cairnfield.ui.plan.internal.model.ShownPlace;
import org.cairnfield.ui.plan.internal.raster.FloorRaster;
import org.cairnfield.ui.plan.internal.errors.ErrorsShown;
import org.cairnfield.ui.plan.internal.raster.Ink;
import org.cairnfield.ui.plan.internal.scene.PlanScene;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.Request;
import org.eclipse.gef.requests.SelectionRequest;
import org.eclipse.gef.tools.SelectionTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** The plan as a widget: a GEF viewer, what it shows, and from where it is seen. */
public final class PlanCanvas implements PlanGeometry {

	/** How far from a sample the pointer may be, in points. */
	private static final int REACH = 8;

	private final PlanScene scene;
	private final PlanViewer viewer = new PlanViewer();
	private final PlanRootPart root = new PlanRootPart();
	private final SessionCommands commands = new SessionCommands();
	private final FloorTiles tiles;
	private final PlanPart part;
	private final Furniture furniture;
	private final List<Runnable> watchers = new ArrayList<>();
	private final PlanChoice choice;
	private final PlanLook look;
	private final PlanTools tools;
	private PlanCanvas twin;
	private ArchiveSession session;
	private PlanMode mode = PlanMode.SELECT;
	private boolean places = true;
	private boolean spaceDown;
	private boolean onPaper;
	private int hover = -1;
	private int focus = -1;

	/** @param id by which tests find it */
	public PlanCanvas(Composite parent, PlanScene scene, String id) {
		this.scene = scene;
		choice = new PlanChoice(scene);
		Canvas canvas = (Canvas) viewer.createControl(parent);
		canvas.setData("org.cairnfield.id", id);
		canvas.setData(GEOMETRY, this);
		canvas.setFont(parent.getFont());
		tiles = new FloorTiles(canvas, Colours.of(scene.ink().background()), this::repaint);
		EditDomain domain = new EditDomain();
		domain.setCommandStack(commands);
		domain.setDefaultTool(new SelectionTool() {
			@Override
			public void mouseWheelScrolled(Event event, EditPartViewer over) {
				// zooms the plan, see PlanPointer
			}
		});
		domain.loadDefaultTool();
		domain.addViewer(viewer);
		viewer.setRootEditPart(root);
		viewer.setEditPartFactory(this::part);
		part = new PlanPart(this);
		viewer.setContents(part);
		furniture = new Furniture(this);
		root.furnish(furniture);
		tools = new PlanTools(this);
		root.furnish(tools.figures());
		new PlanKeys(this, canvas);
		new PlanPointer(this, canvas);
		look = new PlanLook(this);
		canvas.addListener(SWT.Dispose, event -> tiles.dispose());
	}

	private EditPart part(EditPart context, Object model) {
		EditPart made = model instanceof SamplePart.Item ? new SamplePart(this) : new PlacePart(this);
		made.setModel(model);
		return made;
	}

	/** Hears when what is under the pointer or the keyboard is another. */
	public void watch(Runnable watcher) {
		watchers.add(watcher);
	}

	public Canvas canvas() {
		return viewer.canvas();
	}

	public PlanScene scene() {
		return scene;
	}

	FloorTiles tiles() {
		return tiles;
	}

	public Camera camera() {
		return root.camera();
	}

	/** Whether the keyboard is here, and that is to be seen. */
	boolean showsFocus() {
		return canvas().isFocusControl() && !onPaper;
	}

	private void repaint(Rectangle area) {
		if (area == null) {
			root.getFigure().repaint();
		} else {
			root.getFigure().repaint(area.x, area.y, area.width, area.height);
		}
	}

	/** From where it is seen. */
	public PlanLook look() {
		return look;
	}

	/** What can be set on it. */
	public PlanTools tools() {
		return tools;
	}

	/** Lets two of the same floor be seen from the same place, and what one points at be marked on both; null: each for itself again. */
	public void twin(PlanCanvas other) {
		twin = other;
	}

	PlanCanvas twin() {
		return twin;
	}

	/** Sees it from elsewhere. */
	void see(Camera other) {
		root.camera(other);
		part.place();
		tiles.camera(other);
	}

	/** Shows the errors of a way of matching on the floor in place of the map, or the map again (null). */
	public void showErrors(ErrorsShown errors) {
		hover = -1;
		focus = -1;
		scene.showErrors(errors);
		drawAgain();
		placesChanged();
		tell();
	}

	/** Another archive or floor is to be seen. */
	public void showFloor(ArchiveSession of) {
		if (session == of) {
			tools.leave();
		}
		tools.giveUp();
		session = of;
		commands.session(of);
		choice.session(of);
		hover = -1;
		focus = -1;
		scene.show(of, of == null ? null : of.selection().floor());
		part.refresh();
		look.fit();
		tiles.clear(scene.raster());
		tell();
	}

	/** Samples, structure or the look have changed; the view stays. */
	public void readAgain() {
		tools.check();
		scene.readSamples();
		if (hover >= scene.samples().size() || focus >= scene.samples().size()) {
			hover = -1;
			focus = -1;
		}
		drawAgain();
		placesChanged();
		tell();
	}

	/** Colours or the image have changed. */
	public void drawAgain() {
		tiles.raster(scene.raster());
	}

	/** Draws in other colours, at once. @param paper whether without what is seen on a screen only */
	public void wear(Ink ink, boolean paper) {
		onPaper = paper;
		scene.ink(ink);
		tiles.wear(Colours.of(ink.background()), scene.raster());
	}

	/** Places of access points, or which one is chosen, have changed. */
	public void placesChanged() {
		part.refresh();
		part.place();
		repaint(null);
	}

	/** Findings have changed. */
	public void findingsChanged() {
		redraw(scene.readFindings());
	}

	/** The selection has changed, here or elsewhere; what is selected elsewhere is brought into sight. */
	public void selectionChanged() {
		boolean labelled = !scene.labels().isEmpty();
		BitSet changed = scene.readSelection();
		redraw(changed);
		if (labelled || !scene.labels().isEmpty()) {
			repaint(null);
		}
		part.refresh();
		part.place();
		if (!choice.isSelecting() && !changed.isEmpty()) {
			look.bringIntoSight(scene.selected());
		}
	}

	private void redraw(BitSet samples) {
		double reach = FloorRaster.reachPoints(camera().pixelsPerMetre()) / camera().pixelsPerMetre();
		if (samples.cardinality() > PlanPart.MOST_SAMPLE_PARTS) {
			tiles.redraw(List.of(scene.boundsOf(samples).grown(reach)));
		} else {
			tiles.redraw(samples.stream().mapToObj(i -> {
				double x = scene.xMetres()[i];
				double y = scene.yMetres()[i];
				return new Bounds(x, y, x, y).grown(reach);
			}).toList());
		}
	}

	/** Whether samples cannot be moved. */
	boolean isReadOnly() {
		return session == null || session.readOnlyReason().isPresent() || scene.shown() != null;
	}

	// what gestures do

	public PlanMode mode() {
		return mode;
	}

	public void mode(PlanMode other) {
		tools.leave();
		mode = other;
	}

	void spaceDown(boolean down) {
		spaceDown = down;
	}

	DragTracker gesture(int button) {
		if (button == 2 || button == 1 && (spaceDown || mode == PlanMode.PAN && tools.active() == null)) {
			return new PanGesture(this);
		} else if (button != 1) {
			return null;
		} else if (tools.active() != null) {
			return tools.active().gesture();
		}
		return mode == PlanMode.LASSO ? new LassoGesture(this) : new BandGesture(this);
	}

	/** What is done over a selected sample other than dragging it; null for nothing else. */
	DragTracker gestureOverSample(Request request) {
		int button = request instanceof SelectionRequest selection ? selection.getLastButtonPressed() : 1;
		return button != 1 || spaceDown || mode != PlanMode.SELECT || tools.active() != null ? gesture(button) : null;
	}

	DragTracker gestureOverPlace(Request request, ShownPlace place) {
		int button = request instanceof SelectionRequest selection ? selection.getLastButtonPressed() : 1;
		return button != 1 || spaceDown || mode == PlanMode.PAN || tools.active() != null ? gesture(button)
				: new ChooseGesture(this, place);
	}

	void click(int column, int row, boolean toggles, boolean adds) {
		int sample = sampleAt(column, row);
		if (sample >= 0) {
			focus = sample;
		}
		choice.click(sample, toggles, adds);
		tell();
	}

	PlanChoice choice() {
		return choice;
	}

	/** Whether access points are shown; an error map leaves them out. */
	public boolean showsPlaces() {
		return places && scene.shown() == null;
	}

	/** Shows or hides access points. */
	public void showPlaces(boolean shown) {
		places = shown;
		placesChanged();
	}

	// what pointer and keyboard are at

	/** The sample that a person reads about: under the pointer, else at the keyboard's ring; -1 for none. */
	public int read() {
		return hover >= 0 ? hover : focus;
	}

	int focus() {
		return focus;
	}

	void hover(int sample) {
		if (hover != sample) {
			hover = sample;
			tell();
			tellTwin();
		}
	}

	/** Samples of twins have the same indices, since they show the same test samples. */
	private void tellTwin() {
		if (twin != null && twin.scene.samples().hasSameRows(scene.samples())) {
			twin.hover = hover;
			twin.focus = focus;
			twin.tell();
		}
	}

	void focus(int sample) {
		focus = sample;
		hover = -1;
		BitSet one = new BitSet();
		if (sample >= 0) {
			one.set(sample);
		}
		look.bringIntoSight(one);
		tell();
		tellTwin();
	}

	private void tell() {
		furniture.ring(hover, focus);
		watchers.forEach(Runnable::run);
	}

	/** The sample near a pixel, or -1; of several at one place the selected one, so that it can be dragged. */
	public int sampleAt(int column, int row) {
		Camera camera = camera();
		int nearest = scene.grid().nearest(camera.xMetres(column), camera.yMetres(row),
				REACH / camera.pixelsPerMetre());
		return nearest < 0 ? -1
				: scene.selected().stream()
						.filter(s -> scene.xMetres()[s] == scene.xMetres()[nearest]
								&& scene.yMetres()[s] == scene.yMetres()[nearest])
						.findFirst().orElse(nearest);
	}

	/** The place of an access point at a pixel. */
	Optional<ShownPlace> placeAt(int column, int row) {
		EditPart found = viewer.findObjectAt(new org.eclipse.draw2d.geometry.Point(column, row));
		return found instanceof PlacePart place ? Optional.of(place.place()) : Optional.empty();
	}

	public ArchiveSession session() {
		return session;
	}

	/** What to say where there is nothing to see, and what to do next; null where there is. */
	public String emptyText() {
		return furniture.emptyText();
	}

	@Override
	public Optional<Point> toCanvas(SampleRef sample) {
		int index = scene.samples().indexOf(sample);
		return index < 0 ? Optional.empty() : Optional.of(pixel(scene.xMetres()[index], scene.yMetres()[index]));
	}

	@Override
	public Optional<Point> toDisplay(SampleRef sample) {
		return toCanvas(sample).map(canvas()::toDisplay);
	}

	@Override
	public Point toDisplay(double xMetres, double yMetres) {
		return canvas().toDisplay(pixel(xMetres, yMetres));
	}

	private Point pixel(double xMetres, double yMetres) {
		return new Point((int) Math.round(camera().column(xMetres)), (int) Math.round(camera().row(yMetres)));
	}

	@Override
	public boolean isDrawn() {
		return tiles.isDone();
	}
}
