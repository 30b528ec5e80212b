package org.cairnfield.archive;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.internal.disk.FolderView;

/** What was not saved at one moment, apart from the model, so that another thread can keep it: see {@link Drafts#unsaved}. */
public final class Unsaved {

	final Path folder;
	final String person;
	final DueFiles files;
	final FolderView view;
	final List<String> replaces;
	final int number;

	/**
	 * @param folder   where drafts are kept
	 * @param person   who made the changes; may be empty
	 * @param files    what is to be kept
	 * @param view     the files as they were when the archive was read or saved
	 * @param replaces names of draft files whose changes are in this one
	 * @param number   larger than that of what was taken out of the model before
	 */
	Unsaved(Path folder, String person, DueFiles files, FolderView view, List<String> replaces, int number) {
		this.folder = folder;
		this.person = person;
		this.files = files;
		this.view = view;
		this.replaces = replaces;
		this.number = number;
	}
}
