package org.cairnfield.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Makes a preview of a plan. */
final class Previews {

	private Previews() {
	}

	static Preview of(FilePlan plan, List<FilePlan> all, IntakeOptions options) {
		List<Column> columns = new ArrayList<>();
		for (int i = 0; i < plan.width; i++) {
			boolean signal = plan.roles[i] == ColumnRole.SIGNAL;
			columns.add(new Column(i + 1, signal ? plan.signalNames.get(i) : plan.names.get(i), plan.roles[i],
					plan.evidence[i]));
		}
		List<Path> partners = new ArrayList<>();
		for (FilePlan other : all) {
			if (other != plan && (plan.parts().contains(other) || other.parts().contains(plan))) {
				partners.add(other.file);
			}
		}
		return new Preview(plan.file, plan.layout, plan.part.word(), partners, List.copyOf(plan.guesses), columns,
				List.copyOf(plan.notes),
				plan.problems.stream().map(p -> p.what() + ". " + p.remedy() + ".").toList(),
				List.copyOf(plan.firstRows),
				fixed(plan, options));
	}

	/** Options that say what was guessed, so that it can be kept as a mapping. */
	private static IntakeOptions fixed(FilePlan plan, IntakeOptions options) {
		IntakeOptions o = options.withLayout(plan.layout).withSeparator(plan.dialect.separator())
				.withDecimalMark(plan.dialect.decimalComma() ? ',' : '.').withHeader(plan.dialect.header());
		if (plan.dialect.markBytes() == 0) {
			o = o.withCharset(plan.dialect.charset());
		}
		if (plan.has(ColumnRole.SIGNAL) || plan.has(ColumnRole.RSSI)) {
			o = o.withNotHeard(plan.notHeard.toString());
		}
		// paired tables share the numbers of their columns, not their meaning
		for (int i = 0; i < plan.width && plan.layout != Layout.PAIRED; i++) {
			String name = plan.names.get(i);
			boolean once = plan.names.indexOf(name) == i && plan.names.lastIndexOf(name) == i && !name.isBlank();
			if (plan.roles[i] != ColumnRole.SIGNAL && plan.roles[i] != ColumnRole.IGNORED) {
				o = o.withRole(once ? name : "#" + (i + 1), plan.roles[i]);
			}
		}
		return o;
	}
}
