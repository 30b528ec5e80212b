package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;

/**
 * Runs rules over a map, several at a time. A run that is given the result of the one before asks a rule again only
 * about units whose content, or the rule's settings, have changed; its result is that of a full run. A rule that
 * breaks is reported as such and stops no other.
 */
public final class RuleRun {

	private final List<Rule> rules;
	private final Map<String, Settings> settings;

	/**
	 * @param rules    in any order
	 * @param settings by id of the rule; those absent are as usual
	 */
	public RuleRun(List<Rule> rules, Map<String, Settings> settings) {
		this.rules = rules.stream().sorted(Comparator.comparing(Rule::id)).toList();
		this.settings = Map.copyOf(settings);
	}

	/** All parameters as usual. */
	public RuleRun(List<Rule> rules) {
		this(rules, Map.of());
	}

	private record Task(Rule rule, RuleInput input, long key) {
	}

	private record Asked(String rule, String unit, long key) {
	}

	/** Everything anew. */
	public RunResult over(SurveyedMap map, Workers workers) {
		return over(map, RunResult.NONE, workers);
	}

	/**
	 * Only what is not in the result of the run before.
	 *
	 * @throws CancellationException when cancelled
	 */
	public RunResult over(SurveyedMap map, RunResult before, Workers workers) {
		Map<Asked, RuleResult> known = new HashMap<>();
		for (RuleResult result : before.results()) {
			if (!(result.outcome() instanceof RuleOutcome.Failed)) {
				known.put(new Asked(result.rule(), result.unit(), result.key()), result);
			}
		}
		List<Task> tasks = tasks(map);
		RuleResult[] results = new RuleResult[tasks.size()];
		List<Integer> open = new ArrayList<>();
		for (int i = 0; i < results.length; i++) {
			Task task = tasks.get(i);
			RuleResult old = known.get(new Asked(task.rule.id(), task.input.unit(), task.key));
			if (old == null) {
				open.add(i);
			} else {
				results[i] = new RuleResult(old.rule(), old.unit(), old.outcome(), old.key(), 0, true);
			}
		}
		workers.progress().begin("checking", 2L * open.size());
		Workers quiet = workers.quietly();
		Set<Integer> broken = new HashSet<>();
		for (int i : open) {
			RuleOutcome failure = prepare(tasks.get(i), quiet);
			if (failure != null) {
				broken.add(i);
				results[i] = result(tasks.get(i), failure, 0);
			}
			workers.progress().advance(1);
		}
		open.removeAll(broken);
		workers.progress().advance(broken.size());
		workers.forRanges(open.size(), () -> (from, to) -> {
			for (int k = from; k < to; k++) {
				results[open.get(k)] = check(tasks.get(open.get(k)), quiet);
			}
		});
		return new RunResult(List.of(results));
	}

	private List<Task> tasks(SurveyedMap map) {
		Units cutter = new Units(map);
		Map<RuleScope, List<Units.Unit>> units = new EnumMap<>(RuleScope.class);
		List<Task> tasks = new ArrayList<>();
		for (Rule rule : rules) {
			long own = ContentKeys.join(ContentKeys.of(rule.id() + ' ' + rule.getClass().getName()),
					settings(rule).key());
			for (Units.Unit unit : units.computeIfAbsent(rule.scope(), cutter::of)) {
				tasks.add(new Task(rule, unit.input(), ContentKeys.join(own, unit.key())));
			}
		}
		return tasks;
	}

	/** Those that are run, by id. */
	public List<Rule> rules() {
		return rules;
	}

	/** One of the rules that are run; @throws java.util.NoSuchElementException for another */
	public Rule rule(String id) {
		return rules.stream().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow();
	}

	/** What a rule is told. */
	public Settings settings(Rule rule) {
		return settings.getOrDefault(rule.id(), Settings.USUAL);
	}

	private static RuleOutcome prepare(Task task, Workers workers) {
		workers.checkCancelled();
		try {
			task.rule.prepare(task.input, workers);
			return null;
		} catch (CancellationException e) {
			throw e;
		} catch (RuntimeException e) {
			return failed(e);
		}
	}

	private RuleResult check(Task task, Workers workers) {
		long start = System.nanoTime();
		RuleOutcome outcome;
		try {
			outcome = task.rule.check(task.input, settings(task.rule), workers);
		} catch (CancellationException e) {
			throw e;
		} catch (RuntimeException e) {
			outcome = failed(e);
		}
		return result(task, outcome, System.nanoTime() - start);
	}

	private static RuleResult result(Task task, RuleOutcome outcome, long nanos) {
		return new RuleResult(task.rule.id(), task.input.unit(), outcome, task.key, nanos, false);
	}

	private static RuleOutcome failed(RuntimeException e) {
		StackTraceElement[] trace = e.getStackTrace();
		return new RuleOutcome.Failed(e + (trace.length == 0 ? "" : Words.bind(Messages.RuleRun_at, trace[0])));
	}
}
