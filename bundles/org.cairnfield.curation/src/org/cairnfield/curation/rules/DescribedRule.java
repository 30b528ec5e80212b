package org.cairnfield.curation.rules;

import java.util.List;

/** A rule that is told at its making what to say about itself. */
public abstract class DescribedRule implements Rule {

	private final String id;
	private final String title;
	private final String explanation;
	private final Severity severity;
	private final Topic topic;
	private final RuleScope scope;
	private final List<Parameter> parameters;

	protected DescribedRule(String id, String title, String explanation, Severity severity, Topic topic,
			RuleScope scope,
			Parameter... parameters) {
		this.id = id;
		this.title = title;
		this.explanation = explanation;
		this.severity = severity;
		this.topic = topic;
		this.scope = scope;
		this.parameters = List.of(parameters);
	}

	@Override
	public final String id() {
		return id;
	}

	@Override
	public final String title() {
		return title;
	}

	@Override
	public final String explanation() {
		return explanation;
	}

	@Override
	public final Severity severity() {
		return severity;
	}

	@Override
	public final Topic topic() {
		return topic;
	}

	@Override
	public final RuleScope scope() {
		return scope;
	}

	@Override
	public final List<Parameter> parameters() {
		return parameters;
	}

	/** Numbers that it goes by and that cannot be set. */
	protected List<Threshold> fixed() {
		return List.of();
	}

	@Override
	public final List<Threshold> thresholds() {
		return Threshold.all(parameters.stream().map(Parameter::threshold).toList(), fixed());
	}
}
