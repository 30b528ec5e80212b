package org.cairnfield.curation.filter;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.values.SampleTable;

/** How strongly samples heard an access point. */
final class Levels {

	private Levels() {
	}

	static IntPredicate test(Expression.Heard asked, SampleContent content) {
		SampleRows rows = content.rows();
		int[][] wanted = rows.parts().stream().map(part -> indices(asked.accessPoint(), part.table(), content))
				.toArray(int[][]::new);
		return i -> {
			SampleTable table = content.table(i);
			int row = rows.row(i);
			for (int accessPoint : wanted[rows.partNumber(i)]) {
				int k = table.reading(row, accessPoint);
				if (k >= 0 && (asked.operator() == null
						|| asked.operator().passes(Double.compare(table.rssiDbm(row, k), asked.levelDbm())))) {
					return true;
				}
			}
			return false;
		};
	}

	/** Whether any survey of the list knows the access point. */
	static boolean isKnown(String accessPoint, SampleContent content) {
		return content.rows().parts().stream().anyMatch(part -> indices(accessPoint, part.table(), content).length > 0);
	}

	/** By address, however it is written, or by id. */
	private static int[] indices(String name, SampleTable table, SampleContent content) {
		Optional<MacAddress> address = MacAddress.find(name);
		List<String> ids = table.accessPoints();
		int[] found = new int[ids.size()];
		int count = 0;
		for (int a = 0; a < found.length; a++) {
			String written = content.address(ids.get(a));
			if (written.equalsIgnoreCase(name) || ids.get(a).equalsIgnoreCase(name)
					|| address.isPresent() && MacAddress.find(written).equals(address)) {
				found[count++] = a;
			}
		}
		return Arrays.copyOf(found, count);
	}
}
