package org.cairnfield.curation.timeline;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.curation.maps.SiteFrames;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.export.MarkedPoint;
import org.cairnfield.exchange.export.PointFiles;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;

/** Walks as files that a surveyor takes along. */
public final class WalkFiles {

	private WalkFiles() {
	}

	/**
	 * A table, with longitude and latitude where the place of a site on Earth is known.
	 *
	 * @throws IntakeException where the file cannot be written
	 */
	public static void csv(Path file, Archive archive, List<NextWalk> walks) throws IntakeException {
		PointFiles.csv(file, points(archive, walks), archive.getSites().stream().map(SiteFrames::of).toList());
	}

	/**
	 * GeoJSON that a phone can show.
	 *
	 * @return names of the sites that are not in it, since nobody has said where on Earth they lie
	 * @throws IOException where the file cannot be written
	 */
	public static List<String> geoJson(Path file, Archive archive, List<NextWalk> walks) throws IOException {
		PointFiles.geoJson(file, Messages.WalkFiles_placesToMeasureNext, points(archive, walks),
				archive.getSites().stream().map(SiteFrames::of).toList());
		return walks.stream().map(walk -> site(archive, walk)).filter(site -> site.getGeoreference() == null)
				.map(ModelText::name).toList();
	}

	private static Site site(Archive archive, NextWalk walk) {
		return archive.getSites().stream().filter(site -> site.getId().equals(walk.site())).findFirst().orElseThrow();
	}

	private static List<MarkedPoint> points(Archive archive, List<NextWalk> walks) {
		List<MarkedPoint> points = new ArrayList<>();
		for (NextWalk walk : walks) {
			String name = ModelText.name(site(archive, walk));
			for (NextPlace place : walk.places()) {
				Map<String, Object> properties = new LinkedHashMap<>();
				properties.put("why", place.why());
				properties.put("worth", Math.round(100 * place.worth()) / 100.0);
				points.add(new MarkedPoint(name, place.floor(), place.x(), place.y(), properties));
			}
		}
		return points;
	}
}
