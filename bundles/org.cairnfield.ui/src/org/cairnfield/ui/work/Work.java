package org.cairnfield.ui.work;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.Threads;
import org.cairnfield.ui.problem.Problems;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Runs long work as a job of the platform, on the threads that batch uses too, and brings the result back. */
public final class Work {

	/** What takes long. It runs beside the user interface and must touch none of it, nor the model. */
	@FunctionalInterface
	public interface Task<T> {
		/** @throws CancellationException once the workers' progress is cancelled */
		T run(Workers workers) throws Exception;
	}

	/** Family of all jobs, for waiting. */
	public static final Object FAMILY = new Object();

	private static final Threads THREADS = Threads.ofMachine();

	private Work() {
	}

	/**
	 * Starts work; what fails is shown to the person.
	 *
	 * @param name   said in the progress view, such as "Checking the archive"
	 * @param result hears the result on the user interface thread; not called where the work failed or was cancelled
	 * @return to cancel it
	 */
	public static <T> Job start(String name, Task<T> task, Consumer<T> result) {
		return start(name, task, result, problem -> Problems.show(name, problem));
	}

	/** @param failed hears what went wrong, on the user interface thread; a cancellation is nothing wrong */
	public static <T> Job start(String name, Task<T> task, Consumer<T> result, Consumer<Exception> failed) {
		Job job = job(name, task, result, failed);
		job.schedule();
		return job;
	}

	/** Likewise without a word in the progress view: for what the program does of its own accord and often. */
	public static <T> void quietly(String name, Task<T> task, Consumer<T> result, Consumer<Exception> failed) {
		Job job = job(name, task, result, failed);
		job.setSystem(true);
		job.schedule();
	}

	private static <T> Job job(String name, Task<T> task, Consumer<T> result, Consumer<Exception> failed) {
		return new Job(name) {
			@Override
			protected IStatus run(IProgressMonitor monitor) {
				try {
					T value = task.run(THREADS.workers(new MonitorProgress(monitor)));
					if (monitor.isCanceled()) {
						return Status.CANCEL_STATUS;
					}
					later(() -> result.accept(value));
					return Status.OK_STATUS;
				} catch (CancellationException e) {
					return Status.CANCEL_STATUS;
				} catch (Exception e) {
					later(() -> failed.accept(e));
					return Status.OK_STATUS; // said by the receiver, not by the platform a second time
				} finally {
					monitor.done();
				}
			}

			@Override
			public boolean belongsTo(Object family) {
				return family == FAMILY;
			}
		};
	}

	/** The task as part of other work of the platform, such as that of a wizard. */
	public static <T> ICoreRunnable runnable(Task<T> task, Consumer<T> result) {
		return monitor -> {
			try {
				T value = task.run(THREADS.workers(new MonitorProgress(monitor)));
				later(() -> result.accept(value));
			} catch (CancellationException e) {
				monitor.setCanceled(true);
			} catch (Exception e) {
				throw new org.eclipse.core.runtime.CoreException(Status.error(Problems.text(e), e));
			}
		};
	}

	/** Steps of the core, shown by a monitor of the platform and cancelled through it. */
	public static Progress progress(IProgressMonitor monitor) {
		return new MonitorProgress(monitor);
	}

	private static void later(Runnable call) {
		Display display = Display.getDefault();
		if (!display.isDisposed()) {
			display.asyncExec(call);
		}
	}

	/** Steps of the core as a progress monitor shows them. Called by several threads. */
	private static final class MonitorProgress implements Progress {
		private static final int TICKS = 1000;

		private final IProgressMonitor monitor;
		private long units;
		private long done;
		private int shown;

		MonitorProgress(IProgressMonitor monitor) {
			this.monitor = monitor;
			monitor.beginTask("", TICKS);
		}

		@Override
		public synchronized void begin(String step, long total) {
			monitor.subTask(step);
			units = Math.max(1, total);
			done = 0;
			shown = 0;
		}

		@Override
		public synchronized void advance(long by) {
			done += by;
			int ticks = (int) Math.min(TICKS, TICKS * done / Math.max(1, units));
			if (ticks > shown) {
				monitor.worked(ticks - shown);
				shown = ticks;
			}
		}

		@Override
		public boolean isCancelled() {
			return monitor.isCanceled();
		}
	}
}
