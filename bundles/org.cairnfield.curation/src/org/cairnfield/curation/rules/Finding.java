package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a rule has to say. Equal findings say the same.
 *
 * @param rule     id of the rule
 * @param message  one or two sentences with numbers and units
 * @param subjects what it is about, at least one; a remedy changes them, a waiver covers them
 * @param related  what else to look at, such as what the subjects were compared with
 * @param evidence the numbers behind the message
 * @param offers   what could be done about it: one of these, the first unless another one is chosen
 * @param precision share of what the rule names on this part of the map that is to be expected faulty, 0 … 1; empty where not known
 */
public record Finding(String rule, Severity severity, String message, List<Subject> subjects, List<Subject> related,
		List<Figure> evidence, List<Offer> offers, OptionalDouble precision) {

	public Finding {
		Objects.requireNonNull(rule);
		Objects.requireNonNull(severity);
		Objects.requireNonNull(message);
		subjects = List.copyOf(subjects);
		related = List.copyOf(related);
		evidence = List.copyOf(evidence);
		offers = List.copyOf(offers);
		Objects.requireNonNull(precision);
		if (subjects.isEmpty()) {
			throw new IllegalArgumentException("a finding is about something: " + message);
		}
	}

	/** One whose precision is not known, with one remedy at most. */
	public Finding(String rule, Severity severity, String message, List<Subject> subjects, List<Subject> related,
			List<Figure> evidence, Optional<Remedy> remedy) {
		this(rule, severity, message, subjects, related, evidence,
				remedy.map(only -> new Offer(Alternative.ONLY, only)).stream().toList(),
				OptionalDouble.empty());
	}

	/** The same as judged by what the rule is worth here. */
	public Finding judged(Severity now, boolean offered, OptionalDouble expected) {
		return new Finding(rule, now, message, subjects, related, evidence, offered ? offers : List.of(), expected);
	}

	/** What is done about it unless another offer is chosen. */
	public Optional<Remedy> remedy() {
		return offers.stream().map(Offer::remedy).findFirst();
	}

	/** The ways to remedy it, where there are several. */
	public List<Alternative> alternatives() {
		return offers.size() < 2 ? List.of() : offers.stream().map(Offer::way).toList();
	}

	/** The same with another offer first; as it is where there is none of that name. */
	public Finding choosing(String alternative) {
		List<Offer> chosen = offers.stream()
				.sorted(Comparator.comparing(offer -> !offer.way().name().equals(alternative))).toList();
		return new Finding(rule, severity, message, subjects, related, evidence, chosen, precision);
	}

	/** Begins a finding of a rule, with the rule's severity. */
	public static Builder of(Rule rule) {
		return new Builder(rule);
	}

	/** The samples that it is about; of a finding about something larger, such as a survey, those that it rests on. */
	public List<Subject.OfSample> samples() {
		List<Subject.OfSample> own = samples(subjects);
		return own.isEmpty() ? samples(related) : own;
	}

	private static List<Subject.OfSample> samples(List<Subject> some) {
		return some.stream().filter(Subject.OfSample.class::isInstance).map(Subject.OfSample.class::cast).toList();
	}

	/** Surveys that it is about as a whole, since it names no samples. */
	public List<Subject.OfSurvey> wholeSurveys() {
		return samples().isEmpty()
				? subjects.stream().filter(Subject.OfSurvey.class::isInstance).map(Subject.OfSurvey.class::cast)
						.toList()
				: List.of();
	}

	/** Keys of the subjects, ascending. */
	public long[] subjectKeys() {
		return subjects.stream().mapToLong(Subject::key).sorted().toArray();
	}

	/**
	 * A key of what the finding is about: rule and subjects by content, not rows, order, wording or figures. For
	 * waivers and for telling findings of two runs apart.
	 */
	public String contentKey() {
		long key = ContentKeys.of(rule);
		for (long each : subjectKeys()) {
			key = ContentKeys.join(key, each);
		}
		return ContentKeys.text(key);
	}

	/** Figures of one name, or NaN. */
	public double figure(String name) {
		return evidence.stream().filter(f -> f.name().equals(name)).mapToDouble(Figure::value).findFirst()
				.orElse(Double.NaN);
	}

	/** Puts a finding together. */
	public static final class Builder {

		private final Rule rule;
		private Severity severity;
		private String message = "";
		private final List<Subject> subjects = new ArrayList<>();
		private final List<Subject> related = new ArrayList<>();
		private final List<Figure> evidence = new ArrayList<>();
		private final List<Offer> offers = new ArrayList<>();

		private Builder(Rule rule) {
			this.rule = rule;
			severity = rule.severity();
		}

		public Builder severity(Severity other) {
			severity = other;
			return this;
		}

		public Builder message(String text) {
			message = text;
			return this;
		}

		public Builder about(Subject... some) {
			return about(Arrays.asList(some));
		}

		public Builder about(List<? extends Subject> some) {
			subjects.addAll(some);
			return this;
		}

		public Builder beside(List<? extends Subject> some) {
			related.addAll(some);
			return this;
		}

		public Builder figure(String name, double value, String unit) {
			evidence.add(new Figure(name, value, unit));
			return this;
		}

		/** The only one. */
		public Builder remedy(Remedy offered) {
			return remedy(Alternative.ONLY, offered);
		}

		/** One of several; one that would change nothing is not offered. */
		public Builder remedy(Alternative way, Remedy offered) {
			if (offered.size() > 0) {
				offers.add(new Offer(way, offered));
			}
			return this;
		}

		public Finding build() {
			return new Finding(rule.id(), severity, message, subjects, related, evidence, offers,
					OptionalDouble.empty());
		}
	}
}
