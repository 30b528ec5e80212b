package org.cairnfield.batch.cli;

import java.time.Clock;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.release.Bump;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.curation.release.ReleasedState;
import picocli.CommandLine.Command;

@Command(name = "releases", description = {
		"${bundle:ReleasesCommand_what}",
		"${bundle:ReleasesCommand_more}",
		"${bundle:ReleasesCommand_more2}" })
final class ReleasesCommand extends ArchiveCommand {

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
		List<ReleasedState> releases = book.list();
		Bump next = book.propose();
		List<String> gaps = book.gaps();
		gaps.forEach(gap -> err().println(Words.bind(Messages.ReleasesCommand_cairnfield, gap)));
		endWith(gaps.isEmpty() ? ExitCode.OK : ExitCode.NOT_SOUND);
		if (json) {
			printJson(new Json().put("releases", releases.stream().map(r -> json(r).fields()).toList())
					.put("next", new Json().put("version", next.version().toString()).put("reasons", next.reasons()))
					.put("gaps", gaps));
			return;
		}
		for (ReleasedState release : releases) {
			ReleaseManifest m = release.manifest();
			out().println(
					m.version() + "  " + m.signedAt() + "  " + m.signedBy() + "  " + m.digest().substring(0, 12) + "  "
							+ (m.changes().isEmpty() ? String.join("; ", m.bump()) : String.join(", ", m.changes())));
			m.gates().stream().filter(g -> !g.overruledBy().isEmpty())
					.forEach(g -> out().println(Words.bind(Messages.ReleasesCommand_gateOverriddenBy, g.gate(),
							g.figure(), g.bound(), g.overruledBy(), g.reason())));
		}
		out().println((releases.isEmpty() ? Messages.ReleasesCommand_noReleaseYetTheFirst
				: Messages.ReleasesCommand_theNextWouldBe)
				+ next.version() + ": "
				+ String.join("; ", next.reasons()));
	}

	private static Json json(ReleasedState release) {
		ReleaseManifest m = release.manifest();
		return new Json().put("version", m.version()).put("digest", m.digest()).put("previous", m.previous())
				.put("preparedBy", m.preparedBy())
				.put("signedBy", m.signedBy()).put("signedAt", m.signedAt()).put("tagSigned", release.tag().signed())
				.put("tag", release.tag().id()).put("savePoint", release.tag().savePoint().id())
				.put("changes", m.changes()).put("notes", m.notes());
	}
}
