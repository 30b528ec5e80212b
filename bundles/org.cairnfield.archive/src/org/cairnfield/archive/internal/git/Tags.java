package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.PersonIdent;
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
	private RefFiles files;

	Tags(Path root, Repository repository) {
		this.root = root;
		this.repository = repository;
		files = RefFiles.of(repository);
	}

	/** All annotated tags on commits, in the order of their names; others are passed over, {@link #troubles} has them. */
	List<Tag> all() {
		List<Tag> tags = new ArrayList<>();
		for (String name : names()) {
			try {
				tags.add(read(name));
			} catch (DamagedException e) {
				// see troubles
			}
		}
		return tags;
	}

	/** What keeps tags from being an annotated tag on a commit, by name. */
	SortedMap<String, String> troubles() {
		SortedMap<String, String> troubles = new TreeMap<>();
		for (String name : names()) {
			try {
				Tag tag = read(name);
				ObjectId object = files.ids().get(Constants.R_TAGS + name);
				ObjectId peeled = files.peeled().get(Constants.R_TAGS + name);
				if (peeled != null && !peeled.name().equals(tag.commit().id()) && object.name().equals(tag.id())) {
					troubles.put(name,
							Words.bind(Messages.Tags_saysThatItNames, Constants.PACKED_REFS, peeled.name()));
				}
			} catch (DamagedException e) {
				troubles.put(name, e.damages().get(0).reason());
			}
		}
		return troubles;
	}

	/** Names of all tags, also of those that cannot be read. */
	private SortedSet<String> names() {
		SortedSet<String> names = new TreeSet<>();
		for (var found : List.of(files.ids().keySet(), files.links().keySet(), files.problems().keySet())) {
			found.stream().filter(name -> name.startsWith(Constants.R_TAGS))
					.forEach(name -> names.add(name.substring(Constants.R_TAGS.length())));
		}
		return names;
	}

	/**
	 * The tag of a name, null where there is none.
	 *
	 * @throws DamagedException where it is no annotated tag on a commit, or cannot be read
	 */
	Tag find(String name) throws IOException {
		return exists(name) ? read(name) : null;
	}

	boolean exists(String name) {
		return names().contains(name);
	}

	private Tag read(String name) throws DamagedException {
		String ref = Constants.R_TAGS + name;
		if (!files.ids().containsKey(ref)) {
			throw damaged(name, files.problems().getOrDefault(ref, Messages.Tags_itStandsForAnotherReference), null);
		}
		ObjectId id = files.ids().get(ref);
		try (RevWalk walk = new RevWalk(repository)) {
			RevObject object = walk.parseAny(id);
			if (!(object instanceof RevTag tag)) {
				throw damaged(name, Messages.Tags_itIsALightweightTag,
						null);
			}
			if (tag.getObject().getType() != Constants.OBJ_COMMIT) {
				throw damaged(name, Messages.Tags_itNamesNoStateOf, null);
			}
			SignedObject raw = SignedObject.ofTag(repository.open(id, Constants.OBJ_TAG).getBytes());
			PersonIdent person = tag.getTaggerIdent();
			return new Tag(id.name(), name, GitFolder.commit(walk.parseCommit(tag.getObject())),
					person == null ? "" : person.getName(),
					person == null ? Instant.EPOCH : person.getWhenAsInstant(),
					RevTag.parse(raw.payload()).getFullMessage(), raw.isSigned());
		} catch (IOException | RuntimeException e) {
			if (e instanceof DamagedException known) {
				throw known;
			}
			throw damaged(name, Words.bind(Messages.Tags_itCannotBeRead, e.getMessage()), e);
		}
	}

	private static DamagedException damaged(String name, String reason, Exception cause) {
		String remedy = Messages.Tags_fetchTheTagAgainFrom;
		return new DamagedException(Words.bind(Messages.Tags_tag, name, reason), remedy,
				List.of(new Damage(Constants.DOT_GIT + '/' + Constants.R_TAGS + name, 0, reason, remedy)), cause);
	}

	/** The bytes of an annotated tag, taken apart. */
	SignedObject raw(String id) throws IOException {
		return SignedObject.ofTag(repository.open(ObjectId.fromString(id), Constants.OBJ_TAG).getBytes());
	}

	/**
	 * Makes an annotated tag, signed where the user's Git is configured to sign tags.
	 *
	 * @throws ArchiveException where the name is taken, and where signing fails; nothing is made then
	 */
	Tag make(String name, Commit commit, String message, String person, String email, Instant time) throws IOException {
		if (!Repository.isValidRefName(Constants.R_TAGS + name)) {
			throw new ArchiveException(Words.bind(Messages.Tags_gitCannotHaveATag, name),
					Messages.Tags_chooseAnotherVersion);
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
		tag.setGpgSignature(Signer.ofTags(UserGit.of(root)).sign(tag.build(), time));
		GitLocks locks = new GitLocks(root);
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
			throw new ArchiveException(Words.bind(Messages.Tags_noTagWasMadeAs, e.getFile()),
					Messages.Tags_waitForItIfNone, e);
		} finally {
			locks.withdraw();
		}
		files = RefFiles.of(repository);
		return find(name);
	}

	private static ArchiveException taken(String name) {
		return new ArchiveException(Words.bind(Messages.Tags_thereIsATagAlready, name),
				Messages.Tags_chooseAHigherVersion);
	}
}
