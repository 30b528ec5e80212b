package org.cairnfield.ui.plan.internal.view;

import java.util.Optional;

import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.plan.internal.colour.Colourings;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.prefs.Preferences;
import org.cairnfield.ui.show.SessionSelection;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The view of the floor plan. */
public final class PlanView extends ViewPart implements PlanGeometry {

	public static final String ID = "org.cairnfield.ui.plan.view";
	/** Preference: name of the colouring that the person chose last. */
	private static final String COLOUR_BY = "plan.colourBy";

	private PlanPane pane;

	@Override
	public void createPartControl(Composite parent) {
		pane = new PlanPane(parent, Colourings.all(), colouring -> Preferences.put(COLOUR_BY, colouring.name()));
		String colourBy = Preferences.get(COLOUR_BY, "");
		pane.colourings().stream().filter(colouring -> colouring.name().equals(colourBy)).findFirst()
				.ifPresent(pane::colourBy);
		pane.mode(ModeHandler.chosen(getSite()));
		new OutlineUndo(getSite(), pane.plan().tools().outline());
		MenuManager menu = new MenuManager();
		pane.plan().canvas().setMenu(menu.createContextMenu(pane.plan().canvas()));
		SessionSelection.provide(getSite(), pane.plan().canvas());
		getSite().registerContextMenu(ID, menu, null);
	}

	/** What it shows. */
	public PlanPane pane() {
		return pane;
	}

	@Override
	public void setFocus() {
		pane.setFocus();
	}

	@Override
	public <T> T getAdapter(Class<T> adapter) {
		return adapter == PlanGeometry.class ? adapter.cast(this) : super.getAdapter(adapter);
	}

	@Override
	public Optional<Point> toCanvas(SampleRef sample) {
		return pane.plan().toCanvas(sample);
	}

	@Override
	public Optional<Point> toDisplay(SampleRef sample) {
		return pane.plan().toDisplay(sample);
	}

	@Override
	public Point toDisplay(double xMetres, double yMetres) {
		return pane.plan().toDisplay(xMetres, yMetres);
	}

	@Override
	public boolean isDrawn() {
		return pane.plan().isDrawn();
	}
}
