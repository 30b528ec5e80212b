package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.radio.WifiChannel;
import org.cairnfield.core.text.Words;

/** Collects samples of all files into one map, within the limits, and their ids. */
final class MapSink {

	private final RadioMapBuilder builder = new RadioMapBuilder();
	private final IntakeOptions options;
	private final Set<String> sites = new HashSet<>();
	private final Set<String> devices = new HashSet<>();
	/** Null once a sample came without an id. */
	private List<String> ids = new ArrayList<>();
	private boolean anyId;
	private final Map<String, WifiChannel> channels = new HashMap<>();
	private long readings;

	MapSink(IntakeOptions options) {
		this.options = options;
	}

	int size() {
		return builder.size();
	}

	/** The index of an access point as heard at a site. */
	int accessPoint(FilePlan plan, long line, String name, String site) throws IntakeException {
		int index = builder.accessPoint(nameAt(site, name));
		if (index >= options.limits().accessPoints()) {
			throw tooMany(plan, line, Messages.MapSink_accessPoints, options.limits().accessPoints());
		}
		return index;
	}

	/** Whether so many more access points are within the limits. */
	boolean hasRoomFor(int accessPoints) {
		return builder.accessPointCount() + (long) accessPoints <= options.limits().accessPoints();
	}

	private String nameAt(String site, String name) {
		return options.accessPointsPerSite() ? site + "/" + name : name;
	}

	/** Says which channel an access point is heard on at a site; what was said first counts. */
	void channel(String name, String site, WifiChannel channel) {
		channels.putIfAbsent(nameAt(site, name), channel);
	}

	/** By the name of the access point. */
	Map<String, WifiChannel> channels() {
		return channels;
	}

	/**
	 * Adds a sample; each access point at most once.
	 *
	 * @param rssiDbm levels of the first {@code heard} access points
	 */
	void sample(FilePlan plan, long line, RowPlace place, int[] accessPoint, int[] rssiDbm, int heard)
			throws IntakeException {
		Limits limits = options.limits();
		readings += heard;
		// a sample costs as much as a few readings, even where it heard nothing
		if (readings + 4L * builder.size() > limits.readings()) {
			throw new IntakeException(plan.file, line,
					Words.bind(Messages.MapSink_moreThanReadingsWhichIs, CellWords.count(limits.readings())),
					Messages.MapSink_giveTheProgramMoreMemory);
		}
		if (sites.add(place.site()) && sites.size() > limits.sites()) {
			throw tooMany(plan, line, "buildings", limits.sites());
		}
		builder.sample(place.site(), place.floor(), place.x(), place.y());
		if (place.device() != null) {
			if (devices.add(place.device()) && devices.size() > limits.sites()) {
				throw tooMany(plan, line, "devices", limits.sites());
			}
			builder.device(place.device());
		}
		if (place.timeMillis() != RadioMap.NO_TIME) {
			builder.time(place.timeMillis());
		}
		anyId |= place.id() != null;
		if (place.id() == null) {
			ids = null;
		} else if (ids != null) {
			ids.add(place.id());
		}
		for (int k = 0; k < heard; k++) {
			builder.reading(accessPoint[k], rssiDbm[k]);
		}
	}

	private static IntakeException tooMany(FilePlan plan, long line, String what, int most) {
		return new IntakeException(plan.file, line,
				Words.bind(Messages.MapSink_moreThanDifferent, CellWords.count(most), what),
				Messages.MapSink_checkWithAMappingThat);
	}

	RadioMap map() {
		return builder.build();
	}

	/** As {@link Intake#sampleIds}; adds a note where ids were given but are no names. */
	List<String> ids(List<String> notes) {
		if (ids != null && new HashSet<>(ids).size() == ids.size()) {
			return List.copyOf(ids);
		}
		if (anyId) {
			notes.add(ids == null ? Messages.MapSink_someSamplesHaveNoId
					: Words.bind(Messages.MapSink_idsComeMoreThanOnce,
							CellWords.count(ids.size() - new HashSet<>(ids).size())));
		}
		List<String> numbers = new ArrayList<>(builder.size());
		for (int i = 1; i <= builder.size(); i++) {
			numbers.add(Integer.toString(i));
		}
		return List.copyOf(numbers);
	}
}
