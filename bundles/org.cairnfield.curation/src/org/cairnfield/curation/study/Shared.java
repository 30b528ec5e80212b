package org.cairnfield.curation.study;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.cairnfield.core.distance.Signals;

/** Answers that several settings ask of one map, or of what a hold-out leaves of it. For one thread. */
final class Shared {

	/** Nothing is shared: what one setting alone takes can be timed. */
	static final Shared NOTHING = new Shared(false);

	private final boolean isKept;
	private final Map<Signals, Map<List<?>, Object>> answers = new IdentityHashMap<>();

	private Shared(boolean isKept) {
		this.isKept = isKept;
	}

	/** Keeps what it is asked. */
	static Shared kept() {
		return new Shared(true);
	}

	/** Whether others will ask. */
	boolean isKept() {
		return isKept;
	}

	/** @param question texts and numbers; the same question has answers of one type */
	@SuppressWarnings("unchecked")
	<T> T answer(Signals of, List<?> question, Supplier<T> compute) {
		if (!isKept) {
			return compute.get();
		}
		Map<List<?>, Object> known = answers.computeIfAbsent(of, signals -> new HashMap<>());
		Object answer = known.get(question);
		if (answer == null) {
			answer = compute.get();
			known.put(question, answer);
		}
		return (T) answer;
	}
}
