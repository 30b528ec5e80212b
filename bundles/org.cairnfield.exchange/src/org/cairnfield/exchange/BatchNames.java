package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Access points that the rows of one block name, numbered as they come, until the map has numbers for them. */
final class BatchNames {

	private record Named(String name, String site, long line) {
	}

	private final boolean perSite;
	private final Map<String, Integer> numbers = new HashMap<>();
	private final List<Named> names = new ArrayList<>();
	private int[] indexes = {};
	private int known;

	BatchNames(IntakeOptions options) {
		perSite = options.accessPointsPerSite();
	}

	int size() {
		return names.size();
	}

	/** The number of an access point as heard at a site, first named on {@code line}. */
	int number(String name, String site, long line) {
		Integer number = numbers.putIfAbsent(perSite ? site + '\n' + name : name, names.size());
		if (number != null) {
			return number;
		}
		names.add(new Named(name, site, line));
		return names.size() - 1;
	}

	/** Makes the map know all that were named up to a line. */
	void tell(MapSink sink, FilePlan plan, long upTo) throws IntakeException {
		if (indexes.length < names.size()) {
			indexes = new int[names.size()];
		}
		for (; known < names.size() && names.get(known).line() <= upTo; known++) {
			Named named = names.get(known);
			indexes[known] = sink.accessPoint(plan, named.line(), named.name(), named.site());
		}
	}

	/** The index in the map of a number; it must know it. */
	int index(int number) {
		return indexes[number];
	}
}
