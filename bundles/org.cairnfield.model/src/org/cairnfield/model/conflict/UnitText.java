package org.cairnfield.model.conflict;

import java.time.Instant;

import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Values of units as texts, which say all of the value. No value is null. */
public final class UnitText {

	/** An object that is there, as a value of {@link Unit#PRESENCE}; one that is not has none. */
	public static final String KEPT = "kept";

	private UnitText() {
	}

	/** The value of an attribute. */
	public static String of(EAttribute attribute, Object value) {
		return value == null ? null : EcoreUtil.convertToString(attribute.getEAttributeType(), value);
	}

	/** @throws IllegalArgumentException for a text that is none of the attribute */
	static Object value(EAttribute attribute, String text) {
		return text == null ? null : EcoreUtil.createFromString(attribute.getEAttributeType(), text);
	}

	/** A position in metres. */
	public static String position(double xMetres, double yMetres) {
		return xMetres + " " + yMetres;
	}

	/** x and y in metres; @throws IllegalArgumentException for a text that is no position */
	static double[] position(String text) {
		String[] parts = text == null ? new String[0] : text.strip().split("\\s+");
		if (parts.length != 2) {
			throw new IllegalArgumentException("not a position, x and y in metres: '" + text + "'");
		}
		return new double[] { Double.parseDouble(parts[0]), Double.parseDouble(parts[1]) };
	}

	/** A moment in milliseconds since 1970, in UTC. */
	public static String time(long millis) {
		return millis == SampleTable.NO_TIME ? null : Instant.ofEpochMilli(millis).toString();
	}

	static long millis(String text) {
		return text == null ? SampleTable.NO_TIME : Instant.parse(text).toEpochMilli();
	}
}
