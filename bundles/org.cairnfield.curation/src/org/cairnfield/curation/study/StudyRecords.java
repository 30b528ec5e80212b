package org.cairnfield.curation.study;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.TextFile;

/** Rows that are done, a file each, so that a study that was interrupted goes on where it was. */
public final class StudyRecords {

	private static final Gson GSON = new GsonBuilder().serializeSpecialFloatingPointValues().disableHtmlEscaping()
			.create();
	private static final int KEY_SHOWN = 20;

	/** A row as it is kept. @param key of all that it depends on */
	private record Kept(String key, StudyRow row) {
	}

	/** Null where nothing is kept. */
	private final Path folder;

	private StudyRecords(Path folder) {
		this.folder = folder;
	}

	/** Keeps nothing. */
	public static StudyRecords none() {
		return new StudyRecords(null);
	}

	/** @param folder that exists */
	public static StudyRecords in(Path folder) {
		return new StudyRecords(folder);
	}

	/** The row of a key; empty where there is none, or none that can be read. */
	Optional<StudyRow> find(String key) {
		if (folder == null || !Files.isRegularFile(file(key))) {
			return Optional.empty();
		}
		try {
			Kept kept = GSON.fromJson(Files.readString(file(key)), Kept.class);
			return kept != null && key.equals(kept.key) && kept.row != null ? Optional.of(kept.row) : Optional.empty();
		} catch (IOException | JsonParseException e) {
			return Optional.empty(); // it is done again, and written anew
		}
	}

	/** @throws StudyFolderException where it cannot be written */
	void keep(String key, StudyRow row) {
		if (folder == null) {
			return;
		}
		try {
			TextFile.write(file(key), GSON.toJson(new Kept(key, row)) + "\n");
		} catch (IntakeException e) {
			throw new StudyFolderException(e);
		}
	}

	private Path file(String key) {
		return folder.resolve(key.substring(0, KEY_SHOWN) + ".json");
	}
}
