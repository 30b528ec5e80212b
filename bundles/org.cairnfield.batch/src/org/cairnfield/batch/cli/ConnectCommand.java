package org.cairnfield.batch.cli;

import org.cairnfield.archive.Exchange;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "connect", description = {
		"${bundle:ConnectCommand_what}",
		"${bundle:ConnectCommand_more}" })
final class ConnectCommand extends ArchiveCommand {

	@Option(names = "--to", required = true, paramLabel = "URL", descriptionKey = "ConnectCommand_to")
	String url;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		RemoteUrl remote = RemoteUrl.parse(url);
		archive.exchange().connect(remote);
		err().println(Words.bind(Messages.ConnectCommand_caution, Exchange.CAUTION));
		if (json) {
			printJson(new Json().put("remote", remote.text()));
		} else {
			out().println(Words.bind(Messages.ConnectCommand_connectedWithExchangeSendsAnd, remote.text()));
		}
	}
}
