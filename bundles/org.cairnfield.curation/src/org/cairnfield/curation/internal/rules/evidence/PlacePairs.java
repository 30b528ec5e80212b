package org.cairnfield.curation.internal.rules.evidence;

import static org.cairnfield.curation.rules.Reason.judged;

import java.util.List;
import java.util.function.IntPredicate;
import org.cairnfield.core.health.PlaceIndex;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;

/** Finds for a spot the nearest one of another kind on its floor: places that two surveys or devices share. */
public final class PlacePairs {

	private static final Threshold LOOKED_AT = new Threshold(Messages.PlacePairs_spotsAroundAPlaceThat, 24,
			judged(Messages.PlacePairs_enoughToFindAnotherSurvey));

	/** The numbers that it goes by. */
	public static final List<Threshold> THRESHOLDS = List.of(LOOKED_AT);

	private final Spots spots;
	private final PlaceIndex places;
	private final int[] around = new int[LOOKED_AT.count()];
	private final double metres;

	/** @param metres how near a spot must be to count as the same place */
	public PlacePairs(RuleInput input, double metres) {
		spots = Spots.of(input);
		places = new PlaceIndex(spots.map());
		this.metres = metres;
	}

	/** The nearest wanted spot within reach, among the nearest of all that are looked through, or −1. */
	public int nearest(int spot, IntPredicate wanted) {
		int count = places.nearest(spot, around);
		for (int i = 0; i < count && spots.map().metresApart(spot, around[i]) <= metres; i++) {
			if (wanted.test(around[i])) {
				return around[i];
			}
		}
		return -1;
	}
}
