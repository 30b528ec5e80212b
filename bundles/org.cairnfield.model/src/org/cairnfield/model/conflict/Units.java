package org.cairnfield.model.conflict;

import java.util.List;
import java.util.TreeMap;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.Sample;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads and sets units of an archive by their texts. */
public final class Units {

	private Units() {
	}

	/** Whether the object of a unit is there, so that the unit can be set. */
	public static boolean isThere(Archive archive, Unit unit) {
		EObject object = Place.find(archive, unit.place());
		String sample = Place.sample(unit.place());
		return object != null && (sample == null || ((Survey) object).table().row(sample) >= 0);
	}

	/** The value that a unit has; null where it has none, and where its object is not there. */
	public static String get(Archive archive, Unit unit) {
		if (!isThere(archive, unit)) {
			return null;
		}
		if (unit.name().equals(Unit.PRESENCE)) {
			return UnitText.KEPT;
		}
		EObject object = Place.find(archive, unit.place());
		String sample = Place.sample(unit.place());
		if (sample != null) {
			SampleTable table = ((Survey) object).table();
			return get(table.sample(table.row(sample)), unit.name());
		}
		if (object instanceof Survey survey && unit.name().equals(Unit.DEVICE)) {
			return survey.getDevice() == null ? null : survey.getDevice().getId();
		}
		EAttribute attribute = attribute(object, unit);
		return UnitText.of(attribute, object.eGet(attribute));
	}

	private static String get(Sample sample, String name) {
		return switch (name) {
		case Unit.POSITION -> UnitText.position(sample.xMetres(), sample.yMetres());
		case Unit.FLOOR -> Integer.toString(sample.floorLevel());
		case Unit.TIME -> UnitText.time(sample.timeMillis());
		case Unit.STATE -> sample.reason();
		default -> {
			Integer level = levels(sample.readings()).get(accessPoint(name));
			yield level == null ? null : level.toString();
		}
		};
	}

	/**
	 * Sets a unit whose object is there.
	 *
	 * @param value null for none; for {@link Unit#PRESENCE} that removes the object
	 * @return what takes it back
	 * @throws IllegalArgumentException for a text that is no value of the unit; nothing is changed then
	 */
	public static Runnable set(Archive archive, Unit unit, String value) {
		EObject object = Place.find(archive, unit.place());
		String sample = Place.sample(unit.place());
		if (sample != null) {
			return setSample((Survey) object, sample, unit.name(), value);
		}
		if (unit.name().equals(Unit.PRESENCE)) {
			return value == null ? remove(object) : () -> {
			};
		}
		if (object instanceof Survey survey && unit.name().equals(Unit.DEVICE)) {
			Device before = survey.getDevice();
			survey.setDevice(archive.getDevices().stream().filter(device -> device.getId().equals(value)).findFirst()
					.orElse(null));
			return () -> survey.setDevice(before);
		}
		EAttribute attribute = attribute(object, unit);
		Object before = object.eGet(attribute);
		object.eSet(attribute, UnitText.value(attribute, value));
		return () -> object.eSet(attribute, before);
	}

	@SuppressWarnings("unchecked")
	private static Runnable remove(EObject object) {
		List<EObject> list = (List<EObject>) object.eContainer().eGet(object.eContainmentFeature());
		int at = list.indexOf(object);
		EcoreUtil.remove(object);
		return () -> list.add(at, object);
	}

	private static Runnable setSample(Survey survey, String id, String name, String value) {
		SampleTable before = survey.table();
		survey.getSamples().setTable(changed(before, before.row(id), name, value));
		return () -> survey.getSamples().setTable(before);
	}

	private static SampleTable changed(SampleTable table, int row, String name, String value) {
		switch (name) {
		case Unit.POSITION:
			double[] position = UnitText.position(value);
			return table.edit().position(row, position[0], position[1]).done();
		case Unit.FLOOR:
			return table.edit().floorLevel(row, Integer.parseInt(String.valueOf(value))).done();
		case Unit.STATE:
			return table.edit().reason(row, value).done();
		case Unit.TIME, Unit.PRESENCE:
			return rebuilt(table, row, name, value);
		default:
			TreeMap<String, Integer> levels = levels(table.readings(row));
			if (value == null) {
				levels.remove(accessPoint(name));
			} else {
				levels.put(accessPoint(name), Integer.valueOf(value));
			}
			return table.edit().readings(row, Readings.of(levels)).done();
		}
	}

	private static SampleTable rebuilt(SampleTable table, int changed, String name, String value) {
		if (name.equals(Unit.PRESENCE) && value != null) {
			return table;
		}
		SampleTableBuilder builder = SampleTable.builder();
		for (int row = 0; row < table.size(); row++) {
			Sample sample = table.sample(row);
			if (row != changed) {
				builder.add(sample);
			} else if (name.equals(Unit.TIME)) {
				builder.add(new Sample(sample.id(), sample.floorLevel(), sample.xMetres(), sample.yMetres(),
						UnitText.millis(value), sample.reason(),
						sample.readings()));
			}
		}
		return builder.build();
	}

	private static String accessPoint(String name) {
		if (!name.startsWith(Unit.READING)) {
			throw new IllegalArgumentException("no unit of a sample: '" + name + "'");
		}
		return name.substring(Unit.READING.length());
	}

	private static TreeMap<String, Integer> levels(Readings readings) {
		TreeMap<String, Integer> levels = new TreeMap<>();
		for (int k = 0; k < readings.size(); k++) {
			levels.put(readings.accessPoint(k), readings.rssiDbm(k));
		}
		return levels;
	}

	private static EAttribute attribute(EObject object, Unit unit) {
		EStructuralFeature feature = object.eClass().getEStructuralFeature(unit.name());
		if (feature instanceof EAttribute attribute && attribute.isChangeable() && !attribute.isID()) {
			return attribute;
		}
		throw new IllegalArgumentException("nothing that can be set: " + unit);
	}
}
