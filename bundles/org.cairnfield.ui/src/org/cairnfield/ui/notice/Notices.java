package org.cairnfield.ui.notice;

import java.util.ArrayList;
import java.util.List;

/** What the window says just now. For the user interface thread only. */
public final class Notices {

	private static final Notices WORKBENCH = new Notices();

	private final List<Notice> shown = new ArrayList<>();
	private final List<Runnable> listeners = new ArrayList<>();

	private Notices() {
	}

	/** Those of the workbench. */
	public static Notices workbench() {
		return WORKBENCH;
	}

	/** Says something, in place of what was said under the same id. */
	public void say(Notice notice) {
		shown.removeIf(other -> other.id().equals(notice.id()));
		shown.add(notice);
		tell();
	}

	/** It is no longer so. */
	public void remove(String id) {
		if (shown.removeIf(notice -> notice.id().equals(id))) {
			tell();
		}
	}

	/** None of it is so any more: the archive is no longer on show. */
	public void clear() {
		shown.clear();
		tell();
	}

	/** All, the oldest first. */
	public List<Notice> list() {
		return List.copyOf(shown);
	}

	/** Runs a listener whenever what is said has changed, and once at the start. */
	public void add(Runnable listener) {
		listeners.add(listener);
		listener.run();
	}

	public void remove(Runnable listener) {
		listeners.remove(listener);
	}

	private void tell() {
		List.copyOf(listeners).forEach(Runnable::run);
	}
}
