package org.cairnfield.exchange.floors;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

import org.cairnfield.exchange.IntakeException;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.MalformedJsonException;
import org.cairnfield.core.text.Words;

/** The JSON texts of a file, of a folder or of a ZIP archive, by name and within limits. */
final class MapSource implements AutoCloseable {

	private static final int MEBI = 1 << 20;
	private static final int LARGEST_TEXT_MEBI = 32;
	private static final int LARGEST_SUM_MEBI = 128;
	private static final int MOST_ENTRIES = 1000;
	private static final byte[] ZIP = { 'P', 'K', 3, 4 };
	private static final byte[] EMPTY_ZIP = { 'P', 'K', 5, 6 };

	private static final Pattern PLACE = Pattern.compile("line (\\d+) column (\\d+)");

	/** Opens one of the texts. */
	private interface Opener {
		InputStream open() throws IOException;
	}

	private final Path file;
	private final Map<String, Opener> texts = new TreeMap<>();
	private final boolean isArchive;
	private ZipFile zip;
	private long budget = (long) LARGEST_SUM_MEBI * MEBI;

	private MapSource(Path file, boolean isArchive) {
		this.file = file;
		this.isArchive = isArchive;
	}

	static MapSource open(Path file) throws IntakeException {
		MapSource source = null;
		try {
			if (Files.isDirectory(file)) {
				source = new MapSource(file, true);
				source.openFolder();
			} else if (!Files.exists(file)) {
				throw new IntakeException(file, 0, Messages.MapSource_thereIsNoSuchFile,
						Messages.MapSource_checkTheName);
			} else if (!Files.isRegularFile(file)) { // reading a pipe might never end
				throw new IntakeException(file, 0, Messages.MapSource_thisIsNeitherAFile,
						Messages.MapSource_nameAnImdfArchiveIts);
			} else if (isZip(file)) {
				source = new MapSource(file, true);
				source.openZip();
			} else {
				source = new MapSource(file, false);
				source.texts.put("", () -> Files.newInputStream(file));
			}
			return source;
		} catch (IOException e) {
			close(source);
			throw unreadable(file, "", e);
		} catch (IntakeException e) {
			close(source);
			throw e;
		}
	}

	private static void close(MapSource source) {
		if (source != null) {
			source.close();
		}
	}

	private static boolean isZip(Path file) throws IOException {
		try (InputStream in = Files.newInputStream(file)) {
			byte[] first = in.readNBytes(ZIP.length);
			return Arrays.equals(first, ZIP) || Arrays.equals(first, EMPTY_ZIP);
		}
	}

	private void openFolder() throws IOException, IntakeException {
		try (Stream<Path> inside = Files.list(file)) {
			for (Path each : (Iterable<Path>) inside.filter(Files::isRegularFile).limit(MOST_ENTRIES)::iterator) {
				add(each.getFileName().toString(), () -> Files.newInputStream(each));
			}
		}
	}

	private void openZip() throws IOException, IntakeException {
		zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
		if (zip.size() > MOST_ENTRIES) {
			throw new IntakeException(file, 0,
					Words.bind(Messages.MapSource_theArchiveHasFilesMore, zip.size(), MOST_ENTRIES),
					Messages.MapSource_giveAnImdfArchiveWhich);
		}
		for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements();) {
			ZipEntry entry = all.nextElement();
			String name = entry.getName();
			List<String> steps = List.of(name.split("/", -1));
			if (name.startsWith("/") || name.indexOf('\\') >= 0 || name.indexOf(':') >= 0 || steps.contains("..")) {
				throw new IntakeException(file, 0,
						Words.bind(Messages.MapSource_theArchiveHasAFile, name),
						Messages.MapSource_doNotTrustThisArchive);
			}
			if (!entry.isDirectory() && !name.startsWith("__MACOSX/")) {
				add(steps.get(steps.size() - 1), () -> zip.getInputStream(entry));
			}
		}
	}

	private void add(String name, Opener opener) throws IntakeException {
		String key = name.toLowerCase(Locale.ROOT);
		if ((key.endsWith(".json") || key.endsWith(".geojson")) && !key.startsWith(".")
				&& texts.put(key, opener) != null) {
			throw new IntakeException(file, 0, Words.bind(Messages.MapSource_thereAreTwoFilesCalled, key),
					Messages.MapSource_leaveOneOfThemIn);
		}
	}

	Path file() {
		return file;
	}

	/** Whether there are several texts, as in IMDF. */
	boolean isArchive() {
		return isArchive;
	}

	boolean has(String name) {
		return texts.containsKey(name);
	}

	/**
	 * One of the texts.
	 *
	 * @param name the empty one for that of a single file
	 * @throws IntakeException where it is no JSON object or too large
	 */
	JsonObject read(String name) throws IntakeException {
		try (InputStream in = texts.get(name).open()) {
			byte[] bytes = in.readNBytes((int) Math.min(budget, (long) LARGEST_TEXT_MEBI * MEBI) + 1);
			budget -= bytes.length;
			if (bytes.length > LARGEST_TEXT_MEBI * MEBI || budget < 0) {
				throw refused(name,
						Words.bind(Messages.MapSource_thereIsMoreTextThan, LARGEST_TEXT_MEBI, LARGEST_SUM_MEBI),
						Messages.MapSource_giveThePlansOfOne);
			}
			JsonElement json = parse(bytes);
			if (!json.isJsonObject()) {
				throw refused(name, Messages.MapSource_thisIsNoGeojsonIt,
						Messages.MapSource_giveAFeaturecollectionAsRfc);
			}
			return json.getAsJsonObject();
		} catch (IOException e) {
			throw unreadable(file, name, e);
		} catch (JsonParseException e) {
			throw refused(name, Words.bind(Messages.MapSource_thisIsNoJsonThat, reason(e)),
					Messages.MapSource_writeTheFileAnewIt);
		}
	}

	private static JsonElement parse(byte[] bytes) throws IOException {
		int start = bytes.length > 2 && bytes[0] == (byte) 0xef && bytes[1] == (byte) 0xbb && bytes[2] == (byte) 0xbf
				? 3
				: 0;
		InputStreamReader text = new InputStreamReader(new ByteArrayInputStream(bytes, start, bytes.length - start),
				StandardCharsets.UTF_8.newDecoder());
		JsonReader reader = new JsonReader(text);
		reader.setStrictness(Strictness.STRICT);
		JsonElement json = JsonParser.parseReader(reader);
		if (!isAtEnd(reader)) {
			throw new JsonParseException(Messages.MapSource_somethingFollowsItsEnd);
		}
		return json;
	}

	private static boolean isAtEnd(JsonReader reader) throws IOException {
		try {
			return reader.peek() == JsonToken.END_DOCUMENT;
		} catch (MalformedJsonException e) {
			return false;
		}
	}

	/** In words of ours: those of the library are for programmers. */
	private static String reason(JsonParseException e) {
		if (e.getCause() instanceof CharacterCodingException) {
			return Messages.MapSource_itIsNotInUtf;
		}
		if (e.getCause() == null) {
			return e.getMessage();
		}
		String message = String.valueOf(e.getCause().getMessage());
		Matcher place = PLACE.matcher(message);
		return message.startsWith("Nesting limit") ? Messages.MapSource_itIsNestedTooDeeply
				: message.startsWith("End of input") || !place.find() ? Messages.MapSource_itEndsTooEarly
						: Words.bind(Messages.MapSource_somethingIsWrongAtLine, place.group(1), place.group(2));
	}

	/** Something about one of the texts. */
	IntakeException refused(String name, String what, String remedy) {
		return new IntakeException(file, 0, (name.isEmpty() ? "" : name + ": ") + what, remedy);
	}

	private static IntakeException unreadable(Path file, String name, IOException e) {
		String which = name.isEmpty() ? "" : name + ": ";
		if (e instanceof ZipException) {
			return new IntakeException(file, 0,
					Words.bind(Messages.MapSource_theArchiveIsDamagedOr, which, e.getMessage()),
					Messages.MapSource_fetchItAgainAndWithout);
		}
		if (e instanceof AccessDeniedException) {
			return new IntakeException(file, 0, Words.bind(Messages.MapSource_itMayNotBeRead, which),
					Messages.MapSource_askForTheRightTo);
		}
		return new IntakeException(file, 0, Words.bind(Messages.MapSource_readingFailed, which, e.getMessage()),
				Messages.MapSource_checkTheDiskAndTry);
	}

	@Override
	public void close() {
		if (zip != null) {
			try {
				zip.close();
			} catch (IOException e) {
				// it was read only, and what was read is complete
			}
		}
	}
}
