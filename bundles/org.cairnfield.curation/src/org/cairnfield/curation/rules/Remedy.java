package org.cairnfield.curation.rules;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Count;

/**
 * A change that a finding offers, as plain data: who keeps the archive turns it into a change that can be undone.
 * Nothing is ever deleted.
 */
public sealed interface Remedy {

	/** What it would do, in one line. */
	String preview();

	/** How many things it changes: samples, access points, readings. */
	int size();

	/** Leaves samples out of the map. */
	record SetAsideSamples(List<String> sampleIds, String reason) implements Remedy {
		public SetAsideSamples {
			sampleIds = List.copyOf(sampleIds);
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_setAside, Count.of(size(), "sample"), reason);
		}

		@Override
		public int size() {
			return sampleIds.size();
		}
	}

	/**
	 * Makes one sample of several: the first gets the mean levels of all, the others are left out of the map.
	 *
	 * @param groups ids of samples, at least two a group
	 */
	record AverageSamples(List<List<String>> groups, String reason) implements Remedy {
		public AverageSamples {
			groups = groups.stream().map(List::copyOf).toList();
		}

		/**
		 * The mean of several scans, each counted once however often it was handed out: of what at least half of them heard, the mean
		 * level where it was heard, in whole dBm.
		 *
		 * @param scans levels in dBm by access point
		 */
		public static Map<String, Integer> mean(Collection<Map<String, Integer>> scans) {
			Set<Map<String, Integer>> distinct = new HashSet<>(scans);
			Map<String, Integer> sum = new TreeMap<>();
			Map<String, Integer> heard = new HashMap<>();
			distinct.forEach(scan -> scan.forEach((accessPoint, dbm) -> {
				sum.merge(accessPoint, dbm, Integer::sum);
				heard.merge(accessPoint, 1, Integer::sum);
			}));
			sum.keySet().removeIf(accessPoint -> 2 * heard.get(accessPoint) < distinct.size());
			sum.replaceAll((accessPoint, dbm) -> (int) Math.round((double) dbm / heard.get(accessPoint)));
			return sum;
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_averageInto,
					Count.of(groups.stream().mapToInt(List::size).sum(), "sample"), groups.size(), reason);
		}

		@Override
		public int size() {
			return groups.stream().mapToInt(List::size).sum();
		}
	}

	/** Leaves access points out of the map, everywhere. */
	record SetAsideAccessPoints(List<String> addresses, String reason) implements Remedy {
		public SetAsideAccessPoints {
			addresses = List.copyOf(addresses);
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_setAside, Count.of(size(), Messages.Remedy_accessPoint), reason);
		}

		@Override
		public int size() {
			return addresses.size();
		}
	}

	/** Leaves a whole survey out of the map. */
	record SetAsideSurvey(String surveyId, String reason) implements Remedy {
		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_setAsideSurvey, surveyId, reason);
		}

		@Override
		public int size() {
			return 1;
		}
	}

	/** Exchanges x and y of samples. */
	record SwapAxes(List<String> sampleIds) implements Remedy {
		public SwapAxes {
			sampleIds = List.copyOf(sampleIds);
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_exchangeXAndYOf, Count.of(size(), "sample"));
		}

		@Override
		public int size() {
			return sampleIds.size();
		}
	}

	/** Puts samples on another floor of their site. */
	record SetFloor(List<String> sampleIds, int level) implements Remedy {
		public SetFloor {
			sampleIds = List.copyOf(sampleIds);
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_putOnFloor, Count.of(size(), "sample"), level);
		}

		@Override
		public int size() {
			return sampleIds.size();
		}
	}

	/** Leaves single readings out of the map. */
	record DropReadings(List<Reading> readings, String reason) implements Remedy {
		public DropReadings {
			readings = List.copyOf(readings);
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_leaveOutOf, Count.of(size(), "reading"),
					Count.of(readings.stream().map(Reading::sampleId).distinct().count(), "sample"), reason);
		}

		@Override
		public int size() {
			return readings.size();
		}
	}

	/**
	 * Lets readings of access points count for others in the map.
	 *
	 * @param others by address, that of the one that it counts as
	 */
	record CountAs(Map<String, String> others, String reason) implements Remedy {
		public CountAs {
			others = Collections.unmodifiableSortedMap(new TreeMap<>(others));
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_countAs, Count.of(size(), Messages.Remedy_accessPoint),
					size() == 1 ? Messages.Remedy_another : Messages.Remedy_others, reason);
		}

		@Override
		public int size() {
			return others.size();
		}
	}

	/**
	 * Takes levels of a device into the map as the reference device would have read them.
	 *
	 * @param deviceId id of the device
	 * @param device   its name
	 */
	record CorrectDevice(String deviceId, String device, LevelLine line) implements Remedy {
		@Override
		public String preview() {
			return String.format(Locale.ROOT, Messages.Remedy_correctTheLevelsOfOf, device, line.slope(),
					line.shiftDb());
		}

		@Override
		public int size() {
			return 1;
		}
	}

	/**
	 * Leaves surveys of earlier days out of the map of a site.
	 *
	 * @param siteId id of the site
	 * @param site   its name
	 * @param from   first day of the surveys that make the map
	 */
	record MapFrom(String siteId, String site, LocalDate from) implements Remedy {
		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_makeTheMapOfOf, site, from);
		}

		@Override
		public int size() {
			return 1;
		}
	}

	/** What one sample heard of one access point. */
	record Reading(String sampleId, String address) {
	}

	/** Treats addresses as those of one radio. */
	record GroupAccessPoints(List<String> addresses) implements Remedy {
		public GroupAccessPoints {
			addresses = List.copyOf(addresses);
		}

		@Override
		public String preview() {
			return Words.bind(Messages.Remedy_treatAsOneRadio, RuleWords.list(addresses));
		}

		@Override
		public int size() {
			return addresses.size();
		}
	}

	/**
	 * Notes by how much a device reads too high; levels are taken less that.
	 *
	 * @param deviceId id of the device
	 * @param device   its name
	 * @param offsetDb the whole offset from then on, replacing what was noted before
	 */
	record CalibrateDevice(String deviceId, String device, double offsetDb) implements Remedy {
		@Override
		public String preview() {
			return String.format(Locale.ROOT, Messages.Remedy_takeDbForTheOffset, offsetDb, device);
		}

		@Override
		public int size() {
			return 1;
		}
	}
}
