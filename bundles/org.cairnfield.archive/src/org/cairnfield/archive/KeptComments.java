package org.cairnfield.archive;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;

import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Comment;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Comments are only added, so they stay when the rest of an archive goes back to an earlier state. */
final class KeptComments {

	private KeptComments() {
	}

	/** Whether a state has all comments of an earlier one, as they were; so does one that cannot be read. */
	static boolean hasAll(FileSource state, FileSource earlier, Migrations migrations) throws IOException {
		Archive archive = ArchiveReader.structure(state, migrations, new ArrayList<>());
		return archive == null || !add(archive, earlier, migrations);
	}

	/**
	 * Makes the comments of a state those of an archive, where it lacks them or has them otherwise.
	 *
	 * @return whether there were any
	 */
	static boolean add(Archive archive, FileSource state, Migrations migrations) throws IOException {
		Archive other = ArchiveReader.structure(state, migrations, new ArrayList<>());
		if (other == null) {
			return false;
		}
		Map<String, Comment> own = new HashMap<>();
		archive.getComments().forEach(comment -> own.put(comment.getId(), comment));
		boolean added = false;
		for (Comment comment : other.getComments()) {
			Comment same = own.get(comment.getId());
			if (!EcoreUtil.equals(same, comment)) {
				archive.getComments().remove(same);
				archive.getComments().add(EcoreUtil.copy(comment));
				added = true;
			}
		}
		return added;
	}
}
