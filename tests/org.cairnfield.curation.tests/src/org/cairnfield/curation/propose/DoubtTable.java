package org.cairnfield.curation.propose;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultKind;
import org.cairnfield.core.simulate.FaultyCampus;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.PlantedFault;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.effect.MeasuredSet;
import org.cairnfield.curation.rules.SurveyedMap;
import org.junit.jupiter.api.Test;

/**
 * Writes {@link DoubtScores} of the demo, of four campuses with planted faults, and of open survey sets, as tables for the docs,
 * to the file that the environment variable CAIRNFIELD_FIGURES names, or to the output. No test of its own: tests/doubts runs it.
 */
class DoubtTable {

	/** What makes a sample as such wrong: its place, its floor, or what it is said to have heard. */
	private static final Set<FaultKind> SAMPLES = Set.of(FaultKind.SWAPPED_AXES, FaultKind.WRONG_FLOOR,
			FaultKind.WRONG_POSITION,
			FaultKind.FAULTY_DEVICE, FaultKind.PERMUTED_READINGS, FaultKind.SPARSE, FaultKind.FOREIGN_SCAN,
			FaultKind.SCAN_ELSEWHERE);

	private final StringBuilder text = new StringBuilder();

	@Test
	void writesTheTables() throws Exception {
		List<DoubtScores> all = new ArrayList<>();
		all.add(simulated("demo", MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED)));
		all.add(simulated("campus 6601", FaultyCampus.surveys(6601, CampusSize.of(3, 3, 140))));
		all.add(simulated("campus 6602", FaultyCampus.surveys(6602, CampusSize.of(2, 4, 120))));
		all.add(simulated("campus 6603", FaultyCampus.surveys(6603, CampusSize.of(4, 2, 190))));
		all.add(simulated("campus 6604", FaultyCampus.surveys(6604, CampusSize.of(2, 3, 150))));
		for (String[] set : new String[][] { { "office", "grid-areas", "office_train", "office_test" },
				{ "corridor", "grid-areas", "corridor_train", "corridor_test" },
				{ "lecture theatre", "grid-areas", "lecture_theatre_train", "lecture_theatre_test" },
				{ "walked floor", "walked-floor", "trn", "tst" },
				{ "three of twelve", "twelve-surveys", "2019-0[236]", "2019-07-03" },
				{ "three buildings", "three-buildings", "Training", "Testing" } }) {
			all.add(DoubtScores.of(set[0], MeasuredSet.open(set[1], set[2], set[3]), null, Workers.inline()));
		}
		print("Approving costs more than the pool", all, false);
		print("The sample is faulty", all.stream().filter(s -> s.faulty() >= 0).toList(), true);
		printRates(all);
		String file = System.getenv("CAIRNFIELD_FIGURES");
		if (file == null) {
			System.out.print(text);
		} else {
			Files.writeString(Path.of(file), text);
		}
	}

	private static DoubtScores simulated(String name, SimulatedArchive archive) {
		MeasuredSet set = MeasuredSet.simulated(name, archive);
		SurveyedMap map = set.map();
		Set<String> faulty = archive.truth().stream().filter(f -> SAMPLES.contains(f.kind()) && !f.sample().isEmpty())
				.map(PlantedFault::sample).collect(Collectors.toSet());
		Set<Integer> planted = new HashSet<>();
		for (int s = 0; s < map.size(); s++) {
			if (faulty.contains(map.sampleId(s))) {
				planted.add(s);
			}
		}
		return DoubtScores.of(name, set, planted, Workers.inline());
	}

	private void print(String title, List<DoubtScores> all, boolean faulty) {
		line("\n## " + title + "\n\n| doubt | " + all.stream().map(DoubtScores::set).collect(Collectors.joining(" | "))
				+ " | median |");
		line("|---".repeat(all.size() + 2) + "|");
		line("| *proposals* | "
				+ all.stream().map(s -> Integer.toString(s.proposals())).collect(Collectors.joining(" | ")) + " | |");
		line("| *" + (faulty ? "faulty" : "costly of those that differ") + "* | " + all.stream()
				.map(s -> faulty ? Integer.toString(s.faulty()) : s.costly() + " of " + s.decided())
				.collect(Collectors.joining(" | ")) + " | |");
		for (String doubt : DoubtScores.DOUBTS.keySet()) {
			line("| " + doubt + " | "
					+ all.stream().map(s -> DoubtScores.text((faulty ? s.toFaulty() : s.toPool()).get(doubt)))
							.collect(Collectors.joining(" | "))
					+ " | " + DoubtScores.text(DoubtScores.median(DoubtScores.column(all, doubt, faulty))) + " |");
		}
	}

	private void printRates(List<DoubtScores> all) {
		line("\n## Advice is right\n\n| advice | "
				+ all.stream().map(DoubtScores::set).collect(Collectors.joining(" | ")) + " |");
		line("|---".repeat(all.size() + 1) + "|");
		for (Advice advice : List.of(Advice.APPROVE, Advice.MOVE, Advice.LEAVE_OUT)) {
			line("| " + advice.word() + " | "
					+ all.stream().map(s -> s.rates().of(advice)).map(r -> r.right() + " of " + r.judged())
							.collect(Collectors.joining(" | "))
					+ " |");
		}
	}

	private void line(String line) {
		text.append(line).append('\n');
	}
}
