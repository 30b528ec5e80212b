package org.cairnfield.curation.rules;

import java.util.Objects;
import java.util.Optional;

import org.cairnfield.core.geometry.Polygon;

/**
 * A floor as rules know it.
 *
 * @param outline      where known
 * @param heightMetres from this floor to the next, where known
 */
public record FloorPlan(String site, int level, Optional<Polygon> outline, Optional<Double> heightMetres) {

	public FloorPlan {
		Objects.requireNonNull(site);
		Objects.requireNonNull(outline);
		Objects.requireNonNull(heightMetres);
	}

	long key() {
		long key = ContentKeys.join(ContentKeys.of(site), level);
		key = ContentKeys.join(key, outline.map(FloorPlan::key).orElse(0L));
		return ContentKeys.join(key, heightMetres.map(Double::doubleToLongBits).orElse(0L));
	}

	private static long key(Polygon outline) {
		long key = outline.size();
		for (int i = 0; i < outline.size(); i++) {
			key = ContentKeys.join(ContentKeys.join(key, Double.doubleToLongBits(outline.xMetres(i))),
					Double.doubleToLongBits(outline.yMetres(i)));
		}
		return key;
	}
}
