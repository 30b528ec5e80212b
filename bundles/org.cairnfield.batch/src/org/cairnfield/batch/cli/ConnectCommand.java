package org.cairnfield.batch.cli;

import org.cairnfield.archive.Exchange;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Workers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "connect", description = {
		"Connect an archive with the remote through which people exchange it. Nothing is sent yet.",
		"A folder that is not there becomes a bare repository of Git. Credentials are those that Git has." })
final class ConnectCommand extends ArchiveCommand {

	@Option(names = "--to", required = true, paramLabel = "URL", description = "A folder, or a URL of Git: file, ssh, http or https; without a password.")
	String url;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		RemoteUrl remote = RemoteUrl.parse(url);
		archive.exchange().connect(remote);
		err().println("caution: " + Exchange.CAUTION);
		if (json) {
			printJson(new Json().put("remote", remote.text()));
		} else {
			out().println("connected    with " + remote.text() + "; \"exchange\" sends and receives");
		}
	}
}
