package org.cairnfield.ui.internal.properties;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.ui.views.properties.IPropertySheetPage;

/** Gives each view a page in the Properties view. */
public final class PropertiesPages implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object part, Class<T> type) {
		return type == IPropertySheetPage.class ? type.cast(new PropertiesPage()) : null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { IPropertySheetPage.class };
	}
}
