package org.cairnfield.curation.team;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.LedgerEntry;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;

/** Who is to review which proposals of a split, as the archive is now. A proposal can be assigned to nobody, and to several. Immutable. */
public final class WorkShares {

	/** No split. */
	public static final WorkShares NONE = new WorkShares("", List.of(), List.of(), List.of());

	private final String split;
	private final List<Assigned> assignments;
	private final List<ProposalPlace> proposals;
	private final List<Share> choices;
	private final Map<SampleKey, List<String>> reviewers = new HashMap<>();

	private WorkShares(String split, List<Assigned> assignments, List<ProposalPlace> proposals, List<Share> choices) {
		this.split = split;
		this.assignments = assignments;
		this.proposals = proposals;
		this.choices = choices;
		for (ProposalPlace proposal : proposals) {
			List<String> names = new ArrayList<>();
			for (Assigned each : assignments) {
				if (each.share().has(proposal)
						&& names.stream().noneMatch(name -> LedgerEntry.isSame(name, each.reviewer()))) {
					names.add(each.reviewer());
				}
			}
			reviewers.put(proposal.sample(), List.copyOf(names));
		}
	}

	/** @param bands of the archive's review policy */
	public static WorkShares of(Archive archive, Split split, Bands bands) {
		ArchiveIndex index = ArchiveIndex.of(archive);
		List<ProposalPlace> proposals = new ArrayList<>();
		for (Proposal proposal : split.getProposals() == null ? List.<Proposal>of() : split.getProposals().all()) {
			if (proposal.strengthR() >= split.getThreshold()) {
				Optional<SampleRef> ref = index.sample(proposal.sample());
				proposals.add(
						new ProposalPlace(proposal.sample(), bands.of(proposal.strengthR()).map(Band::name).orElse(""),
								ref.map(WorkShares::site).orElse(""),
								ref.map(at -> at.survey().table().floorLevel(at.row())).orElse(null)));
			}
		}
		return new WorkShares(split.getId(), Assigned.of(archive, split.getId()), List.copyOf(proposals),
				choices(proposals, bands));
	}

	private static String site(SampleRef ref) {
		Site site = ref.survey().getSite();
		return site == null ? "" : site.getId();
	}

	private static List<Share> choices(List<ProposalPlace> proposals, Bands bands) {
		List<Share> choices = new ArrayList<>();
		for (Band band : bands.all()) {
			choices.add(new Share.OfBand(band.name()));
		}
		Map<String, Set<Integer>> floors = new LinkedHashMap<>();
		for (ProposalPlace proposal : proposals) {
			if (proposal.level() != null && !proposal.site().isEmpty()) {
				floors.computeIfAbsent(proposal.site(), site -> new TreeSet<>()).add(proposal.level());
			}
		}
		floors.keySet().forEach(site -> choices.add(new Share.OfSite(site)));
		floors.forEach((site, levels) -> levels.forEach(level -> choices.add(new Share.OfFloor(site, level))));
		return List.copyOf(choices);
	}

	/** Id of the split. */
	public String split() {
		return split;
	}

	/** Bands, sites and floors that could be assigned, those without proposals included where they are bands. */
	public List<Share> choices() {
		return choices;
	}

	/** In the order of the archive. */
	public List<Assigned> assignments() {
		return assignments;
	}

	/** Names of those who are to review a proposal; none where it is assigned to nobody, or is no proposal. */
	public List<String> reviewersOf(SampleKey sample) {
		return reviewers.getOrDefault(sample, List.of());
	}

	/** Names of all who have something to review, or are assigned what holds nothing now. */
	public List<String> reviewers() {
		List<String> names = new ArrayList<>();
		for (Assigned each : assignments) {
			if (names.stream().noneMatch(name -> LedgerEntry.isSame(name, each.reviewer()))) {
				names.add(each.reviewer());
			}
		}
		return names;
	}

	/** Those of one reviewer. */
	public List<Assigned> of(String reviewer) {
		return assignments.stream().filter(each -> LedgerEntry.isSame(each.reviewer(), reviewer)).toList();
	}

	/** How many proposals there are. */
	public int proposals() {
		return proposals.size();
	}

	/** How many are in a share. */
	public int size(Share share) {
		return (int) proposals.stream().filter(share::has).count();
	}

	/** How many are assigned to nobody. */
	public int unassigned() {
		return (int) reviewers.values().stream().filter(List::isEmpty).count();
	}

	/** Such as "31 of the 75 proposals of Ada are also assigned to Ben (20), Cy (11)."; empty where none is. */
	public String overlapText(String reviewer) {
		Set<SampleKey> own = samples(of(reviewer));
		Map<String, Integer> others = new LinkedHashMap<>();
		int shared = 0;
		for (SampleKey sample : own) {
			List<String> names = reviewersOf(sample).stream().filter(name -> !LedgerEntry.isSame(name, reviewer))
					.toList();
			names.forEach(name -> others.merge(name, 1, Integer::sum));
			shared += names.isEmpty() ? 0 : 1;
		}
		return shared == 0 ? ""
				: Words.bind(Messages.WorkShares_ofTheProposalsOfAlso, shared, own.size(), reviewer,
						shared == 1 ? Messages.WorkShares_is : Messages.WorkShares_are,
						others.entrySet().stream().map(other -> other.getKey() + " (" + other.getValue() + ")")
								.collect(Collectors.joining(", ")));
	}

	private Set<SampleKey> samples(List<Assigned> some) {
		Set<SampleKey> samples = new LinkedHashSet<>();
		for (ProposalPlace proposal : proposals) {
			if (some.stream().anyMatch(each -> each.share().has(proposal))) {
				samples.add(proposal.sample());
			}
		}
		return samples;
	}

	/** How far each reviewer has come, all of their shares together. */
	public List<ShareProgress> progress(Standings standings) {
		return reviewers().stream().map(reviewer -> progress(reviewer, of(reviewer), standings)).toList();
	}

	/** How far a reviewer has come with one share. */
	public ShareProgress progress(Assigned one, Standings standings) {
		return progress(one.reviewer(), List.of(one), standings);
	}

	private ShareProgress progress(String reviewer, List<Assigned> shares, Standings standings) {
		return ShareProgress.of(reviewer, shares,
				samples(shares).stream().map(standings::of).flatMap(Optional::stream).toList(),
				standings.agreement(reviewer));
	}
}
