package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;

import org.cairnfield.model.Split;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Stopwatch;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.IExecutionListener;
import org.eclipse.core.commands.NotHandledException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long a reviewer waits, in the whole workbench with the plan beside the queue: from a key to the paint of the next
 * sample's evidence, and from ε to the paint of what a split by it comes to. No test: {@code tests/window-latency} runs it.
 */
class ReviewLatencyBenchmark {

	private static final int KEYS = 120;
	private static final int WARM_UP = 20;
	private static final int SPLITS = 5;

	@TempDir
	Path folder;

	@Test
	void measures() throws Exception {
		int samples = Integer.getInteger("cairnfield.samples", 20_000);
		Path archive = LargeArchive.make(folder, samples,
				Double.parseDouble(System.getProperty("cairnfield.epsilon", "204")));
		Stage.open(archive);
		ArchiveSession session = Stage.session();
		Stage.waitUntilChecked();
		Stage.perspective("org.cairnfield.ui.review.perspective");
		Hand.activate(Stage.window());
		try (PrintStream out = new PrintStream(System.getProperty("cairnfield.figures"))) {
			keys(session, out);
			splits(out);
		}
	}

	private static void keys(ArchiveSession session, PrintStream out) {
		Stage.show("org.cairnfield.ui.plan.view");
		Stage.show("org.cairnfield.ui.review.queue");
		Table queue = Widgets.byId(Table.class, "review.queue");
		Split split = Ui.ask(() -> session.archive().getSplits().get(0));
		Ui.waitUntil("the evidence is there", () -> queue.getItemCount() >= split.getProposals().all().size()
				&& Widgets.isThere("review.approve", Button.class, Button::isEnabled));
		out.printf(Locale.ROOT, "%,d samples, %,d proposals%n", split.getLabels().size(),
				Ui.ask(() -> split.getProposals().all().size()));
		Hand.click(queue, 0);
		StyledText evidence = Widgets.byId(StyledText.class, "review.evidence");
		List<double[]> all = new ArrayList<>();
		for (int i = -WARM_UP; i < KEYS; i++) {
			Ui.waitUntilIdle();
			String before = Ui.ask(evidence::getText).split("\n")[0];
			Stopwatch watch = new Stopwatch(evidence, () -> !evidence.getText().split("\n")[0].equals(before));
			IExecutionListener listener = begins(watch);
			Ui.run(() -> commands().addExecutionListener(listener)); // a bound key is no event for anybody else
			Hand.press(i % 3 == 0 ? "d" : "p"); // neither asks for a reason, whatever the marks
			double[] millis = watch.millis();
			Ui.run(() -> commands().removeExecutionListener(listener));
			if (i >= 0) {
				all.add(millis);
			}
		}
		out.println(
				"key to the next sample painted: " + Stopwatch.summary(all.stream().mapToDouble(m -> m[0]).toArray()));
		out.println("key to calm: " + Stopwatch.summary(all.stream().mapToDouble(m -> m[1]).toArray()));
		assertTrue(Ui.ask(() -> session.archive().getLedgers().get(0).getVerdicts().size()) >= KEYS,
				"each key was a verdict");
	}

	private static ICommandService commands() {
		return PlatformUI.getWorkbench().getService(ICommandService.class);
	}

	private static IExecutionListener begins(Stopwatch watch) {
		return new IExecutionListener() {
			@Override
			public void preExecute(String command, ExecutionEvent event) {
				watch.begin();
			}

			@Override
			public void notHandled(String command, NotHandledException why) {
				// nothing happens then
			}

			@Override
			public void postExecuteSuccess(String command, Object value) {
				// only the beginning counts
			}

			@Override
			public void postExecuteFailure(String command, ExecutionException why) {
				// nothing is painted then
			}
		};
	}

	private static void splits(PrintStream out) {
		Stage.show("org.cairnfield.ui.review.split");
		Text epsilon = Widgets.byId(Text.class, "split.epsilon");
		Text facts = Widgets.byId(Text.class, "split.facts");
		Ui.waitUntil("a start is made", () -> facts.getText().contains("noise"));
		double start = Double.parseDouble(Ui.ask(epsilon::getText));
		double[] millis = new double[SPLITS];
		for (int i = 0; i < SPLITS; i++) {
			Ui.waitUntilIdle();
			Hand.fill(epsilon, String.format(Locale.ROOT, "%.1f", start + i + 1.3));
			String before = Ui.ask(facts::getText);
			BooleanSupplier other = () -> facts.isEnabled() && !facts.getText().equals(before)
					&& facts.getText().contains("noise");
			Stopwatch watch = new Stopwatch(facts, other);
			Listener entered = event -> watch.begin();
			Ui.run(() -> epsilon.addListener(SWT.KeyDown, entered));
			Hand.press("Return");
			millis[i] = watch.millis()[0];
			Ui.run(() -> epsilon.removeListener(SWT.KeyDown, entered));
			out.println("  " + Ui.ask(facts::getText).split("\n")[0]);
		}
		out.println("ε entered to the split painted: " + Stopwatch.summary(millis));
	}
}
