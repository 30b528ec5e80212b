package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;

/** Rules by id. */
public final class RuleRegistry {

	private final TreeMap<String, Rule> rules = new TreeMap<>();

	/** @throws IllegalArgumentException where two rules share an id */
	public RuleRegistry(Collection<Rule> rules) {
		for (Rule rule : rules) {
			if (this.rules.put(rule.id(), rule) != null) {
				throw new IllegalArgumentException("two rules are called " + rule.id());
			}
		}
	}

	/** All, by id. */
	public List<Rule> all() {
		return Collections.unmodifiableList(new ArrayList<>(rules.values()));
	}

	/** @throws IllegalArgumentException naming the choices */
	public Rule rule(String id) {
		Rule rule = rules.get(id);
		if (rule == null) {
			throw new IllegalArgumentException("no rule " + id + ": choose from " + String.join(", ", rules.keySet()));
		}
		return rule;
	}

	/** Those listed, by id; @throws IllegalArgumentException as {@link #rule} */
	public List<Rule> some(Collection<String> ids) {
		return ids.stream().distinct().sorted().map(this::rule).toList();
	}
}
