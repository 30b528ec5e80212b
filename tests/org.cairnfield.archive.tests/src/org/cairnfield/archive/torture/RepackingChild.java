package org.cairnfield.archive.torture;

import java.nio.file.Path;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;

/** Closes an archive whose history is to be packed, and tells before and after, unless it is killed. */
public final class RepackingChild {

	private RepackingChild() {
	}

	/** @param arguments the folder */
	public static void main(String[] arguments) throws Exception {
		try (OpenArchive open = new ArchiveStore().open(Path.of(arguments[0]), Mode.EDIT)) {
			System.out.println("closing " + open.digest());
			System.out.flush();
		}
		System.out.println("closed");
		System.out.flush();
	}
}
