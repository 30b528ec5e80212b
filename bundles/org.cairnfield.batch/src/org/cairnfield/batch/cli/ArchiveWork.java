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
import org.cairnfield.core.text.Words;
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
					command.out().println(Messages.ArchiveWork_damagedWhatFollowsRestsOn);
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
			throw new DamagedException(Words.bind(Messages.ArchiveWork_isDamagedAndNothingWas, folder),
					Messages.ArchiveWork_mendTheFilesThatAre, archive.damages());
		}
		if (archive.readOnlyReason().isPresent()) {
			throw new ArchiveException(
					Words.bind(Messages.ArchiveWork_cannotBeChanged, folder, archive.readOnlyReason().get()),
					Messages.ArchiveWork_nothingWasChanged);
		}
	}

	/** @throws DamagedException where anything is wrong with what a command would read */
	static void requireSound(String what, List<Damage> damages) throws DamagedException {
		if (!damages.isEmpty()) {
			throw new DamagedException(Words.bind(Messages.ArchiveWork_isDamagedAndNothingWas2, what),
					Messages.ArchiveWork_mendTheFilesThatAre2,
					damages);
		}
	}

	/** Saves and makes a save point; tells which, for a person. */
	static String record(OpenArchive archive, Person person, String note) throws Exception {
		return archive.savePoint(PersonArgument.orUser(person), note)
				.map(point -> Words.bind(Messages.ArchiveWork_savePoint, point.shortId(), point.summary()))
				.orElse(Messages.ArchiveWork_nothingChanged);
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
				? new ArchiveException(Words.bind(Messages.ArchiveWork_theArchiveHasNo, kind, typed),
						Words.bind(Messages.ArchiveWork_itsSAre, kind, choice))
				: new ArchiveException(Words.bind(Messages.ArchiveWork_sHaveTheName, found.size(), kind, typed),
						Words.bind(Messages.ArchiveWork_nameTheOneThatIs, choice));
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
			throw new ArchiveException(
					Words.bind(Messages.ArchiveWork_theArchiveHasNoSplit, id == null ? "" : " '" + id + "'"),
					Messages.ArchiveWork_makeOneWithSplitArchive);
		}
		if (id == null && splits.size() == 1) {
			return splits.get(0);
		}
		String ids = Words.bind(Messages.ArchiveWork_itsSplitsAre,
				splits.stream().map(Split::getId).collect(Collectors.joining(", ")));
		if (id == null) {
			throw new ArchiveException(Messages.ArchiveWork_whichSplitOfTheArchive, ids);
		}
		return splits.stream().filter(split -> id.equals(split.getId())).findFirst()
				.orElseThrow(
						() -> new ArchiveException(Words.bind(Messages.ArchiveWork_theArchiveHasNoSplit2, id), ids));
	}
}
