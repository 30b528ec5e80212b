package org.cairnfield.batch.cli;

import java.io.IOException;
import java.time.Clock;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateResult;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.release.ReleaseManifest;
import org.cairnfield.curation.release.SemanticVersion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "release", description = {
		"${bundle:ReleaseCommand_what}",
		"${bundle:ReleaseCommand_more}" })
final class ReleaseCommand extends ArchiveCommand {

	@Mixin
	PackArgs packArgs;

	@Option(names = "--version", paramLabel = "VERSION", descriptionKey = "ReleaseCommand_version")
	String version;

	@Option(names = "--notes", paramLabel = "TEXT", descriptionKey = "ReleaseCommand_notes")
	String notes;

	@Option(names = "--override", paramLabel = "GATE=REASON", descriptionKey = "ReleaseCommand_override")
	Map<String, String> overrides = new LinkedHashMap<>();

	@Option(names = "--prepare", descriptionKey = "ReleaseCommand_prepare")
	boolean prepareOnly;

	@Option(names = "--sign", descriptionKey = "ReleaseCommand_sign")
	boolean signOnly;

	@Option(names = "--discard", descriptionKey = "ReleaseCommand_discard")
	boolean discardOnly;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (version != null && !SemanticVersion.is(version)) {
			throw wrong(Words.bind(Messages.ReleaseCommand_noVersionBySemanticVersioning, version));
		}
		if (signOnly && (prepareOnly || discardOnly || version == null || !overrides.isEmpty())) {
			throw wrong(Messages.ReleaseCommand_signNeedsVersionAndNone);
		}
		if (discardOnly && (prepareOnly || version == null || notes != null || !overrides.isEmpty())) {
			throw wrong(Messages.ReleaseCommand_discardNeedsVersionAndNone);
		}
		if (signOnly || discardOnly) {
			packArgs.requireNoSplit(Messages.ReleaseCommand_whatWasPreparedHasIts);
		}
		if (!overrides.isEmpty() && archiveArgs.person == null) {
			throw wrong(Messages.ReleaseCommand_overrideNeedsPersonSomebodyTakes);
		}
		overrules();
		packArgs.request();
	}

	private ParameterException wrong(String what) {
		return new ParameterException(spec.commandLine(), what);
	}

	private Map<Gate, GateResult.Overrule> overrules() {
		Map<Gate, GateResult.Overrule> by = new EnumMap<>(Gate.class);
		overrides.forEach((key, reason) -> {
			Gate gate = java.util.Arrays.stream(Gate.values()).filter(g -> g.key().equals(key)).findFirst()
					.orElseThrow(() -> wrong(Words.bind(Messages.ReleaseCommand_thereIsNoGateThe, key,
							String.join(", ", java.util.Arrays.stream(Gate.values()).map(Gate::key).toList()))));
			if (reason == null || reason.isBlank()) {
				throw wrong(Words.bind(Messages.ReleaseCommand_overrideNeedsAReason, key));
			}
			by.put(gate, new GateResult.Overrule(archiveArgs.person.name(), reason));
		});
		return by;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
		book.gaps().forEach(gap -> err().println(Words.bind(Messages.ReleaseCommand_cairnfield, gap)));
		if (signOnly) {
			tell(book.sign(version, archiveArgs.person(), notes), null);
			return;
		}
		if (discardOnly) {
			discard(archive, book);
			return;
		}
		packArgs.choose(archive.archive());
		GateCheck check = book.ask(packArgs.request(), workers).overruled(overrules());
		reportBroken(check.check());
		if (!check.holding().isEmpty()) {
			if (json) {
				printJson(new Json().put("released", null).put("gates", GateTable.json(check.results())));
			} else {
				GateTable.print(check.results(), out());
			}
			err().println(Words.bind(Messages.ReleaseCommand_cairnfieldNothingWasReleasedOf, check.holding().size(),
					check.results().size()));
			endWith(ExitCode.GATES);
			return;
		}
		ReleaseManifest manifest = book.prepare(version == null ? null : SemanticVersion.parse(version), check,
				archiveArgs.person(),
				notes);
		if (prepareOnly || check.gates().anotherSigns()) {
			archive.savePoint(archiveArgs.person(),
					Words.bind(Messages.ReleaseCommand_prepareRelease, manifest.version()));
			if (json) {
				printJson(new Json().put("prepared", manifest.version()).put("digest", manifest.digest())
						.put("gates", GateTable.json(check.results())));
			} else {
				out().println(Words.bind(Messages.ReleaseCommand_preparedWithSignVersion, manifest.version(),
						String.join("; ", manifest.bump()),
						check.gates().anotherSigns() ? Messages.ReleaseCommand_anotherPersonSignsIt
								: Messages.ReleaseCommand_signIt,
						manifest.version()));
			}
			return;
		}
		tell(book.sign(manifest.version(), archiveArgs.person(), null), manifest);
	}

	private void discard(OpenArchive archive, ReleaseBook book) throws IOException {
		book.discard(version, archiveArgs.person());
		archive.savePoint(archiveArgs.person(),
				Words.bind(Messages.ReleaseCommand_discardWhatWasPreparedAs, version));
		if (json) {
			printJson(new Json().put("discarded", version));
		} else {
			out().println(Words.bind(Messages.ReleaseCommand_discardedWhatWasPreparedAs, version));
		}
	}

	private void tell(ReleaseTag tag, ReleaseManifest manifest) {
		if (json) {
			printJson(new Json().put("released", tag.version()).put("savePoint", tag.savePoint().id())
					.put("signedBy", tag.person())
					.put("digest", manifest == null ? null : manifest.digest())
					.put("bump", manifest == null ? null : manifest.bump())
					.put("changes", manifest == null ? null : manifest.changes())
					.put("ages", manifest == null ? null : manifest.ages()).put("tag", tag.id()));
			return;
		}
		out().println(Words.bind(Messages.ReleaseCommand_releasedSavePoint, tag.version(),
				manifest == null ? "" : " (" + String.join("; ", manifest.bump()) + ")", tag.savePoint().shortId(),
				tag.signed() ? Messages.ReleaseCommand_tagSigned : ""));
		out().println(Words.bind(Messages.ReleaseCommand_tagKeepItElsewhereVerify, tag.id()));
		if (manifest != null) {
			out().println(Words.bind(Messages.ReleaseCommand_content, manifest.digest()));
			manifest.changes().forEach(change -> out().println("  " + change));
			manifest.ages().forEach(age -> out().println("  " + age));
		}
	}
}
