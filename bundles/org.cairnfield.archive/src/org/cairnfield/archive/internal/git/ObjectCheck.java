package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

import org.eclipse.jgit.lib.AnyObjectId;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * Whether the objects that make up a tagged state are those that their names stand for. Git finds an object by its name
 * and believes it; here the name is computed again.
 */
final class ObjectCheck {

	private final Repository repository;
	private final ObjectInserter.Formatter formatter = new ObjectInserter.Formatter();
	private final List<String> problems = new ArrayList<>();

	ObjectCheck(Repository repository) {
		this.repository = repository;
	}

	/** @return what is wrong with the tag, its commit, or anything in its folders; empty if nothing is */
	List<String> of(String tag) {
		try {
			Ref ref = repository.exactRef(Constants.R_TAGS + tag);
			if (ref == null) {
				return List.of("there is no tag " + tag);
			}
			check(ref.getObjectId(), "tag " + tag);
			try (RevWalk walk = new RevWalk(repository)) {
				if (!(walk.parseAny(ref.getObjectId()) instanceof RevTag annotated)) {
					return List.of("tag " + tag + " is not annotated");
				}
				if (!annotated.getTagName().equals(tag)) {
					problems.add("tag " + tag + " says that it is " + annotated.getTagName());
				}
				check(annotated.getObject(), "commit");
				RevCommit commit = walk.parseCommit(annotated.getObject());
				checkTree(commit.getTree());
			}
		} catch (IOException | RuntimeException e) {
			problems.add("cannot be read: " + e.getMessage());
		}
		return problems;
	}

	private void checkTree(AnyObjectId tree) throws IOException {
		check(tree, "folder");
		try (TreeWalk walk = new TreeWalk(repository)) {
			walk.addTree(tree);
			while (walk.next()) {
				ObjectId id = walk.getObjectId(0);
				check(id, walk.getPathString());
				if (walk.isSubtree()) {
					walk.enterSubtree();
				}
			}
		}
	}

	private void check(AnyObjectId id, String what) {
		try {
			ObjectLoader loader = repository.open(id);
			byte[] bytes = loader.getBytes(Integer.MAX_VALUE - 8);
			if (!formatter.idFor(loader.getType(), bytes).equals(id) || !isLooseFileSound(id)) {
				problems.add(what + ": the object " + id.name() + " holds something else");
			}
		} catch (IOException | RuntimeException e) {
			problems.add(what + ": the object " + id.name() + " cannot be read: " + e.getMessage());
		}
	}

	/** A file of its own is read to its very end, which JGit does not do: its checksum comes last. */
	private boolean isLooseFileSound(AnyObjectId id) throws IOException {
		Path file = repository.getDirectory().toPath().resolve("objects").resolve(id.name().substring(0, 2))
				.resolve(id.name().substring(2));
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
