package org.cairnfield.ui.internal.properties;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.ui.internal.properties.model.FindingProperties;
import org.cairnfield.ui.internal.properties.model.ObjectProperties;
import org.cairnfield.ui.internal.properties.model.SampleProperties;
import org.cairnfield.ui.scope.SelectedSamples;
import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.views.properties.IPropertySource;

/** Gives the Properties view what there is to know about objects of the archive, its samples and findings. */
public final class ModelProperties implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object object, Class<T> type) {
		return type == IPropertySource.class ? type.cast(table(object)) : null;
	}

	private static PropertyTable table(Object object) {
		if (object instanceof EObject model) {
			return new PropertyTable(() -> ObjectProperties.of(model));
		} else if (object instanceof SelectedSamples selected) {
			return new PropertyTable(() -> SampleProperties.of(selected.samples()));
		} else if (object instanceof Finding finding) {
			return new PropertyTable(() -> FindingProperties.of(finding));
		}
		return null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { IPropertySource.class };
	}
}
