package org.cairnfield.exchange.export;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.radio.MacAddress;

/**
 * What may leave.
 *
 * @param withoutLocal whether locally administered addresses are left out: often phones' hotspots, and so people
 * @param pseudonyms   in place of addresses, or null
 * @param times        how exactly
 * @param withDevices  whether it says which device recorded a sample
 */
public record ExportOptions(boolean withoutLocal, Pseudonyms pseudonyms, TimeGrain times, boolean withDevices) {

	/** Everything as it is. */
	public static final ExportOptions ALL = new ExportOptions(false, null, TimeGrain.FULL, true);

	/**
	 * The map as it leaves: the same samples in the same order. Access points that no sample hears are left out. Pseudonyms
	 * stand in an order of their own: that of the addresses would show between which others an unknown one lies.
	 */
	public RadioMap apply(RadioMap map) {
		RadioMapBuilder builder = new RadioMapBuilder();
		boolean[] heard = new boolean[map.accessPointCount()];
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				heard[map.accessPoint(k)] = true;
			}
		}
		int[] column = columns(map, heard, builder);
		for (int s = 0; s < map.size(); s++) {
			builder.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			long time = times.coarsen(map.timeMillis(s));
			if (time != RadioMap.NO_TIME) {
				builder.time(time);
			}
			if (withDevices && map.device(s) != RadioMap.NO_DEVICE) {
				builder.device(map.devices().get(map.device(s)));
			}
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				if (column[map.accessPoint(k)] >= 0) {
					builder.reading(column[map.accessPoint(k)], map.rssiDbm(k));
				}
			}
		}
		return builder.build();
	}

	/** Index of each access point in the map that leaves, or -1; begins the builder with their names. */
	private int[] columns(RadioMap map, boolean[] heard, RadioMapBuilder builder) {
		int[] column = new int[map.accessPointCount()];
		Arrays.fill(column, -1);
		Map<String, Integer> leaving = pseudonyms == null ? new LinkedHashMap<>() : new TreeMap<>();
		for (int c = 0; c < column.length; c++) {
			String name = map.accessPoints().get(c);
			if (heard[c] && !(withoutLocal && MacAddress.find(name).filter(MacAddress::isLocal).isPresent())) {
				String shown = pseudonyms == null ? name : pseudonyms.of(name);
				if (leaving.put(shown, c) != null) {
					throw new IllegalArgumentException(
							"two access points would get the name " + shown + ": use another key");
				}
			}
		}
		leaving.forEach((shown, c) -> column[c] = builder.accessPoint(shown));
		return column;
	}
}
