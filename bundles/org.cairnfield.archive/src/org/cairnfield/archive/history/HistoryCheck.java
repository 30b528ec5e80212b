package org.cairnfield.archive.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.internal.disk.FolderView;
import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitAudit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.SignerList;
import org.cairnfield.archive.internal.git.Tag;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.LedgerLines;
import org.cairnfield.core.text.Words;

/**
 * A look through the whole history. What was looked at once is not read again, so make a new one for each look. Each method
 * throws an {@link IOException} or a runtime exception of Git's where the history is too damaged to be looked at.
 */
public final class HistoryCheck {

	private static final String RELEASES = "releases";
	private static final String JSON = ".json";

	private final Path folder;
	private final GitFolder git;
	private final GitAudit audit;
	private List<Commit> commits;
	private Set<String> onBranches;
	private List<PastManifest> manifests;

	HistoryCheck(Path folder, GitFolder git) {
		this.folder = folder;
		this.git = git;
		audit = git.audit();
	}

	/** What is wrong with HEAD, references, the index, objects and packs of Git; empty if nothing is. */
	public List<String> problems() {
		return audit.problems();
	}

	/** Why Git's index cannot be read; empty if it can. Reads nothing else. */
	public List<Damage> damagesOfIndex() {
		String problem = audit.indexProblem();
		return problem == null ? List.of()
				: List.of(new Damage(".git/index", 0, problem,
						Messages.HistoryCheck_runGitResetInThe));
	}

	/** What is wrong with what Git keeps of a release, each object's name computed again; empty if nothing is. */
	public List<String> problemsOf(ReleaseTag release) {
		try {
			Tag tag = git.tag(release.version());
			return tag == null ? List.of(Words.bind(Messages.HistoryCheck_thereIsNoTag, release.version()))
					: audit.problemsOf(tag);
		} catch (IOException e) {
			return List.of(e.getMessage());
		}
	}

	/** Why tags are no releases, by name: they cannot be read, are lightweight, or name no state. */
	public SortedMap<String, String> tagTroubles() {
		return audit.tagTroubles();
	}

	/** Checks the signature of a release by the keys, lists and programs of the user's Git; never by those of the archive's. */
	public Signature signature(ReleaseTag release) throws IOException {
		return audit.signature(git.tag(release.version()));
	}

	/** Whether earlier save points were left out when the archive was cloned. */
	public boolean isShallow() throws IOException {
		return audit.isShallow();
	}

	/** Whether HEAD or a branch comes from the state, so that it is part of the archive's history. */
	public boolean isOnBranch(SavePoint point) throws IOException {
		if (onBranches == null) {
			onBranches = audit.onBranches();
		}
		return onBranches.contains(point.id());
	}

	/** The id of the first save point, which copies and clones of the archive have too; empty before it. */
	public Optional<String> beginning() throws IOException {
		Commit commit = git.head();
		Map<String, Commit> known = new TreeMap<>();
		commits().forEach(c -> known.put(c.id(), c));
		while (commit != null && !commit.parents().isEmpty()) {
			commit = known.get(commit.parents().get(0));
		}
		return Optional.ofNullable(commit).map(Commit::id);
	}

	/** Every text about a release that any save point has brought, replaced ones too; the oldest first. */
	public List<PastManifest> manifests() throws IOException {
		if (manifests == null) {
			manifests = List.copyOf(lookForManifests());
		}
		return manifests;
	}

	private List<PastManifest> lookForManifests() throws IOException {
		List<PastManifest> found = new ArrayList<>();
		Map<String, Commit> known = new TreeMap<>();
		for (Commit commit : commits()) {
			known.put(commit.id(), commit);
			List<SortedMap<String, String>> before = new ArrayList<>();
			for (String parent : commit.parents()) {
				before.add(known.containsKey(parent) ? audit.filesIn(RELEASES, known.get(parent)) : new TreeMap<>());
			}
			for (Map.Entry<String, String> file : audit.filesIn(RELEASES, commit).entrySet()) {
				String path = file.getKey();
				if (ArchiveLayout.isManifest(path)
						&& before.stream().noneMatch(files -> file.getValue().equals(files.get(path)))) {
					String version = path.substring(RELEASES.length() + 1, path.length() - JSON.length());
					found.add(new PastManifest(version, SavePoint.of(commit), audit.content(file.getValue())));
				}
			}
		}
		return found;
	}

	/** What ledgers have lost, anywhere in the history and in the folder. */
	public List<LedgerLoss> ledgerLosses() throws IOException {
		LedgerAudit ledgers = new LedgerAudit(audit, commits());
		Commit head = git.head();
		Map<String, List<String>> saved = head == null ? Map.of() : ledgers.linesOf(head);
		List<LedgerLoss> found = new ArrayList<>(ledgers.losses(saved, git.tags().stream().map(Tag::commit).toList()));
		found.addAll(LedgerAudit.inFolder(saved, inFolder()));
		return found;
	}

	/**
	 * What merges have dropped on the way to a save point, and it still has not.
	 *
	 * @param sound id of an earlier save point that is known to miss nothing, so that merges before it need no look; or null
	 */
	public List<MergeLoss> mergeLosses(SavePoint point, String sound) throws IOException {
		List<Commit> history = audit.history(git.find(point.id()));
		Set<String> known = new HashSet<>();
		if (history.stream().anyMatch(commit -> commit.id().equals(sound))) {
			audit.history(git.find(sound)).forEach(commit -> known.add(commit.id()));
		}
		return new MergeAudit(git, audit, history).losses(known);
	}

	/** Whose key is whose, as far as leads have signed it, at the last save point; nobody before the first. */
	public SignerList signers() throws IOException {
		Commit head = git.head();
		return head == null ? SignerList.NOBODY : new SignerHistory(audit, audit.history(head)).at(head.id());
	}

	/** Which verdicts of the last save point stand in save points that are signed by the people they name. Runs programs, so it takes long. */
	public PeopleReport people() throws IOException {
		Commit head = git.head();
		return head == null ? new PeopleReport(SignerList.NOBODY, List.of(), List.of(), List.of())
				: new PeopleAudit(audit, audit.history(head)).report();
	}

	/** What is known of the signature of a save point, by the people of the archive as {@link #people} has them. Runs programs. */
	public Signature signature(SavePoint point) throws IOException {
		Commit commit = git.find(point.id());
		if (!audit.isSigned(commit)) {
			return new Signature(Signature.State.NOT_SIGNED, "", "");
		}
		Commit head = git.head();
		List<Commit> history = head == null ? List.of() : audit.history(head);
		if (history.stream().noneMatch(each -> each.id().equals(point.id()))) { // what others have sent and nobody has taken in
			history = audit.history(commit);
		}
		return new CommitSignatures(audit, new SignerHistory(audit, history)).of(commit);
	}

	private Map<String, List<String>> inFolder() throws IOException {
		Map<String, List<String>> found = new TreeMap<>();
		for (Map.Entry<String, Path> file : new FolderView(folder, ArchiveLayout::isPart).files().entrySet()) {
			if (ArchiveLayout.kind(file.getKey()) == FileKind.LEDGER) {
				found.put(file.getKey(), LedgerLines.of(Files.readAllBytes(file.getValue())));
			}
		}
		return found;
	}

	private List<Commit> commits() throws IOException {
		if (commits == null) {
			commits = audit.commits();
		}
		return commits;
	}
}
