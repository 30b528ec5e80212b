package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A save point that somebody is making. The note is there from before the files are saved until the save point is in the
 * history, so that one that was interrupted can be finished as it was meant, whoever opens the archive next.
 *
 * @param opening first line of the message in place of counts, or empty
 * @param words   of the person; null where there are none
 * @param before  id of the save point that it comes after; null where it is the first
 * @param state   of the files before they are saved, by {@link FolderView#stamp()}; empty where they are saved already;
 *                {@link #MIXED} where something else was saved before it could be finished
 * @param with    id of a save point of somebody else whose work the files hold then as well; null where there is none
 */
public record Intended(String person, String email, Instant time, String opening, String words, String before,
		String state, String with) {

	/** In place of a state: the save point cannot be made any more as it was meant. */
	public static final String MIXED = "mixed";

	private static final String NONE = "-";
	private static final int LARGEST_BYTES = 1 << 20;

	/** The note in a folder; null where there is none, or where it cannot be understood and so means nothing. */
	public static Intended read(Path root) throws IOException {
		Path file = file(root);
		if (!Places.isFile(file) || Files.size(file) > LARGEST_BYTES) {
			return null;
		}
		Map<String, String> fields = new HashMap<>();
		for (String line : new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n")) {
			int tab = line.indexOf('\t');
			if (tab > 0) {
				fields.put(line.substring(0, tab), Journal.unescaped(line.substring(tab + 1)));
			}
		}
		if (!fields.containsKey("end")) {
			return null;
		}
		try {
			return new Intended(fields.get("person"), fields.get("email"), Instant.parse(fields.get("time")),
					fields.get("opening"),
					fields.get("words"), NONE.equals(fields.get("before")) ? null : fields.get("before"),
					fields.get("state"),
					fields.get("with"));
		} catch (NullPointerException | DateTimeException e) {
			return null;
		}
	}

	public Intended {
		Objects.requireNonNull(person);
		Objects.requireNonNull(email);
		Objects.requireNonNull(time);
		Objects.requireNonNull(opening);
		Objects.requireNonNull(state);
	}

	private static Path file(Path root) throws IOException {
		return Places.privateFile(root, "save-point");
	}

	/** Whether it was to come after a save point; null: whether it was to be the first. */
	public boolean comesAfter(String id) {
		return Objects.equals(before, id);
	}

	/** The same, after something else was saved. */
	public Intended mixed() {
		return new Intended(person, email, time, opening, words, before, MIXED, with);
	}

	/** Who began it and when, for a sentence. */
	public String byWhom() {
		return person + " began to record at " + time;
	}

	/** Puts the note in place. Needs the lock of the folder. */
	public void write(Disk disk, Path root) throws IOException {
		StringBuilder text = new StringBuilder("A save point is being made.\n");
		add(text, "person", person);
		add(text, "email", email);
		add(text, "time", time.toString());
		add(text, "opening", opening);
		if (words != null) {
			add(text, "words", words);
		}
		add(text, "before", before == null ? NONE : before);
		add(text, "state", state);
		if (with != null) {
			add(text, "with", with);
		}
		add(text, "end", "");
		Path part = Places.privateFile(root, "save-point.part");
		try (Disk.Sink out = disk.write(part)) {
			out.write(text.toString().getBytes(StandardCharsets.UTF_8));
			out.sync();
		}
		disk.move(part, file(root));
		disk.syncFolder(Places.privateFolder(root));
	}

	private static void add(StringBuilder text, String name, String value) {
		text.append(name).append('\t').append(Journal.escaped(value)).append('\n');
	}

	/** Takes the note away, once the save point is in the history or is given up. */
	public static void withdraw(Disk disk, Path root) throws IOException {
		if (Places.isFile(file(root))) {
			disk.delete(file(root));
		}
	}
}
