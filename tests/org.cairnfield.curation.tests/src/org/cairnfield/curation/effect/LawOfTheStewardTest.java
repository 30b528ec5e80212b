package org.cairnfield.curation.effect;

import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.RunResult;
import org.cairnfield.curation.rules.cleaning.CleaningRules;

class LawOfTheStewardTest {

	public static void main(String[] args) throws Exception {
		if (args.length > 0) {
			for (String seed : args) {
				print(SparseHalls.of(Long.parseLong(seed)));
			}
			return;
		}
		print(MeasuredSet.demo());
		MeasuredSet.campuses().forEach(LawOfTheStewardTest::print);
		print(MeasuredSet.open("walked-floor", "trn", "tst"));
		print(MeasuredSet.open("grid-areas", "train", "test"));
		print(MeasuredSet.open("three-buildings", "Training", "Testing"));
	}

	static MapEffect onTest(MeasuredSet set, List<Finding> findings) {
		return MapComparison.of(set.map().map(), RemediedMap.ofFindings(set.map(), findings).map().map(), set.test(), Workers.inline());
	}

	private static void print(MeasuredSet set) {
		long t0 = System.nanoTime();
		RunResult result = new RuleRun(CleaningRules.registry().all()).over(set.map(), Workers.inline());
		System.out.printf(Locale.ROOT, "%s: %d samples, %d test, check %.2f s%n", set.name(), set.map().size(), set.test().size(), (System.nanoTime() - t0) / 1e9);
		t0 = System.nanoTime();
		HoldOuts holdOuts = HoldOuts.of(set.map(), result.findings(), Workers.inline());
		System.out.printf(Locale.ROOT, "hold-outs %.2f s%n", (System.nanoTime() - t0) / 1e9);
		TreeMap<String, List<Finding>> byRule = new TreeMap<>();
		result.findings().forEach(f -> byRule.computeIfAbsent(f.rule(), r -> new java.util.ArrayList<>()).add(f));
		byRule.forEach((rule, findings) -> {
			if (findings.stream().noneMatch(f -> f.remedy().isPresent())) {
				return;
			}
			MapEffect on = onTest(set, findings);
			long t = System.nanoTime();
			RemedyEffect effect = holdOuts.effect(findings.stream().flatMap(f -> f.remedy().stream()).toList(), Workers.inline());
			MapEffect h = effect.onHoldOuts();
			System.out.printf(Locale.ROOT, "  %-22s %-8s %3d f %5d s %3d ap | test %.3f -> %.3f [%+.3f %+.3f] floor %.4f -> %.4f [%+.4f %+.4f] %s | held %d: %.3f -> %.3f [%+.3f %+.3f] floor %.4f -> %.4f [%+.4f %+.4f] %s %.2fs%n",
					rule, findings.get(0).severity(), findings.size(), effect.samples(), effect.accessPoints(), on.errorBeforeMetres(), on.errorAfterMetres(),
					on.errorChange().low(), on.errorChange().high(), on.rightFloorBefore(), on.rightFloorAfter(), on.floorChange().low(), on.floorChange().high(),
					on.isWorse() ? "WORSE" : on.isBetter() ? "better" : "", h.questions(), h.errorBeforeMetres(), h.errorAfterMetres(),
					h.errorChange().low(), h.errorChange().high(), h.rightFloorBefore(), h.rightFloorAfter(), h.floorChange().low(), h.floorChange().high(),
					h.isWorse() ? "WORSE" : h.isBetter() ? "better" : "", (System.nanoTime() - t) / 1e9);
		});
	}
}
