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
		"Release the map under a version: check the gates, write the manifest, sign it, set a tag.",
		"Where the archive wants another person to sign, this prepares, and that person runs it with --sign." })
final class ReleaseCommand extends ArchiveCommand {

	@Mixin
	PackArgs packArgs;

	@Option(names = "--version", paramLabel = "VERSION", description = "By Semantic Versioning; otherwise what follows from the changes since the last release.")
	String version;

	@Option(names = "--notes", paramLabel = "TEXT", description = "What users of the map should know.")
	String notes;

	@Option(names = "--override", paramLabel = "GATE=REASON", description = "Release although that gate is not met. The release carries name and reason for ever; needs --person. May be repeated.")
	Map<String, String> overrides = new LinkedHashMap<>();

	@Option(names = "--prepare", description = "Prepare only: somebody signs later.")
	boolean prepareOnly;

	@Option(names = "--sign", description = "Sign what was prepared; needs --version.")
	boolean signOnly;

	@Option(names = "--discard", description = "Throw away what was prepared and nobody has signed; needs --version.")
	boolean discardOnly;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (version != null && !SemanticVersion.is(version)) {
			throw wrong("no version by Semantic Versioning: " + version);
		}
		if (signOnly && (prepareOnly || discardOnly || version == null || !overrides.isEmpty())) {
			throw wrong("--sign needs --version, and none of --prepare, --discard and --override");
		}
		if (discardOnly && (prepareOnly || version == null || notes != null || !overrides.isEmpty())) {
			throw wrong("--discard needs --version, and none of --prepare, --notes and --override");
		}
		if (signOnly || discardOnly) {
			packArgs.requireNoSplit("what was prepared has its splits already");
		}
		if (!overrides.isEmpty() && archiveArgs.person == null) {
			throw wrong("--override needs --person: somebody takes the responsibility by name");
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
					.orElseThrow(() -> wrong("there is no gate '" + key + "'; the gates are "
							+ String.join(", ", java.util.Arrays.stream(Gate.values()).map(Gate::key).toList())));
			if (reason == null || reason.isBlank()) {
				throw wrong("--override " + key + " needs a reason");
			}
			by.put(gate, new GateResult.Overrule(archiveArgs.person.name(), reason));
		});
		return by;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
		book.gaps().forEach(gap -> err().println("cairnfield: " + gap));
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
			err().println("cairnfield: nothing was released: " + check.holding().size() + " of "
					+ check.results().size() + " gates hold it back");
			endWith(ExitCode.GATES);
			return;
		}
		ReleaseManifest manifest = book.prepare(version == null ? null : SemanticVersion.parse(version), check,
				archiveArgs.person(),
				notes);
		if (prepareOnly || check.gates().anotherSigns()) {
			archive.savePoint(archiveArgs.person(), "Prepare release " + manifest.version());
			if (json) {
				printJson(new Json().put("prepared", manifest.version()).put("digest", manifest.digest())
						.put("gates", GateTable.json(check.results())));
			} else {
				out().println("prepared " + manifest.version() + " (" + String.join("; ", manifest.bump()) + "); "
						+ (check.gates().anotherSigns() ? "another person signs it" : "sign it")
						+ " with --sign --version " + manifest.version());
			}
			return;
		}
		tell(book.sign(manifest.version(), archiveArgs.person(), null), manifest);
	}

	private void discard(OpenArchive archive, ReleaseBook book) throws IOException {
		book.discard(version, archiveArgs.person());
		archive.savePoint(archiveArgs.person(), "Discard what was prepared as release " + version);
		if (json) {
			printJson(new Json().put("discarded", version));
		} else {
			out().println("discarded what was prepared as release " + version);
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
		out().println("released " + tag.version()
				+ (manifest == null ? "" : " (" + String.join("; ", manifest.bump()) + ")") + ", save point "
				+ tag.savePoint().shortId() + (tag.signed() ? ", tag signed" : ""));
		out().println("tag " + tag.id() + " (keep it elsewhere; \"verify --digest\" compares)");
		if (manifest != null) {
			out().println("content " + manifest.digest());
			manifest.changes().forEach(change -> out().println("  " + change));
			manifest.ages().forEach(age -> out().println("  " + age));
		}
	}
}
