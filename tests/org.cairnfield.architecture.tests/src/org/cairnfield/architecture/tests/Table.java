package org.cairnfield.architecture.tests;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Who may use what. A bundle may use itself, the JDK (the core only part of it) and what stands in its row; whatever is
 * absent is forbidden. A new bundle or library starts with an entry here.
 */
final class Table {

	/**
	 * A library as the rows name it.
	 *
	 * @param bundles  symbolic names under which manifests require it
	 * @param packages its packages, each with everything below
	 */
	record Library(String name, List<String> bundles, List<String> packages) {

		boolean has(String className) {
			return packages.stream().anyMatch(p -> isIn(className, p));
		}
	}

	static final String ROOT = "org.cairnfield";

	private static final List<Library> LIBRARIES = List.of(
			library("math", "org.apache.commons.math3", "org.apache.commons.math3"),
			// its builders inherit from the second bundle, which must be required for that, but is not for us to use
			library("csv", "org.apache.commons.commons-csv org.apache.commons.commons-io", "org.apache.commons.csv"),
			library("charts", "wrapped.org.jfree.jfreechart", "org.jfree.chart org.jfree.data"),
			// its classes inherit from those of the other bundles
			library("svg",
					"org.apache.batik.svggen org.apache.batik.awt.util org.apache.batik.util org.apache.batik.constants",
					"org.apache.batik.svggen"),
			library("projection", "org.locationtech.proj4j", "org.locationtech.proj4j"),
			library("sqlite", "org.xerial.sqlite-jdbc", "org.sqlite"),
			library("markdown", "wrapped.org.commonmark.commonmark wrapped.org.commonmark.commonmark-ext-gfm-tables",
					"org.commonmark"),
			library("picocli", "picocli", "picocli"),
			library("gson", "com.google.gson", "com.google.gson"),
			library("jgit", "org.eclipse.jgit", "org.eclipse.jgit"),
			// the more special ones first: the first that has a class names it
			library("emf.xmi", "org.eclipse.emf.ecore.xmi", "org.eclipse.emf.ecore.xmi"),
			library("emf.edit", "org.eclipse.emf.edit org.eclipse.emf.edit.ui",
					"org.eclipse.emf.edit org.eclipse.emf.common.command"),
			library("emf", "org.eclipse.emf.common org.eclipse.emf.ecore",
					"org.eclipse.emf.common org.eclipse.emf.ecore"),
			library("gef", "org.eclipse.gef org.eclipse.draw2d", "org.eclipse.gef org.eclipse.draw2d"),
			library("swt", "org.eclipse.swt", "org.eclipse.swt"),
			library("jface", "org.eclipse.jface org.eclipse.core.commands",
					"org.eclipse.jface org.eclipse.core.commands"),
			library("workbench",
					"org.eclipse.ui org.eclipse.ui.workbench org.eclipse.ui.views org.eclipse.ui.forms"
							+ " org.eclipse.ui.views.properties.tabbed org.eclipse.help",
					"org.eclipse.ui org.eclipse.e4 org.eclipse.help"),
			library("application", "org.eclipse.equinox.app", "org.eclipse.equinox.app"),
			library("platform",
					"org.eclipse.core.runtime org.eclipse.core.jobs org.eclipse.equinox.common org.eclipse.equinox.preferences"
							+ " org.eclipse.equinox.registry org.eclipse.osgi org.eclipse.core.expressions",
					"org.eclipse.core org.eclipse.equinox org.eclipse.osgi org.osgi"));

	private static final Map<String, Set<String>> ROWS = new TreeMap<>();

	static {
		row("core", "math");
		row("model", "core emf");
		row("model.edit", "model core emf emf.edit");
		row("archive", "model core emf emf.xmi jgit");
		row("exchange", "model core csv gson projection sqlite");
		row("curation", "archive exchange model.edit model core emf emf.edit gson");
		row("report", "curation archive exchange model.edit model core emf charts gson svg");
		row("batch", "report curation archive exchange model.edit model core emf picocli gson application");
		String below = "curation archive exchange model.edit model core emf emf.edit";
		row("ui", "ui.charts " + below + " markdown swt jface workbench application platform");
		row("ui.charts", "core swt jface platform");
		row("ui.plan", "ui ui.charts " + below + " gef swt jface workbench platform");
		row("ui.review", "ui ui.charts " + below + " swt jface workbench platform");
		row("ui.release", "ui ui.charts report " + below + " swt jface workbench platform");
	}

	private Table() {
	}

	private static Library library(String name, String bundles, String packages) {
		return new Library(name, List.of(bundles.split(" ")), List.of(packages.split(" ")));
	}

	private static void row(String bundle, String allowed) {
		ROWS.put(ROOT + '.' + bundle, Set.copyOf(Arrays.asList(allowed.split(" "))));
	}

	/** Whether the table has a row for the bundle with this symbolic name. */
	static boolean knows(String bundle) {
		return ROWS.containsKey(bundle);
	}

	/**
	 * @param bundle a symbolic name
	 * @param other  the symbolic name of another bundle of ours, or the name of a library
	 */
	static boolean allows(String bundle, String other) {
		Set<String> row = ROWS.getOrDefault(bundle, Set.of());
		return row.contains(other.startsWith(ROOT + '.') ? other.substring(ROOT.length() + 1) : other);
	}

	/** The library that a class belongs to, none if the table does not know it. */
	static Optional<Library> libraryOf(String className) {
		return LIBRARIES.stream().filter(library -> library.has(className)).findFirst();
	}

	/** The library that a manifest means by this symbolic name. */
	static Optional<Library> libraryRequiredAs(String bundle) {
		return LIBRARIES.stream().filter(library -> library.bundles().contains(bundle)).findFirst();
	}

	/** Whether a class comes with the JDK. */
	static boolean isJdk(String className) {
		return List.of("java", "javax", "org.w3c.dom", "org.xml.sax").stream().anyMatch(p -> isIn(className, p));
	}

	/** Whether a class or package is the given one, or is in it or below. */
	static boolean isIn(String name, String packageName) {
		return name.equals(packageName) || name.startsWith(packageName + '.') || name.startsWith(packageName + '$');
	}
}
