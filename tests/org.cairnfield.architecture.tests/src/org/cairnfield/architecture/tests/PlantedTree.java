package org.cairnfield.architecture.tests;

import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * A small tree of bundles, written down and compiled in a folder: what a rule says about it shows whether the rule can
 * fail. Manifests and the one feature are made to fit the sources unless a test sets them otherwise.
 */
final class PlantedTree {

	private static final Pattern PACKAGE = Pattern.compile("package ([\\w.]+);");
	private static final Pattern TYPE = Pattern.compile("(?:class|interface|enum|record) (\\w+)");

	private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();
	/** One for all trees, since opening the classes of the JDK takes longer than compiling. */
	private static final StandardJavaFileManager FILES = COMPILER.getStandardFileManager(null, null, null);

	private final Map<String, List<String>> sources = new TreeMap<>();
	private final Map<String, Map<String, String>> headers = new TreeMap<>();
	private final Map<String, List<String>> features = new TreeMap<>();
	private final List<String> libraries = new ArrayList<>();

	/** Adds a class, given as the text of its file, to a bundle. */
	PlantedTree with(String bundle, String source) {
		sources.computeIfAbsent(bundle, b -> new ArrayList<>()).add(source);
		return this;
	}

	/** Adds a class that is there when the bundles are compiled, but belongs to no bundle of ours. */
	PlantedTree withLibrary(String source) {
		libraries.add(source);
		return this;
	}

	/** Sets a header in the manifest of a bundle; null leaves it out. */
	PlantedTree withHeader(String bundle, String header, String value) {
		sources.computeIfAbsent(bundle, b -> new ArrayList<>());
		headers.computeIfAbsent(bundle, b -> new TreeMap<>()).put(header, value == null ? "" : value);
		return this;
	}

	/** Adds a feature; without any, one feature has all bundles. */
	PlantedTree withFeature(String id, String... bundles) {
		features.put(id, List.of(bundles));
		return this;
	}

	/** Writes and compiles all of it in an empty folder, and reads it as the real tree is read. */
	SourceTree grow(Path root) throws Exception {
		Path all = root.resolve("all");
		List<String> texts = new ArrayList<>(libraries);
		sources.values().forEach(texts::addAll);
		compile(texts, all);
		for (Map.Entry<String, List<String>> bundle : sources.entrySet()) {
			Path folder = root.resolve("bundles").resolve(bundle.getKey());
			Files.createDirectories(folder.resolve("target/classes"));
			for (String text : bundle.getValue()) {
				Path compiled = Path.of(first(PACKAGE, text).replace('.', '/'), first(TYPE, text) + ".class");
				Path home = folder.resolve("target/classes").resolve(compiled);
				Files.createDirectories(home.getParent());
				Files.move(all.resolve(compiled), home);
			}
			write(folder.resolve("META-INF/MANIFEST.MF"), manifest(bundle.getKey(), bundle.getValue()));
		}
		if (features.isEmpty()) {
			features.put("planted.feature", List.copyOf(sources.keySet()));
		}
		for (Map.Entry<String, List<String>> feature : features.entrySet()) {
			StringBuilder text = new StringBuilder("<feature id=\"" + feature.getKey() + "\">");
			feature.getValue().forEach(bundle -> text.append("<plugin id=\"").append(bundle).append("\"/>"));
			write(root.resolve("features").resolve(feature.getKey()).resolve("feature.xml"), text + "</feature>\n");
		}
		return SourceTree.read(root);
	}

	private String manifest(String bundle, List<String> texts) {
		Map<String, String> lines = new TreeMap<>();
		TreeSet<String> exported = new TreeSet<>();
		texts.forEach(text -> exported.add(first(PACKAGE, text)));
		exported.removeIf(name -> name.contains(".internal"));
		lines.put("Bundle-SymbolicName", bundle);
		lines.put("Bundle-RequiredExecutionEnvironment", "JavaSE-17");
		lines.put("Export-Package", String.join(",", exported));
		lines.putAll(headers.getOrDefault(bundle, Map.of()));
		StringBuilder text = new StringBuilder("Manifest-Version: 1.0\n");
		lines.forEach((name, value) -> {
			if (!value.isEmpty()) {
				// a line of a manifest has at most 72 bytes
				text.append((name + ": " + value).replaceAll("(.{60})(?!$)", "$1\n ")).append('\n');
			}
		});
		return text.toString();
	}

	private static void compile(List<String> texts, Path output) throws Exception {
		Files.createDirectories(output);
		List<Path> files = new ArrayList<>();
		for (String text : texts) {
			Path file = output.resolve(first(PACKAGE, text).replace('.', '/')).resolve(first(TYPE, text) + ".java");
			write(file, text);
			files.add(file);
		}
		if (files.isEmpty()) {
			return;
		}
		List<String> options = List.of("-proc:none", "-source", "17", "-target", "17", "-d", output.toString());
		StringWriter messages = new StringWriter();
		if (!COMPILER.getTask(messages, FILES, null, options, null, FILES.getJavaFileObjectsFromPaths(files)).call()) {
			throw new IllegalArgumentException(messages.toString());
		}
	}

	private static String first(Pattern pattern, String text) {
		Matcher matcher = pattern.matcher(text);
		if (!matcher.find()) {
			throw new IllegalArgumentException("no " + pattern + " in " + text);
		}
		return matcher.group(1);
	}

	private static void write(Path file, String text) throws Exception {
		Files.createDirectories(file.getParent());
		Files.writeString(file, text);
	}
}
