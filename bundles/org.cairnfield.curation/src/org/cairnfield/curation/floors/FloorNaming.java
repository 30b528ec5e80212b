package org.cairnfield.curation.floors;

import java.util.HashSet;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;

/** Names for floors that are made: those of the file, made different from each other and from those of the site. */
final class FloorNaming {

	private static final int LONGEST = 80;

	private final Set<String> used = new HashSet<>();

	FloorNaming(Site site) {
		for (Floor floor : site.getFloors()) {
			used.add(ModelText.name(floor));
			used.add(floor.getName());
		}
	}

	/** @param name as the file has it, or null */
	String of(String name, int level) {
		String plain = name == null ? "" : name.replaceAll("\\p{Cntrl}+", " ").strip();
		String wanted = plain.isEmpty() ? Words.bind(Messages.FloorNaming_floor, level)
				: plain.substring(0, Math.min(LONGEST, plain.length()));
		String tried = wanted;
		for (int n = 2; !used.add(tried); n++) {
			tried = wanted + " (" + n + ')';
		}
		return tried;
	}
}
