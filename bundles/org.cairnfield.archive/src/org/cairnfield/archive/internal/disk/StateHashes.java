package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.cairnfield.model.values.Sha256;

/** SHA-256 of the files that an archive was read from. A file is read again only when it has changed. */
public final class StateHashes {

	private record Known(String stamp, String hash) {
	}

	private final Predicate<String> wanted;
	private final Map<String, Known> known = new HashMap<>();
	private FolderView last;
	private SortedMap<String, String> hashes;

	/** @param wanted which files count */
	public StateHashes(Predicate<String> wanted) {
		this.wanted = wanted;
	}

	/**
	 * The hashes by path.
	 *
	 * @param view the files as they were read
	 * @param now  the same folder at this moment, looked at anew
	 * @return null where the files are no longer as they were read, so that nobody can tell any more
	 */
	public SortedMap<String, String> of(FolderView view, FolderView now) throws IOException {
		if (last == view) {
			return hashes;
		}
		if (view.firstDifference(now, wanted) != null) {
			return null;
		}
		SortedMap<String, String> found = new TreeMap<>();
		try {
			for (String path : view.paths()) {
				if (wanted.test(path)) {
					found.put(path, hash(view, path));
				}
			}
		} catch (NoSuchFileException e) {
			return null;
		}
		last = view;
		hashes = found;
		return found;
	}

	private String hash(FolderView view, String path) throws IOException {
		String stamp = view.stampInPlace(path);
		Known before = known.get(path);
		if (stamp != null && before != null && Objects.equals(before.stamp, stamp)) {
			return before.hash;
		}
		String hash = Sha256.of(view.files().get(path));
		if (stamp != null) {
			known.put(path, new Known(stamp, hash));
		}
		return hash;
	}

	/** One digest of paths and hashes. */
	public static String digest(SortedMap<String, String> hashes) {
		MessageDigest digest = Sha256.begin();
		hashes.forEach((path, hash) -> digest.update((path + '\n' + hash + '\n').getBytes(StandardCharsets.UTF_8)));
		return Sha256.hex(digest);
	}
}
