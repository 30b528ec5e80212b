import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/**
 * Lists the libraries that are shipped, each with its licence as it states it itself: {@code java Notice.java [--check] NOTICE PLUGINS}.
 * With {@code --check} it writes nothing, and fails where the list is another.
 */
final class Notice {

	/** How licences call themselves, and their SPDX identifiers; the first that is met counts. */
	private static final Map<String, String> WORDS = new LinkedHashMap<>();

	static {
		WORDS.put("EPL-2.0", "EPL-2.0");
		WORDS.put("eclipse.org/legal/epl-2.0", "EPL-2.0");
		WORDS.put("eclipse.org/legal/epl-v20", "EPL-2.0");
		WORDS.put("Eclipse Public License Version 2.0", "EPL-2.0");
		WORDS.put("Eclipse Public License - v 2.0", "EPL-2.0");
		WORDS.put("Eclipse Distribution License", "BSD-3-Clause");
		WORDS.put("edl-v10", "BSD-3-Clause");
		WORDS.put("eclipse.org/legal/epl-v10", "EPL-1.0");
		WORDS.put("Eclipse Public License Version 1.0", "EPL-1.0");
		WORDS.put("apache.org/licenses/LICENSE-2.0", "Apache-2.0");
		WORDS.put("Apache-2.0", "Apache-2.0");
		WORDS.put("Apache License", "Apache-2.0");
		WORDS.put("opensource.org/licenses/MIT", "MIT");
		WORDS.put("MIT License", "MIT");
		WORDS.put("licenses/mit", "MIT");
		WORDS.put("BSD", "BSD-3-Clause");
		WORDS.put("Redistribution and use in source and binary forms", "BSD-3-Clause");
	}

	/** Of libraries whose archives do not say it; their project descriptions on Maven Central do. */
	private static final Map<String, String> SAID_ELSEWHERE = Map.of("com.ibm.icu", "Unicode-3.0", "picocli", "Apache-2.0", "slf4j.api", "MIT", "slf4j.nop", "MIT",
			"wrapped.org.jfree.jfreechart", "LGPL-2.1-or-later", "wrapped.org.commonmark.commonmark", "BSD-2-Clause",
			"wrapped.org.commonmark.commonmark-ext-gfm-tables", "BSD-2-Clause");

	private record Library(String id, String version, String name, String licence) {
	}

	private Notice() {
	}

	/** Exit code 1 where the list is another, or a licence is not known. */
	public static void main(String[] args) throws IOException {
		boolean check = args[0].equals("--check");
		Path notice = Path.of(args[check ? 1 : 0]);
		Path plugins = Path.of(args[check ? 2 : 1]);
		List<Library> libraries = new ArrayList<>();
		try (Stream<Path> jars = Files.list(plugins)) {
			for (Path jar : jars.filter(file -> file.toString().endsWith(".jar") && !file.getFileName().toString().startsWith("org.cairnfield.")).sorted().toList()) {
				libraries.add(library(jar));
			}
		}
		List<String> unknown = libraries.stream().filter(library -> library.licence.isEmpty()).map(Library::id).toList();
		if (!unknown.isEmpty()) {
			System.err.println("no licence is known of " + String.join(", ", unknown) + ": see what the library says, and teach Notice.java its words");
			System.exit(1);
		}
		String text = text(libraries);
		if (!check) {
			Files.writeString(notice, text);
		} else if (!Files.exists(notice) || !Files.readString(notice).equals(text)) {
			System.err.println("NOTICE does not list what is shipped: make it anew with releng/notice.sh");
			System.exit(1);
		}
	}

	private static Library library(Path jar) throws IOException {
		try (JarFile file = new JarFile(jar.toFile())) {
			Manifest manifest = file.getManifest();
			Attributes attributes = manifest.getMainAttributes();
			String id = attributes.getValue("Bundle-SymbolicName").replaceAll(";.*", "").trim();
			String name = attributes.getValue("Bundle-Name");
			String licence = SAID_ELSEWHERE.getOrDefault(id, spdx(attributes.getValue("Bundle-License")));
			for (JarEntry entry : (Iterable<JarEntry>) file.stream().sorted((a, b) -> a.getName().compareTo(b.getName()))::iterator) {
				if (licence.isEmpty() && entry.getName().matches("(?i)(about\\.html|about_files/.*|(META-INF/|license/)?LICEN[CS]E[^/]*|META-INF/maven/.*/pom\\.xml)")) {
					licence = spdx(new String(file.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
				}
			}
			return new Library(id, attributes.getValue("Bundle-Version").replaceAll("\\.v?[0-9]{8}.*", ""), name == null || name.startsWith("%") ? id : name, licence);
		}
	}

	private static String spdx(String text) {
		return text == null ? "" : WORDS.entrySet().stream().filter(each -> text.contains(each.getKey())).map(Map.Entry::getValue).findFirst().orElse("");
	}

	private static String text(List<Library> libraries) {
		StringBuilder text = new StringBuilder("Cairnfield\n\nThis program is made available under the terms of the Eclipse Public License 2.0, see LICENSE.\n"
				+ "It is shipped with the following libraries, each under its own licence, which its archive contains or names.\n"
				+ "This list is made by releng/notice.sh.\n");
		Map<String, TreeSet<String>> byLicence = new TreeMap<>();
		for (Library library : libraries) {
			byLicence.computeIfAbsent(library.licence, l -> new TreeSet<>())
					.add(library.id + " " + library.version + (library.name.equals(library.id) ? "" : " (" + library.name + ")"));
		}
		byLicence.forEach((licence, names) -> text.append('\n').append(licence).append('\n').append("  " + String.join("\n  ", names)).append('\n'));
		return text.toString();
	}
}
