package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.TagBuilder;
import org.eclipse.jgit.revwalk.RevObject;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.revwalk.RevWalk;

/** The annotated tags of a repository. A tag is made once and never moved. */
final class Tags {

	private final Path root;
	private final Repository repository;

	Tags(Path root, Repository repository) {
		this.root = root;
		this.repository = repository;
	}

	/** All annotated tags on commits, in the order of their names; others are passed over. */
	List<Tag> all() throws IOException {
		List<Tag> tags = new ArrayList<>();
		for (Ref ref : repository.getRefDatabase().getRefsByPrefix(Constants.R_TAGS)) {
			Tag tag = read(ref);
			if (tag != null) {
				tags.add(tag);
			}
		}
		return tags;
	}

	/** The tag of a name, null where there is no annotated one. */
	Tag find(String name) throws IOException {
		Ref ref = repository.exactRef(Constants.R_TAGS + name);
		return ref == null ? null : read(ref);
	}

	boolean exists(String name) throws IOException {
		return repository.exactRef(Constants.R_TAGS + name) != null;
	}

	private Tag read(Ref ref) throws IOException {
		try (RevWalk walk = new RevWalk(repository)) {
			RevObject object = walk.parseAny(ref.getObjectId());
			if (!(object instanceof RevTag tag) || tag.getObject().getType() != Constants.OBJ_COMMIT) {
				return null;
			}
			PersonIdent person = tag.getTaggerIdent();
			return new Tag(Repository.shortenRefName(ref.getName()), GitFolder.commit(walk.parseCommit(tag.getObject())),
					person == null ? "" : person.getName(), person == null ? Instant.EPOCH : person.getWhenAsInstant(),
					tag.getFullMessage(), tag.getRawGpgSignature() != null);
		}
	}

	/**
	 * Makes an annotated tag, signed where Git is configured to sign tags.
	 *
	 * @throws ArchiveException where the name is taken, and where signing fails; nothing is made then
	 */
	Tag make(String name, Commit commit, String message, String person, String email, Instant time) throws IOException {
		if (!Repository.isValidRefName(Constants.R_TAGS + name)) {
			throw new ArchiveException("Git cannot have a tag '" + name + "'", "choose another version");
		}
		if (exists(name)) {
			throw taken(name);
		}
		TagBuilder tag = new TagBuilder();
		tag.setTag(name);
		tag.setObjectId(ObjectId.fromString(commit.id()), Constants.OBJ_COMMIT);
		tag.setTagger(new PersonIdent(person, email, time, ZoneOffset.UTC));
		tag.setMessage(message.endsWith("\n") ? message : message + '\n');
		tag.setEncoding(StandardCharsets.UTF_8);
		new TagSigner(repository.getConfig()).sign(tag);
		GitLocks locks = new GitLocks(root, repository);
		locks.announce();
		try (ObjectInserter inserter = repository.newObjectInserter()) {
			ObjectId id = inserter.insert(tag);
			inserter.flush();
			RefUpdate update = repository.updateRef(Constants.R_TAGS + name);
			update.setNewObjectId(id);
			update.setExpectedOldObjectId(ObjectId.zeroId());
			RefUpdate.Result result = update.update();
			if (result != RefUpdate.Result.NEW) {
				throw taken(name);
			}
		} catch (LockFailedException e) {
			throw new ArchiveException("no tag was made, as another Git is at work: " + e.getFile() + " exists",
					"wait for it; if none is running, delete that file", e);
		} finally {
			locks.withdraw();
		}
		return find(name);
	}

	private static ArchiveException taken(String name) {
		return new ArchiveException("there is a tag '" + name + "' already, and what is released is never changed",
				"choose a higher version");
	}
}
