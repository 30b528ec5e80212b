package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.Person;
import org.cairnfield.curation.split.SplitsInRelease;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.check.SiblingNames;
import org.eclipse.emf.ecore.EObject;

/** Opens an archive, lists what is wrong with it, and closes it whatever happens: the one place that decides about damage. */
final class ArchiveWork {

	/** What is done with it. */
	@FunctionalInterface
	interface Work {
		void on(OpenArchive archive) throws Exception;
	}

	private ArchiveWork() {
	}

	static void run(SurveyCommand command, Path folder, Mode mode, OnDamage onDamage, Work work) throws Exception {
		try (OpenArchive archive = new ArchiveStore().open(folder, mode)) {
			archive.notices().forEach(command::note);
			if (onDamage == OnDamage.MEND) {
				command.list(archive.damages());
			} else {
				command.meet(archive.damages());
				requireUse(folder, archive, mode, onDamage);
				if (!archive.damages().isEmpty() && !command.json) {
					command.out().println("DAMAGED: what follows rests on what can still be read of the archive");
				}
			}
			work.on(archive);
		}
	}

	private static void requireUse(Path folder, OpenArchive archive, Mode mode, OnDamage onDamage)
			throws ArchiveException {
		if (mode == Mode.EDIT) {
			requireWritable(folder, archive);
		} else if (onDamage == OnDamage.REFUSE) {
			requireSound(folder.toString(), archive.damages());
		}
	}

	/** @throws ArchiveException where the archive cannot be changed, for a command that would */
	static void requireWritable(Path folder, OpenArchive archive) throws ArchiveException {
		if (!archive.damages().isEmpty()) {
			throw new DamagedException(folder + " is damaged, and nothing was changed",
					"mend the files that are named, or go back to a save point with \"restore\"", archive.damages());
		}
		if (archive.readOnlyReason().isPresent()) {
			throw new ArchiveException(folder + " cannot be changed: " + archive.readOnlyReason().get(),
					"nothing was changed");
		}
	}

	/** @throws DamagedException where anything is wrong with what a command would read */
	static void requireSound(String what, List<Damage> damages) throws DamagedException {
		if (!damages.isEmpty()) {
			throw new DamagedException(what + " is damaged, and nothing was done with it",
					"mend the files that are named, go back to a"
							+ " save point with \"restore\", or go on with what is left by --despite-damage",
					damages);
		}
	}

	/** Saves and makes a save point; tells which, for a person. */
	static String record(OpenArchive archive, Person person, String note) throws Exception {
		return archive.savePoint(PersonArgument.orUser(person), note)
				.map(point -> "save point " + point.shortId() + ": " + point.summary()).orElse("nothing changed");
	}

	/**
	 * The site, survey, floor or device that a person means by its id, level or name. The program itself goes by ids.
	 *
	 * @param kind in words
	 * @throws ArchiveException where there is none, or where several have the name
	 */
	static <T extends EObject> T named(String kind, List<T> all, Function<T, String> id, String typed)
			throws ArchiveException {
		List<T> found = all.stream().filter(each -> typed.equals(id.apply(each))).toList();
		if (found.isEmpty()) {
			found = all.stream().filter(each -> SiblingNames.isCalled(each, typed)).toList();
		}
		if (found.size() == 1) {
			return found.get(0);
		}
		String choice = (found.isEmpty() ? all : found).stream()
				.map(each -> id.apply(each) + " (" + SiblingNames.label(each) + ')')
				.collect(Collectors.joining(", "));
		throw found.isEmpty()
				? new ArchiveException("the archive has no " + kind + " '" + typed + "'",
						"its " + kind + "s are " + choice)
				: new ArchiveException(found.size() + " " + kind + "s have the name '" + typed + "'",
						"name the one that is meant by its id: " + choice);
	}

	/** Likewise, a site. */
	static Site site(Archive archive, String typed) throws ArchiveException {
		return named("site", archive.getSites(), Site::getId, typed);
	}

	/** Splits of those ids, of scopes that do not overlap; where none is named, those chosen for the next release. */
	static List<Split> splits(Archive archive, List<String> ids) throws ArchiveException {
		for (String id : ids) {
			split(archive, id);
		}
		return SplitsInRelease.named(archive, ids);
	}

	/** The split of that id; where none is named, the only one. */
	static Split split(Archive archive, String id) throws ArchiveException {
		List<Split> splits = archive.getSplits();
		if (splits.isEmpty()) {
			throw new ArchiveException("the archive has no split" + (id == null ? "" : " '" + id + "'"),
					"make one with \"split --archive\"");
		}
		if (id == null && splits.size() == 1) {
			return splits.get(0);
		}
		String ids = "its splits are " + splits.stream().map(Split::getId).collect(Collectors.joining(", "));
		if (id == null) {
			throw new ArchiveException("which split of the archive is meant has to be named, with --split", ids);
		}
		return splits.stream().filter(split -> id.equals(split.getId())).findFirst()
				.orElseThrow(() -> new ArchiveException("the archive has no split '" + id + "'", ids));
	}
}
