package org.cairnfield.architecture.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules hold in this tree, and each finds the breach that is planted for it. */
public class ArchitectureTest {

	private static final String CORE = "org.cairnfield.core";
	private static final String MODEL = "org.cairnfield.model";
	private static final String ARCHIVE = "org.cairnfield.archive";
	private static final String EXCHANGE = "org.cairnfield.exchange";
	private static final String CURATION = "org.cairnfield.curation";
	private static final String BATCH = "org.cairnfield.batch";
	private static final String UI = "org.cairnfield.ui";
	private static final String CHARTS = "org.cairnfield.ui.charts";
	private static final String REVIEW = "org.cairnfield.ui.review";

	private static SourceTree tree;

	@TempDir
	Path folder;

	@BeforeAll
	static void readThisTree() throws Exception {
		tree = SourceTree.around();
	}

	@Test
	public void seesTheClassesOfEveryBundle() {
		assertTrue(tree.bundles().keySet().containsAll(Set.of(CORE, EXCHANGE, CURATION, BATCH)),
				tree.bundles().keySet()::toString);
		tree.bundles().forEach((name, bundle) -> assertFalse(bundle.classes().isEmpty(), name));
	}

	@ParameterizedTest
	@EnumSource
	public void holdsInThisTree(Rule rule) {
		List<String> breaches = rule.breaches(tree);
		assertTrue(breaches.isEmpty(), () -> rule + ":\n" + String.join("\n", breaches));
	}

	@ParameterizedTest(name = "{0}: {1}")
	@MethodSource("planted")
	public void findsWhatIsPlanted(Rule rule, String breach, PlantedTree planted) throws Exception {
		List<String> breaches = rule.breaches(planted.grow(folder));
		assertTrue(breaches.stream().anyMatch(line -> line.contains(breach)), breaches::toString);
	}

	@Test
	public void plantsABreachOfEveryRule() {
		Set<Rule> rules = planted().map(arguments -> (Rule) arguments.get()[0])
				.collect(Collectors.toCollection(() -> EnumSet.noneOf(Rule.class)));
		assertEquals(EnumSet.allOf(Rule.class), rules);
	}

	@Test
	public void acceptsASoundTree() throws Exception {
		SourceTree sound = sound().grow(folder);
		for (Rule rule : Rule.values()) {
			assertEquals(List.of(), rule.breaches(sound), rule::name);
		}
	}

	/** Uses what it may in each way that a rule could take for a breach. */
	private static PlantedTree sound() {
		return new PlantedTree()
				.withLibrary(
						"package org.apache.commons.math3.util; public class Precision { public static double EPSILON; }")
				.withLibrary("package org.eclipse.swt.widgets; public class Canvas { }")
				.withLibrary("package org.eclipse.equinox.app; public interface IApplication { }")
				.with(CORE, "package org.cairnfield.core.map; public class Grid { static final int SIZE = 3;"
						+ " public double[][] cells; java.io.Reader in; double e = org.apache.commons.math3.util.Precision.EPSILON; }")
				.with(CORE,
						"package org.cairnfield.core.series; public class Series { org.cairnfield.core.map.Grid grid; }")
				.withHeader(CORE, "Require-Bundle", "org.apache.commons.math3;bundle-version=\"[3.6,4)\"")
				.with(CURATION,
						"package org.cairnfield.curation.run; public class Run { org.cairnfield.core.map.Grid[] grids;"
								+ " org.cairnfield.curation.internal.Worker worker; java.awt.Color colour; }")
				.with(CURATION, "package org.cairnfield.curation.internal; public class Worker { }")
				.withHeader(CURATION, "Require-Bundle", CORE)
				.with(BATCH, "package org.cairnfield.batch.internal.app;"
						+ " public class Shell implements org.eclipse.equinox.app.IApplication { }")
				.withHeader(BATCH, "Require-Bundle", "org.eclipse.equinox.app")
				.with(CHARTS,
						"package org.cairnfield.ui.charts; public class Chart extends org.eclipse.swt.widgets.Canvas {"
								+ " org.cairnfield.core.series.Series series; }")
				.withHeader(CHARTS, "Require-Bundle", CORE + ",org.eclipse.swt")
				.withFeature("org.cairnfield.headless.feature", CORE, CURATION, BATCH)
				.withFeature("org.cairnfield.workbench.feature", CHARTS);
	}

	static Stream<Arguments> planted() {
		return Stream.of(
				arguments(Rule.ONLY_WHAT_THE_TABLE_ALLOWS, "exchange.Reader uses org.cairnfield.curation.Run",
						new PlantedTree()
								.with(CURATION, "package org.cairnfield.curation; public class Run { }")
								.with(EXCHANGE,
										"package org.cairnfield.exchange; class Reader { org.cairnfield.curation.Run run; }")),
				arguments(Rule.ONLY_WHAT_THE_TABLE_ALLOWS, "which the table does not know", new PlantedTree()
						.withLibrary("package com.example.tool; public class Tool { public static void go() { } }")
						.with(EXCHANGE,
								"package org.cairnfield.exchange; class Reader { void go() { com.example.tool.Tool.go(); } }")),
				arguments(Rule.ONLY_WHAT_THE_TABLE_ALLOWS, "org.cairnfield.extra has no row", new PlantedTree()
						.with("org.cairnfield.extra", "package org.cairnfield.extra; class Extra { }")),
				arguments(Rule.CORE_IS_PLAIN_JAVA, "uses java.nio.file.Path", new PlantedTree()
						.with(CORE,
								"package org.cairnfield.core.map; class Store { void save(java.nio.file.Path[] to) { } }")),
				arguments(Rule.CORE_IS_PLAIN_JAVA, "uses java.io.File", new PlantedTree()
						.with(CORE,
								"package org.cairnfield.core.map; class Store { Object to = new java.io.File(\"map\"); }")),
				arguments(Rule.CORE_IS_PLAIN_JAVA, "uses java.awt.Color", new PlantedTree()
						.with(CORE,
								"package org.cairnfield.core.map; class Paint { boolean red(Object o) { return o instanceof java.awt.Color; } }")),
				arguments(Rule.CORE_IS_PLAIN_JAVA, "uses javax.swing.JTable", new PlantedTree()
						.with(CORE,
								"package org.cairnfield.core.map; class Paint { Class<?> table = javax.swing.JTable.class; }")),
				arguments(Rule.CORE_IS_PLAIN_JAVA, "uses org.eclipse.emf.ecore.EObject", new PlantedTree()
						.withLibrary("package org.eclipse.emf.ecore; public interface EObject { }")
						.with(CORE,
								"package org.cairnfield.core.map; class Thing implements org.eclipse.emf.ecore.EObject { }")),
				arguments(Rule.CORE_HAS_NO_STATE, "Counter.count is static", new PlantedTree()
						.with(CORE, "package org.cairnfield.core.stats; class Counter { static int count; }")),
				arguments(Rule.CORE_REQUIRES_ONE_LIBRARY, "requires org.eclipse.core.runtime", new PlantedTree()
						.withHeader(CORE, "Require-Bundle", "org.apache.commons.math3,org.eclipse.core.runtime")),
				arguments(Rule.CORE_REQUIRES_ONE_LIBRARY, "imports org.osgi.framework", new PlantedTree()
						.withHeader(CORE, "Import-Package", "org.osgi.framework;version=\"[1.0,2)\"")),
				arguments(Rule.ONE_NAME_ONE_TYPE,
						"one name for org.cairnfield.curation.run.Plan and org.cairnfield.exchange.Plan",
						new PlantedTree()
								.with(CURATION,
										"package org.cairnfield.curation.run; class Plan { static class Step { } }")
								.with(EXCHANGE,
										"package org.cairnfield.exchange; class Plan { static class Step { } }")),
				arguments(Rule.WORKBENCH_ONLY_IN_UI, "uses org.eclipse.swt.widgets.Shell", new PlantedTree()
						.withLibrary("package org.eclipse.swt.widgets; public class Shell { }")
						.with(CURATION,
								"package org.cairnfield.curation; class Ask { org.eclipse.swt.widgets.Shell shell; }")),
				arguments(Rule.GEF_ONLY_IN_UI_PLAN, "uses org.eclipse.draw2d.Figure", new PlantedTree()
						.withLibrary("package org.eclipse.draw2d; public class Figure { }")
						.with(REVIEW,
								"package org.cairnfield.ui.review; class Ring extends org.eclipse.draw2d.Figure { }")),
				arguments(Rule.JGIT_ONLY_IN_ARCHIVE, "archive.Archive uses org.eclipse.jgit.lib.Repository",
						new PlantedTree()
								.withLibrary("package org.eclipse.jgit.lib; public class Repository { }")
								.with(ARCHIVE,
										"package org.cairnfield.archive; class Archive { org.eclipse.jgit.lib.Repository git; }")),
				arguments(Rule.OSGI_ONLY_IN_UI_AND_SHELL, "cli.Main uses org.osgi.framework.Bundle", new PlantedTree()
						.withLibrary("package org.osgi.framework; public interface Bundle { }")
						.with(BATCH,
								"package org.cairnfield.batch.cli; class Main { org.osgi.framework.Bundle bundle; }")),
				arguments(Rule.EMF_EDIT_ONLY_WHERE_EDITED, "uses org.eclipse.emf.edit.domain.EditingDomain",
						new PlantedTree()
								.withLibrary("package org.eclipse.emf.edit.domain; public interface EditingDomain { }")
								.with(ARCHIVE,
										"package org.cairnfield.archive; class Archive { org.eclipse.emf.edit.domain.EditingDomain domain; }")),
				arguments(Rule.XMI_ONLY_IN_ARCHIVE, "uses org.eclipse.emf.ecore.xmi.XMIResource", new PlantedTree()
						.withLibrary("package org.eclipse.emf.ecore.xmi; public interface XMIResource { }")
						.with(MODEL,
								"package org.cairnfield.model; interface Site { org.eclipse.emf.ecore.xmi.XMIResource file(); }")),
				arguments(Rule.UI_COMPUTES_NOTHING, "uses org.cairnfield.core.cluster.Dbscan", new PlantedTree()
						.with(CORE, "package org.cairnfield.core.cluster; public class Dbscan { }")
						.with(REVIEW,
								"package org.cairnfield.ui.review; class Split { Object it = new org.cairnfield.core.cluster.Dbscan(); }")),
				arguments(Rule.VIEW_MODELS_HAVE_NO_WIDGETS,
						"ui.internal.samples.model.Cells uses org.eclipse.swt.widgets.Table", new PlantedTree()
								.withLibrary("package org.eclipse.swt.widgets; public class Table { }")
								.with(UI,
										"package org.cairnfield.ui.internal.samples.model; class Cells { org.eclipse.swt.widgets.Table table; }")),
				arguments(Rule.CHARTS_KNOW_ONLY_SERIES, "uses org.cairnfield.core.map.RadioMap", new PlantedTree()
						.with(CORE, "package org.cairnfield.core.map; public class RadioMap { }")
						.with(CHARTS,
								"package org.cairnfield.ui.charts; class Chart { org.cairnfield.core.map.RadioMap map; }")),
				arguments(Rule.INTERNAL_STAYS_INSIDE, "uses org.cairnfield.curation.internal.Pool", new PlantedTree()
						.with(CURATION, "package org.cairnfield.curation.internal; public class Pool { }")
						.with(BATCH,
								"package org.cairnfield.batch.cli; class Main { org.cairnfield.curation.internal.Pool pool; }")),
				arguments(Rule.EXPORTS_ARE_THE_API, "must not export org.cairnfield.curation.internal",
						new PlantedTree()
								.with(CURATION, "package org.cairnfield.curation.internal; class Pool { }")
								.withHeader(CURATION, "Export-Package",
										"org.cairnfield.curation.internal;x-friends:=\"org.cairnfield.ui\"")),
				arguments(Rule.EXPORTS_ARE_THE_API, "exports org.cairnfield.core.gone", new PlantedTree()
						.withHeader(CORE, "Export-Package", "org.cairnfield.core.gone")),
				arguments(Rule.EXPORTS_ARE_THE_API, "does not export org.cairnfield.core.map", new PlantedTree()
						.with(CORE, "package org.cairnfield.core.map; public class RadioMap { }")
						.withHeader(CORE, "Export-Package", null)),
				arguments(Rule.NOTHING_IS_HANDED_ON, "curation hands on org.cairnfield.core", new PlantedTree()
						.withHeader(CURATION, "Require-Bundle", "org.cairnfield.core;visibility:=reexport")),
				arguments(Rule.NO_PACKAGE_CYCLE,
						"in a cycle: org.cairnfield.core.stats.Mean uses org.cairnfield.core.map.Rows",
						new PlantedTree()
								.with(CORE,
										"package org.cairnfield.core.map; public class Rows { Object mean = new org.cairnfield.core.task.Step(); }")
								.with(CORE,
										"package org.cairnfield.core.task; public class Step { org.cairnfield.core.stats.Mean mean; }")
								.with(CORE,
										"package org.cairnfield.core.stats; public class Mean { org.cairnfield.core.map.Rows rows; }")),
				arguments(Rule.NO_PACKAGE_IN_TWO_BUNDLES, "org.cairnfield.ui is in", new PlantedTree()
						.with(UI, "package org.cairnfield.ui; class Application { }")
						.with(REVIEW, "package org.cairnfield.ui; class Review { }")),
				arguments(Rule.EVERY_REQUIREMENT_HAS_A_USER, "requires org.apache.commons.commons-csv",
						new PlantedTree()
								.with(EXCHANGE, "package org.cairnfield.exchange; class Reader { }")
								.withHeader(EXCHANGE, "Require-Bundle", "org.apache.commons.commons-csv")),
				arguments(Rule.EVERY_REQUIREMENT_HAS_A_USER, "imports org.osgi.framework", new PlantedTree()
						.withHeader(UI, "Import-Package", "org.osgi.framework")),
				arguments(Rule.ONE_JAVA_LEVEL, "core is for JavaSE-21", new PlantedTree()
						.withHeader(CORE, "Bundle-RequiredExecutionEnvironment", "JavaSE-21")),
				arguments(Rule.EVERY_BUNDLE_IN_ONE_FEATURE, "core is listed 2 times", new PlantedTree()
						.with(CORE, "package org.cairnfield.core.map; class Rows { }")
						.withFeature("a", CORE).withFeature("b", CORE)),
				arguments(Rule.EVERY_BUNDLE_IN_ONE_FEATURE, "core is listed 0 times", new PlantedTree()
						.with(CORE, "package org.cairnfield.core.map; class Rows { }")
						.withFeature("a", CURATION)),
				arguments(Rule.HEADLESS_HAS_NO_UI, "org.cairnfield.ui.charts", new PlantedTree()
						.withFeature("org.cairnfield.headless.feature", CORE, CHARTS)));
	}
}
