package org.cairnfield.curation.edit;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelPackage.Literals;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Values of one field as text, and back. */
final class EditableText {

	private final EObject object;
	private final EStructuralFeature feature;

	EditableText(EObject object, EStructuralFeature feature) {
		this.object = object;
		this.feature = feature;
	}

	String of(Object value) {
		if (value == null || isUnknownChannel(value)) {
			return "";
		}
		return value instanceof Device device ? device.getId()
				: value instanceof WifiBand band ? band(band) : EcoreUtil.convertToString(type(), value);
	}

	private static String band(WifiBand band) {
		return Words.bind(Messages.EditableText_ghz, band.name().substring("GHZ_".length()).replace('_', '.'));
	}

	/** 0 says that the channel is not known. */
	private boolean isUnknownChannel(Object value) {
		return value instanceof Integer && value.equals(feature.getDefaultValue());
	}

	private EDataType type() {
		return (EDataType) feature.getEType();
	}

	/** Of a list; empty for what is typed freely. */
	List<String> choices() {
		if (feature instanceof EReference) {
			return devices().stream().map(Device::getId).toList();
		} else if (feature.getEType() instanceof EEnum kinds) {
			return kinds.getELiterals().stream().map(literal -> literal.getLiteral()).toList();
		}
		Object[] constants = type().getInstanceClass().getEnumConstants();
		return constants == null ? List.of() : Arrays.stream(constants).map(this::of).toList();
	}

	private List<Device> devices() {
		return EcoreUtil.getRootContainer(object) instanceof Archive archive ? archive.getDevices() : List.of();
	}

	/** @throws UnfitValueException for a text that is no such value */
	Object parse(String typed) {
		if (typed.isEmpty()) {
			return feature.getDefaultValue();
		}
		if (!choices().isEmpty() && !choices().contains(typed)) {
			throw new UnfitValueException(
					Words.bind(Messages.EditableText_isNoneOf, typed, String.join(", ", choices())));
		}
		if (feature instanceof EReference) {
			return devices().stream().filter(device -> device.getId().equals(typed)).findFirst().orElseThrow();
		} else if (feature.getEType() == Literals.WIFI_BAND) {
			return Arrays.stream(WifiBand.values()).filter(band -> band(band).equals(typed)).findFirst().orElseThrow();
		}
		Class<?> type = type().getInstanceClass();
		try {
			return type == LocalDate.class ? LocalDate.parse(typed) : EcoreUtil.createFromString(type(), typed);
		} catch (NumberFormatException e) {
			throw new UnfitValueException(Words.bind(Messages.EditableText_isNoNumber, typed,
					type == int.class ? Messages.EditableText_whole : ""));
		} catch (DateTimeParseException e) {
			throw new UnfitValueException(Words.bind(Messages.EditableText_isNoDayWriteIt, typed));
		} catch (IllegalArgumentException e) {
			throw new UnfitValueException(e.getMessage());
		}
	}
}
