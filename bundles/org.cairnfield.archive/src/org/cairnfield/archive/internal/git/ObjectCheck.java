package org.cairnfield.archive.internal.git;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.AnyObjectId;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.treewalk.CanonicalTreeParser;

/**
 * Whether objects are those that their names stand for. Git finds an object by its name and believes it; here the name is
 * computed again, once for each object.
 */
final class ObjectCheck {

	private final Repository repository;
	private final Path objects;
	private final ObjectInserter.Formatter formatter = new ObjectInserter.Formatter();
	/** What is wrong with the objects that were looked at; empty where nothing is. */
	private final Map<ObjectId, String> known = new HashMap<>();

	ObjectCheck(Repository repository) {
		this.repository = repository;
		objects = repository.getDirectory().toPath().resolve("objects");
	}

	/** @return what is wrong with the tag, its commit, or anything in its folders; empty if nothing is */
	List<String> of(Tag tag) {
		List<String> problems = new ArrayList<>();
		try {
			ObjectId id = ObjectId.fromString(tag.id());
			if (check(id, Words.bind(Messages.ObjectCheck_tag, tag.name()), problems)) {
				RevTag annotated = RevTag.parse(repository.open(id, Constants.OBJ_TAG).getBytes());
				if (!annotated.getTagName().equals(tag.name())) {
					problems.add(
							Words.bind(Messages.ObjectCheck_tagSaysThatItIs, tag.name(), annotated.getTagName()));
				}
				if (check(annotated.getObject(), "commit", problems)) {
					reach(RevCommit.parse(repository.open(annotated.getObject()).getBytes()).getTree(), "folder",
							new HashSet<>(), problems, null);
				}
			}
		} catch (IOException | RuntimeException e) {
			problems.add(Words.bind(Messages.ObjectCheck_cannotBeRead, e.getMessage()));
		}
		return problems;
	}

	/** @return what is wrong with all that can be reached from an object, commits before it included; empty if nothing is */
	List<String> ofAllBehind(Map<String, ObjectId> starts) {
		List<String> problems = new ArrayList<>();
		Set<ObjectId> seen = new HashSet<>();
		try {
			Set<ObjectId> shallow = new HashSet<>(repository.getObjectDatabase().getShallowCommits());
			starts.forEach((name, id) -> reach(id, name, seen, problems, shallow));
		} catch (IOException e) {
			problems.add(Words.bind(Messages.ObjectCheck_shallowCannotBeRead, e.getMessage()));
		}
		return problems;
	}

	private record Waiting(ObjectId id, String what) {
	}

	/** @param shallow commits whose parents are not here; null: no parent is looked at */
	private void reach(AnyObjectId start, String name, Set<ObjectId> seen, List<String> problems,
			Set<ObjectId> shallow) {
		Deque<Waiting> waiting = new ArrayDeque<>(List.of(new Waiting(start.copy(), name)));
		while (!waiting.isEmpty()) {
			Waiting next = waiting.pop();
			if (seen.add(next.id()) && check(next.id(), next.what(), problems)) {
				try {
					for (Waiting below : below(next, shallow)) {
						waiting.push(below);
					}
				} catch (IOException | RuntimeException e) {
					problems.add(Words.bind(Messages.ObjectCheck_theObjectCannotBeUnderstood, next.what(),
							next.id().name(), e.getMessage()));
				}
			}
		}
	}

	private List<Waiting> below(Waiting of, Set<ObjectId> shallow) throws IOException {
		ObjectLoader loader = repository.open(of.id());
		List<Waiting> below = new ArrayList<>();
		switch (loader.getType()) {
		case Constants.OBJ_TAG ->
			below.add(new Waiting(RevTag.parse(loader.getBytes()).getObject().copy(),
					Words.bind(Messages.ObjectCheck_whatNames, of.what())));
		case Constants.OBJ_COMMIT -> {
			RevCommit commit = RevCommit.parse(loader.getBytes());
			commit.getAuthorIdent();
			below.add(new Waiting(commit.getTree().copy(),
					Words.bind(Messages.ObjectCheck_folderOf, of.id().name().substring(0, 8))));
			if (shallow != null && !shallow.contains(of.id())) {
				for (RevCommit parent : commit.getParents()) {
					below.add(new Waiting(parent.copy(),
							Words.bind(Messages.ObjectCheck_commit, parent.name().substring(0, 8))));
				}
			}
		}
		case Constants.OBJ_TREE -> {
			CanonicalTreeParser tree = new CanonicalTreeParser();
			tree.reset(loader.getBytes());
			for (; !tree.eof(); tree.next()) {
				if (tree.getEntryRawMode() != FileMode.GITLINK.getBits()) {
					below.add(new Waiting(tree.getEntryObjectId(),
							Words.bind(Messages.ObjectCheck_in, tree.getEntryPathString(), of.what())));
				}
			}
		}
		default -> {
			// a file has nothing below it
		}
		}
		return below;
	}

	/** @return what is wrong with files of objects, whoever needs those, and with packs; empty if nothing is */
	List<String> ofFiles() {
		List<String> problems = new ArrayList<>();
		try (Stream<Path> walk = Files.walk(objects)) {
			for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
				String path = objects.relativize(file).toString().replace('\\', '/');
				String name = file.getFileName().toString();
				if (path.matches("[0-9a-f]{2}/[0-9a-f]{38}")) {
					check(ObjectId.fromString(path.replace("/", "")), "objects/" + path, problems);
				} else if (name.matches(
						"pack-.*\\.(pack|idx|rev|bitmap|mtimes)|multi-pack-index|commit-graph|graph-.*\\.graph")
						&& !endsWithItsSum(file)) {
					problems.add(Words.bind(Messages.ObjectCheck_objectsIsNotAsIt, path));
				} else if (name.matches("pack-.*\\.pack")
						&& !Files.isRegularFile(file.resolveSibling(name.replaceFirst("pack$", "idx")))) {
					problems.add(Words.bind(Messages.ObjectCheck_objectsHasNoIndexBeside, path));
				}
			}
		} catch (IOException | RuntimeException e) {
			problems.add(Words.bind(Messages.ObjectCheck_objectsCannotBeRead, e.getMessage()));
		}
		return problems;
	}

	/** The last twenty bytes of such files are the SHA-1 of those before. */
	private static boolean endsWithItsSum(Path file) throws IOException {
		long left = Files.size(file) - Constants.OBJECT_ID_LENGTH;
		MessageDigest digest = Constants.newMessageDigest();
		try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
			byte[] buffer = new byte[1 << 16];
			while (left > 0) {
				int n = in.read(buffer, 0, (int) Math.min(buffer.length, left));
				if (n < 0) {
					return false;
				}
				digest.update(buffer, 0, n);
				left -= n;
			}
			return left == 0 && Arrays.equals(digest.digest(), in.readAllBytes());
		}
	}

	/** Adds what is wrong with one object. @return whether nothing is */
	private boolean check(AnyObjectId id, String what, List<String> problems) {
		String problem = known.computeIfAbsent(id.copy(), this::problem);
		if (!problem.isEmpty()) {
			problems.add(Words.bind(Messages.ObjectCheck_theObject, what, id.name(), problem));
		}
		return problem.isEmpty();
	}

	private String problem(ObjectId id) {
		try {
			ObjectLoader loader = repository.open(id);
			byte[] bytes = loader.getBytes(Integer.MAX_VALUE - 8);
			return formatter.idFor(loader.getType(), bytes).equals(id) && isLooseFileSound(id) ? ""
					: Messages.ObjectCheck_holdsSomethingElse;
		} catch (IOException | RuntimeException e) {
			return Words.bind(Messages.ObjectCheck_cannotBeRead, e.getMessage());
		}
	}

	/** A file of its own is read to its very end, which JGit does not do: its checksum comes last. */
	private boolean isLooseFileSound(AnyObjectId id) throws IOException {
		Path file = objects.resolve(id.name().substring(0, 2)).resolve(id.name().substring(2));
		if (!Files.exists(file)) {
			return true; // in a pack
		}
		byte[] packed = Files.readAllBytes(file);
		Inflater inflater = new Inflater();
		try {
			inflater.setInput(packed);
			MessageDigest digest = Constants.newMessageDigest();
			byte[] buffer = new byte[1 << 14];
			while (!inflater.finished()) {
				int n = inflater.inflate(buffer);
				if (n == 0 && !inflater.finished()) {
					return false;
				}
				digest.update(buffer, 0, n);
			}
			return inflater.getRemaining() == 0 && ObjectId.fromRaw(digest.digest()).equals(id);
		} catch (DataFormatException e) {
			return false;
		} finally {
			inflater.end();
		}
	}
}
