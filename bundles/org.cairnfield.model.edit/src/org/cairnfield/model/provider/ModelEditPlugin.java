package org.cairnfield.model.provider;

import org.eclipse.emf.common.EMFPlugin;
import org.eclipse.emf.common.util.ResourceLocator;

/**
 * Finds the texts of the generated item providers. Takes the place of the plug-in class that the generator would write,
 * which needs OSGi: this one works on a plain class path too.
 */
public final class ModelEditPlugin extends EMFPlugin {

	/** The only one, under the name that generated code expects. */
	public static final ModelEditPlugin INSTANCE = new ModelEditPlugin();

	private ModelEditPlugin() {
		super(new ResourceLocator[0]);
	}

	/** None: texts are found beside the classes. */
	@Override
	public ResourceLocator getPluginResourceLocator() {
		return null;
	}
}
