package org.cairnfield.curation.rules;

import java.util.Map;
import java.util.TreeMap;

/** What the parameters of one rule are set to; those not set have their usual value. Immutable. */
public final class Settings {

	/** All parameters as usual. */
	public static final Settings USUAL = new Settings(Map.of());

	private final TreeMap<String, Double> values;

	private Settings(Map<String, Double> values) {
		this.values = new TreeMap<>(values);
	}

	/** The same with one parameter set. @throws IllegalArgumentException where the value is out of its range */
	public Settings with(Parameter parameter, double value) {
		TreeMap<String, Double> changed = new TreeMap<>(values);
		changed.put(parameter.id(), parameter.checked(value));
		return new Settings(changed);
	}

	/**
	 * By id, as a person or a file says it.
	 *
	 * @throws IllegalArgumentException where the rule has no such parameter or the value is out of its range
	 */
	public Settings with(Rule rule, String parameterId, double value) {
		return with(rule.parameter(parameterId), value);
	}

	/** The value of a parameter. */
	public double of(Parameter parameter) {
		return values.getOrDefault(parameter.id(), parameter.usual());
	}

	/** The value of a parameter that is a count. */
	public int countOf(Parameter parameter) {
		return (int) Math.round(of(parameter));
	}

	/** Changes where a value changes. */
	long key() {
		long key = 0;
		for (Map.Entry<String, Double> each : values.entrySet()) {
			key = ContentKeys.join(ContentKeys.join(key, ContentKeys.of(each.getKey())),
					Double.doubleToLongBits(each.getValue()));
		}
		return key;
	}
}
