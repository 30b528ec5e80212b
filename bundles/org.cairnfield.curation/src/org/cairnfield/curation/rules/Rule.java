package org.cairnfield.curation.rules;

import java.util.List;
import org.cairnfield.core.task.Workers;

/**
 * One thing that can be wrong with a map, and how to see it. Stateless: the same input and settings give the same
 * outcome, in the same order, whatever the workers.
 */
public interface Rule {

	/** Kebab-case, unique, never changed: waivers and settings refer to it. */
	String id();

	/** What it looks for, in a few words. */
	String title();

	/** Why it matters, in one or two sentences. */
	String explanation();

	Severity severity();

	Topic topic();

	/** What it must see at once. */
	RuleScope scope();

	/** What it can be told. */
	default List<Parameter> parameters() {
		return List.of();
	}

	/** One of these by its id. @throws IllegalArgumentException naming the choices */
	default Parameter parameter(String id) {
		return parameters().stream().filter(parameter -> parameter.id().equals(id)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("rule " + id() + " has no parameter " + id + "; it has "
						+ parameters().stream().map(Parameter::id).toList()));
	}

	/** The numbers that it goes by: usual values of its parameters first, then those that cannot be set. */
	default List<Threshold> thresholds() {
		return parameters().stream().map(Parameter::threshold).toList();
	}

	/** The ways to remedy what it finds, where there are several; the first is taken unless another one is asked for. */
	default List<Alternative> alternatives() {
		return List.of();
	}

	/** Calls for the shared evidence that is costly to make, so that it is made once with all workers. */
	default void prepare(RuleInput input, Workers workers) {
	}

	/**
	 * Looks at one unit of its scope.
	 *
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	RuleOutcome check(RuleInput input, Settings settings, Workers workers);
}
