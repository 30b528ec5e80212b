package org.cairnfield.curation.team;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

import org.cairnfield.archive.history.Person;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.LedgerEntry;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ChangeCommand;
import org.cairnfield.model.values.Count;

/** Assigns proposals of a split to reviewers, and takes assignments away. Several may have the same proposals. */
public final class Assigning {

	private final Archive archive;
	private final Split split;
	private final Bands bands;
	private final String person;
	private final Clock clock;

	/**
	 * @param bands  of the archive's review policy
	 * @param person who assigns
	 */
	public Assigning(Archive archive, Split split, Bands bands, String person, Clock clock) {
		this.archive = archive;
		this.split = split;
		this.bands = bands;
		this.person = person;
		this.clock = clock;
	}

	/** The same share for each of the reviewers. @throws ReviewRefused where it is not there to be given, or one of them has it already */
	public TeamChange assign(List<String> reviewers, Share share) {
		requireThere(share);
		List<Assignment> made = new ArrayList<>();
		for (String reviewer : names(reviewers)) {
			made.add(assignment(reviewer, share));
		}
		return adding(Words.bind(Messages.Assigning_assignTo, share, names(made)), made);
	}

	/** Parts of about the same size, one for each of several reviewers. @throws ReviewRefused where there are fewer than two */
	public TeamChange equally(List<String> reviewers) {
		List<String> names = names(reviewers);
		if (names.size() < 2 || names.size() > Share.MOST_PARTS) {
			throw new ReviewRefused(
					Words.bind(Messages.Assigning_equalPartsAreForTwo, Share.MOST_PARTS, names.size()));
		}
		List<Assignment> made = new ArrayList<>();
		for (String reviewer : names) {
			made.add(assignment(reviewer, new Share.OfPart(made.size() + 1, names.size())));
		}
		return adding(Words.bind(Messages.Assigning_assignEqualPartsTo, names(made)), made);
	}

	private static List<String> names(List<String> typed) {
		List<String> names = new ArrayList<>();
		for (String each : typed) {
			try {
				String name = Person.named(each).name();
				if (names.stream().anyMatch(other -> LedgerEntry.isSame(other, name))) {
					throw new ReviewRefused(Words.bind(Messages.Assigning_isNamedTwice, name));
				}
				names.add(name);
			} catch (IllegalArgumentException e) {
				throw new ReviewRefused(e.getMessage());
			}
		}
		if (names.isEmpty()) {
			throw new ReviewRefused(Messages.Assigning_nameWhoIsToReview);
		}
		return names;
	}

	private static String names(Collection<Assignment> made) {
		return made.stream().map(Assignment::getReviewer).distinct().collect(Collectors.joining(", "));
	}

	private void requireThere(Share share) {
		WorkShares shares = WorkShares.of(archive, split, bands);
		if (shares.proposals() == 0) {
			throw new ReviewRefused(Words.bind(Messages.Assigning_splitHasNoProposalsTo, split.getId()));
		}
		ArchiveIndex index = ArchiveIndex.of(archive);
		if (share instanceof Share.OfBand of && bands.named(of.band()).isEmpty()) {
			throw new ReviewRefused(Words.bind(Messages.Assigning_thereIsNoBandThe, of.band(), bands));
		} else if (share instanceof Share.OfSite of && index.site(of.site()).isEmpty()) {
			throw new ReviewRefused(Words.bind(Messages.Assigning_thereIsNoSiteWith, of.site(), sites()));
		} else if (share instanceof Share.OfFloor of && index.floor(of.site(), of.level()).isEmpty()) {
			throw new ReviewRefused(
					Words.bind(Messages.Assigning_thereIsNoFloorThe, of.site(), of.level(), sites()));
		} else if (shares.size(share) == 0) {
			throw new ReviewRefused(
					Words.bind(Messages.Assigning_hasNoneOfTheProposals, share, shares.proposals(), split.getId()));
		}
	}

	private String sites() {
		return archive.getSites().stream()
				.map(site -> site.getId() + " (" + Count.of(site.getFloors().size(), "floor") + ')')
				.collect(Collectors.joining(", "));
	}

	private Assignment assignment(String reviewer, Share share) {
		if (Assigned.of(archive, split.getId()).stream()
				.anyMatch(each -> each.share().equals(share) && LedgerEntry.isSame(each.reviewer(), reviewer))) {
			throw new ReviewRefused(
					Words.bind(Messages.Assigning_hasOfSplitAlready, reviewer, share, split.getId()));
		}
		Assignment made = ModelFactory.eINSTANCE.createAssignment();
		made.setSplit(split.getId());
		made.setReviewer(reviewer);
		made.setShare(share.toString());
		made.setPerson(person);
		return made;
	}

	private TeamChange adding(String label, List<Assignment> made) {
		Instant now = clock.instant();
		FreeIds ids = new FreeIds(archive);
		for (Assignment each : made) {
			each.setTime(now);
			each.setId(ids.next(List.of(each.getSplit(), each.getReviewer(), each.getShare(), Objects.toString(person),
					now.toString())));
		}
		return new TeamChange(new ChangeCommand(label, () -> archive.getAssignments().addAll(made),
				() -> archive.getAssignments().removeAll(made),
				made.isEmpty() ? List.of() : List.of(archive)));
	}

	/** Takes assignments away; what was decided stays. @param ids of assignments of any split, unknown ones are passed over */
	public static TeamChange remove(Archive archive, Collection<String> ids) {
		List<Assignment> gone = archive.getAssignments().stream().filter(each -> ids.contains(each.getId())).toList();
		List<Assignment> before = List.copyOf(archive.getAssignments());
		return new TeamChange(
				new ChangeCommand(Words.bind(Messages.Assigning_remove, Count.of(gone.size(), "assignment")),
						() -> archive.getAssignments().removeAll(gone), () -> {
							archive.getAssignments().clear();
							archive.getAssignments().addAll(before);
						}, gone.isEmpty() ? List.of() : List.of(archive)));
	}
}
