package org.cairnfield.ui.session;

import java.util.Set;

import org.cairnfield.model.Survey;
import org.cairnfield.ui.scope.ArchiveSelection;

/** Hears what happens to the archive on show. All calls come on the user interface thread. */
public interface SessionListener {

	/** Another archive, or state of it, is on show, or none (null). Comes once at the start as well. */
	default void sessionChanged(ArchiveSession session) {
	}

	/** The archive is about to be saved or left: who holds an edit that is half done makes it a change now, if it can be one. */
	default void settle() {
	}

	/** The person looks at something else. */
	default void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
	}

	/** Samples of these surveys have other values; several changes in a row come as one. */
	default void samplesChanged(Set<Survey> surveys) {
	}

	/** Sites, floors, access points, devices, surveys, splits or waivers have changed. */
	default void structureChanged() {
	}

	/** Verdicts were given or taken back. */
	default void ledgersChanged() {
	}

	/** Proposals were assigned, comments were made, or either was taken back. */
	default void teamChanged() {
	}

	/** The rules have looked again, or are looking. */
	default void findingsChanged() {
	}

	/** Saved, or something can be undone or redone that could not. */
	default void stateChanged() {
	}
}
