package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.resource.Loaded;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.core.text.Words;

/** The files of a folder and what they say, read while nobody changed them. */
record StableLook(FolderView view, Loaded read) {

	/** How often to look again when somebody saves meanwhile. */
	private static final int LOOKS = 5;

	static StableLook of(Path root, ArchiveStore store) throws IOException {
		for (int n = 0; n < LOOKS; n++) {
			try {
				FolderView view = new FolderView(root, ArchiveLayout::isPart);
				Loaded read;
				try (LastCommit last = LastCommit.of(root, view)) {
					read = ArchiveReader.read(view, store.migrations(), last);
				}
				if (view.sameAs(new FolderView(root, ArchiveLayout::isPart))) {
					return new StableLook(view, read);
				}
			} catch (NoSuchFileException e) {
				// gone between two looks
			}
		}
		throw new ArchiveException(Words.bind(Messages.StableLook_isBeingChangedAgainAnd, root),
				Messages.StableLook_openItWhenThatIs);
	}
}
