package org.cairnfield.ui.work;

import java.util.function.Consumer;

import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.jobs.IJobChangeListener;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Work of which only the newest counts: starting it anew cancels what runs, and what comes late is dropped. */
public final class LatestWork {

	private final Runnable changed;
	private Job job;

	/** @param changed called when {@link #isBusy} has changed */
	public LatestWork(Runnable changed) {
		this.changed = changed;
	}

	/** Work whose beginning and end nobody watches. */
	public LatestWork() {
		this(() -> {
		});
	}

	/** For the user interface thread; so are the calls that come back. */
	public <T> void start(String name, Work.Task<T> task, Consumer<T> result, Consumer<Exception> failed) {
		if (job != null) {
			job.cancel();
		}
		Job[] own = new Job[1];
		own[0] = Work.start(name, task, value -> {
			if (job == own[0]) {
				end();
				result.accept(value);
			}
		}, problem -> {
			if (job == own[0]) {
				end();
				failed.accept(problem);
			}
		});
		job = own[0];
		job.addJobChangeListener(IJobChangeListener.onDone(event -> {
			if (event.getResult().matches(IStatus.CANCEL)) { // in the view of progress, perhaps
				Display.getDefault().asyncExec(() -> {
					if (job == own[0]) {
						end();
					}
				});
			}
		}));
		changed.run();
	}

	/** Whether something runs whose result is still wanted. */
	public boolean isBusy() {
		return job != null;
	}

	/** Stops what runs; no result comes. */
	public void cancel() {
		if (job != null) {
			job.cancel();
			end();
		}
	}

	private void end() {
		job = null;
		changed.run();
	}
}
