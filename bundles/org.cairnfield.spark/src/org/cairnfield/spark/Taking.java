package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.broadcast.Broadcast;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.model.values.Ids;

/**
 * Which samples of the surveys make the map, in which order, and which test it. All as an archive of the same files has it: by the
 * ids of sites, surveys (one for each file, site and device) and samples; samples that heard too little are set aside.
 */
final class Taking implements Serializable {

	private static final long serialVersionUID = 1;

	/** Access points that a sample should hear, and the share of such samples from which a survey is sparse by nature. */
	private static final int FEWEST = 3;
	private static final double SPARSE = 0.1;
	/** Of the samples, held out where there is no test survey. */
	private static final double HELD_OUT = 0.2;

	/** In place of a sample's number: it is none of those wanted, or set aside. */
	private static final int NONE = -1;
	private static final int ASIDE = -2;

	/** What a survey is about, without its readings. */
	record Outline(int index, String name, List<String> sites, List<String> devices, List<String> accessPoints,
			List<String> ids, boolean numbered,
			Columns columns) implements Serializable {
	}

	/** Of the samples of a survey. */
	record Columns(int[] site, int[] device, int[] floor, double[] x, double[] y, int[] heard) implements Serializable {
	}

	/** Samples of one file, site and device, which an archive keeps as one survey. */
	private record Group(String siteId, String surveyId, int file) implements Comparable<Group> {
		@Override
		public int compareTo(Group o) {
			int by = siteId.compareTo(o.siteId);
			return by != 0 ? by : surveyId.compareTo(o.surveyId);
		}
	}

	private final List<String> sites;
	private final List<String> accessPoints;
	private final ArchiveIds archive;
	/** Of each sample by survey. */
	private final int[][] ids;
	private final String[][] names;
	private final int[][] siteNumbers;
	private final int[][] accessPointNumbers;
	private final int size;
	private final int setAside;

	private Taking(List<Outline> outlines, Wanted wanted, ArchiveIds archive, boolean clean) {
		Names siteNames = new Names();
		Names accessPointNames = new Names();
		siteNumbers = outlines.stream().map(o -> siteNames.numbers(o.sites)).toArray(int[][]::new);
		accessPointNumbers = outlines.stream().map(o -> accessPointNames.numbers(o.accessPoints)).toArray(int[][]::new);
		sites = siteNames.list;
		accessPoints = accessPointNames.list;
		this.archive = archive;
		names = names(outlines);
		ids = outlines.stream().map(o -> filled(o.columns.site.length)).toArray(int[][]::new);
		int next = 0;
		int aside = 0;
		for (Map.Entry<Group, List<Integer>> e : groups(outlines, wanted).entrySet()) {
			int[] heard = outlines.get(e.getKey().file).columns.heard;
			long few = e.getValue().stream().filter(s -> heard[s] < FEWEST).count();
			int fewest = !clean ? 0 : few > SPARSE * e.getValue().size() ? 1 : FEWEST;
			for (int s : e.getValue()) {
				if (heard[s] >= fewest) {
					ids[e.getKey().file][s] = next++;
				} else {
					ids[e.getKey().file][s] = ASIDE;
					aside++;
				}
			}
		}
		size = next;
		setAside = aside;
	}

	/** Samples keep their names where all have a usable one and no two the same; else they are numbered over all surveys. */
	private static String[][] names(List<Outline> outlines) {
		List<String> all = outlines.stream().flatMap(o -> o.ids.stream()).toList();
		boolean numbered = outlines.size() > 1 && outlines.stream().anyMatch(o -> o.numbered && !o.ids.isEmpty())
				|| new HashSet<>(all).size() < all.size() || !all.stream().allMatch(Ids::isUsableForSample);
		String[][] names = new String[outlines.size()][];
		int number = 0;
		for (int f = 0; f < names.length; f++) {
			names[f] = outlines.get(f).ids.toArray(String[]::new);
			for (int s = 0; s < names[f].length; s++) {
				number++;
				names[f][s] = numbered ? Integer.toString(number) : names[f][s];
			}
		}
		return names;
	}

	/** Samples by survey, in the order that an archive has them. */
	private TreeMap<Group, List<Integer>> groups(List<Outline> outlines, Wanted wanted) {
		Names devices = new Names();
		int[][] deviceNumbers = outlines.stream().map(o -> devices.numbers(o.devices)).toArray(int[][]::new);
		int width = Integer.toString(outlines.stream().mapToInt(o -> o.ids.size()).sum()).length();
		TreeMap<Group, List<Integer>> groups = new TreeMap<>();
		for (int f = 0; f < outlines.size(); f++) {
			Outline outline = outlines.get(f);
			Columns c = outline.columns;
			TreeMap<Long, List<Integer>> parts = new TreeMap<>();
			for (int s = 0; s < c.site.length; s++) {
				if (wanted.test(f, s)) {
					long device = c.device[s] == RadioMap.NO_DEVICE ? 0 : deviceNumbers[f][c.device[s]] + 1;
					parts.computeIfAbsent(((long) siteNumbers[f][c.site[s]] << 32) + device, p -> new ArrayList<>())
							.add(s);
				}
			}
			int file = f;
			parts.forEach((part, samples) -> {
				String site = sites.get((int) (part >> 32));
				String device = part.intValue() == 0 ? null : devices.list.get(part.intValue() - 1);
				String siteId = archive.site(site);
				samples.sort(Comparator.comparing(s -> padded(names[file][s], width)));
				groups.put(new Group(siteId, archive.survey(outline.name, parts.size() == 1, site, device), file),
						samples);
			});
		}
		return groups;
	}

	/** Numbers of equal length sort as they count. */
	private static String padded(String id, int width) {
		return id.chars().allMatch(Character::isDigit) ? "0".repeat(Math.max(0, width - id.length())) + id : id;
	}

	/** Ids as an archive gives them to what it takes in, one after the other. */
	private static final class ArchiveIds implements Serializable {
		private static final long serialVersionUID = 1;

		private final Set<String> used = new HashSet<>();
		private final Set<String> surveys = new HashSet<>();
		private final Map<String, String> siteIds = new HashMap<>();
		private final Set<String> devices = new HashSet<>();

		String site(String name) {
			return siteIds.computeIfAbsent(name, n -> unused(n.toLowerCase(Locale.ROOT)));
		}

		String survey(String stem, boolean alone, String site, String device) {
			String id = Ids.from(alone ? stem : stem + "-" + site + (device == null ? "" : "-" + device));
			String key = id.toLowerCase(Locale.ROOT);
			id = unused(used.contains(key) && !surveys.contains(key) ? id + "-survey" : id);
			surveys.add(id.toLowerCase(Locale.ROOT));
			if (device != null && devices.add(device)) {
				unused(device.toLowerCase(Locale.ROOT));
			}
			return id;
		}

		private String unused(String text) {
			String id = Ids.from(text);
			String tried = id;
			for (int n = 2; !used.add(tried.toLowerCase(Locale.ROOT)); n++) {
				tried = id.substring(0, Math.min(id.length(), Ids.LONGEST - 6)) + "-" + n;
			}
			return tried;
		}
	}

	/** Of the surveys, in their order. */
	static List<Outline> outlines(JavaRDD<SurveyPart> surveys) {
		List<Outline> outlines = new ArrayList<>(surveys.map(Taking::outline).collect());
		outlines.sort((a, b) -> Integer.compare(a.index, b.index));
		return outlines;
	}

	private static Outline outline(SurveyPart survey) {
		RadioMap map = survey.map();
		int n = map.size();
		Columns columns = new Columns(new int[n], new int[n], new int[n], new double[n], new double[n], new int[n]);
		for (int s = 0; s < n; s++) {
			columns.site[s] = map.site(s);
			columns.device[s] = map.device(s);
			columns.floor[s] = map.floor(s);
			columns.x[s] = map.x(s);
			columns.y[s] = map.y(s);
			columns.heard[s] = map.heard(s);
		}
		return new Outline(survey.index(), survey.name(), map.sites(), map.devices(), map.accessPoints(), survey.ids(),
				survey.isNumbered(), columns);
	}

	/** Whole blocks of positions, by survey and sample. */
	static boolean[][] heldOut(List<Outline> outlines, long seed) {
		RadioMapBuilder positions = new RadioMapBuilder();
		for (Outline o : outlines) {
			for (int s = 0; s < o.columns.site.length; s++) {
				positions.sample(o.sites.get(o.columns.site[s]), o.columns.floor[s], o.columns.x[s], o.columns.y[s]);
			}
		}
		boolean[] out = PositionBlocks.of(positions.build()).holdOut(HELD_OUT, seed);
		boolean[][] bySurvey = new boolean[outlines.size()][];
		int from = 0;
		for (int f = 0; f < bySurvey.length; f++) {
			bySurvey[f] = Arrays.copyOfRange(out, from, from + outlines.get(f).columns.site.length);
			from += bySurvey[f].length;
		}
		return bySurvey;
	}

	/**
	 * The samples of the map.
	 *
	 * @param heldOut null where none are
	 */
	static Taking map(List<Outline> outlines, boolean[][] heldOut) {
		return new Taking(outlines, (f, s) -> heldOut == null || !heldOut[f][s], new ArchiveIds(), true);
	}

	/**
	 * The samples that test the map, none set aside.
	 *
	 * @param heldOut null where all do
	 */
	static Taking tests(List<Outline> outlines, boolean[][] heldOut, Taking map) {
		return new Taking(outlines, (f, s) -> heldOut == null || heldOut[f][s], map.archive, false);
	}

	private interface Wanted {
		boolean test(int survey, int sample);
	}

	private static int[] filled(int n) {
		int[] none = new int[n];
		Arrays.fill(none, NONE);
		return none;
	}

	/** Numbers names as they come. */
	private static final class Names {
		final List<String> list = new ArrayList<>();
		private final Map<String, Integer> numbers = new HashMap<>();

		int[] numbers(List<String> names) {
			int[] found = new int[names.size()];
			for (int i = 0; i < found.length; i++) {
				Integer number = numbers.putIfAbsent(names.get(i), list.size());
				if (number == null) {
					list.add(names.get(i));
				}
				found[i] = number == null ? list.size() - 1 : number;
			}
			return found;
		}
	}

	/** The samples of a survey that are in the map. */
	List<Fingerprint> samples(SurveyPart survey) {
		RadioMap map = survey.map();
		int[] own = ids[survey.index()];
		return IntStream.range(0, map.size()).filter(s -> own[s] >= 0).mapToObj(s -> Fingerprint.of(map, s, own[s],
				siteNumbers[survey.index()][map.site(s)], accessPointNumbers[survey.index()])).toList();
	}

	/** Access points that an archive of the surveys knows: those heard by the samples wanted, the ones set aside included. */
	Set<String> known(JavaRDD<SurveyPart> surveys, Broadcast<Taking> self) {
		return new HashSet<>(surveys.flatMap(s -> self.value().heard(s).iterator()).distinct().collect().stream()
				.map(accessPoints::get).toList());
	}

	private Set<Integer> heard(SurveyPart survey) {
		RadioMap map = survey.map();
		Set<Integer> heard = new HashSet<>();
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); ids[survey.index()][s] != NONE && k < map.endReading(s); k++) {
				heard.add(accessPointNumbers[survey.index()][map.accessPoint(k)]);
			}
		}
		return heard;
	}

	/** Access points in the order of their ids in an archive. */
	static List<String> inOrder(Set<String> accessPoints) {
		return accessPoints.stream().sorted(Comparator.comparing((String address) -> Ids.from(
				MacAddress.find(address).map(mac -> mac.toString().replace(":", "").toLowerCase(Locale.ROOT))
						.orElse(address)))
				.thenComparing(Comparator.naturalOrder())).toList();
	}

	/** The place of a sample in the map; below 0 where it has none. */
	int id(int survey, int sample) {
		return ids[survey][sample];
	}

	/** What a sample is called in results. */
	String name(int survey, int sample) {
		return names[survey][sample];
	}

	/** Names of sites by number; those whose samples are all left out too. */
	List<String> sites() {
		return sites;
	}

	/** Names of access points by number. */
	List<String> accessPoints() {
		return accessPoints;
	}

	/** Samples in the map. */
	int size() {
		return size;
	}

	/** Samples left out of the map because they heard too little. */
	int setAside() {
		return setAside;
	}
}
