package org.cairnfield.exchange;

import org.cairnfield.core.text.Words;

/** Whether a row has the fields that its table has columns. Unused blank fields at the end do not count. */
final class Widths {

	private Widths() {
	}

	/** Null where the row is sound. */
	static String trouble(Row row, FilePlan plan) {
		int size = row.size();
		if (size == plan.width) {
			return null;
		}
		boolean harmless = true;
		for (int i = plan.width; i < size; i++) {
			harmless &= row.get(i).isBlank();
		}
		for (int i = size; i < plan.width; i++) {
			harmless &= plan.roles[i] == ColumnRole.IGNORED && plan.dialect.header() && plan.names.get(i).isBlank();
		}
		return harmless ? null
				: Words.bind(Messages.Widths_hasExpected, size,
						size == 1 ? Messages.Widths_field : Messages.Widths_fields, plan.width);
	}
}
