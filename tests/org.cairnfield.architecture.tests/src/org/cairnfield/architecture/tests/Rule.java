package org.cairnfield.architecture.tests;

import static org.cairnfield.architecture.tests.Table.ROOT;
import static org.cairnfield.architecture.tests.Table.isIn;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

import org.cairnfield.architecture.tests.SourceTree.Bundle;
import org.cairnfield.architecture.tests.SourceTree.Clause;
import org.cairnfield.architecture.tests.SourceTree.Headers;
import org.cairnfield.architecture.tests.SourceTree.Type;

/** The rules of the architecture. Each looks at a whole tree and tells every breach in one line. */
enum Rule {

	/** Each bundle has a row in the table, and its classes refer only to what the row allows. */
	ONLY_WHAT_THE_TABLE_ALLOWS(Rule::outsideTheTable),

	/** The core knows no files, no pictures, no XML: numbers in, numbers out. */
	CORE_IS_PLAIN_JAVA(tree -> uses(tree, type -> isCore(type.packageName()), Rule::isNotPlain)),

	/** Nothing in the core can change behind the back of a caller; words are set once, before anybody can read them. */
	CORE_HAS_NO_STATE(Rule::stateOfTheCore),

	/** The core requires its one library and imports no package. */
	CORE_REQUIRES_ONE_LIBRARY(Rule::requirementsOfTheCore),

	WORKBENCH_ONLY_IN_UI(tree -> uses(tree, type -> !isUi(type.packageName()),
			use -> isInOne(use, "org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui"))),

	GEF_ONLY_IN_UI_PLAN(tree -> uses(tree, type -> !isIn(type.packageName(), ROOT + ".ui.plan"),
			use -> isInOne(use, "org.eclipse.gef", "org.eclipse.draw2d"))),

	JGIT_ONLY_IN_ARCHIVE(tree -> uses(tree, type -> !isIn(type.packageName(), ROOT + ".archive.internal.git"),
			use -> isIn(use, "org.eclipse.jgit"))),

	OSGI_ONLY_IN_UI_AND_SHELL(tree -> uses(tree,
			type -> !isUi(type.packageName()) && !isIn(type.packageName(), ROOT + ".batch.internal"),
			use -> isInOne(use, "org.osgi", "org.eclipse.core", "org.eclipse.equinox", "org.eclipse.osgi"))),

	EMF_EDIT_ONLY_WHERE_EDITED(tree -> uses(tree,
			type -> !isUi(type.packageName()) && !isIn(type.packageName(), ROOT + ".curation")
					&& !isIn(type.packageName(), ROOT + ".model.edit"),
			use -> isIn(use, "org.eclipse.emf.edit"))),

	XMI_ONLY_IN_ARCHIVE(tree -> uses(tree, type -> !isIn(type.packageName(), ROOT + ".archive"),
			use -> isIn(use, "org.eclipse.emf.ecore.xmi"))),

	/** The user interface asks the curation instead of computing. */
	UI_COMPUTES_NOTHING(tree -> uses(tree, type -> isUi(type.packageName()),
			use -> isInOne(use, ROOT + ".core.cluster", ROOT + ".core.correlate", ROOT + ".core.match",
					ROOT + ".core.simulate", ROOT + ".core.distance"))),

	/** What a view shows is worked out in its package <code>model</code>, which tests drive without a window. */
	VIEW_MODELS_HAVE_NO_WIDGETS(
			tree -> uses(tree, type -> isUi(type.packageName()) && (type.packageName() + '.').contains(".model."),
					use -> isInOne(use, "org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui", "org.eclipse.gef",
							"org.eclipse.draw2d"))),

	/** Charts draw series of numbers and know nothing else. */
	CHARTS_KNOW_ONLY_SERIES(tree -> uses(tree, type -> isIn(type.packageName(), ROOT + ".ui.charts"),
			use -> isCore(use) && !isIn(use, ROOT + ".core.series"))),

	INTERNAL_STAYS_INSIDE(Rule::strangersInInternals),

	/** A manifest exports the packages that are not internal, all of them, and without friends. */
	EXPORTS_ARE_THE_API(Rule::wrongExports),

	/** What a bundle hands on hides who needs what; only the model may hand on the classes that it is made of. */
	NOTHING_IS_HANDED_ON(Rule::handedOn),

	/**
	 * Two types of one name are mixed up. The model's own names are those of the trade, which others see their own way; each
	 * package has its own words in a class Messages.
	 */
	ONE_NAME_ONE_TYPE(Rule::sharedNames),

	NO_PACKAGE_CYCLE(Rule::cycles),

	NO_PACKAGE_IN_TWO_BUNDLES(Rule::splitPackages),

	/** Manifests rot: what is required or imported must have a user among the classes. */
	EVERY_REQUIREMENT_HAS_A_USER(Rule::idleRequirements),

	ONE_JAVA_LEVEL(Rule::otherJavaLevels),

	EVERY_BUNDLE_IN_ONE_FEATURE(Rule::notInOneFeature),

	/** The headless feature runs without a display. */
	HEADLESS_HAS_NO_UI(Rule::uiInHeadless);

	private final Function<SourceTree, List<String>> check;

	Rule(Function<SourceTree, List<String>> check) {
		this.check = check;
	}

	/** All breaches of this rule in the tree, none if it is kept. */
	List<String> breaches(SourceTree tree) {
		return check.apply(tree);
	}

	private static boolean isCore(String name) {
		return isIn(name, ROOT + ".core");
	}

	private static boolean isUi(String name) {
		return isIn(name, ROOT + ".ui");
	}

	private static boolean isInOne(String name, String... packages) {
		return List.of(packages).stream().anyMatch(p -> isIn(name, p));
	}

	private static boolean isNotPlain(String use) {
		if (isInOne(use, "java.awt", "java.nio.file", "java.io.File", "java.io.FileInputStream",
				"java.io.FileOutputStream",
				"java.io.FileReader", "java.io.FileWriter", "java.io.RandomAccessFile")) {
			return true;
		}
		return !isInOne(use, "java", "org.apache.commons.math3", ROOT + ".core");
	}

	/** Uses that match, by classes that match. */
	private static List<String> uses(SourceTree tree, Predicate<Type> who, Predicate<String> what) {
		List<String> found = new ArrayList<>();
		for (Bundle bundle : tree.bundles().values()) {
			for (Type type : bundle.classes().values()) {
				if (who.test(type)) {
					type.uses().stream().filter(what).forEach(use -> found.add(type.name() + " uses " + use));
				}
			}
		}
		return found;
	}

	private static List<String> outsideTheTable(SourceTree tree) {
		List<String> found = new ArrayList<>();
		for (Bundle bundle : tree.bundles().values()) {
			if (!Table.knows(bundle.name()) && bundle.headers().get("Fragment-Host").isEmpty()) {
				found.add(bundle.name() + " has no row in the table");
			}
			for (Type type : bundle.classes().values()) {
				for (String use : type.uses()) {
					Bundle owner = tree.ownerOf(use);
					if (owner == bundle || owner == null && Table.isJdk(use)) {
						continue;
					}
					String other = owner != null ? owner.name()
							: Table.libraryOf(use).map(Table.Library::name).orElse("");
					if (!Table.allows(bundle.name(), other)) {
						found.add(type.name() + " uses " + use
								+ (other.isEmpty() ? ", which the table does not know" : ""));
					}
				}
			}
		}
		return found;
	}

	private static List<String> stateOfTheCore(SourceTree tree) {
		List<String> found = new ArrayList<>();
		for (Bundle bundle : tree.bundles().values()) {
			for (Type type : bundle.classes().values()) {
				if (isCore(type.packageName()) && !type.name().endsWith(".Messages")) {
					type.openFields()
							.forEach(field -> found.add(type.name() + '.' + field + " is static and not final"));
				}
			}
		}
		return found;
	}

	private static List<String> requirementsOfTheCore(SourceTree tree) {
		List<String> found = new ArrayList<>();
		Bundle core = tree.bundles().get(ROOT + ".core");
		if (core != null) {
			for (Clause clause : core.headers().clauses("Require-Bundle")) {
				if (!clause.name().equals("org.apache.commons.math3")) {
					found.add(core.name() + " requires " + clause.name());
				}
			}
			core.headers().clauses("Import-Package")
					.forEach(clause -> found.add(core.name() + " imports " + clause.name()));
		}
		return found;
	}

	private static boolean isInternal(String packageName) {
		return (packageName + '.').contains(".internal.");
	}

	private static List<String> strangersInInternals(SourceTree tree) {
		List<String> found = new ArrayList<>();
		for (Bundle bundle : tree.bundles().values()) {
			for (Type type : bundle.classes().values()) {
				for (String use : type.uses()) {
					Bundle owner = tree.ownerOf(use);
					if (owner != null && owner != bundle && isInternal(owner.classes().get(use).packageName())) {
						found.add(type.name() + " uses " + use + " of " + owner.name());
					}
				}
			}
		}
		return found;
	}

	private static List<String> wrongExports(SourceTree tree) {
		List<String> found = new ArrayList<>();
		for (Bundle bundle : tree.bundles().values()) {
			Set<String> api = new TreeSet<>(bundle.packages());
			api.removeIf(Rule::isInternal);
			for (Clause export : bundle.headers().clauses("Export-Package")) {
				boolean friendlyToItsTests = export.rest().matches("x-friends:=\"?" + bundle.name() + "\\.tests\"?");
				if (isInternal(export.name()) ? !friendlyToItsTests : !export.rest().isEmpty()) {
					found.add(bundle.name() + " must not export " + export.name() + ' ' + export.rest());
				} else if (!isInternal(export.name()) && !api.remove(export.name())) {
					found.add(bundle.name() + " exports " + export.name() + ", which it does not have");
				}
			}
			if (bundle.headers().get("Fragment-Host").isEmpty()) {
				api.forEach(name -> found.add(bundle.name() + " does not export " + name));
			}
		}
		return found;
	}

	private static List<String> handedOn(SourceTree tree) {
		List<String> found = new ArrayList<>();
		for (Bundle bundle : tree.bundles().values()) {
			for (Clause clause : bundle.headers().clauses("Require-Bundle")) {
				boolean model = bundle.name().equals(ROOT + ".model") && clause.name().equals("org.eclipse.emf.ecore");
				if (clause.rest().contains("reexport") && !model) {
					found.add(bundle.name() + " hands on " + clause.name());
				}
			}
		}
		return found;
	}

	/** Packages of the generated model, and the constraints that it calls, refer to each other by design: they count as one. */
	private static String cluster(String packageName) {
		return isInOne(packageName, ROOT + ".model.impl", ROOT + ".model.util", ROOT + ".model.check") ? ROOT + ".model"
				: packageName;
	}

	private static List<String> sharedNames(SourceTree tree) {
		Map<String, Set<String>> byName = new TreeMap<>();
		tree.bundles().values().forEach(bundle -> bundle.classes().values().forEach(type -> {
			String simple = type.name().substring(type.name().lastIndexOf('.') + 1);
			if (!simple.contains("$") && !simple.equals("package-info") && !simple.equals("Messages")
					&& !type.packageName().startsWith(ROOT + ".model")) {
				byName.computeIfAbsent(simple, name -> new TreeSet<>()).add(type.name());
			}
		}));
		return byName.values().stream().filter(types -> types.size() > 1)
				.map(types -> "one name for " + String.join(" and ", types)).toList();
	}

	private static List<String> cycles(SourceTree tree) {
		Map<String, Map<String, String>> steps = new TreeMap<>(); // package, used package, one use as evidence
		for (Bundle bundle : tree.bundles().values()) {
			for (Type type : bundle.classes().values()) {
				String from = cluster(type.packageName());
				for (String use : type.uses()) {
					Bundle owner = tree.ownerOf(use);
					String to = owner == null ? from : cluster(owner.classes().get(use).packageName());
					if (!to.equals(from)) {
						steps.computeIfAbsent(from, p -> new TreeMap<>()).putIfAbsent(to, type.name() + " uses " + use);
					}
				}
			}
		}
		List<String> found = new ArrayList<>();
		steps.forEach((from, uses) -> uses.forEach((to, evidence) -> {
			if (reaches(steps, to, from)) {
				found.add("in a cycle: " + evidence);
			}
		}));
		return found;
	}

	private static boolean reaches(Map<String, Map<String, String>> steps, String from, String to) {
		Set<String> seen = new TreeSet<>();
		List<String> open = new ArrayList<>(List.of(from));
		while (!open.isEmpty()) {
			String next = open.remove(open.size() - 1);
			if (next.equals(to)) {
				return true;
			}
			if (seen.add(next)) {
				open.addAll(steps.getOrDefault(next, Map.of()).keySet());
			}
		}
		return false;
	}

	private static List<String> splitPackages(SourceTree tree) {
		Map<String, Set<String>> homes = new TreeMap<>();
		for (Bundle bundle : tree.bundles().values()) {
			bundle.packages().forEach(name -> homes.computeIfAbsent(name, p -> new TreeSet<>()).add(bundle.name()));
		}
		List<String> found = new ArrayList<>();
		homes.forEach((name, bundles) -> {
			if (bundles.size() > 1) {
				found.add(name + " is in " + String.join(" and ", bundles));
			}
		});
		return found;
	}

	private static List<String> idleRequirements(SourceTree tree) {
		List<String> found = new ArrayList<>();
		for (Bundle bundle : tree.bundles().values()) {
			Set<String> uses = new TreeSet<>();
			bundle.classes().values().forEach(type -> uses.addAll(type.uses()));
			for (Clause clause : bundle.headers().clauses("Require-Bundle")) {
				if (uses.stream().noneMatch(use -> comesFrom(clause.name(), use, tree))) {
					found.add(bundle.name() + " requires " + clause.name() + ", but no class uses it");
				}
			}
			for (Clause clause : bundle.headers().clauses("Import-Package")) {
				if (uses.stream().noneMatch(use -> use.startsWith(clause.name() + '.'))) {
					found.add(bundle.name() + " imports " + clause.name() + ", but no class uses it");
				}
			}
		}
		return found;
	}

	private static boolean comesFrom(String required, String use, SourceTree tree) {
		Bundle bundle = tree.bundles().get(required);
		return bundle != null ? bundle.classes().containsKey(use)
				: Table.libraryRequiredAs(required).filter(library -> library.has(use)).isPresent();
	}

	private static List<String> otherJavaLevels(SourceTree tree) {
		Map<String, Headers> all = new TreeMap<>(tree.tests());
		tree.bundles().forEach((name, bundle) -> all.put(name, bundle.headers()));
		List<String> found = new ArrayList<>();
		all.forEach((name, headers) -> {
			String level = headers.get("Bundle-RequiredExecutionEnvironment");
			if (!level.equals("JavaSE-17")) {
				found.add(name + " is for " + (level.isEmpty() ? "no stated level" : level));
			}
		});
		return found;
	}

	private static List<String> notInOneFeature(SourceTree tree) {
		List<String> listed = tree.features().values().stream().flatMap(List::stream).toList();
		List<String> found = new ArrayList<>();
		for (String bundle : tree.bundles().keySet()) {
			int times = Collections.frequency(listed, bundle);
			if (times != 1) {
				found.add(bundle + " is listed " + times + " times in the features");
			}
		}
		return found;
	}

	private static List<String> uiInHeadless(SourceTree tree) {
		List<String> found = new ArrayList<>();
		for (String listed : tree.features().getOrDefault(ROOT + ".headless.feature", List.of())) {
			if (isUi(listed) || isInOne(listed, "org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui")) {
				found.add(listed + " is in the headless feature");
			}
		}
		return found;
	}
}
