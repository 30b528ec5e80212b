package org.cairnfield.archive.internal.git;

import org.cairnfield.core.task.Progress;
import org.eclipse.jgit.lib.ProgressMonitor;

/** Hands on what JGit says of its progress. */
class Monitor implements ProgressMonitor {

	private final Progress progress;

	Monitor(Progress progress) {
		this.progress = progress;
	}

	@Override
	public void start(int totalTasks) {
		// each task says its own
	}

	@Override
	public void beginTask(String title, int totalWork) {
		progress.begin(title, totalWork);
	}

	@Override
	public void update(int completed) {
		progress.advance(completed);
	}

	@Override
	public void endTask() {
		// the next one begins
	}

	@Override
	public boolean isCancelled() {
		return progress.isCancelled();
	}

	@Override
	public void showDuration(boolean enabled) {
		// whoever listens decides
	}
}
