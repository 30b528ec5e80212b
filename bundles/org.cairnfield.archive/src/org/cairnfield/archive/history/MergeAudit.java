package org.cairnfield.archive.history;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitAudit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.LedgerLines;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Waiver;

/**
 * Whether merges, which plain Git makes without a look at what the lines mean, have kept the verdicts, waivers and surveys
 * of all sides. What a side has taken away itself may be gone, and so may what a later save point has put back.
 */
final class MergeAudit {

	private final GitFolder git;
	private final GitAudit audit;
	private final Map<String, Commit> commits = new LinkedHashMap<>();
	private final LedgerAudit ledgers;
	private final Map<String, Map<MergeLoss.Kind, Set<String>>> structures = new HashMap<>();

	/** @param history a commit and all that it came from, each after those that it came from */
	MergeAudit(GitFolder git, GitAudit audit, List<Commit> history) {
		this.git = git;
		this.audit = audit;
		history.forEach(commit -> commits.put(commit.id(), commit));
		ledgers = new LedgerAudit(audit, history);
	}

	/**
	 * What is still missing in the last of the commits.
	 *
	 * @param known commits whose merges need no look
	 */
	List<MergeLoss> losses(Set<String> known) throws IOException {
		List<MergeLoss> found = new ArrayList<>();
		for (Commit merge : commits.values()) {
			if (merge.parents().size() > 1 && !known.contains(merge.id())) {
				for (String id : merge.parents()) {
					Commit parent = commits.get(id);
					if (parent != null) { // otherwise it was left out when the archive was cloned
						addVerdicts(merge, parent, found);
						addStructure(merge, parent, found);
					}
				}
			}
		}
		return found;
	}

	private void addVerdicts(Commit merge, Commit parent, List<MergeLoss> found) throws IOException {
		Commit last = last();
		for (LedgerAudit.Loss loss : ledgers.lost(parent, merge)) {
			Set<String> present = new LinkedHashSet<>(ledgers.linesOf(last).getOrDefault(loss.file(), List.of()));
			List<String> missing = loss.lines().stream().filter(line -> !present.contains(line)).map(LedgerLines::id)
					.toList();
			if (!missing.isEmpty() && loss.way() != LedgerAudit.Way.MOVED) {
				found.add(new MergeLoss(SavePoint.of(merge), SavePoint.of(parent), loss.file(), MergeLoss.Kind.VERDICT,
						missing,
						loss.way() == LedgerAudit.Way.CHANGED));
			}
		}
	}

	private Commit last() {
		Commit last = null;
		for (Commit commit : commits.values()) {
			last = commit;
		}
		return last;
	}

	private void addStructure(Commit merge, Commit parent, List<MergeLoss> found) throws IOException {
		if (Objects.equals(structureBlob(merge), structureBlob(parent)) || structure(merge).isEmpty()) {
			return; // unreadable: the archive is damaged, whatever the merge has dropped
		}
		for (MergeLoss.Kind kind : List.of(MergeLoss.Kind.WAIVER, MergeLoss.Kind.COMMENT, MergeLoss.Kind.SURVEY)) {
			Set<String> gone = new LinkedHashSet<>(of(kind, parent));
			gone.removeAll(of(kind, merge));
			for (String id : merge.parents()) {
				Commit other = commits.get(id);
				if (!gone.isEmpty() && other != null && other != parent) {
					for (Commit base : audit.bases(parent, other)) {
						gone.removeIf(name -> has(kind, base, name) && !has(kind, other, name));
					}
				}
			}
			gone.removeIf(name -> wasPutBack(kind, merge, name));
			if (!gone.isEmpty()) {
				found.add(new MergeLoss(SavePoint.of(merge), SavePoint.of(parent), ArchiveLayout.STRUCTURE, kind,
						List.copyOf(gone), false));
			}
		}
	}

	private Set<String> of(MergeLoss.Kind kind, Commit commit) throws IOException {
		return structure(commit).getOrDefault(kind, Set.of());
	}

	private boolean has(MergeLoss.Kind kind, Commit commit, String name) {
		try {
			return of(kind, commit).contains(name);
		} catch (IOException e) {
			return false;
		}
	}

	/** Whether any state since had it; where it is gone again, somebody has taken it away. */
	private boolean wasPutBack(MergeLoss.Kind kind, Commit merge, String name) {
		return commits.values().stream()
				.anyMatch(commit -> ledgers.ancestors(commit).contains(merge.id()) && has(kind, commit, name));
	}

	private String structureBlob(Commit commit) throws IOException {
		return structureOf(commit).blob(ArchiveLayout.STRUCTURE);
	}

	private TreeFiles structureOf(Commit commit) throws IOException {
		return git.files(commit, ArchiveLayout.STRUCTURE::equals);
	}

	/** Names of waivers and surveys; empty where it cannot be read. */
	private Map<MergeLoss.Kind, Set<String>> structure(Commit commit) throws IOException {
		Map<MergeLoss.Kind, Set<String>> known = structures.get(commit.id());
		if (known == null) {
			Archive archive = ArchiveReader.structure(structureOf(commit), Migrations.NONE, new ArrayList<>());
			known = archive == null ? Map.of()
					: Map.of(MergeLoss.Kind.WAIVER, waivers(archive), MergeLoss.Kind.COMMENT, comments(archive),
							MergeLoss.Kind.SURVEY, surveys(archive));
			structures.put(commit.id(), known);
		}
		return known;
	}

	private static Set<String> waivers(Archive archive) {
		Set<String> names = new LinkedHashSet<>();
		for (Waiver waiver : archive.getWaivers()) {
			names.add(Words.bind(Messages.MergeAudit_ofRuleByAtKey, waiver.getRule(), waiver.getPerson(),
					waiver.getTime(), waiver.getReason(), waiver.getContentKey()));
		}
		return names;
	}

	private static Set<String> comments(Archive archive) {
		Set<String> names = new LinkedHashSet<>();
		archive.getComments().forEach(
				comment -> names.add(Words.bind(Messages.MergeAudit_byOn, comment.getId(), comment.getPerson(),
						comment.getSubject())));
		return names;
	}

	private static Set<String> surveys(Archive archive) {
		Set<String> names = new LinkedHashSet<>();
		for (Site site : archive.getSites()) {
			site.getSurveys().forEach(survey -> names.add(survey.getId()));
		}
		return names;
	}
}
