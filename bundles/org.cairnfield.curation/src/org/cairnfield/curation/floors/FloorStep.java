package org.cairnfield.curation.floors;

import java.util.List;

import org.cairnfield.curation.floors.FloorChange.Drawn;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;

/** The change of one floor of the model, and its way back. */
record FloorStep(Site site, Floor floor, FloorChange change) {

	static FloorStep of(Site site, FloorChange change) {
		return new FloorStep(site, ArchiveIndex.floor(site, change.level()).orElseGet(() -> made(change)), change);
	}

	private static Floor made(FloorChange change) {
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(change.level());
		floor.setName(change.name());
		return floor;
	}

	void make() {
		draw(change.after());
		if (change.isNew()) {
			List<Floor> floors = site.getFloors();
			int at = 0;
			while (at < floors.size() && floors.get(at).getLevel() < floor.getLevel()) {
				at++;
			}
			floors.add(at, floor);
		}
	}

	void takeBack() {
		if (change.isNew()) {
			site.getFloors().remove(floor);
		}
		draw(change.before());
	}

	private void draw(Drawn drawn) {
		floor.setOutline(drawn.outline());
		floor.setPlanImage(drawn.image());
		floor.setPlanPlacement(drawn.placement());
	}
}
