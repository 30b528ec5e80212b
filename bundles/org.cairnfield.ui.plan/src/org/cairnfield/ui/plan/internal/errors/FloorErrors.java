package org.cairnfield.ui.plan.internal.errors;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.curation.measure.ErrorMap;
import org.cairnfield.curation.measure.ErrorSquare;
import org.cairnfield.curation.measure.Landing;
import org.cairnfield.curation.measure.SideBySide.Placed;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.eclipse.osgi.util.NLS;

/**
 * The test samples of one floor, and where one way of matching puts each.
 *
 * @param samples   those of the floor that were measured
 * @param placed    by their index
 * @param allMetres mean error of all floors
 * @param topMetres error of the last colour
 */
public record FloorErrors(SampleRows samples, ErrorMap placed, double allMetres, double topMetres) {

	/** @param all samples of the floor */
	public static FloorErrors of(ErrorsShown shown, SampleRows all) {
		Map<SampleKey, Placed> bySample = new HashMap<>();
		shown.map().placed().forEach(each -> bySample.put(each.sample(), each));
		SampleRows.Builder rows = SampleRows.builder();
		List<Placed> placed = new ArrayList<>();
		for (int part = 0, i = 0; part < all.parts().size(); part++) {
			rows.part(all.parts().get(part));
			for (; i < all.size() && all.partNumber(i) == part; i++) {
				Placed found = bySample.get(all.ref(i).key());
				if (found != null) {
					rows.row(all.row(i));
					placed.add(found);
				}
			}
		}
		return new FloorErrors(rows.done(), new ErrorMap(shown.map().way(), placed), shown.map().meanMetres(),
				shown.topMetres());
	}

	public Placed placed(int sample) {
		return placed.placed().get(sample);
	}

	/** Mean error in squares, with their side. */
	public List<ErrorSquare> heat() {
		return placed.heat(placed.squareMetres());
	}

	/** The figures of the floor in a line. */
	public String summary() {
		int all = placed.placed().size();
		return NLS.bind(Messages.FloorErrors_allFloors, new Object[] {
				placed.way(), all == 0 ? Messages.FloorErrors_noTestSampleHere
						: NLS.bind(Messages.FloorErrors_mean95RightFloor,
								new Object[] { ShownNumbers.text(placed.meanMetres(), 2, "m"),
										ShownNumbers.text(placed.p95Metres(), 2, "m"),
										placed.count(Landing.RIGHT_FLOOR), all }),
				ShownNumbers.text(allMetres, 2, "m") });
	}

	/** Where a sample was put, in a few words. */
	public String words(int sample) {
		Placed at = placed(sample);
		return placed.way() + ": " + (at.landing() == Landing.NOWHERE ? Messages.FloorErrors_noPosition
				: NLS.bind(Messages.FloorErrors_off, ShownNumbers.text(at.errorMetres(), 2, "m"),
						at.isRight() ? "" : NLS.bind(Messages.FloorErrors_putOn, at.found())));
	}
}
