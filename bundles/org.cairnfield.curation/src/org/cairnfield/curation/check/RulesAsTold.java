package org.cairnfield.curation.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.cleaning.CleaningRules;

/**
 * Rules with what they are told otherwise than usual.
 *
 * @param run      of the rules that are asked
 * @param told     what is not as usual, of the rules that were meant, in the order of the settings
 * @param problems settings of the archive that cannot be followed, each with what to do about it; these are as usual
 */
public record RulesAsTold(RuleRun run, List<Told> told, List<String> problems) {

	/**
	 * Something that is not as usual.
	 *
	 * @param parameter null: whether the rule is asked
	 * @param value     of the parameter; NaN without one
	 * @param kept      as it is kept or was given
	 * @param forOnce   whether it holds for this run only; otherwise the archive keeps it
	 */
	public record Told(Rule rule, Parameter parameter, double value, RuleSettings.One kept, boolean forOnce) {

		/** {@code few-readings.fewest-readings = 4, usually 3 (kept with the archive: the cellar hears little)}. */
		public String words() {
			if (parameter == null) {
				return rule.id() + (forOnce ? Words.bind(Messages.RulesAsTold_isAskedForThisOnce, kept.because())
						: Words.bind(Messages.RulesAsTold_isSwitchedOffKeptWith, kept.because()));
			}
			return Words.bind(Messages.RulesAsTold_default, kept.name(), RuleWords.measure(value, parameter.unit()),
					RuleWords.measure(parameter.usual(), parameter.unit()),
					forOnce ? Messages.RulesAsTold_forThisOnce : Messages.RulesAsTold_keptWithTheArchive,
					kept.because());
		}
	}

	/** All rules by the settings of an archive. */
	static RulesAsTold all(RuleSettings kept) {
		List<Rule> all = CleaningRules.registry().all();
		return of(all, kept, RuleSettings.USUAL, false);
	}

	/**
	 * @param meant   some of the rules
	 * @param kept    what the archive says
	 * @param forOnce numbers that are set for this run, whatever the archive says
	 * @param named   whether a person has named the rules, who wants them asked even where the archive does not
	 */
	public static RulesAsTold of(List<Rule> meant, RuleSettings kept, RuleSettings forOnce, boolean named) {
		Reading reading = new Reading(meant, forOnce, named);
		kept.all().stream().collect(Collectors.groupingBy(RuleSettings.One::name)).values().stream()
				.filter(same -> same.size() > 1)
				.forEach(reading::several);
		kept.all().forEach(one -> reading.read(one, false));
		forOnce.all().forEach(one -> reading.read(one, true));
		List<Rule> asked = meant.stream().filter(rule -> !reading.off.contains(rule.id())).toList();
		return new RulesAsTold(new RuleRun(asked, reading.settings), List.copyOf(reading.told),
				List.copyOf(reading.problems));
	}

	/** What is not as usual, in words. */
	public List<String> words() {
		return told.stream().map(Told::words).toList();
	}

	private static final class Reading {

		private static final String REMEDY = Messages.RulesAsTold_setItAgainOrReset;

		private final Map<String, Rule> known = CleaningRules.registry().all().stream()
				.collect(Collectors.toMap(Rule::id, Function.identity()));
		private final Set<String> meant;
		private final RuleSettings forOnce;
		private final boolean named;
		private final Set<String> ambiguous = new HashSet<>();
		private final Map<String, Settings> settings = new HashMap<>();
		private final Set<String> off = new HashSet<>();
		private final List<Told> told = new ArrayList<>();
		private final List<String> problems = new ArrayList<>();

		Reading(List<Rule> meant, RuleSettings forOnce, boolean named) {
			this.meant = meant.stream().map(Rule::id).collect(Collectors.toSet());
			this.forOnce = forOnce;
			this.named = named;
		}

		/** A merge by plain Git may leave both sides' lines. */
		void several(List<RuleSettings.One> same) {
			ambiguous.add(same.get(0).name());
			problems.add(Words.bind(Messages.RulesAsTold_isSetTimesToThe, same.get(0).name(), same.size(),
					RuleWords.list(same.stream().map(RuleSettings.One::value).toList()), REMEDY));
		}

		void read(RuleSettings.One one, boolean once) {
			Rule rule = known.get(one.rule());
			if (ambiguous.contains(one.name()) && !once) {
				return;
			}
			if (rule == null || one.parameter() == null && !RuleSettings.OFF.equals(one.value())) {
				unknown(one);
			} else if (one.parameter() == null) {
				off(rule, one);
			} else {
				rule.parameters().stream().filter(parameter -> parameter.id().equals(one.parameter())).findFirst()
						.ifPresentOrElse(parameter -> number(rule, parameter, one, once), () -> unknown(one));
			}
		}

		private void unknown(RuleSettings.One one) {
			problems.add(Words.bind(Messages.RulesAsTold_thisVersionDoesNotKnow, one));
		}

		private void off(Rule rule, RuleSettings.One one) {
			if (meant.contains(rule.id())) {
				told.add(new Told(rule, null, Double.NaN, one, named));
				if (!named) {
					off.add(rule.id());
				}
			}
		}

		private void number(Rule rule, Parameter parameter, RuleSettings.One one, boolean once) {
			try {
				double value = Double.parseDouble(String.valueOf(one.value()));
				Settings with = settings.getOrDefault(rule.id(), Settings.USUAL).with(parameter, value);
				boolean overruled = !once && forOnce.find(rule.id(), parameter.id()).isPresent();
				if (meant.contains(rule.id()) && !overruled) {
					settings.put(rule.id(), with);
					told.add(new Told(rule, parameter, value, one, once));
				}
			} catch (NumberFormatException e) {
				problems.add(Words.bind(Messages.RulesAsTold_isNoNumberSoThe, one, usual(parameter), REMEDY));
			} catch (IllegalArgumentException e) {
				problems.add(
						Words.bind(Messages.RulesAsTold_soTheDefaultOfIs, one, e.getMessage(), usual(parameter),
								REMEDY));
			}
		}

		private static String usual(Parameter parameter) {
			return RuleWords.measure(parameter.usual(), parameter.unit());
		}
	}
}
