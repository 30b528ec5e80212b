package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.require;

import java.util.Arrays;

import org.cairnfield.core.text.Words;
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
				Words.bind(Messages.FloorCheck_isOutside3276832767Give, where(floor)));
	}

	/** @see Floor#outlineIsAnArea */
	public static boolean outlineIsAnArea(Floor floor, DiagnosticChain diagnostics) {
		Outline outline = floor.getOutline();
		if (outline == null) {
			return true;
		}
		return require(outline.size() >= 3, diagnostics, floor,
				Words.bind(Messages.FloorCheck_theOutlineOfHasCorners, where(floor), outline.size()))
				&& require(outline.areaSquareMetres() > 0, diagnostics, floor,
						Words.bind(Messages.FloorCheck_theOutlineOfEnclosesNo, where(floor)))
				&& require(!outline.polygon().crossesItself(), diagnostics, floor,
						Words.bind(Messages.FloorCheck_theOutlineOfCrossesOr, where(floor)));
	}

	/** @see Floor#heightIsPlausible */
	public static boolean heightIsPlausible(Floor floor, DiagnosticChain diagnostics) {
		Double height = floor.getHeightMetres();
		return require(height == null || height > 0 && height <= HIGHEST_METRES, diagnostics, floor,
				Words.bind(Messages.FloorCheck_theHeightOfMIs, where(floor), height));
	}

	/** @see Floor#planImageStaysInside */
	public static boolean planImageStaysInside(Floor floor, DiagnosticChain diagnostics) {
		String path = floor.getPlanImage();
		return require(path == null || isInside(path), diagnostics, floor,
				Words.bind(Messages.FloorCheck_thePlanImageOfIs, where(floor), path));
	}

	private static boolean isInside(String path) {
		boolean plain = path.chars().noneMatch(c -> c < ' ' || c == '\\' || c == ':');
		return plain && Arrays.stream(path.split("/", -1)).noneMatch(step -> step.isBlank() || step.startsWith("."));
	}

	private static String where(Floor floor) {
		String site = floor.eContainer() instanceof Site s ? ", " + Report.named("site", s.getName(), s.getId()) : "";
		return Words.bind(Messages.FloorCheck_floor, floor.getLevel(), site);
	}
}
