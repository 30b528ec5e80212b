package org.cairnfield.batch.cli;

import java.nio.file.Path;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Workers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "copy", description = "Copy the archive of a remote into a new folder, connected with it.")
final class CopyCommand extends SurveyCommand {

	@Parameters(index = "0", paramLabel = "URL", description = "A folder, or a URL of Git: file, ssh, http or https; without a password.")
	String url;

	@Parameters(index = "1", paramLabel = "DIR", description = "A folder that does not exist yet, or is empty.")
	Path folder;

	@Override
	void run(Workers workers) throws Exception {
		RemoteUrl remote = RemoteUrl.parse(url);
		ArchiveStore store = new ArchiveStore();
		Path made = store.copy(remote, folder, workers.progress());
		try (OpenArchive archive = store.open(made, Mode.READ)) {
			meet(archive.damages());
			if (json) {
				printJson(new Json().put("remote", remote.text()).put("folder", made.toString()).put("digest",
						archive.digest()));
			} else {
				out().println("copied       " + remote.text() + " to " + made + ", digest "
						+ archive.digest().substring(0, 12));
			}
		}
	}
}
