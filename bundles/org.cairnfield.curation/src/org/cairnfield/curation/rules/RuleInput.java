package org.cairnfield.curation.rules;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * One unit of a scope as rules see it, with what they work out about it and share. Safe for several threads.
 */
public final class RuleInput {

	/** Works out a piece of evidence. */
	@FunctionalInterface
	public interface Maker<T> {
		T make();
	}

	private final SurveyedMap map;
	private final RuleScope scope;
	private final String unit;
	private final Map<Class<?>, Shared> shared = new ConcurrentHashMap<>();

	/** @param unit name of the survey, floor or site; empty for the archive */
	public RuleInput(SurveyedMap map, RuleScope scope, String unit) {
		this.map = Objects.requireNonNull(map);
		this.scope = Objects.requireNonNull(scope);
		this.unit = Objects.requireNonNull(unit);
	}

	/** The samples of the unit. */
	public SurveyedMap map() {
		return map;
	}

	public RuleScope scope() {
		return scope;
	}

	/** Name of the survey, floor or site; empty for the archive. */
	public String unit() {
		return unit;
	}

	/**
	 * The evidence of that type, made by whoever asks first; others wait for it. A failure to make it is not kept:
	 * the next one tries again.
	 */
	public <T> T shared(Class<T> type, Maker<T> maker) {
		Shared holder = shared.computeIfAbsent(type, t -> new Shared());
		synchronized (holder) {
			if (holder.value == null) {
				holder.value = maker.make();
			}
			return type.cast(holder.value);
		}
	}

	/** Surveys with samples in the unit, in the order of the archive. */
	public List<Integer> surveysPresent() {
		boolean[] present = new boolean[map.surveys().size()];
		for (int s = 0; s < map.size(); s++) {
			present[map.survey(s)] = true;
		}
		return Stream.iterate(0, i -> i < present.length, i -> i + 1).filter(i -> present[i]).toList();
	}

	private static final class Shared {
		private Object value;
	}
}
