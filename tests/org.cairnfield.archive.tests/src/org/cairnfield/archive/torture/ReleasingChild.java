package org.cairnfield.archive.torture;

import java.nio.file.Path;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;

/** Releases an archive again and again, and tells before and after each release, until it is killed. */
public final class ReleasingChild {

	private ReleasingChild() {
	}

	/** @param arguments the folder, and the number of the first release */
	public static void main(String[] arguments) throws Exception {
		Person person = Person.named("M.Q.");
		try (OpenArchive open = new ArchiveStore().open(Path.of(arguments[0]), Mode.EDIT)) {
			for (int n = Integer.parseInt(arguments[1]);; n++) {
				SavingChild.change(open.archive(), n);
				open.savePoint(person, null);
				String digest = open.digest();
				System.out.println("releasing " + n + ' ' + digest);
				System.out.flush();
				open.release(n + ".0.0", digest, digest, "release " + n, person);
				System.out.println("released " + n);
				System.out.flush();
			}
		}
	}
}
