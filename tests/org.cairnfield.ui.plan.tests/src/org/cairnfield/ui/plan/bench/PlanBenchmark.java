package org.cairnfield.ui.plan.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.plan.internal.colour.Colourings;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.view.PlanPane;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/**
 * Measures the plan in a window of 1500 × 900 points: {@code PlanBenchmark [samples]}, 20,000 by default. A frame is the time
 * from one paint of the canvas to the next while the view changes all the time; the display gives out at most one a
 * 1/60 s. An event is one turn of the event loop, so the longest one is how long a person waits at worst; beside it the
 * processor time of the longest, which does not grow when other programs are busy.
 */
public final class PlanBenchmark {

	private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
	private static final int WARM_UP = 40;
	private static final int FRAMES = 200;

	private final Display display = new Display();
	private final List<Double> events = new ArrayList<>();
	private double mostProcessorMillis;
	private PlanCanvas plan;
	private boolean painted;

	private PlanBenchmark() {
	}

	public static void main(String[] arguments) throws Exception {
		new PlanBenchmark().run(arguments.length == 0 ? 20_000 : Integer.parseInt(arguments[0]));
	}

	private void run(int samples) throws Exception {
		Path folder = Files.createTempDirectory("plan-benchmark");
		try (OpenArchive open = BigFloor.create(folder.resolve("archive"), samples)) {
			Shell shell = new Shell(display, SWT.NO_TRIM);
			shell.setLayout(new FillLayout());
			shell.setSize(1500, 900);
			PlanPane pane = new PlanPane(shell, Colourings.all(), colouring -> {
			});
			plan = pane.plan();
			shell.open();
			ArchiveSession session = ArchiveSession.of(open);
			long start = System.nanoTime();
			event(() -> Sessions.workbench().show(session));
			System.out.printf("%-32s %5.1f ms (processor %5.1f ms), with a cold machine%n", "show the archive",
					quantile(1),
					mostProcessorMillis);
			clear();
			System.out.printf("%d samples, canvas %s%n", plan.scene().samples().size(), plan.canvas().getClientArea());
			drawn("first complete picture", start);
			long quiet = System.nanoTime();
			while (System.nanoTime() - quiet < 6_000_000_000L) { // image, places and findings come in
				turn();
			}
			plan.canvas().addListener(SWT.Paint, event -> painted = true);
			frames("pan",
					i -> plan.look().from(plan.camera().panned(i / 20 % 2 == 0 ? 7 : -7, i / 40 % 2 == 0 ? 3 : -3)));
			frames("zoom", i -> plan.look().zoom(i / 10 % 2 == 0 ? 1.1 : 1 / 1.1, 700, 400));
			plan.look().fit();
			drawn("whole floor after zoom", System.nanoTime());
			for (int c = 0; c < pane.colourings().size(); c++) {
				clear();
				SampleColouring colouring = pane.colourings().get(c);
				start = System.nanoTime();
				event(() -> pane.colourBy(colouring));
				drawn("colour by " + colouring.name(), start);
			}
			clear();
			start = System.nanoTime();
			event(() -> session.select(session.selection().withSamples(List.of(plan.scene().samples().ref(17)))));
			drawn("select one sample", start);
			start = System.nanoTime();
			event(() -> session.select(session.selection().withSamples(List.of(plan.scene().samples().ref(18)))));
			drawn("select another", start);
			List<SampleRef> all = IntStream.range(0, samples).mapToObj(plan.scene().samples()::ref).toList();
			start = System.nanoTime();
			event(() -> session.select(session.selection().withSamples(all)));
			drawn("select all", start);
			session.select(session.selection().withSamples(List.of(all.get(0))));
			start = System.nanoTime();
			event(() -> session.run(new MoveSampleCommand(all.get(0), 60, 40)));
			drawn("move one sample", start);
			shell.dispose();
		} finally {
			display.dispose();
			try (Stream<Path> all = Files.walk(folder)) {
				for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
					Files.delete(each);
				}
			}
		}
		System.exit(0); // the workers of jobs linger
	}

	private interface Step {
		void run(int frame);
	}

	private void frames(String name, Step step) {
		double[] times = new double[FRAMES];
		long last = System.nanoTime();
		for (int i = -WARM_UP; i < FRAMES; i++) {
			if (i == 0) {
				clear();
			}
			painted = false;
			step.run(i + WARM_UP);
			while (!painted) {
				turn();
			}
			long now = System.nanoTime();
			if (i >= 0) {
				times[i] = (now - last) / 1e6;
			}
			last = now;
		}
		Arrays.sort(times);
		System.out.printf(
				"%-32s frame median %5.1f ms, 95%% %5.1f ms; events 95%% %5.1f ms, longest %5.1f ms (processor %5.1f ms)%n",
				name, times[FRAMES / 2],
				times[FRAMES * 95 / 100], quantile(0.95), quantile(1), mostProcessorMillis);
	}

	private double quantile(double part) {
		double[] sorted = events.stream().mapToDouble(Double::doubleValue).sorted().toArray();
		return sorted.length == 0 ? 0 : sorted[(int) Math.min(sorted.length - 1, part * sorted.length)];
	}

	private void drawn(String name, long start) {
		while (!plan.isDrawn()) {
			turn();
		}
		System.out.printf("%-32s complete after %5.0f ms; longest event %5.1f ms (processor %5.1f ms)%n", name,
				(System.nanoTime() - start) / 1e6,
				quantile(1), mostProcessorMillis);
		clear();
	}

	private void clear() {
		events.clear();
		mostProcessorMillis = 0;
	}

	private void turn() {
		boolean[] some = { false };
		event(() -> some[0] = display.readAndDispatch());
		if (!some[0]) {
			events.remove(events.size() - 1);
			Thread.onSpinWait();
		}
	}

	private void event(Runnable what) {
		long start = System.nanoTime();
		long processor = THREADS.getCurrentThreadCpuTime();
		what.run();
		events.add((System.nanoTime() - start) / 1e6);
		mostProcessorMillis = Math.max(mostProcessorMillis, (THREADS.getCurrentThreadCpuTime() - processor) / 1e6);
	}
}
