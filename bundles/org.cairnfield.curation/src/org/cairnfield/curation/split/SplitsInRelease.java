package org.cairnfield.curation.split;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.common.command.AbstractCommand;

/** Which splits the next release takes. That is chosen: a split that is made later changes nothing by itself. */
public final class SplitsInRelease {

	private SplitsInRelease() {
	}

	/**
	 * The splits chosen. Where nobody has chosen, as in archives made before there was a choice: the last split of the whole
	 * archive or, where there is none, the last one of each site and floor.
	 */
	public static List<Split> of(Archive archive) {
		List<Split> chosen = archive.getSplits().stream().filter(Split::isInRelease).toList();
		return chosen.isEmpty() ? unchosen(archive) : chosen;
	}

	private static List<Split> unchosen(Archive archive) {
		List<Split> counted = new ArrayList<>();
		Split whole = null;
		for (Split split : archive.getSplits()) {
			if (split.getScope().equals(Scope.ARCHIVE)) {
				whole = split;
			}
			counted.removeIf(other -> overlap(other.getScope(), split.getScope()));
			counted.add(split);
		}
		return whole != null ? List.of(whole) : counted;
	}

	/**
	 * Splits by their names, for one release.
	 *
	 * @param names none: those of {@link #of}
	 * @throws UnfitSurveyException for a name that no split has, and for splits that overlap
	 */
	public static List<Split> named(Archive archive, Collection<String> names) {
		if (names.isEmpty()) {
			return of(archive);
		}
		List<Split> found = new ArrayList<>();
		for (String name : names) {
			Split split = archive.getSplits().stream().filter(s -> s.getId().equals(name)).findFirst()
					.orElseThrow(
							() -> new UnfitSurveyException(Words.bind(Messages.SplitsInRelease_theArchiveHasNoSplit,
									name, archive.getSplits().isEmpty() ? "none"
											: archive.getSplits().stream().map(Split::getId)
													.collect(Collectors.joining(", ")))));
			found.stream().filter(other -> overlap(other.getScope(), split.getScope())).findFirst().ifPresent(other -> {
				throw new UnfitSurveyException(
						Words.bind(Messages.SplitsInRelease_aReleaseTakesSplitsOf, other.getId(), split.getId()));
			});
			found.add(split);
		}
		return found;
	}

	/** Whether both take samples of one floor. */
	public static boolean overlap(Split one, Split other) {
		return overlap(one.getScope(), other.getScope());
	}

	private static boolean overlap(Scope one, Scope other) {
		boolean sites = one.site() == null || other.site() == null || one.site().equals(other.site());
		return sites && (one.level() == null || other.level() == null || one.level().equals(other.level()));
	}

	/** Chooses splits for the next release. It can be executed where that would be another choice, and they do not overlap. */
	public static final class Choose extends AbstractCommand {

		private final Archive archive;
		private final List<Split> chosen;
		private final Map<Split, Boolean> before = new LinkedHashMap<>();

		/** @param chosen of that archive */
		public Choose(Archive archive, Collection<Split> chosen) {
			super(Words.bind(Messages.SplitsInRelease_takeForTheNextRelease,
					chosen.stream().map(Split::getId).collect(Collectors.joining(", "))));
			this.archive = archive;
			this.chosen = List.copyOf(chosen);
		}

		@Override
		protected boolean prepare() {
			return archive.getSplits().containsAll(chosen)
					&& archive.getSplits().stream().anyMatch(split -> split.isInRelease() != chosen.contains(split));
		}

		@Override
		public void execute() {
			archive.getSplits().forEach(split -> before.put(split, split.isInRelease()));
			redo();
		}

		@Override
		public void redo() {
			archive.getSplits().forEach(split -> split.setInRelease(chosen.contains(split)));
		}

		@Override
		public void undo() {
			before.forEach(Split::setInRelease);
		}

		@Override
		public Collection<?> getAffectedObjects() {
			return chosen;
		}
	}
}
