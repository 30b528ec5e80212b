package org.cairnfield.batch.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Changes one file as damage, careless editors and people with bad intent do. The same seed makes the same change. */
final class Mutator {

	private static final List<String> VALUES = List.of("", " ", "0", "-1", "NaN", "Infinity", "1e308", "-1e9",
			"99999999999999999999", "2147483648",
			"-2147483649", "1.5", "true", "null", "?", "a\u001b[31mb", "\u202ex", "ü", "\ud83d\ude00", "../../x",
			"/etc/x", "x".repeat(300), "a,b", "a;b",
			"\"", "'", "<", "&", "&#0;", "all", "archive", "site/x/9", "2031-02-30", "-0", "+5", "007", "\t", "=1+1",
			"00:00:5E:00:53:01", "-130", "127", "300",
			"4860000", "//@sites.0", "surveys/x.samples#/");
	private static final Pattern TOKEN = Pattern.compile("\"[^\"\n]*\"|[^\\s\",;=<>]+");
	private static final Pattern ATTRIBUTE = Pattern.compile(" [\\w:]+=\"[^\"]*\"");

	private final Random random;

	Mutator(long seed) {
		random = new Random(seed);
	}

	/** Changes one of the files; says what, for a message. */
	String mutate(List<Path> files) throws IOException {
		Path file = files.get(random.nextInt(files.size()));
		byte[] bytes = Files.readAllBytes(file);
		int way = random.nextInt(10);
		if (way == 0) {
			Files.delete(file);
		} else if (way == 1) {
			Files.write(file, java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)));
		} else if (way == 2 && bytes.length > 0) {
			bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
			Files.write(file, bytes);
		} else {
			Files.writeString(file, text(way, new String(bytes, StandardCharsets.UTF_8)));
		}
		return "way " + way + " of " + file;
	}

	private String text(int way, String text) {
		if (way == 3) {
			return without(text, ATTRIBUTE);
		}
		if (way == 4) {
			List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
			lines.add(random.nextInt(lines.size()), lines.get(random.nextInt(lines.size())));
			return String.join("\n", lines);
		}
		if (way == 5) {
			List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
			lines.remove(random.nextInt(lines.size()));
			return String.join("\n", lines);
		}
		return replaced(text);
	}

	private String without(String text, Pattern what) {
		List<MatchResult> found = what.matcher(text).results().toList();
		if (found.isEmpty()) {
			return replaced(text);
		}
		MatchResult one = found.get(random.nextInt(found.size()));
		return text.substring(0, one.start()) + text.substring(one.end());
	}

	private String replaced(String text) {
		List<MatchResult> found = TOKEN.matcher(text).results().toList();
		String value = VALUES.get(random.nextInt(VALUES.size()));
		if (found.isEmpty()) {
			return text + value;
		}
		MatchResult one = found.get(random.nextInt(found.size()));
		boolean quoted = one.group().startsWith("\"");
		return text.substring(0, one.start()) + (quoted ? '"' + value + '"' : value) + text.substring(one.end());
	}
}
