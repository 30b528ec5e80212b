package org.cairnfield.ui.plan.internal.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.model.values.Placement;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.model.ControlPoint;
import org.cairnfield.ui.plan.internal.model.PlacementFit;
import org.eclipse.osgi.util.NLS;

/** The control points that a person sets, and what follows from them. Knows no widgets. */
final class ControlPoints {

	/** One of them; its place on the floor may not be known yet. */
	static final class Entry {
		private final double column;
		private final double row;
		private Double xMetres;
		private Double yMetres;

		private Entry(double column, double row) {
			this.column = column;
			this.row = row;
		}

		double column() {
			return column;
		}

		double row() {
			return row;
		}

		Double xMetres() {
			return xMetres;
		}

		Double yMetres() {
			return yMetres;
		}

		private boolean isComplete() {
			return xMetres != null && yMetres != null;
		}
	}

	private final List<Entry> entries = new ArrayList<>();
	private PlacementFit fit;
	private String problem;

	ControlPoints() {
		fit();
	}

	List<Entry> entries() {
		return entries;
	}

	/** A place of the image; once two points are complete, its place on the floor is proposed. */
	Entry add(double column, double row) {
		Entry entry = new Entry(column, row);
		placement().ifPresent(placement -> {
			entry.xMetres = cut(placement.xMetres(column, row));
			entry.yMetres = cut(placement.yMetres(column, row));
		});
		entries.add(entry);
		fit();
		return entry;
	}

	private static double cut(double metres) {
		return Math.rint(metres * 100) / 100;
	}

	void remove(Entry entry) {
		entries.remove(entry);
		fit();
	}

	void clear() {
		entries.clear();
		fit();
	}

	void xMetres(Entry entry, Double x) {
		entry.xMetres = x;
		fit();
	}

	void yMetres(Entry entry, Double y) {
		entry.yMetres = y;
		fit();
	}

	private void fit() {
		fit = null;
		List<ControlPoint> known = entries.stream().filter(Entry::isComplete)
				.map(each -> new ControlPoint(each.column, each.row, each.xMetres, each.yMetres)).toList();
		if (known.size() < 2) {
			problem = entries.size() < 2 ? Messages.ControlPoints_clickAtLeastTwoPoints
					: Messages.ControlPoints_giveXAndYIn;
			return;
		}
		try {
			fit = PlacementFit.of(known);
			problem = null;
		} catch (IllegalArgumentException e) {
			problem = NLS.bind(Messages.ControlPoints_noPlacementYet, e.getMessage());
		}
	}

	Optional<Placement> placement() {
		return Optional.ofNullable(fit).map(PlacementFit::placement);
	}

	/** How far a point is off, in metres; NaN where that is not known. */
	double residualMetres(Entry entry) {
		if (fit == null || !entry.isComplete()) {
			return Double.NaN;
		}
		return Math.hypot(fit.placement().xMetres(entry.column, entry.row) - entry.xMetres,
				fit.placement().yMetres(entry.column, entry.row) - entry.yMetres);
	}

	/** What is missing, or what the placement is. */
	String message() {
		if (fit == null) {
			return problem;
		}
		String how = NLS.bind(Messages.ControlPoints_1PixelIsTurnedBy,
				ShownNumbers.text(fit.placement().metresPerPixel() * 100, 2, "cm"),
				ShownNumbers.text(fit.placement().turnDegrees(), 2, "°"));
		return how + (fit.residualsMetres().size() == 2 ? Messages.ControlPoints_twoPointsAlwaysFitA
				: NLS.bind(Messages.ControlPoints_thePointsAreOffBy, ShownNumbers.text(fit.rmsMetres(), 3, "m")));
	}
}
