package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;

/** Tags of releases that go with the branch, in both directions. One that others know is never moved. */
public final class TagExchange {

	/** Where a tag of ours is kept whose version somebody else has released before. */
	private static final String WITHDRAWN = "refs/cairnfield/withdrawn/";

	private final Path root;
	private final Repository repository;
	private final SortedMap<String, String> theirs;

	TagExchange(Path root, Repository repository, SortedMap<String, String> theirs) {
		this.root = root;
		this.repository = repository;
		this.theirs = theirs;
	}

	/**
	 * Passes where no tag that others had before is another now.
	 *
	 * @param lastSeen the last commit that the remote had before; null where nothing is known of it
	 */
	public void requireUnmoved(String lastSeen) throws IOException {
		for (Tag mine : differing()) {
			if (lastSeen != null && new Ancestry(repository).isIn(mine.commit().id(), lastSeen)) {
				throw new ArchiveException(
						Words.bind(Messages.TagExchange_theReleaseOfTheRemote, mine.name()),
						Words.bind(Messages.TagExchange_findOutWhoReplacedIts, mine.id().substring(0, 8)));
			}
		}
	}

	private List<Tag> differing() {
		return new Tags(root, repository).all().stream()
				.filter(tag -> theirs.containsKey(tag.name()) && !theirs.get(tag.name()).equals(tag.id())).toList();
	}

	/**
	 * Takes over the tags of others. Where a version was released on both sides, the one that others know stands.
	 *
	 * @return what people should know of it
	 */
	public List<String> adopt() throws IOException {
		return new GitLocks(root).during(this::adoptAll);
	}

	private List<String> adoptAll() throws IOException {
		List<String> notes = new ArrayList<>();
		for (Tag mine : differing()) {
			set(WITHDRAWN + mine.name() + '-' + mine.id().substring(0, 8), mine.id());
			RefUpdate delete = repository.updateRef(Constants.R_TAGS + mine.name());
			delete.setForceUpdate(true);
			delete.delete();
			notes.add(Words.bind(Messages.TagExchange_wasReleasedByOthersBefore, mine.name()));
		}
		Tags tags = new Tags(root, repository);
		for (Map.Entry<String, String> tag : theirs.entrySet()) {
			if (!tags.exists(tag.getKey())) {
				set(Constants.R_TAGS + tag.getKey(), tag.getValue());
			}
		}
		return notes;
	}

	private void set(String ref, String id) throws IOException {
		if (!Repository.isValidRefName(ref)) {
			throw new ArchiveException(Words.bind(Messages.TagExchange_theRemoteHasATag, ref),
					Messages.TagExchange_haveItRemovedThere);
		}
		RefUpdate update = repository.updateRef(ref);
		update.setNewObjectId(ObjectId.fromString(id));
		update.setForceUpdate(true);
		update.update();
	}

	/** Names of annotated tags on a commit and what it came from that others lack. */
	public List<String> toSend(String head) throws IOException {
		List<String> names = new ArrayList<>();
		for (Tag tag : new Tags(root, repository).all()) {
			if (!theirs.containsKey(tag.name()) && new Ancestry(repository).isIn(tag.commit().id(), head)) {
				names.add(tag.name());
			}
		}
		return names;
	}
}
