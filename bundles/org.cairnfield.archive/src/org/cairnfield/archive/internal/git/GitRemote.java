package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.UnreachableException;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.text.Words;
import org.eclipse.jgit.errors.TransportException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.transport.FetchResult;
import org.eclipse.jgit.transport.PushResult;
import org.eclipse.jgit.transport.RefSpec;
import org.eclipse.jgit.transport.RemoteRefUpdate;
import org.eclipse.jgit.transport.SshTransport;
import org.eclipse.jgit.transport.TagOpt;
import org.eclipse.jgit.transport.Transport;
import org.eclipse.jgit.transport.URIish;

/**
 * The repository that an archive is exchanged with. What is fetched goes into references of our own first, so that nothing of
 * the archive's moves until it was looked at; what is pushed arrives whole or not at all.
 */
public final class GitRemote {

	static final String OWN = "refs/cairnfield/";
	private static final String TAGS = OWN + "tags/";
	private static final int PATIENCE_SECONDS = 60;
	/** No exchange leaves a pack half received for so long. */
	private static final Duration LONG = Duration.ofMinutes(1);

	private final Path root;
	private final Repository repository;
	private final RemoteUrl url;

	GitRemote(Path root, Repository repository, RemoteUrl url) {
		this.root = root;
		this.repository = repository;
		this.url = url;
	}

	/**
	 * What the remote has.
	 *
	 * @param tip    id of the last commit of the branch; null where it has no such branch
	 * @param others other branches, of which there may be one where there is no such branch
	 * @param tags   ids of tag objects by their names
	 */
	public record Fetched(String tip, List<String> others, SortedMap<String, String> tags) {
	}

	/**
	 * Fetches a branch and all tags.
	 *
	 * @throws UnreachableException where that fails
	 */
	public Fetched fetch(String branch, Progress progress) throws IOException {
		try (Transport transport = open()) {
			transport.setCheckFetchedObjects(true);
			transport.setTagOpt(TagOpt.NO_TAGS);
			List<RefSpec> wanted = new ArrayList<>(List.of(new RefSpec('+' + Constants.R_TAGS + "*:" + TAGS + '*')));
			progress.begin(Words.bind(Messages.GitRemote_reaching, url), 1);
			Callable<SortedMap<String, String>> looking = () -> heads(transport);
			SortedMap<String, String> heads = CancellableWait.on(progress, looking);
			if (heads.containsKey(branch)) {
				wanted.add(new RefSpec('+' + Constants.R_HEADS + branch + ':' + OWN + "incoming"));
			}
			Callable<FetchResult> fetching = () -> transport.fetch(new Monitor(progress), wanted);
			FetchResult result = new GitLocks(root).during(() -> CancellableWait.on(progress, fetching));
			SortedMap<String, String> tags = new TreeMap<>();
			String tip = null;
			for (Ref ref : result.getAdvertisedRefs()) {
				if (ref.getName().startsWith(Constants.R_TAGS) && !ref.getName().endsWith("^{}")) {
					tags.put(ref.getName().substring(Constants.R_TAGS.length()), ref.getObjectId().name());
				} else if (ref.getName().equals(Constants.R_HEADS + branch)) {
					tip = ref.getObjectId().name();
				}
			}
			heads.remove(branch);
			return new Fetched(tip, List.copyOf(heads.keySet()), tags);
		} catch (TransportException e) {
			throw failed(e, progress);
		}
	}

	/** The branches, by name; empty for a repository without any. */
	private static SortedMap<String, String> heads(Transport transport) throws TransportException, IOException {
		SortedMap<String, String> heads = new TreeMap<>();
		try (var connection = transport.openFetch()) {
			for (Ref ref : connection.getRefs()) {
				if (ref.getName().startsWith(Constants.R_HEADS)) {
					heads.put(ref.getName().substring(Constants.R_HEADS.length()), ref.getObjectId().name());
				}
			}
		}
		return heads;
	}

	/** What the remote had when its work was taken in last; null where that never happened. */
	public String lastSeen(String branch) throws IOException {
		Ref ref = repository.getRefDatabase().exactRef(tracking(branch));
		return ref == null || ref.getObjectId() == null ? null : ref.getObjectId().name();
	}

	/** Notes what the remote has, once it was taken in. */
	public void seen(String branch, String tip) throws IOException {
		RefUpdate update = repository.updateRef(tracking(branch));
		update.setNewObjectId(ObjectId.fromString(tip));
		update.setForceUpdate(true);
		new GitLocks(root).during(update::update);
	}

	/** Forgets what the remote had. */
	void forget(String branch) throws IOException {
		RefUpdate update = repository.updateRef(tracking(branch));
		update.setForceUpdate(true);
		new GitLocks(root).during(update::delete);
	}

	private static String tracking(String branch) {
		return Constants.R_REMOTES + Remotes.NAME + '/' + branch;
	}

	/**
	 * Pushes a branch and tags, all or none.
	 *
	 * @param before what the remote has; null where it has no such branch
	 * @param tags   names of tags that it lacks
	 * @return whether it took them; false where somebody was faster
	 * @throws UnreachableException where that fails
	 */
	public boolean push(String branch, String commit, String before, List<String> tags, Progress progress)
			throws IOException {
		List<RemoteRefUpdate> updates = new ArrayList<>();
		updates.add(new RemoteRefUpdate(repository, null, ObjectId.fromString(commit), Constants.R_HEADS + branch,
				false, null,
				before == null ? ObjectId.zeroId() : ObjectId.fromString(before)));
		for (String tag : tags) {
			updates.add(new RemoteRefUpdate(repository, Constants.R_TAGS + tag,
					repository.resolve(Constants.R_TAGS + tag), Constants.R_TAGS + tag, false, null,
					ObjectId.zeroId()));
		}
		Path folder = url.folder(); // bare, as BareFolder has it
		if (folder != null) {
			PackLeftovers.clear(folder, Instant.now().minus(LONG));
		}
		try (Transport transport = open()) {
			transport.setPushAtomic(true);
			Callable<PushResult> pushing = () -> transport.push(new Monitor(progress), updates);
			return isTaken(CancellableWait.on(progress, pushing));
		} catch (TransportException | UnreachableException e) {
			requireNothingLeft(folder, e);
			throw e instanceof TransportException failed ? failed(failed, progress) : e;
		}
	}

	/** What is there may be somebody's who is sending right now. */
	private static void requireNothingLeft(Path folder, IOException e) throws IOException {
		for (Path left : folder == null ? List.<Path>of() : PackLeftovers.inTheWay(folder)) {
			throw new UnreachableException(
					Words.bind(Messages.GitRemote_somebodyIsSendingAtThis, left),
					Messages.GitRemote_exchangeAgainInAMinute, e);
		}
	}

	private boolean isTaken(PushResult result) throws ArchiveException {
		boolean overtaken = false;
		String refused = null;
		for (RemoteRefUpdate update : result.getRemoteUpdates()) {
			switch (update.getStatus()) {
			case OK, UP_TO_DATE -> {}
			case REJECTED_NONFASTFORWARD, REJECTED_REMOTE_CHANGED -> overtaken = true;
			default ->
				refused = update.getMessage() == null || update.getMessage().contains("atomic") && refused != null
						? refused
						: update.getStatus() + ": " + update.getMessage();
			}
		}
		if (!overtaken && refused != null) {
			String said = result.getMessages() == null ? "" : result.getMessages().strip();
			throw new UnreachableException(
					Words.bind(Messages.GitRemote_didNotTakeWhatWas, url, refused,
							said.isEmpty() ? "" : ", " + said),
					Messages.GitRemote_seeWhetherItsDiskIs,
					null);
		}
		return !overtaken;
	}

	private Transport open() throws IOException {
		UserGit user = UserGit.of(root);
		try {
			Transport transport = Transport.open(repository, new URIish(url.text()));
			transport.setTimeout(PATIENCE_SECONDS);
			transport.setCredentialsProvider(new UserCredentials(user));
			if (transport instanceof SshTransport ssh) {
				ssh.setSshSessionFactory(new SshProgram(user));
			}
			return transport;
		} catch (URISyntaxException e) {
			throw new ArchiveException(Words.bind(Messages.GitRemote_notAPlaceToExchange, url),
					Messages.GitRemote_connectTheArchiveAgain, e);
		} catch (TransportException e) {
			throw failed(e, Progress.NONE);
		}
	}

	private IOException failed(TransportException e, Progress progress) {
		if (progress.isCancelled()) {
			throw new CancellationException();
		}
		Throwable deepest = e;
		while (deepest.getCause() != null) {
			deepest = deepest.getCause();
		}
		String said = deepest.getMessage() == null || deepest == e ? e.getMessage()
				: e.getMessage() + ": " + deepest.getMessage();
		return new UnreachableException(
				Words.bind(Messages.GitRemote_cannotBeReached, url, said.replaceFirst("\\.$", "")),
				Messages.GitRemote_seeWhetherItIsThere,
				e);
	}
}
