package org.cairnfield.curation.review;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;

/**
 * What evidence is computed from. Values are immutable, so that the same objects are the same state; two states are equal
 * where the evidence would be.
 */
final class MapState {

	private final List<Object> same = new ArrayList<>();
	private final List<Object> equal = new ArrayList<>();

	private MapState() {
	}

	static MapState of(Archive archive, Split split) {
		MapState state = new MapState();
		state.same.add(split.getLabels());
		state.same.add(split.getProposals());
		state.equal.add(split.getId());
		state.equal.add(String.valueOf(split.getSearch()));
		for (Site site : archive.getSites()) {
			state.equal.add(site.getName());
			state.equal.add(String.valueOf(site.getMapFrom()));
			state.equal.add(String.valueOf(site.getMapUntil()));
			for (Floor floor : site.getFloors()) {
				state.equal.add(floor.getLevel());
			}
			for (Survey survey : site.getSurveys()) {
				SampleTable table = survey.table();
				state.same.add(table);
				state.equal.add(ArchiveMap.isOfTheMap(survey));
				state.equal.add(survey.getKind());
			}
		}
		for (AccessPoint accessPoint : archive.getAccessPoints()) {
			state.equal.add(accessPoint.getAddress());
			state.equal.add(accessPoint.isKept());
			state.equal.add(String.valueOf(accessPoint.getCountsAs()));
		}
		for (Device device : archive.getDevices()) {
			state.equal.add(String.valueOf(device.getOffsetDb()));
			state.equal.add(String.valueOf(device.getMapSlope()));
			state.equal.add(String.valueOf(device.getMapShiftDb()));
		}
		return state;
	}

	@Override
	public boolean equals(Object other) {
		if (!(other instanceof MapState state) || state.same.size() != same.size()) {
			return false;
		}
		for (int i = 0; i < same.size(); i++) {
			if (state.same.get(i) != same.get(i)) {
				return false;
			}
		}
		return state.equal.equals(equal);
	}

	@Override
	public int hashCode() {
		return equal.hashCode();
	}
}
