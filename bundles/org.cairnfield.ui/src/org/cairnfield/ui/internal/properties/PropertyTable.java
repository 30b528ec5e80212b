package org.cairnfield.ui.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.cairnfield.curation.edit.Editable;
import org.cairnfield.curation.edit.UnfitValueException;
import org.cairnfield.ui.internal.properties.model.Property;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.ui.views.properties.ComboBoxPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertyDescriptor;
import org.eclipse.ui.views.properties.TextPropertyDescriptor;

/** The properties of one object. Those that have a field are changed here, while the archive may be changed; the others are to be read. */
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
		boolean mayChange = session().isPresent();
		IPropertyDescriptor[] descriptors = new IPropertyDescriptor[properties.size()];
		for (int i = 0; i < descriptors.length; i++) {
			Property property = properties.get(i);
			PropertyDescriptor descriptor = mayChange && property.field() != null ? editable(i, property)
					: new PropertyDescriptor(i, property.name());
			descriptor.setLabelProvider(LabelProvider.createTextProvider(value -> property.value()));
			descriptor.setDescription(property.about());
			descriptors[i] = descriptor;
		}
		return descriptors;
	}

	private static PropertyDescriptor editable(int id, Property property) {
		Editable field = property.field();
		if (!field.choices().isEmpty()) {
			return new ComboBoxPropertyDescriptor(id, property.name(), choices(field).toArray(String[]::new));
		}
		PropertyDescriptor descriptor = new TextPropertyDescriptor(id, property.name());
		descriptor.setValidator(typed -> whyNot(field, (String) typed));
		return descriptor;
	}

	/** The first unsets it. */
	private static List<String> choices(Editable field) {
		List<String> choices = new ArrayList<>(List.of(""));
		choices.addAll(field.choices());
		return choices;
	}

	/** Why a text cannot be taken; null where it can. */
	private static String whyNot(Editable field, String typed) {
		try {
			field.change(typed);
			return null;
		} catch (UnfitValueException e) {
			return e.getMessage();
		}
	}

	/** Of an archive that may be changed. */
	private static Optional<ArchiveSession> session() {
		return Sessions.workbench().current().filter(session -> session.readOnlyReason().isEmpty());
	}

	@Override
	public Object getPropertyValue(Object id) {
		int row = (Integer) id;
		Editable field = row < properties.size() ? properties.get(row).field() : null;
		if (field == null || session().isEmpty()) {
			return row < properties.size() ? properties.get(row).value() : Property.NONE;
		}
		return field.choices().isEmpty() ? field.text() : (Object) choices(field).indexOf(field.text());
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
		// undo does that
	}

	@Override
	public void setPropertyValue(Object id, Object value) {
		Editable field = properties.get((Integer) id).field();
		String typed = value instanceof Integer index ? index < 0 ? "" : choices(field).get(index) : (String) value;
		session().filter(session -> whyNot(field, typed) == null)
				.ifPresent(session -> session.run(field.change(typed)));
	}
}
