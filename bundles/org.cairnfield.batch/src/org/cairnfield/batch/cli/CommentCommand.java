package org.cairnfield.batch.cli;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.check.RulesAsTold;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.curation.team.CommentBook;
import org.cairnfield.curation.team.CommentSubject;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "comment", description = { "${bundle:CommentCommand_what}",
		"${bundle:CommentCommand_more}" })
final class CommentCommand extends ArchiveCommand {

	@Option(names = "--on", required = true, paramLabel = "SUBJECT", descriptionKey = "CommentCommand_on")
	String on;

	@Option(names = "--text", required = true, paramLabel = "TEXT", descriptionKey = "CommentCommand_text")
	String text;

	private CommentSubject subject;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void checkArguments() {
		subject = subject(this, on);
		if (text.isBlank()) {
			throw new ParameterException(spec.commandLine(), Messages.CommentCommand_textMustSaySomethingIt);
		}
	}

	static CommentSubject subject(SurveyCommand command, String text) {
		try {
			return CommentSubject.parse(text);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(command.spec.commandLine(), e.getMessage());
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		requireThere(archive, workers);
		new CommentBook(archive.archive(), Clock.systemUTC()).add(subject, text, archiveArgs.person().name()).apply();
		record(archive);
		if (json) {
			printJson(new Json().put("on", subject.toString()).put("text", text.strip()));
		}
	}

	/** So that nobody comments on what was mistyped. */
	private void requireThere(OpenArchive archive, Workers workers) throws Exception {
		if (subject instanceof CommentSubject.OfProposal of) {
			Split split = ArchiveWork.split(archive.archive(), of.split());
			Labels labels = split.getLabels() == null ? Labels.NONE : split.getLabels();
			int row = labels.row(of.sample());
			if (row < 0 || labels.cluster(row) != Labels.NOISE) {
				throw new ArchiveException(
						Words.bind(Messages.CommentCommand_isNotNoiseInSplit, of.sample(), of.split()),
						Messages.CommentCommand_nameASampleThatVerdicts);
			}
		} else if (subject instanceof CommentSubject.OfFinding of) {
			requireFinding(archive, of, workers);
		} else if (subject instanceof CommentSubject.OfRelease of) {
			ReleaseBook book = new ReleaseBook(archive, Clock.systemUTC());
			Optional<String> found = Stream.concat(book.list().stream().map(release -> release.manifest().version()),
					book.prepared().stream().map(prepared -> prepared.version())).filter(of.version()::equals)
					.findFirst();
			if (found.isEmpty()) {
				throw new ArchiveException(Words.bind(Messages.CommentCommand_thereIsNoRelease, of.version()),
						Messages.CommentCommand_releasesListsThem);
			}
		}
	}

	private void requireFinding(OpenArchive archive, CommentSubject.OfFinding of, Workers workers)
			throws ArchiveException {
		List<Rule> rules;
		try {
			rules = CleaningRules.registry().some(List.of(of.rule()));
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
		RuleCheck check = RuleCheck.of(archive.archive(),
				RulesAsTold.of(rules, RuleSettings.of(archive.archive()), RuleSettings.USUAL, true).run(), workers);
		reportBroken(check);
		if (check.findings().stream().map(Finding::contentKey).noneMatch(of.key()::equals)) {
			throw new ArchiveException(Words.bind(Messages.CommentCommand_noFindingOfHasThe, of.rule(), of.key()),
					Messages.CommentCommand_checkPrintsTheKeysAnd);
		}
	}
}
