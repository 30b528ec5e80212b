package org.cairnfield.archive;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.disk.GitUnderway;
import org.cairnfield.core.text.Words;

/**
 * Calls a folder that is half merged by that name. What its files look like then follows from it, and the usual remedy, to
 * restore the last save point, would drop one side.
 */
final class HalfMerged {

	private static final String MARK = "<<<<<<< ";
	private static final String MARKED = Messages.HalfMerged_holdsConflictMarksOfGit;
	private static final String DECIDE = Messages.HalfMerged_keepTheLinesThatAre;

	private HalfMerged() {
	}

	/**
	 * What is wrong with a folder.
	 *
	 * @param found what is wrong with its files, taken one by one
	 * @return the same where nothing is half merged
	 */
	static List<Damage> explain(Path root, FileSource files, List<Damage> found) throws IOException {
		Optional<GitUnderway> underway = GitUnderway.in(root);
		List<Damage> all = new ArrayList<>();
		underway.ifPresent(each -> all.add(each.damage()));
		Map<String, Long> marks = new LinkedHashMap<>();
		for (Damage damage : found) {
			Long line = marks.get(damage.file());
			if (line == null) {
				line = firstMark(files, damage.file());
				marks.put(damage.file(), line);
				if (line > 0) {
					all.add(new Damage(damage.file(), line, MARKED, underway.map(GitUnderway::remedy).orElse(DECIDE)));
				}
			}
			if (line == 0) {
				all.add(underway.isEmpty() ? damage
						: new Damage(damage.file(), damage.line(), damage.reason(), underway.get().remedy()));
			}
		}
		return all;
	}

	/** Any state that is put in place while a merge is under way would be taken for its outcome. */
	static void requireWhole(Path root) throws DamagedException {
		Optional<GitUnderway> underway = GitUnderway.in(root);
		if (underway.isPresent()) {
			throw new DamagedException(Words.bind(Messages.HalfMerged_nothingWasChanged, underway.get().reason()),
					underway.get().remedy(),
					List.of(underway.get().damage()));
		}
	}

	/** Number of the line with the first mark; 0 where there is none. */
	private static long firstMark(FileSource files, String path) throws IOException {
		if (!files.has(path)) {
			return 0;
		}
		try (BufferedReader in = new BufferedReader(
				new InputStreamReader(files.open(path), StandardCharsets.ISO_8859_1))) {
			long line = 1;
			for (String text = in.readLine(); text != null; text = in.readLine()) {
				if (text.startsWith(MARK)) {
					return line;
				}
				line++;
			}
			return 0;
		}
	}
}
