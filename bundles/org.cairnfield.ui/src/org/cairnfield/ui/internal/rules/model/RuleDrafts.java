package org.cairnfield.ui.internal.rules.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.check.RuleSettings.One;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.eclipse.osgi.util.NLS;

/**
 * What a person is about to tell the rules: what the archive keeps, with what was typed since, right or wrong. Of what is wrong
 * the text stays as it was typed, and nothing can be applied before it is mended or taken back.
 */
public final class RuleDrafts {

	private RuleSettings settings;
	/** By name of the setting, or by the rule for its reason. */
	private final Map<String, String> wrong = new TreeMap<>();
	private final Map<String, String> problems = new TreeMap<>();

	/** @param kept by the archive */
	public RuleDrafts(RuleSettings kept) {
		settings = kept;
	}

	/** What the archive is to keep; without what is wrong. */
	public RuleSettings settings() {
		return settings;
	}

	/** The text of a number, without its unit. */
	public String number(Rule rule, Parameter parameter) {
		String name = RuleSettings.name(rule.id(), parameter.id());
		return wrong.containsKey(name) ? wrong.get(name)
				: settings.find(rule.id(), parameter.id()).map(One::value).orElse(RuleWords.number(parameter.usual()));
	}

	/** Sets a number as it was typed. */
	public void number(Rule rule, Parameter parameter, String text) {
		attempt(RuleSettings.name(rule.id(), parameter.id()), text,
				() -> settings = settings.with(rule, parameter, parse(parameter, text), why(rule)));
	}

	private static double parse(Parameter parameter, String text) {
		try {
			return Double.parseDouble(text.strip().replace(',', '.'));
		} catch (NumberFormatException e) {
			throw new IllegalArgumentException("'" + text.strip() + "' is not a number; " + range(parameter), e);
		}
	}

	/** Whether the rule is asked. */
	public boolean isAsked(Rule rule) {
		return !wrong.containsKey(rule.id()) && settings.find(rule.id(), null).isEmpty();
	}

	/** Has the rule asked, or not. */
	public void ask(Rule rule, boolean asked) {
		String why = why(rule);
		wrong.remove(rule.id());
		problems.remove(rule.id());
		settings = settings.without(rule.id(), null);
		if (!asked) {
			attempt(rule.id(), why, () -> settings = settings.off(rule, why));
		}
	}

	/** Why the rule is told otherwise than usual. */
	public String why(Rule rule) {
		return wrong.containsKey(rule.id()) ? wrong.get(rule.id())
				: settings.all().stream().filter(one -> rule.id().equals(one.rule()) && one.reason() != null)
						.map(One::reason).findFirst().orElse("");
	}

	/** Says why, of all that the rule is told. A rule that is not asked needs it. */
	public void why(Rule rule, String text) {
		boolean off = !isAsked(rule);
		attempt(rule.id(), text, () -> {
			RuleSettings changed = off ? settings.off(rule, text) : settings;
			for (Parameter parameter : rule.parameters()) {
				Optional<One> one = settings.find(rule.id(), parameter.id());
				if (one.isPresent() && isFollowed(parameter, one.get())) {
					changed = changed.with(rule, parameter, Double.parseDouble(one.get().value()), text);
				}
			}
			settings = changed;
		});
	}

	private void attempt(String name, String text, Runnable change) {
		try {
			change.run();
			wrong.remove(name);
			problems.remove(name);
		} catch (IllegalArgumentException e) {
			wrong.put(name, text);
			problems.put(name, e.getMessage());
		}
	}

	/** All of a rule as usual. */
	public void reset(Rule rule) {
		wrong.keySet().removeIf(name -> isOf(rule, name));
		problems.keySet().removeIf(name -> isOf(rule, name));
		settings = settings.without(rule.id());
	}

	/** All rules as usual, and nothing kept of what this version does not know. */
	public void resetAll() {
		wrong.clear();
		problems.clear();
		settings = RuleSettings.USUAL;
	}

	private static boolean isOf(Rule rule, String name) {
		return name.equals(rule.id()) || name.startsWith(rule.id() + '.');
	}

	/** What is wrong with what was typed for a rule. */
	public Optional<String> problem(Rule rule) {
		return problems.entrySet().stream().filter(each -> isOf(rule, each.getKey())).map(Map.Entry::getValue)
				.findFirst();
	}

	/** What is wrong with a number as it was typed, or as the archive keeps it. */
	public Optional<String> problem(Rule rule, Parameter parameter) {
		String typed = problems.get(RuleSettings.name(rule.id(), parameter.id()));
		return typed != null ? Optional.of(typed)
				: settings.find(rule.id(), parameter.id()).filter(one -> !isFollowed(parameter, one))
						.map(one -> NLS.bind(Messages.RuleDrafts_theArchiveKeepsWhatCannot,
								RuleWords.number(parameter.usual()), range(parameter)));
	}

	private static boolean isFollowed(Parameter parameter, One one) {
		try {
			parameter.checked(Double.parseDouble(String.valueOf(one.value())));
			return true;
		} catch (IllegalArgumentException e) { // also where it is no number
			return false;
		}
	}

	/** What keeps the whole from being applied, naming the rule. */
	public Optional<String> problem() {
		return CleaningRules.registry().all().stream().filter(rule -> problem(rule).isPresent()).findFirst()
				.map(rule -> rule.title() + ": " + problem(rule).get());
	}

	/** How a rule is told, for a list of all: {@code as usual}, {@code not asked}, {@code fewest-readings 5}. */
	public String words(Rule rule) {
		List<String> words = new ArrayList<>();
		if (problem(rule).isPresent()) {
			words.add(Messages.RuleDrafts_toBeMended);
		}
		if (!isAsked(rule)) {
			words.add(Messages.RuleDrafts_notAsked);
		}
		for (Parameter parameter : rule.parameters()) {
			settings.find(rule.id(), parameter.id()).ifPresent(one -> words.add(isFollowed(parameter, one)
					? NLS.bind(Messages.RuleDrafts_usually,
							RuleWords.measure(Double.parseDouble(one.value()), parameter.unit()),
							RuleWords.measure(parameter.usual(), parameter.unit()))
					: NLS.bind(Messages.RuleDrafts_cannotBeUsed, one.value())));
		}
		return words.isEmpty() ? Messages.RuleDrafts_asUsual : String.join("; ", words);
	}

	/** What can be set of a number, for people: {@code usually 3, 1 to 50}. */
	public static String range(Parameter parameter) {
		return NLS.bind(Messages.RuleDrafts_usuallyTo, new Object[] { RuleWords.number(parameter.usual()),
				RuleWords.number(parameter.lowest()), RuleWords.number(parameter.highest()) });
	}
}
