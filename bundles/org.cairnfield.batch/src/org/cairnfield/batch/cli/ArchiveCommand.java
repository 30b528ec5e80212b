package org.cairnfield.batch.cli;

import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.rules.RuleResult;
import picocli.CommandLine.Mixin;

/** What commands on an archive share. */
abstract class ArchiveCommand extends SurveyCommand {

	@Mixin
	ArchiveArgs archiveArgs;

	/** Read, or edit and then recorded in the history. */
	abstract Mode mode();

	@Override
	final void run(Workers workers) throws Exception {
		checkArguments();
		ArchiveWork.run(this, archiveArgs.folder, mode(), onDamage(), archive -> run(archive, workers));
	}

	/** What it does where the archive is damaged. */
	OnDamage onDamage() {
		return archiveArgs.damageArgs.on(mode());
	}

	/** Likewise where damage shows later, such as that of a past state. */
	final void requireSound(String what, List<Damage> found) throws DamagedException {
		meet(found);
		if (onDamage() == OnDamage.REFUSE) {
			ArchiveWork.requireSound(what, found);
		}
	}

	/** Refuses what is wrong with the command line, before the archive is opened. */
	void checkArguments() {
		// as a rule the parser has seen to it
	}

	abstract void run(OpenArchive archive, Workers workers) throws Exception;

	/** Says which rules broke, and so found nothing. */
	void reportBroken(RuleCheck check) {
		for (RuleResult failed : check.result().failed()) {
			err().println(Words.bind(Messages.ArchiveCommand_cairnfieldRuleBroke, failed.rule(), failed.outcome()));
		}
	}

	/** Saves and makes a save point; says which. */
	void record(OpenArchive archive) throws Exception {
		String told = ArchiveWork.record(archive, archiveArgs.person(), archiveArgs.note);
		if (!json) {
			out().println(told);
		}
	}

	static Json json(SavePoint point) {
		return new Json().put("id", point.id()).put("person", point.person()).put("time", point.time().toString())
				.put("summary", point.summary()).put("message", point.message());
	}
}
