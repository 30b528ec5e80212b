package org.cairnfield.ui.plan.internal.gef;

import org.cairnfield.ui.plan.internal.geometry.Camera;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Layer;
import org.eclipse.draw2d.LayeredPane;
import org.eclipse.draw2d.StackLayout;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.editparts.SimpleRootEditPart;

/**
 * Root of the plan, with its zoom: a camera from metres to pixels that the parts place themselves by. Figures are never
 * scaled, so lines stay thin and texts legible at each scale.
 */
final class PlanRootPart extends SimpleRootEditPart implements LayerManager {

	private static final Object FURNITURE_LAYER = "furniture";

	private final LayeredPane layers = new LayeredPane();
	private Camera camera = new Camera(20, 0, 0);

	PlanRootPart() {
		add(LayerConstants.PRIMARY_LAYER);
		add(LayerConstants.HANDLE_LAYER);
		Layer furniture = add(FURNITURE_LAYER);
		furniture.setEnabled(false);
		add(LayerConstants.FEEDBACK_LAYER).setEnabled(false);
	}

	private Layer add(Object key) {
		Layer layer = new Layer();
		if (key == LayerConstants.PRIMARY_LAYER || key == FURNITURE_LAYER) {
			layer.setLayoutManager(new StackLayout());
		}
		layers.add(layer, key);
		return layer;
	}

	@Override
	protected IFigure createFigure() {
		return layers;
	}

	@Override
	public IFigure getContentPane() {
		return layers.getLayer(LayerConstants.PRIMARY_LAYER);
	}

	@Override
	public IFigure getLayer(Object key) {
		return layers.getLayer(key);
	}

	/** Shows figures above all parts; they take no events. */
	void furnish(IFigure... figures) {
		for (IFigure figure : figures) {
			layers.getLayer(FURNITURE_LAYER).add(figure);
		}
	}

	Camera camera() {
		return camera;
	}

	void camera(Camera other) {
		camera = other;
	}

	@Override
	@SuppressWarnings("unchecked") // its registry is a raw map
	protected void register() {
		super.register();
		getViewer().getEditPartRegistry().put(LayerManager.ID, this);
	}

	@Override
	protected void unregister() {
		super.unregister();
		getViewer().getEditPartRegistry().remove(LayerManager.ID);
	}
}
