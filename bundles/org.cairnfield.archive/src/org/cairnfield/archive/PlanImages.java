package org.cairnfield.archive;

import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.merge.Authors;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Sha256;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Images of floors for which both sides of a merge have put another file of the same name. Each file gets a name of its own, as
 * if both had chosen another image for the floor: the one from before stays, and somebody decides which the floor is to have.
 */
final class PlanImages {

	private static final String FOLDER = "plans/";
	private static final String UNIT = ModelPackage.Literals.FLOOR__PLAN_IMAGE.getName();
	private static final int DIGITS = 10;

	private final TreeFiles base;
	private final TreeFiles mine;
	private final TreeFiles theirs;
	private final SortedMap<String, String> mineNow = new TreeMap<>();
	private final SortedMap<String, String> theirsNow = new TreeMap<>();

	/** @param own   model of my side, which may have such images open from an earlier merge; @param other that of the others */
	PlanImages(TreeFiles base, TreeFiles mine, Archive own, TreeFiles theirs, Archive other) throws IOException {
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
		SortedSet<String> paths = new TreeSet<>();
		mine.paths().forEach(paths::add);
		for (String path : paths) {
			if (path.startsWith(FOLDER) && theirs.has(path) && !Objects.equals(mine.blob(path), theirs.blob(path))) {
				boolean here = !Objects.equals(mine.blob(path), base.blob(path));
				boolean there = !Objects.equals(theirs.blob(path), base.blob(path));
				if (here && (there || isOpen(other, path))) {
					mineNow.put(path, named(path, MergedFiles.bytes(mine, path)));
				}
				if (there && (here || isOpen(own, path))) {
					theirsNow.put(path, named(path, MergedFiles.bytes(theirs, path)));
				}
			}
		}
	}

	private static boolean isOpen(Archive archive, String path) {
		return archive.getConflicts().stream()
				.anyMatch(conflict -> conflict.getUnit().equals(UNIT) && path.equals(conflict.getBase()));
	}

	private static String named(String path, byte[] content) {
		int end = path.lastIndexOf('.') > path.lastIndexOf('/') ? path.lastIndexOf('.') : path.length();
		return path.substring(0, end) + '-' + Sha256.of(content).substring(0, DIGITS) + path.substring(end);
	}

	/** A copy of my side with its images by their new names; itself where no image is concerned. */
	Archive mine(Archive own) {
		return renamed(own, mineNow);
	}

	/** Likewise of the others. */
	Archive theirs(Archive other) {
		return renamed(other, theirsNow);
	}

	/** Who has changed what on my side, such images included. */
	Authors mineBy(SideAuthors side) {
		return by(side, mineNow);
	}

	/** Likewise of the others. */
	Authors theirsBy(SideAuthors side) {
		return by(side, theirsNow);
	}

	private static Authors by(SideAuthors side, Map<String, String> names) {
		return (unit, value) -> {
			for (Map.Entry<String, String> image : names.entrySet()) {
				if (unit.name().equals(UNIT) && image.getValue().equals(value)) {
					return side.ofFile(image.getKey());
				}
			}
			return side.of(unit, value);
		};
	}

	private static Archive renamed(Archive archive, Map<String, String> names) {
		if (names.isEmpty()) {
			return archive;
		}
		Archive copy = EcoreUtil.copy(archive);
		for (Site site : copy.getSites()) {
			for (Floor floor : site.getFloors()) {
				if (floor.getPlanImage() != null) {
					floor.setPlanImage(names.getOrDefault(floor.getPlanImage(), floor.getPlanImage()));
				}
			}
		}
		return copy;
	}

	boolean concerns(String path) {
		return mineNow.containsKey(path) || theirsNow.containsKey(path);
	}

	/** Tells how the file of an image that is concerned is to be, and those that it becomes. */
	void tell(String path, FileChanges changes) throws IOException {
		if (base.has(path)) {
			put(path, MergedFiles.bytes(base, path), changes);
		} else {
			changes.delete(path);
		}
		tell(path, mineNow, mine, changes);
		tell(path, theirsNow, theirs, changes);
	}

	private void tell(String path, Map<String, String> names, TreeFiles side, FileChanges changes) throws IOException {
		String name = names.get(path);
		if (name != null && !mine.has(name) && !theirs.has(name)) { // otherwise it has this content already, which the name says
			put(name, MergedFiles.bytes(side, path), changes);
		}
	}

	private static void put(String path, byte[] content, FileChanges changes) throws IOException {
		changes.put(path, out -> out.write(content));
	}
}
