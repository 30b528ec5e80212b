package org.cairnfield.curation.split;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.Scope;

/** Ids of splits: they name files, so upper and lower case count as the same. */
public final class SplitNames {

	private SplitNames() {
	}

	/** The id asked for, or with a number behind it where that is taken by a split or a ledger. */
	public static String free(Archive archive, String wanted) {
		String id = Ids.isUsable(wanted) ? wanted : Ids.from(wanted);
		Set<String> taken = taken(archive);
		String free = id;
		for (int n = 2; taken.contains(free.toLowerCase(Locale.ROOT)); n++) {
			free = id + '-' + n;
		}
		return free;
	}

	/** Whether all ids can be used and none is taken, or asked for twice. */
	public static boolean areFree(Archive archive, List<String> ids) {
		Set<String> taken = taken(archive);
		return ids.stream().allMatch(id -> Ids.isUsable(id) && taken.add(id.toLowerCase(Locale.ROOT)));
	}

	/** The id of the split of one floor in a set of splits, one per floor. */
	public static String ofFloor(String name, Scope floor) {
		return Ids.from(name + '.' + floor.site() + '.' + floor.level());
	}

	/** A ledger outlives its split, and must not be taken for that of another. */
	private static Set<String> taken(Archive archive) {
		Set<String> taken = new HashSet<>();
		archive.getSplits().forEach(split -> taken.add(split.getId().toLowerCase(Locale.ROOT)));
		archive.getLedgers().forEach(ledger -> taken.add(ledger.getId().toLowerCase(Locale.ROOT)));
		return taken;
	}
}
