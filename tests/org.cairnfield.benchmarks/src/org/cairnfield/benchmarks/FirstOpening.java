package org.cairnfield.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;

/**
 * Opens an archive in a JVM of its own, as somebody does who starts the program, and changes one sample. An empty archive
 * is opened before it: what that takes is the loading of the libraries, which does not depend on any archive.
 */
final class FirstOpening {

	private static final int HEAP_MIB = 1024;

	private FirstOpening() {
	}

	/** Opening the empty archive and the other, then a save and a save point after one changed sample: seconds of the wall clock and of the processor. */
	record Figures(double emptyWall, double emptyCpu, double openWall, double openCpu, double saveWall, double saveCpu,
			double pointWall, double pointCpu, double usedMiB, int samples) {
	}

	/** @throws IOException where it does not get through */
	static Figures measure(Path empty, Path archive) throws IOException, InterruptedException {
		Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
				"-Xmx" + HEAP_MIB + "m", "-XX:+UseParallelGC", "-cp", System.getProperty("java.class.path"),
				FirstOpening.class.getName(), empty.toString(), archive.toString())
				.redirectError(ProcessBuilder.Redirect.INHERIT).start();
		String[] said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip().split(" ");
		if (process.waitFor() != 0) {
			throw new IOException(archive + " was not opened in a heap of " + HEAP_MIB + " MiB");
		}
		double[] n = new double[said.length];
		for (int i = 0; i < n.length; i++) {
			n[i] = Double.parseDouble(said[i]);
		}
		return new Figures(n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7], n[8], (int) n[9]);
	}

	public static void main(String[] args) throws IOException {
		Lap lap = new Lap();
		new ArchiveStore().open(Path.of(args[0]), Mode.EDIT).close();
		String figures = lap.next();
		try (OpenArchive open = new ArchiveStore().open(Path.of(args[1]), Mode.EDIT)) {
			figures += lap.next();
			int samples = Archives.samples(open.archive());
			Archives.moveOne(Archives.first(open.archive()), 0, System.currentTimeMillis() % 1000);
			lap.next();
			open.save();
			figures += lap.next();
			open.savePoint(Archives.PERSON, null);
			figures += lap.next();
			System.gc();
			long used = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
			System.out.println(figures + String.format(Locale.ROOT, "%.1f %d", used / 1048576.0, samples));
		}
	}

	private static final class Lap {
		private long wall = System.nanoTime();
		private long cpu = Machine.cpuNanos();

		String next() {
			long nowWall = System.nanoTime();
			long nowCpu = Machine.cpuNanos();
			String text = String.format(Locale.ROOT, "%.4f %.4f ", (nowWall - wall) / 1e9, (nowCpu - cpu) / 1e9);
			wall = nowWall;
			cpu = nowCpu;
			return text;
		}
	}
}
