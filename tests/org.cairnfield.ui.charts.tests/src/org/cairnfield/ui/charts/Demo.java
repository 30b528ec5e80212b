package org.cairnfield.ui.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;

import org.cairnfield.core.series.Bars;
import org.cairnfield.core.series.Curve;
import org.cairnfield.core.series.Series;
import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** Shows every chart with invented numbers, to be looked at. With the argument {@code dark} on a dark background. */
final class Demo {

	private Demo() {
	}

	public static void main(String[] args) {
		Display display = new Display();
		Shell shell = new Shell(display);
		shell.setText("Charts");
		shell.setLayout(new GridLayout(3, true));
		List<Function<Composite, Chart>> all = List.of(Demo::pairedBars, Demo::errorCurves, Demo::kDistance,
				Demo::clusterSizes, Demo::sweep, Demo::levels, Demo::fourSamples, Demo::empty, Demo::clusters,
				Demo::ramp);
		for (Function<Composite, Chart> make : all) {
			Chart chart = make.apply(shell);
			boolean small = chart instanceof Legend;
			chart.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, !small));
			if (List.of(args).contains("dark")) {
				chart.setBackground(new Color(30, 31, 34));
				chart.setForeground(new Color(220, 221, 224));
			}
		}
		shell.setSize(display.getClientArea().width, display.getClientArea().height);
		shell.setLocation(0, 0);
		shell.open();
		while (!shell.isDisposed()) {
			if (!display.readAndDispatch()) {
				display.sleep();
			}
		}
		display.dispose();
	}

	static Fingerprints fingerprints(int samples, int accessPoints) {
		Random random = new Random(7);
		double[][] levels = new double[samples][accessPoints];
		for (int ap = 0; ap < accessPoints; ap++) {
			double level = -45 - 50 * random.nextDouble();
			boolean alone = random.nextInt(6) == 0;
			int one = random.nextInt(samples);
			for (int s = 0; s < samples; s++) {
				levels[s][ap] = alone && s != one ? Double.NaN : Math.rint(level + 4 * random.nextGaussian());
			}
		}
		return new Fingerprints(List.of("S1-0412", "S1-0398", "S2-0120", "S2-0121").subList(0, samples),
				IntStream.range(0, accessPoints).mapToObj(i -> String.format("AP %02d", i)).toList(), levels);
	}

	private static Chart pairedBars(Composite parent) {
		PairedBars chart = new PairedBars(parent, SWT.NONE);
		chart.setFingerprints(fingerprints(2, 30));
		chart.setOrder(Fingerprints.Order.SHARED_FIRST);
		chart.setChosen(2);
		return chart;
	}

	private static Chart fourSamples(Composite parent) {
		PairedBars chart = new PairedBars(parent, SWT.NONE);
		chart.setFingerprints(fingerprints(4, 12));
		return chart;
	}

	private static Chart errorCurves(Composite parent) {
		Random random = new Random(3);
		LineChart chart = new LineChart(parent, SWT.NONE);
		chart.setAxes(Axis.linear("Error", "m"), Axis.share("Samples"));
		List<Series> lines = new ArrayList<>();
		for (String name : List.of("plain", "split", "split + approved", "1.0.0")) {
			double spread = 2 + lines.size() * 0.6;
			lines.add(Curve.distribution(name, random.doubles(800).map(u -> -spread * Math.log(1 - u)).toArray()));
		}
		chart.setSeries(lines);
		chart.setStepped(true);
		return chart;
	}

	private static Chart kDistance(Composite parent) {
		LineChart chart = new LineChart(parent, SWT.NONE);
		chart.setAxes(Axis.linear("Samples in order", ""), Axis.linear("Distance to 4th neighbour", "dB"));
		chart.setSeries(List.of(kDistances(20_000)));
		chart.setMarks(List.of(new Mark(17_600, 11.2, "elbow")));
		chart.setGuide(new Guide(false, 11.5, "ε"));
		return chart;
	}

	static Series kDistances(int points) {
		Random random = new Random(5);
		return new Series("4th neighbour", IntStream.range(0, points).asDoubleStream().toArray(), random.doubles(points)
				.map(u -> 4 + 5 * u + 0.4 / (1.005 - u)).sorted().toArray());
	}

	private static Chart clusterSizes(Composite parent) {
		BarChart chart = new BarChart(parent, SWT.NONE);
		List<String> labels = new ArrayList<>(List.of("noise"));
		IntStream.rangeClosed(1, 24).forEach(i -> labels.add("C" + i));
		double[] before = IntStream.range(0, 25).mapToDouble(i -> i == 0 ? 226 : Math.rint(300.0 / i + 12)).toArray();
		double[] after = IntStream.range(0, 25).mapToDouble(i -> i == 0 ? 61 : before[i] + (i * 7) % 13).toArray();
		chart.setBars(new Bars(labels, List.of("before", "after"), before, after), Axis.linear("Samples", ""), 0);
		chart.setHollow(place -> place == 0);
		return chart;
	}

	private static Chart sweep(Composite parent) {
		GridMap chart = new GridMap(parent, SWT.NONE);
		double[] eps = IntStream.range(0, 9).mapToDouble(i -> 6 + i).toArray();
		double[] minPts = { 3, 4, 5, 6, 8, 10 };
		double[][] noise = new double[minPts.length][eps.length];
		for (int y = 0; y < minPts.length; y++) {
			for (int x = 0; x < eps.length; x++) {
				noise[y][x] = Math.exp(-(x - y * 0.4 + 1) / 3.2) * 0.6;
			}
		}
		noise[5][8] = Double.NaN;
		chart.setAxes(Axis.linear("ε", "dB"), Axis.linear("minPts", ""),
				Axis.share("Noise share").between(0, Double.NaN), 1);
		chart.setGrid(new CellGrid(eps, minPts, noise));
		chart.setMarked(22, "suggested");
		chart.setChosen(13);
		return chart;
	}

	private static Chart levels(Composite parent) {
		Random random = new Random(9);
		Histogram chart = new Histogram(parent, SWT.NONE);
		double[] levels = random.doubles(700).map(u -> Math.rint(-72 + 7 * random.nextGaussian())).toArray();
		chart.setBins(Bins.of(levels, 2), Axis.linear("Level", "dBm"), "Readings");
		chart.setChosen(6);
		return chart;
	}

	private static Chart empty(Composite parent) {
		PairedBars chart = new PairedBars(parent, SWT.BORDER);
		chart.setEmptyText(
				"No sample is selected. Select one to four samples in the table or on the plan to see their readings here.");
		return chart;
	}

	private static Chart clusters(Composite parent) {
		Legend legend = new Legend(parent, SWT.NONE);
		List<Legend.Entry> entries = new ArrayList<>();
		IntStream.range(0, 20).forEach(i -> entries.add(Legend.Entry.of("C" + (i + 1), Categorical.style(i))));
		entries.add(Legend.Entry.noise("noise"));
		legend.setEntries(entries);
		return legend;
	}

	private static Chart ramp(Composite parent) {
		Legend legend = new Legend(parent, SWT.NONE);
		legend.setRamp(Continuous.rising(), Axis.linear("Level", "dBm").between(-95, -35));
		return legend;
	}
}
