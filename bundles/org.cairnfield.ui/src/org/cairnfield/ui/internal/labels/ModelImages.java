package org.cairnfield.ui.internal.labels;

import java.net.URL;
import java.util.HashMap;
import java.util.Map;

import org.cairnfield.model.edit.ModelIcons;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;

/** Icons of the kinds of things in an archive, for as long as a control lives. */
public final class ModelImages {

	private final ResourceManager resources;
	private final Map<EClass, Image> images = new HashMap<>();

	public ModelImages(Control owner) {
		resources = new LocalResourceManager(JFaceResources.getResources(), owner);
	}

	/** The icon, or null where the kind has none. */
	public Image of(EClass type) {
		return images.computeIfAbsent(type, t -> {
			URL url = ModelIcons.url(t);
			return url == null ? null : resources.create(ImageDescriptor.createFromURL(url));
		});
	}
}
