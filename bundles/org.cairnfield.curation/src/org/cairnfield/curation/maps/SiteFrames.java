package org.cairnfield.curation.maps;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;

/** Sites as exports know them. */
public final class SiteFrames {

	private SiteFrames() {
	}

	/** Its name, where it lies, and the outlines of its floors. */
	public static SiteFrame of(Site site) {
		SiteFrame.Anchor anchor = site.getGeoreference() == null ? null
				: new SiteFrame.Anchor(site.getGeoreference().latitudeDegrees(),
						site.getGeoreference().longitudeDegrees(),
						site.getGeoreference().bearingDegrees());
		List<SiteFrame.FloorOutline> floors = new ArrayList<>();
		for (Floor floor : site.getFloors()) {
			if (floor.getOutline() != null) {
				double[] x = new double[floor.getOutline().size()];
				double[] y = new double[x.length];
				for (int i = 0; i < x.length; i++) {
					x[i] = floor.getOutline().xMetres(i);
					y[i] = floor.getOutline().yMetres(i);
				}
				floors.add(new SiteFrame.FloorOutline(floor.getLevel(),
						floor.getName() == null ? Integer.toString(floor.getLevel()) : floor.getName(), x, y));
			}
		}
		return new SiteFrame(ArchiveMap.nameOf(site), anchor, floors);
	}
}
