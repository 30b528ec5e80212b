package org.cairnfield.archive.torture;

import java.nio.file.Path;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;
import org.cairnfield.model.Survey;

/** Changes an archive and writes a draft, again and again, and tells after each, until it is killed. */
public final class DraftingChild {

	private DraftingChild() {
	}

	/** @param arguments the folder, and that of drafts */
	public static void main(String[] arguments) throws Exception {
		try (OpenArchive open = new ArchiveStore().open(Path.of(arguments[0]), Mode.EDIT)) {
			for (int n = 1;; n++) {
				open.archive().setName(Integer.toString(n));
				Survey survey = SampleArchives.survey(open.archive(), "survey-1");
				survey.getSamples().setTable(survey.table().edit().position(0, n, n).done());
				open.drafts().write(Path.of(arguments[1]));
				System.out.println(n);
				System.out.flush();
			}
		}
	}
}
