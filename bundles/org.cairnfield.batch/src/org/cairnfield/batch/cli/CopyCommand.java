package org.cairnfield.batch.cli;

import java.nio.file.Path;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "copy", description = "${bundle:CopyCommand_what}")
final class CopyCommand extends SurveyCommand {

	@Parameters(index = "0", paramLabel = "URL", descriptionKey = "CopyCommand_url")
	String url;

	@Parameters(index = "1", paramLabel = "DIR", descriptionKey = "CopyCommand_dir")
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
				out().println(Words.bind(Messages.CopyCommand_copiedToDigest, remote.text(), made,
						archive.digest().substring(0, 12)));
			}
		}
	}
}
