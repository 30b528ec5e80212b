package org.cairnfield.curation.floors;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.floors.DrawnAs;
import org.cairnfield.exchange.floors.MappedLevel;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;

/**
 * What becomes of a floor. Immutable, and knows no model.
 *
 * @param level  of the floor in the site
 * @param name   of the floor, or the one that it gets
 * @param isNew  whether the site has no such floor yet
 * @param source what the file tells of it
 * @param before what the floor has now
 * @param after  what it gets
 * @param svg    the plan image as a document; null where there is nothing to draw
 * @param seen   how the samples on the floor lie to the outline that it gets
 */
public record FloorChange(int level, String name, boolean isNew, MappedLevel source, Drawn before, Drawn after,
		String svg, Fit seen) {

	/** Outline and image of a floor; each null where it has none. */
	public record Drawn(Outline outline, String image, Placement placement) {

		static final Drawn NOTHING = new Drawn(null, null, null);
	}

	/**
	 * Samples and an outline.
	 *
	 * @param samples  that are not set aside
	 * @param outside  how many of them lie outside of it; 0 without an outline
	 * @param farthest of these from it, in metres
	 */
	public record Fit(int samples, int outside, double farthest) {
	}

	/** Whether the floor is not as it is to be already. */
	public boolean isChange() {
		return isNew || !before.equals(after);
	}

	/** The floor in words. */
	public String title() {
		return title(level, name);
	}

	/** Likewise of any floor; a name that only repeats the number is left out. */
	static String title(int level, String name) {
		String number = Words.bind(Messages.FloorChange_floor, level);
		return number.equalsIgnoreCase(name) ? number : number + " (" + name + ')';
	}

	/** What becomes of the floor itself, in a few words. */
	public String whatText() {
		return isNew ? "made" : isChange() ? "changed" : Messages.FloorChange_staysAsItIs;
	}

	/** The outline, and the one before. */
	public String outlineText() {
		if (Objects.equals(before.outline(), after.outline())) {
			return after.outline() == null ? "none"
					: Words.bind(Messages.FloorChange_asBefore, text(after.outline()));
		}
		return text(after.outline())
				+ (before.outline() == null ? "" : Words.bind(Messages.FloorChange_before, text(before.outline())));
	}

	private static String text(Outline outline) {
		return Count.of(outline.size(), "corner")
				+ String.format(Locale.ROOT, ", %,.0f m²", outline.areaSquareMetres());
	}

	/** The plan image. */
	public String imageText() {
		if (svg == null) {
			return before.image() == null ? "none" : "stays";
		}
		List<String> drawn = new ArrayList<>();
		for (DrawnAs as : DrawnAs.values()) {
			if (source.count(as) > 0) {
				drawn.add(Count.of(source.count(as), as.one()));
			}
		}
		return (Objects.equals(before.image(), after.image()) ? Messages.FloorChange_asBefore2
				: before.image() == null ? Messages.FloorChange_new : Messages.FloorChange_replaced)
				+ (drawn.isEmpty() ? Messages.FloorChange_outlineOnly : String.join(", ", drawn));
	}

	/** The samples on the floor. */
	public String samplesText() {
		if (seen.samples() == 0) {
			return "none";
		}
		if (after.outline() == null) {
			return Count.of(seen.samples(), "sample");
		}
		return seen.outside() == 0
				? (seen.samples() == 1 ? Messages.FloorChange_1Inside
						: String.format(Locale.ROOT, Messages.FloorChange_allInside, seen.samples()))
				: String.format(Locale.ROOT, Messages.FloorChange_ofOutsideUpToM, seen.outside(), seen.samples(),
						seen.farthest());
	}
}
