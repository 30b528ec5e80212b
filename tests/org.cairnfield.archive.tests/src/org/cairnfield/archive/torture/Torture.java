package org.cairnfield.archive.torture;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** The whole of it, with figures; see {@code tests/torture}. */
public final class Torture {

	private static final long SLOWEST_MILLIS = 5000;

	private Torture() {
	}

	/** @param arguments a folder to work in, how many kills, how many mutations, and a seed */
	public static void main(String[] arguments) throws Exception {
		Path folder = Files.createDirectories(Path.of(arguments[0]));
		long seed = Long.parseLong(arguments[3]);
		System.out.println("seed " + seed);
		int kills = Integer.parseInt(arguments[1]);
		Kills.Report killed = Kills.run(folder.resolve("kills"), kills, seed);
		System.out.printf(
				"%d processes killed while they saved: %d archives in the old state, %d in the new, none between%n",
				killed.kills(), killed.old(), killed.fresh());
		System.out.printf("  %d in the middle of a save, %d in the middle of a save point; %d locks taken over%n",
				killed.duringSave(),
				killed.commitInterrupted(), killed.locksTakenOver());
		Map<String, Integer> cuts = Truncations.run(folder.resolve("cuts"), 300);
		System.out.println("files cut at each KiB and in their last bytes, each noticed: " + cuts);
		int mutations = Integer.parseInt(arguments[2]);
		Mutations.Report mutated = Mutations.run(folder.resolve("mutations"), mutations, seed, SLOWEST_MILLIS);
		System.out.printf("%d damaged archives opened: %d told, %d of the same content, %d with other content under a"
				+ " seal made to match; no hang, no crash, no silent loss%n", mutated.mutations(), mutated.reported(),
				mutated.unchanged(), mutated.accepted());
		System.out.printf("  the slowest took %d ms; heap limited to %d MiB%n", mutated.slowest(),
				Runtime.getRuntime().maxMemory() >> 20);
	}
}
