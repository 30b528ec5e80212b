package org.cairnfield.batch.internal.app;

import org.cairnfield.batch.cli.Main;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The batch application as the headless product starts it; everything is done by {@link Main}. */
public class BatchApplication implements IApplication {

	/** @return the exit code of {@link Main}, which the launcher hands on to the caller */
	@Override
	public Object start(IApplicationContext context) {
		String[] args = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
		return Main.run(args, System.out, System.err);
	}

	@Override
	public void stop() {
		// the batch ends by itself
	}
}
