package org.cairnfield.ui.tests.wander;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.cairnfield.model.Survey;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.swt.widgets.Display;

/**
 * What the content of the archive was from when on, on disk at once, so that it outlives the program. A line a state: the
 * time in milliseconds, whether it is saved, and the digest of the content. In the program that wanders.
 */
final class Diary implements SessionListener {

	/** A state of the archive in memory. */
	record State(long sinceMillis, boolean saved, String digest) {
	}

	private final Path file;
	private ArchiveSession session;
	private boolean waiting;
	private String last = "";

	/** Begins to note down; on the user interface thread. */
	Diary(Path file) {
		this.file = file;
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		soon();
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		soon();
	}

	@Override
	public void structureChanged() {
		soon();
	}

	@Override
	public void ledgersChanged() {
		soon();
	}

	@Override
	public void stateChanged() {
		soon();
	}

	private void soon() {
		if (!waiting) {
			waiting = true;
			Display.getCurrent().asyncExec(this::note);
		}
	}

	private void note() {
		waiting = false;
		if (session == null || session.past().isPresent()) {
			return; // the state that counts is still the one before
		}
		try {
			String state = (session.isModified() ? "unsaved" : "saved") + '\t' + session.open().digest();
			if (!state.equals(last)) {
				last = state;
				Files.writeString(file, System.currentTimeMillis() + "\t" + state + '\n', StandardOpenOption.CREATE,
						StandardOpenOption.APPEND);
			}
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** What a diary says; a last line that was cut is left out. */
	static List<State> read(Path file) throws IOException {
		List<State> states = new ArrayList<>();
		if (Files.exists(file)) {
			for (String line : Files.readAllLines(file)) {
				String[] fields = line.split("\t");
				if (fields.length == 3 && fields[2].length() == 64) {
					states.add(new State(Long.parseLong(fields[0]), fields[1].equals("saved"), fields[2]));
				}
			}
		}
		return states;
	}
}
