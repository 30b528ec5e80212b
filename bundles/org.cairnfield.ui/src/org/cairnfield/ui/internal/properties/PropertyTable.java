package org.cairnfield.ui.internal.properties;

import java.util.List;
import java.util.function.Supplier;

import org.cairnfield.ui.internal.properties.model.Property;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertyDescriptor;

/** The properties of one object, to read. They are changed where the change can be seen: on the plan, in the table. */
final class PropertyTable implements IPropertySource {

	private final Supplier<List<Property>> source;
	private List<Property> properties = List.of();

	/** @param source asked again whenever the table is shown again */
	PropertyTable(Supplier<List<Property>> source) {
		this.source = source;
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		properties = source.get();
		IPropertyDescriptor[] descriptors = new IPropertyDescriptor[properties.size()];
		for (int i = 0; i < descriptors.length; i++) {
			Property property = properties.get(i);
			PropertyDescriptor descriptor = new PropertyDescriptor(i, property.name());
			descriptor.setDescription(property.about());
			descriptors[i] = descriptor;
		}
		return descriptors;
	}

	@Override
	public Object getPropertyValue(Object id) {
		int row = (Integer) id;
		return row < properties.size() ? properties.get(row).value() : Property.NONE;
	}

	@Override
	public boolean isPropertySet(Object id) {
		return false; // nothing to restore
	}

	@Override
	public Object getEditableValue() {
		return this;
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
