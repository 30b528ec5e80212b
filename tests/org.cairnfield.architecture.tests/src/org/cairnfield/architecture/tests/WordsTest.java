package org.cairnfield.architecture.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words for people are in files of words: each there is asked for, and each that is asked for is there. */
class WordsTest {

	private static final Pattern FIELD = Pattern.compile("public static String (\\w+);");
	private static final Pattern USE = Pattern.compile("\\bMessages\\.(\\w+)");
	/** Annotations of commands and their options ask by name. */
	private static final Pattern ANNOTATED = Pattern.compile("(?:descriptionKey = \"|\\$\\{bundle:)(\\w+)");
	/** Literals with words in them: a blank between letters. Ids, formats, marks and HTML have none. */
	private static final Pattern SENTENCE = Pattern
			.compile("\"[^\"\\\\{<]*\\p{L}{2,} \\p{L}{2,} \\p{L}{2,}[^\"\\\\{<]*\"");
	/** Where words are not for those who use the workbench: faults of the program, and what needs a constant. */
	private static final Pattern NOT_SHOWN = Pattern
			.compile(
					"^\\s*(\\*|//|/\\*|@)|throw new (Illegal|Unsupported)|requireNonNull|new (IllegalState|IllegalArgument|Assertion)");

	private static Path bundles;

	@TempDir
	Path folder;

	@BeforeAll
	static void findTheTree() {
		Path root = Path.of("").toAbsolutePath();
		while (!Files.isDirectory(root.resolve("bundles"))) {
			root = root.getParent();
		}
		bundles = root.resolve("bundles");
	}

	@Test
	void everyPackageHasTheWordsThatItAsksFor() throws IOException {
		List<Path> files = files(bundles, "messages.properties");
		assertFalse(files.isEmpty());
		for (Path file : files) {
			assertEquals(List.of(), faults(file.getParent()), file::toString);
		}
	}

	@Test
	void findsWordsThatAreMissingOrIdle() throws IOException {
		Files.writeString(folder.resolve("messages.properties"), "View_title=Plan\nView_idle=Nothing\n");
		Files.writeString(folder.resolve("Messages.java"),
				"public static String View_title;\npublic static String View_gone;");
		Files.writeString(folder.resolve("View.java"), "say(Messages.View_title);");
		Files.writeString(folder.resolve("Command.java"),
				"@Option(names = \"--all\", descriptionKey = \"Command_all\")");
		assertEquals(List.of("Command_all is no word of the file", "View_gone is no word of the file",
				"View_idle is no field", "View_gone is never said", "View_idle is never said"), faults(folder));
	}

	@Test
	void everyNameOfAPluginIsInItsFile() throws IOException {
		for (Path file : files(bundles, "plugin.properties")) {
			Set<String> asked = new TreeSet<>();
			Matcher key = Pattern.compile("=\"%([^\"]+)\"")
					.matcher(Files.readString(file.resolveSibling("plugin.xml")));
			while (key.find()) {
				asked.add(key.group(1));
			}
			assertEquals(asked,
					words(file).stringPropertyNames().stream().collect(TreeSet::new, Set::add, Set::addAll));
			assertTrue(Files.readString(file.resolveSibling("build.properties")).contains("plugin.properties"),
					file::toString);
		}
	}

	@Test
	void noSentenceIsInTheCodeOfWorkbenchCommandsAndReports() throws IOException {
		List<String> found = new ArrayList<>();
		try (Stream<Path> sources = Files.walk(bundles)) {
			for (Path source : (Iterable<Path>) sources.filter(WordsTest::speaksToPeople).sorted()::iterator) {
				for (String line : Files.readAllLines(source)) {
					if (!NOT_SHOWN.matcher(line).find() && SENTENCE.matcher(line).find()) {
						found.add(source.getFileName() + ": " + line.strip());
					}
				}
			}
		}
		assertEquals(List.of(), found);
	}

	private static boolean speaksToPeople(Path path) {
		return path.toString().matches(".*org\\.cairnfield\\.(ui[.a-z]*|batch|report).src.*\\.java");
	}

	private static List<Path> files(Path root, String name) throws IOException {
		try (Stream<Path> all = Files.walk(root)) {
			return all.filter(file -> file.endsWith(name) && !file.toString().contains("target")).sorted().toList();
		}
	}

	private static Properties words(Path file) throws IOException {
		Properties words = new Properties();
		try (InputStream in = Files.newInputStream(file)) {
			words.load(in);
		}
		return words;
	}

	private static List<String> faults(Path packageFolder) throws IOException {
		Set<String> words = new TreeSet<>(words(packageFolder.resolve("messages.properties")).stringPropertyNames());
		Set<String> fields = all(FIELD, Files.readString(packageFolder.resolve("Messages.java")));
		StringBuilder code = new StringBuilder();
		try (Stream<Path> sources = Files.list(packageFolder)) {
			for (Path source : (Iterable<Path>) sources.filter(file -> file.toString().endsWith(".java"))::iterator) {
				code.append(Files.readString(source));
			}
		}
		List<String> faults = new ArrayList<>();
		Set<String> annotated = all(ANNOTATED, code);
		annotated.stream().filter(word -> !words.contains(word))
				.forEach(word -> faults.add(word + " is no word of the file"));
		words.removeAll(annotated);
		Set<String> said = all(USE, code);
		fields.stream().filter(field -> !words.contains(field))
				.forEach(field -> faults.add(field + " is no word of the file"));
		words.stream().filter(word -> !fields.contains(word)).forEach(word -> faults.add(word + " is no field"));
		fields.addAll(words);
		fields.stream().filter(field -> !said.contains(field)).forEach(field -> faults.add(field + " is never said"));
		return faults;
	}

	private static Set<String> all(Pattern pattern, CharSequence text) {
		Set<String> found = new TreeSet<>();
		Matcher matcher = pattern.matcher(text);
		while (matcher.find()) {
			found.add(matcher.group(1));
		}
		return found;
	}
}
