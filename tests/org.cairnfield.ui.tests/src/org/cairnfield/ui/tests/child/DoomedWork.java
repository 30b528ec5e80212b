package org.cairnfield.ui.tests.child;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.ui.IStartup;

/** In a child workbench: sets one sample aside as soon as the archive is open, and goes on living until it is killed. */
public final class DoomedWork implements IStartup {

	/** Set in a child: the reason to set a sample aside for. */
	static final String REASON = "cairnfield.child.reason";
	/** May be set likewise: a file that is made when it is done. */
	static final String DONE = "cairnfield.child.done";

	@Override
	public void earlyStartup() {
		String reason = System.getProperty(REASON);
		if (reason == null) {
			return;
		}
		Ui.waitUntil("the child has its archive open", () -> Sessions.workbench().current().isPresent());
		Ui.run(() -> {
			ArchiveSession session = Sessions.workbench().current().get();
			Survey survey = session.archive().getSites().get(0).getSurveys().get(0);
			session.run(SetSampleStateCommand.setAside(List.of(new SampleRef(survey, 0)), reason));
		});
		String done = System.getProperty(DONE);
		if (done != null) {
			try {
				Files.createFile(Path.of(done));
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			}
		}
	}
}
