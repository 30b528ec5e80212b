package org.cairnfield.model.values;

/** Reads the text forms that are a fixed count of numbers. */
final class Numbers {

	private Numbers() {
	}

	/**
	 * @param names of the numbers in order, for the message
	 * @throws IllegalArgumentException for another count, or a text that is no finite number
	 */
	static double[] parse(String text, String... names) {
		String[] parts = text.strip().split("\\s+");
		double[] numbers = new double[names.length];
		try {
			if (parts.length != names.length) {
				throw new NumberFormatException();
			}
			for (int i = 0; i < parts.length; i++) {
				numbers[i] = Double.parseDouble(parts[i]);
			}
		} catch (NumberFormatException e) {
			throw new IllegalArgumentException("expected " + String.join(", ", names) + ": '" + text + "'", e);
		}
		return numbers;
	}

	static double within(String name, double value, double least, double most) {
		if (!(value >= least && value <= most)) {
			throw new IllegalArgumentException(name + " outside " + least + " … " + most + ": " + value);
		}
		return value + 0.0; // there is one zero only
	}
}
