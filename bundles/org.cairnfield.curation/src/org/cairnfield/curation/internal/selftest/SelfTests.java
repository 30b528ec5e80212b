package org.cairnfield.curation.internal.selftest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleResult;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Units;

/**
 * What all rules that can be tried out are worth on a map. Only those that found something are tried, and only where they did. A run
 * that is given others takes over what stands for the same content. The same map gives the same answers, whatever the workers.
 *
 * @param byKey by {@link RuleResult#key}; empty where a rule was tried out in vain
 */
public record SelfTests(Map<Long, Optional<Expectation>> byKey) {

	/** Before any. */
	public static final SelfTests NONE = new SelfTests(Map.of());

	public SelfTests {
		byKey = Map.copyOf(byKey);
	}

	/** What findings of a result are worth; empty where that is not known. */
	public Optional<Expectation> of(RuleResult result) {
		return byKey.getOrDefault(result.key(), Optional.empty());
	}

	/**
	 * Tries out what has not been tried on the same content.
	 *
	 * @param run that made the result
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	public static SelfTests over(SurveyedMap map, RunResult result, RuleRun run, SelfTests before, Workers workers) {
		Map<Long, Optional<Expectation>> known = new HashMap<>();
		List<RuleResult> open = new ArrayList<>();
		for (RuleResult each : result.results()) {
			boolean tried = Drill.of(each.rule()).isPresent() && !Drill.names(each.outcome().findings()).isEmpty();
			if (tried && before.byKey.containsKey(each.key())) {
				known.put(each.key(), before.byKey.get(each.key()));
			} else if (tried) {
				open.add(each);
			}
		}
		workers.progress().begin(Messages.SelfTests_tryingRulesOutOnPlanted, open.size());
		Grounds grounds = new Grounds(map);
		for (RuleResult each : open) {
			workers.checkCancelled();
			Rule rule = run.rule(each.rule());
			List<Finding> findings = each.outcome().findings();
			known.put(each.key(), grounds.copy(rule, each.unit())
					.flatMap(copy -> Drill.of(rule.id()).orElseThrow().run(rule, run.settings(rule), findings,
							copy.input, copy.planted, workers.quietly())));
			workers.progress().advance(1);
		}
		return new SelfTests(known);
	}

	/** A unit with faults. */
	private record Copy(RuleInput input, Planted planted) {
	}

	/** Copies of units; rules about the same kind of fault share one. */
	private static final class Grounds {
		private final SurveyedMap map;
		private final Map<RuleScope, Map<String, RuleInput>> units = new EnumMap<>(RuleScope.class);
		private final Map<String, Copy> copies = new HashMap<>();

		Grounds(SurveyedMap map) {
			this.map = map;
		}

		Optional<Copy> copy(Rule rule, String unit) {
			RuleInput input = units.computeIfAbsent(rule.scope(), scope -> {
				Map<String, RuleInput> byName = new HashMap<>();
				Units.parts(map, scope).forEach(part -> byName.put(part.unit(), part));
				return byName;
			}).get(unit);
			if (input == null) {
				return Optional.empty();
			}
			TrialFault fault = Drill.of(rule.id()).orElseThrow().fault();
			long seed = ContentKeys.of(unit);
			return Optional.of(switch (fault) {
			case WRONG_PLACE, WRONG_FLOOR, SWAPPED_AXES -> rule.scope() == RuleScope.SURVEY
					? copy(Messages.SelfTests_singlePlaces, input, () -> PlacePlants.singlesIn(input.map(), seed))
					: copy("places", input, () -> PlacePlants.in(input.map(), seed));
			case MOVED, VANISHED, APPEARED ->
				copy(Messages.SelfTests_accessPoints, input, () -> AccessPointPlants.in(input, seed));
			case WALKING_SENDER -> copy("senders", input, () -> WalkingSenders.in(input.map(), seed));
			});
		}

		private Copy copy(String kind, RuleInput input, RuleInput.Maker<Planted> maker) {
			return copies.computeIfAbsent(kind + '\n' + input.scope() + '\n' + input.unit(), name -> {
				Planted planted = maker.make();
				return new Copy(new RuleInput(planted.map(), input.scope(), input.unit()), planted);
			});
		}
	}
}
