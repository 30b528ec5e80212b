package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.require;

import java.util.Arrays;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Outline;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a floor. */
public final class FloorCheck {

	private static final double HIGHEST_METRES = 100;

	private FloorCheck() {
	}

	/** @see Floor#levelIsInRange */
	public static boolean levelIsInRange(Floor floor, DiagnosticChain diagnostics) {
		return require(floor.getLevel() >= Short.MIN_VALUE && floor.getLevel() <= Short.MAX_VALUE, diagnostics, floor,
				where(floor) + " is outside −32768 … 32767: give it another level");
	}

	/** @see Floor#outlineIsAnArea */
	public static boolean outlineIsAnArea(Floor floor, DiagnosticChain diagnostics) {
		Outline outline = floor.getOutline();
		if (outline == null) {
			return true;
		}
		return require(outline.size() >= 3, diagnostics, floor,
				"The outline of " + where(floor) + " has " + outline.size()
						+ " corners: draw at least three, or unset it")
				&& require(outline.areaSquareMetres() > 0, diagnostics, floor,
						"The outline of " + where(floor) + " encloses no area: draw it anew, or unset it")
				&& require(!outline.polygon().crossesItself(), diagnostics, floor,
						"The outline of " + where(floor) + " crosses or touches itself: move or remove a corner");
	}

	/** @see Floor#heightIsPlausible */
	public static boolean heightIsPlausible(Floor floor, DiagnosticChain diagnostics) {
		Double height = floor.getHeightMetres();
		return require(height == null || height > 0 && height <= HIGHEST_METRES, diagnostics, floor,
				"The height of " + where(floor) + ", " + height
						+ " m, is not within 0 … 100 m: correct it, or unset it");
	}

	/** @see Floor#planImageStaysInside */
	public static boolean planImageStaysInside(Floor floor, DiagnosticChain diagnostics) {
		String path = floor.getPlanImage();
		return require(path == null || isInside(path), diagnostics, floor, "The plan image of " + where(floor) + ", '"
				+ path
				+ "', is not a path inside the archive: put the image into its folder 'plans' and name it plans/FILE");
	}

	private static boolean isInside(String path) {
		boolean plain = path.chars().noneMatch(c -> c < ' ' || c == '\\' || c == ':');
		return plain && Arrays.stream(path.split("/", -1)).noneMatch(step -> step.isBlank() || step.startsWith("."));
	}

	private static String where(Floor floor) {
		String site = floor.eContainer() instanceof Site s ? ", " + Report.named("site", s.getName(), s.getId()) : "";
		return "floor " + floor.getLevel() + site;
	}
}
