package org.cairnfield.architecture.tests;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Manifest;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;

/**
 * What the rules look at: manifests and compiled classes of {@code bundles}, manifests of {@code tests}, and
 * {@code features}.
 *
 * @param bundles  what is shipped, by symbolic name
 * @param tests    manifests of the test bundles, by symbolic name
 * @param features names of the bundles in each feature, by its id
 */
record SourceTree(Map<String, Bundle> bundles, Map<String, Headers> tests, Map<String, List<String>> features) {

	/** A bundle of ours; classes by name. */
	record Bundle(String name, Headers headers, Map<String, Type> classes) {

		Set<String> packages() {
			Set<String> packages = new TreeSet<>();
			classes.values().forEach(type -> packages.add(type.packageName()));
			return packages;
		}
	}

	/**
	 * A compiled class.
	 *
	 * @param uses       names of the classes that it refers to in any way, element types in place of arrays
	 * @param openFields names of its static fields that are not final, without those that the compiler made
	 */
	record Type(String name, String packageName, Set<String> uses, List<String> openFields) {
	}

	/** A clause of a manifest header: the name and, in whole, what follows its first semicolon. */
	record Clause(String name, String rest) {
	}

	/** A manifest. */
	record Headers(Manifest manifest) {

		String get(String header) {
			String value = manifest.getMainAttributes().getValue(header);
			return value == null ? "" : value;
		}

		List<Clause> clauses(String header) {
			List<Clause> clauses = new ArrayList<>();
			// commas inside quotes belong to version ranges and lists of friends
			for (String clause : get(header).split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
				String[] parts = clause.trim().split(";", 2);
				if (!parts[0].isEmpty()) {
					clauses.add(new Clause(parts[0].trim(), parts.length > 1 ? parts[1] : ""));
				}
			}
			return clauses;
		}

		String symbolicName() {
			return clauses("Bundle-SymbolicName").get(0).name();
		}
	}

	/** The tree that this test was built in. */
	static SourceTree around() throws Exception {
		for (Path folder = Path.of("").toAbsolutePath(); folder != null; folder = folder.getParent()) {
			if (Files.isDirectory(folder.resolve("bundles")) && Files.isDirectory(folder.resolve("releng"))) {
				return read(folder);
			}
		}
		throw new IllegalStateException("no folder above " + Path.of("").toAbsolutePath() + " has bundles and releng");
	}

	static SourceTree read(Path root) throws Exception {
		Map<String, Bundle> bundles = new TreeMap<>();
		for (Path folder : foldersWith(root.resolve("bundles"), "META-INF/MANIFEST.MF")) {
			Headers headers = headers(folder);
			bundles.put(headers.symbolicName(), new Bundle(headers.symbolicName(), headers, classes(folder)));
		}
		Map<String, Headers> tests = new TreeMap<>();
		for (Path folder : foldersWith(root.resolve("tests"), "META-INF/MANIFEST.MF")) {
			tests.put(headers(folder).symbolicName(), headers(folder));
		}
		Map<String, List<String>> features = new TreeMap<>();
		for (Path folder : foldersWith(root.resolve("features"), "feature.xml")) {
			readFeature(folder.resolve("feature.xml"), features);
		}
		return new SourceTree(bundles, tests, features);
	}

	private static List<Path> foldersWith(Path parent, String file) throws IOException {
		if (!Files.isDirectory(parent)) {
			return List.of();
		}
		try (Stream<Path> folders = Files.list(parent)) {
			return folders.filter(folder -> Files.exists(folder.resolve(file))).sorted().toList();
		}
	}

	private static Headers headers(Path folder) throws IOException {
		try (InputStream in = Files.newInputStream(folder.resolve("META-INF/MANIFEST.MF"))) {
			return new Headers(new Manifest(in));
		}
	}

	private static Map<String, Type> classes(Path folder) {
		// Maven's place first, then that of the Eclipse IDE
		Path output = Stream.of("target/classes", "bin").map(folder::resolve).filter(Files::isDirectory).findFirst()
				.orElseThrow(() -> new IllegalStateException(folder + " is not compiled yet"));
		// each bundle sees only itself, as its own answer should not depend on what lies on this test's class path
		ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
		Map<String, Type> classes = new TreeMap<>();
		for (JavaClass type : new ClassFileImporter().importPath(output)) {
			classes.put(type.getName(), type(type));
		}
		return classes;
	}

	private static Type type(JavaClass type) {
		Set<String> uses = new TreeSet<>();
		type.getDirectDependenciesFromSelf().forEach(use -> {
			JavaClass target = use.getTargetClass().getBaseComponentType();
			if (!target.isPrimitive()) {
				uses.add(target.getName());
			}
		});
		List<String> open = new ArrayList<>();
		for (JavaField field : type.getFields()) {
			Set<JavaModifier> modifiers = field.getModifiers();
			if (modifiers.contains(JavaModifier.STATIC)
					&& Collections.disjoint(modifiers, List.of(JavaModifier.FINAL, JavaModifier.SYNTHETIC))) {
				open.add(field.getName());
			}
		}
		return new Type(type.getName(), type.getPackageName(), uses, open);
	}

	private static void readFeature(Path file, Map<String, List<String>> features) throws Exception {
		Element feature = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile())
				.getDocumentElement();
		NodeList plugins = feature.getElementsByTagName("plugin");
		String[] names = new String[plugins.getLength()];
		Arrays.setAll(names, i -> ((Element) plugins.item(i)).getAttribute("id"));
		features.put(feature.getAttribute("id"), List.of(names));
	}

	/** The bundle of ours that has the class, null if none has. */
	Bundle ownerOf(String className) {
		return bundles.values().stream().filter(bundle -> bundle.classes().containsKey(className)).findFirst()
				.orElse(null);
	}
}
