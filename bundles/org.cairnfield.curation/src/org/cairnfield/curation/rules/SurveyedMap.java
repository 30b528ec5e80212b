package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.cairnfield.core.map.RadioMap;

/**
 * All samples that are in the map, with the surveys they came from: what rules judge. Immutable; a part of it
 * shares what it can with the whole. Made by {@link SurveyedMapBuilder}.
 *
 * <p>{@link #map} leaves out what access points that are set aside sent. Keys of content are made before that, so
 * that setting one aside changes no sample's key.
 */
public final class SurveyedMap {

	private final RadioMap map;
	private final List<String> sampleIds;
	private final int[] survey;
	private final List<Survey> surveys;
	private final List<FloorPlan> floors;
	private final Set<String> setAside;
	private final TreeMap<String, String> radios;
	private final TreeMap<String, Double> offsetsDb;
	private final Map<String, String> siteIds;
	private final Map<String, String> deviceIds;
	private final double[] offsetOfDevice;
	private final long[] readingsKey;
	private final long readingOfKey;

	SurveyedMap(RadioMap map, List<String> sampleIds, int[] survey, List<Survey> surveys, List<FloorPlan> floors,
			Set<String> setAside, TreeMap<String, String> radios, TreeMap<String, Double> offsetsDb,
			Map<String, String> siteIds, Map<String, String> deviceIds, long[] readingsKey, long readingOfKey) {
		this.map = map;
		this.sampleIds = sampleIds;
		this.survey = survey;
		this.surveys = surveys;
		this.floors = floors;
		this.setAside = setAside;
		this.radios = radios;
		this.offsetsDb = offsetsDb;
		this.siteIds = siteIds;
		this.deviceIds = deviceIds;
		this.readingsKey = readingsKey;
		this.readingOfKey = readingOfKey;
		offsetOfDevice = map.devices().stream().mapToDouble(d -> offsetsDb.getOrDefault(d, 0.0)).toArray();
	}

	/** Readings of access points that are kept, as the devices gave them. */
	public RadioMap map() {
		return map;
	}

	public int size() {
		return map.size();
	}

	public String sampleId(int sample) {
		return sampleIds.get(sample);
	}

	/** Index into {@link #surveys}. */
	public int survey(int sample) {
		return survey[sample];
	}

	/** The surveys of the whole, in a part too. */
	public List<Survey> surveys() {
		return surveys;
	}

	public List<FloorPlan> floors() {
		return floors;
	}

	/** What is known of a floor beside its samples. */
	public Optional<FloorPlan> floor(String site, int level) {
		return floors.stream().filter(f -> f.level() == level && f.site().equals(site)).findFirst();
	}

	/** Whether an access point is left out of the map. */
	public boolean isSetAside(String address) {
		return setAside.contains(address);
	}

	/** Addresses left out of the map. */
	public Set<String> setAside() {
		return setAside;
	}

	/** Which radio each address belongs to, where that is known: addresses of one radio have the same value. */
	public TreeMap<String, String> radios() {
		return new TreeMap<>(radios);
	}

	/** By how much a device is known to read too high, in dB; 0 where nothing is known. */
	public double offsetDb(int device) {
		return device == RadioMap.NO_DEVICE ? 0 : offsetOfDevice[device];
	}

	/** Offsets noted, by name of the device. */
	public TreeMap<String, Double> offsetsDb() {
		return new TreeMap<>(offsetsDb);
	}

	/** The level of a reading with the device's offset taken out, in dBm. */
	public double levelDbm(int sample, int reading) {
		return map.rssiDbm(reading) - offsetDb(map.device(sample));
	}

	/** A key of what readings count for others, and of how levels of devices are corrected; 0 where they are taken as they are. */
	public long readingOfKey() {
		return readingOfKey;
	}

	/** A key of what the sample heard and how strongly; the same in whatever order and map. */
	public long readingsKey(int sample) {
		return readingsKey[sample];
	}

	/** A key of place, time and readings: equal for the same sample taken in twice. */
	public long measuredKey(int sample) {
		return measuredKey(sample, siteNamed(site(sample)).id());
	}

	private long measuredKey(int sample, String site) {
		long key = ContentKeys.join(readingsKey[sample], ContentKeys.of(site));
		key = ContentKeys.join(key, map.floor(sample));
		key = ContentKeys.join(key, Double.doubleToLongBits(map.x(sample) + 0.0));
		key = ContentKeys.join(key, Double.doubleToLongBits(map.y(sample) + 0.0));
		return ContentKeys.join(key, map.timeMillis(sample));
	}

	/** A key of all that a sample holds, its survey included: what a waiver remembers it by. */
	public long contentKey(int sample) {
		return ContentKeys.join(measuredKey(sample), surveyKey(sample));
	}

	private long surveyKey(int sample) {
		return ContentKeys.of(surveys.get(survey[sample]).id());
	}

	/** The sample as something that a finding is about. */
	public Subject.OfSample subject(int sample) {
		return new Subject.OfSample(sampleId(sample), contentKey(sample),
				ContentKeys.join(measuredKey(sample, site(sample)), surveyKey(sample)));
	}

	/** Likewise, the site of a name: a map knows sites by names, of which each has its own. */
	public Subject.OfSite siteNamed(String name) {
		return new Subject.OfSite(siteIds.getOrDefault(name, name), name);
	}

	/** Likewise, the device of a name. */
	public Subject.OfDevice deviceNamed(String name) {
		return new Subject.OfDevice(deviceIds.getOrDefault(name, name), name);
	}

	/** Likewise, several. */
	public List<Subject.OfSample> subjects(int... samples) {
		List<Subject.OfSample> list = new ArrayList<>(samples.length);
		for (int sample : samples) {
			list.add(subject(sample));
		}
		return list;
	}

	/** Ids of samples. */
	public List<String> ids(int... samples) {
		return Arrays.stream(samples).mapToObj(this::sampleId).toList();
	}

	/** Where a sample is said to be, in words. */
	public String site(int sample) {
		return map.sites().get(map.site(sample));
	}

	/** The name of a sample's device, or {@code no device}. */
	public String device(int sample) {
		return map.device(sample) == RadioMap.NO_DEVICE ? Messages.SurveyedMap_noDevice
				: map.devices().get(map.device(sample));
	}

	/**
	 * The same samples with other places or readings: a map of what if.
	 *
	 * @param other as many samples, in the same order
	 */
	public SurveyedMap with(RadioMap other) {
		SurveyedMapBuilder builder = new SurveyedMapBuilder(other, sampleIds, survey, surveys);
		floors.forEach(builder::floor);
		setAside.forEach(builder::setAside);
		radios.forEach(builder::radio);
		offsetsDb.forEach(builder::offset);
		siteIds.forEach(builder::site);
		deviceIds.forEach(builder::device);
		return builder.readingOf(readingOfKey).build();
	}

	/** The samples listed, in the order listed. */
	public SurveyedMap only(int[] samples) {
		List<String> ids = new ArrayList<>(samples.length);
		int[] surveyOf = new int[samples.length];
		long[] keys = new long[samples.length];
		for (int i = 0; i < samples.length; i++) {
			ids.add(sampleIds.get(samples[i]));
			surveyOf[i] = survey[samples[i]];
			keys[i] = readingsKey[samples[i]];
		}
		return new SurveyedMap(map.view(samples), ids, surveyOf, surveys, floors, setAside, radios, offsetsDb,
				siteIds, deviceIds, keys, readingOfKey);
	}
}
