package org.cairnfield.archive.torture;

import java.nio.file.Path;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;

/** Saves an archive again and again, and tells before and after each save, until it is killed. */
public final class SavingChild {

	private SavingChild() {
	}

	/** @param arguments the folder, and the number of the first save */
	public static void main(String[] arguments) throws Exception {
		int n = Integer.parseInt(arguments[1]);
		try (OpenArchive open = new ArchiveStore().open(Path.of(arguments[0]), Mode.EDIT)) {
			for (;; n++) {
				change(open.archive(), n);
				System.out.println("saving " + n + ' ' + open.digest());
				System.out.flush();
				if (isSavePoint(n)) {
					open.savePoint(Person.named("M.Q."), "number " + n);
				} else {
					open.save();
				}
				System.out.println("saved " + n);
				System.out.flush();
			}
		}
	}

	/** Whether that save is to make a save point too. */
	static boolean isSavePoint(int n) {
		return n % 3 == 0;
	}

	/** Touches every survey and the structure, so that a mixture of two states shows. */
	static void change(Archive archive, int n) {
		archive.setName("state " + n);
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				survey.getSamples().setTable(survey.table().edit().position(0, n, n).reason(1, "state " + n).done());
			}
		}
	}
}
