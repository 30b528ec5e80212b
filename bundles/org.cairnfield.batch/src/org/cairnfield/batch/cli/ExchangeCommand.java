package org.cairnfield.batch.cli;

import java.util.List;

import org.cairnfield.archive.Exchanged;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Count;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "exchange", description = {
		"${bundle:ExchangeCommand_what}",
		"${bundle:ExchangeCommand_more}" })
final class ExchangeCommand extends ArchiveCommand {

	@Option(names = "--dry-run", descriptionKey = "ExchangeCommand_dryRun")
	boolean dryRun;

	@Option(names = "--fetch-only", descriptionKey = "ExchangeCommand_fetchOnly")
	boolean fetchOnly;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		Exchanged exchanged = dryRun ? archive.exchange().look(workers.progress())
				: archive.exchange().run(archiveArgs.person(), archiveArgs.note, !fetchOnly, workers.progress());
		exchanged.notes().forEach(this::note);
		String remote = archive.exchange().remote().map(RemoteUrl::text).orElse(null);
		if (json) {
			printJson(new Json().put("remote", remote)
					.put("received", exchanged.received().stream().map(point -> json(point).fields()).toList())
					.put("sent", exchanged.sent().stream().map(point -> json(point).fields()).toList())
					.put("merged", exchanged.merged().map(point -> (Object) json(point).fields()).orElse(null))
					.put("conflicts", exchanged.conflicts()).put("notes", exchanged.notes())
					.put("digest", archive.digest()));
		} else {
			out().println(String.format("%-13s %s", "remote", remote));
			print(dryRun ? Messages.ExchangeCommand_wouldComeIn : "received", exchanged.received());
			print(dryRun ? Messages.ExchangeCommand_wouldGoOut : "sent", exchanged.sent());
			exchanged.merged()
					.ifPresent(point -> out().println(
							Words.bind(Messages.ExchangeCommand_mergedAs, point.shortId(), point.summary())));
			if (exchanged.conflicts() > 0) {
				out().println(
						Words.bind(Messages.ExchangeCommand_toDecideConflictsListsThem,
								Count.of(exchanged.conflicts(), "conflict")));
			}
		}
		if (exchanged.conflicts() > 0) {
			endWith(ExitCode.CONFLICTS);
		}
	}

	private void print(String what, List<SavePoint> points) {
		out().println(
				String.format("%-13s %s", what,
						points.isEmpty() ? "nothing" : Count.of(points.size(), Messages.ExchangeCommand_savePoint)));
		points.forEach(point -> out().println(
				"  " + point.shortId() + "  " + point.time() + "  " + point.person() + "  " + point.summary()));
	}
}
