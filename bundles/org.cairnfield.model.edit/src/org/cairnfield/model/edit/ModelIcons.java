package org.cairnfield.model.edit;

import java.net.URL;
import java.util.Locale;

import org.eclipse.emf.ecore.EClass;

/** Icons of the classes of the model: 16 pixels, with a twin of 32 named {@code @2x} beside it. */
public final class ModelIcons {

	private ModelIcons() {
	}

	/** The picture (PNG) for a class of the model, or null where it has none. */
	public static URL url(EClass type) {
		String name = type.getName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
		return ModelIcons.class.getResource("/icons/model/" + name + ".png");
	}
}
