package org.cairnfield.curation.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.RuleSetting;

/**
 * What an archive tells the cleaning rules otherwise than usual: numbers that they go by, and which are not asked. What this
 * version does not know is kept as it is. Immutable; in the order of rules, then parameters.
 */
public final class RuleSettings {

	/** Everything as usual. */
	public static final RuleSettings USUAL = new RuleSettings(List.of());

	/** Value of a rule that is not asked. */
	static final String OFF = "off";
	/** Characters of a reason at most. */
	public static final int LONGEST_REASON = 300;

	/**
	 * One of them.
	 *
	 * @param parameter id of the number that is set; null: whether the rule is asked
	 * @param value     as it is kept, such as {@code 4} or {@code off}
	 * @param reason    in a person's words, or null
	 */
	public record One(String rule, String parameter, String value, String reason) {

		private static final Comparator<String> TEXT = Comparator.nullsFirst(Comparator.naturalOrder());
		private static final Comparator<One> ORDER = Comparator.comparing(One::rule, TEXT)
				.thenComparing(One::parameter, TEXT)
				.thenComparing(One::value, TEXT).thenComparing(One::reason, TEXT);

		/** @throws IllegalArgumentException as {@link RuleSettings#with} */
		public static One of(Rule rule, Parameter parameter, double value, String reason) {
			return new One(rule.id(), parameter.id(), RuleWords.number(parameter.checked(value)),
					RuleSettings.reason(reason));
		}

		static One of(RuleSetting kept) {
			return new One(kept.getRule(), kept.getParameter(), kept.getValue(), kept.getReason());
		}

		RuleSetting toModel() {
			RuleSetting kept = ModelFactory.eINSTANCE.createRuleSetting();
			kept.setRule(rule);
			kept.setParameter(parameter);
			kept.setValue(value);
			kept.setReason(reason);
			return kept;
		}

		/** What is set: {@code few-readings.fewest-readings}, or the rule alone. */
		public String name() {
			return RuleSettings.name(rule, parameter);
		}

		/** Whether both are about the same rule and number. */
		boolean isOf(String otherRule, String otherParameter) {
			return Objects.equals(rule, otherRule) && Objects.equals(parameter, otherParameter);
		}

		/** {@code few-readings.fewest-readings = 4: the cellar hears little}. */
		@Override
		public String toString() {
			return cut(name() + " = " + value + because());
		}

		/** The reason as the end of a sentence; a long one, which nobody here has given, is cut. */
		String because() {
			return reason == null ? "" : cut(": " + reason);
		}

		private static String cut(String text) {
			return text.length() > LONGEST_REASON ? text.substring(0, LONGEST_REASON) + "…" : text;
		}
	}

	private final List<One> all;

	private RuleSettings(List<One> all) {
		this.all = all.stream().sorted(One.ORDER).toList();
	}

	/** Those of an archive, as they are, right or wrong. */
	public static RuleSettings of(Archive archive) {
		return archive.getRuleSettings().isEmpty() ? USUAL
				: new RuleSettings(archive.getRuleSettings().stream()
						.map(One::of).toList());
	}

	/** Just these, even where they are as usual: for one run. Of two of one number the later holds. */
	public static RuleSettings just(List<One> some) {
		RuleSettings all = USUAL;
		for (One one : some) {
			all = all.with(one);
		}
		return all;
	}

	/** What a setting is called. @param parameter null for the rule itself */
	public static String name(String rule, String parameter) {
		return rule + (parameter == null ? "" : '.' + parameter);
	}

	/** All. */
	public List<One> all() {
		return all;
	}

	/**
	 * The same with a number set; its usual value is none to keep.
	 *
	 * @param reason null for none
	 * @throws IllegalArgumentException in words for a person, where the value is out of range or the reason cannot be kept
	 */
	public RuleSettings with(Rule rule, Parameter parameter, double value, String reason) {
		One one = One.of(rule, parameter, value, reason);
		return value == parameter.usual() ? without(rule.id(), parameter.id()) : with(one);
	}

	/** The same with a rule not asked. @throws IllegalArgumentException in words for a person, where there is no reason */
	public RuleSettings off(Rule rule, String reason) {
		if (reason(reason) == null) {
			throw new IllegalArgumentException("say why " + rule.id() + " is not to be asked");
		}
		return with(new One(rule.id(), null, OFF, reason(reason)));
	}

	/** The same with a number, or whether a rule is asked, as usual. @param parameter null for whether it is asked */
	public RuleSettings without(String rule, String parameter) {
		return new RuleSettings(all.stream().filter(one -> !one.isOf(rule, parameter)).toList());
	}

	/** The same with all of a rule as usual. */
	public RuleSettings without(String rule) {
		return new RuleSettings(all.stream().filter(one -> !rule.equals(one.rule())).toList());
	}

	private RuleSettings with(One one) {
		List<One> changed = new ArrayList<>(without(one.rule(), one.parameter()).all);
		changed.add(one);
		return new RuleSettings(changed);
	}

	private static String reason(String text) {
		String stripped = text == null ? "" : text.strip();
		if (stripped.length() > LONGEST_REASON) {
			throw new IllegalArgumentException(
					"a reason has up to " + LONGEST_REASON + " characters, this one has " + stripped.length());
		}
		if (stripped.chars().anyMatch(Character::isISOControl)) {
			throw new IllegalArgumentException("a reason is one line of text");
		}
		return stripped.isEmpty() ? null : stripped;
	}

	/** The value of a number, or {@code off}; empty where it is as usual. @param parameter null for whether the rule is asked */
	public Optional<One> find(String rule, String parameter) {
		return all.stream().filter(one -> one.isOf(rule, parameter)).findFirst();
	}

	/** What all rules are told by these. */
	public RulesAsTold rules() {
		return RulesAsTold.all(this);
	}

	/** Names of what is set here or there and not to the same. */
	public List<String> changesTo(RuleSettings other) {
		TreeSet<String> names = new TreeSet<>();
		all.stream().filter(one -> !other.all.contains(one)).forEach(one -> names.add(one.name()));
		other.all.stream().filter(one -> !all.contains(one)).forEach(one -> names.add(one.name()));
		return List.copyOf(names);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof RuleSettings settings && settings.all.equals(all);
	}

	@Override
	public int hashCode() {
		return all.hashCode();
	}

	/** One a line. */
	@Override
	public String toString() {
		return String.join("\n", all.stream().map(One::toString).toList());
	}
}
