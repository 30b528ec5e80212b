package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;

/**
 * The references of a repository as they are on disk, read to the letter. JGit passes over a reference that it cannot read,
 * as if it had never been there.
 */
final class RefFiles {

	private static final Pattern ID = Pattern.compile("([0-9a-f]{40})\n");
	private static final Pattern SYMBOLIC = Pattern.compile("ref: (refs/[^\\x00-\\x20\\x7f]+)\n");
	private static final Pattern PACKED = Pattern.compile("([0-9a-f]{40}) (refs/[^\\x00-\\x20\\x7f]+)");
	private static final Pattern PEELED = Pattern.compile("\\^([0-9a-f]{40})");
	private static final Pattern HEADER = Pattern.compile("# pack-refs with:( peeled| fully-peeled| sorted)+ *");
	private static final int MOST_BYTES = 4096;

	private final Path git;
	private final SortedMap<String, ObjectId> ids = new TreeMap<>();
	private final SortedMap<String, String> links = new TreeMap<>();
	private final SortedMap<String, ObjectId> peeled = new TreeMap<>();
	private final SortedMap<String, String> problems = new TreeMap<>();

	private RefFiles(Repository repository) {
		git = repository.getDirectory().toPath();
	}

	static RefFiles of(Repository repository) {
		RefFiles files = new RefFiles(repository);
		files.packed();
		files.loose();
		files.head();
		return files;
	}

	/** What references name, by their whole names; HEAD only if it names a commit by itself. */
	SortedMap<String, ObjectId> ids() {
		return ids;
	}

	/** What symbolic references stand for, by name. */
	SortedMap<String, String> links() {
		return links;
	}

	/** What the file of packed references says that tags stand for in the end. */
	SortedMap<String, ObjectId> peeled() {
		return peeled;
	}

	/** What cannot be read, by the name of the reference or file. */
	SortedMap<String, String> problems() {
		return problems;
	}

	private void head() {
		read(Constants.HEAD, git.resolve(Constants.HEAD));
		String branch = links.get(Constants.HEAD);
		boolean begun = ids.keySet().stream()
				.anyMatch(name -> name.startsWith(Constants.R_HEADS) || name.startsWith(Constants.R_TAGS));
		if (branch != null && !branch.startsWith(Constants.R_HEADS)) {
			problems.put(Constants.HEAD, Words.bind(Messages.RefFiles_namesWhichIsNoBranch, branch));
		} else if (branch != null && !ids.containsKey(branch) && !problems.containsKey(branch)
				&& (begun || hasLog(branch))) {
			problems.put(Constants.HEAD, Words.bind(Messages.RefFiles_namesWhichIsNotThere, branch));
		}
	}

	/** Git notes each move of a branch; one that has moved was there. */
	private boolean hasLog(String branch) {
		return Files.isRegularFile(git.resolve("logs").resolve(branch))
				|| Files.isRegularFile(git.resolve("logs").resolve(Constants.HEAD));
	}

	private void loose() {
		Path refs = git.resolve("refs");
		List<Path> files;
		try (Stream<Path> walk = Files.walk(refs)) {
			files = walk.filter(
					file -> !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS) && !file.toString().endsWith(".lock"))
					.sorted().toList();
		} catch (IOException | RuntimeException e) {
			problems.put("refs", Words.bind(Messages.RefFiles_cannotBeRead, e.getMessage()));
			return;
		}
		for (Path file : files) {
			read(git.relativize(file).toString().replace('\\', '/'), file);
		}
	}

	private void read(String name, Path file) {
		ids.remove(name);
		links.remove(name);
		peeled.remove(name);
		try {
			String text = Files.size(file) > MOST_BYTES ? "" : Files.readString(file, StandardCharsets.ISO_8859_1);
			Matcher id = ID.matcher(text);
			Matcher link = SYMBOLIC.matcher(text);
			if (id.matches()) {
				ids.put(name, ObjectId.fromString(id.group(1)));
			} else if (link.matches()) {
				links.put(name, link.group(1));
			} else {
				problems.put(name,
						text.isEmpty() ? Messages.RefFiles_theFileIsEmpty : Messages.RefFiles_theFileNamesNoObject);
			}
		} catch (IOException e) {
			problems.put(name, Words.bind(Messages.RefFiles_cannotBeRead, e.getMessage()));
		}
	}

	private void packed() {
		Path file = git.resolve(Constants.PACKED_REFS);
		if (!Files.exists(file)) {
			return;
		}
		try {
			String last = "";
			String text = Files.readString(file, StandardCharsets.ISO_8859_1);
			List<String> lines = new ArrayList<>(text.lines().toList());
			if (!text.endsWith("\n") || text.indexOf('\r') >= 0) {
				problems.put(Constants.PACKED_REFS, Messages.RefFiles_theLastLineHasNo);
			}
			for (int n = 0; n < lines.size(); n++) {
				String line = lines.get(n);
				Matcher entry = PACKED.matcher(line);
				Matcher peel = PEELED.matcher(line);
				if (n == 0 && HEADER.matcher(line).matches()) {
					continue;
				}
				if (entry.matches() && entry.group(2).compareTo(last) > 0) {
					last = entry.group(2);
					ids.put(last, ObjectId.fromString(entry.group(1)));
				} else if (peel.matches() && !last.isEmpty() && !peeled.containsKey(last)) {
					peeled.put(last, ObjectId.fromString(peel.group(1)));
				} else {
					problems.put(Constants.PACKED_REFS, Words.bind(Messages.RefFiles_lineIsNotAsGit, n + 1));
				}
			}
		} catch (IOException e) {
			problems.put(Constants.PACKED_REFS, Words.bind(Messages.RefFiles_cannotBeRead, e.getMessage()));
		}
	}
}
