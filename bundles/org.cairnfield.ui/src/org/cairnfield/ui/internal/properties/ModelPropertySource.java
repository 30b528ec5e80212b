package org.cairnfield.ui.internal.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertyDescriptor;

/** The properties of one object, to read. They are changed where the change can be seen: on the plan, in the table. */
final class ModelPropertySource implements IPropertySource {

	private final EObject object;
	private final IItemPropertySource source;

	ModelPropertySource(EObject object, IItemPropertySource source) {
		this.object = object;
		this.source = source;
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		List<IPropertyDescriptor> descriptors = new ArrayList<>();
		for (IItemPropertyDescriptor each : source.getPropertyDescriptors(object)) {
			PropertyDescriptor descriptor = new PropertyDescriptor(each.getId(object), each.getDisplayName(object));
			descriptor.setCategory(each.getCategory(object));
			descriptor.setDescription(each.getDescription(object));
			descriptors.add(descriptor);
		}
		return descriptors.toArray(new IPropertyDescriptor[0]);
	}

	@Override
	public Object getPropertyValue(Object id) {
		IItemPropertyDescriptor descriptor = source.getPropertyDescriptor(object, id);
		Object value = descriptor == null ? null : descriptor.getPropertyValue(object);
		if (value instanceof IItemPropertySource inner) {
			value = inner.getEditableValue(object);
		}
		return value == null ? "" : descriptor.getLabelProvider(object).getText(value);
	}

	@Override
	public boolean isPropertySet(Object id) {
		IItemPropertyDescriptor descriptor = source.getPropertyDescriptor(object, id);
		return descriptor != null && descriptor.isPropertySet(object);
	}

	@Override
	public Object getEditableValue() {
		return object;
	}

	@Override
	public void resetPropertyValue(Object id) {
		// read only
	}

	@Override
	public void setPropertyValue(Object id, Object value) {
		// read only
	}
}
