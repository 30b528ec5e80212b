package org.cairnfield.ui.internal.properties;

import org.cairnfield.model.edit.ModelLabels;
import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.eclipse.ui.views.properties.IPropertySource;

/** Gives the Properties view what the model says of its objects, units and all. */
public final class ModelProperties implements IAdapterFactory {

	private final ModelLabels labels = new ModelLabels();

	@Override
	public <T> T getAdapter(Object object, Class<T> type) {
		if (type == IPropertySource.class && object instanceof EObject model
				&& labels.adapt(model, IItemPropertySource.class) instanceof IItemPropertySource source) {
			return type.cast(new ModelPropertySource(model, source));
		}
		return null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { IPropertySource.class };
	}
}
