package org.cairnfield.core.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Collects samples into a {@link RadioMap}. Names of access points, sites and devices get an index in the
 * order in which they are first seen. Not safe for use by several threads.
 *
 * <pre>
 * builder.sample("Tide House", 0, 12.4, 7.8);
 * builder.reading("00:00:5E:00:53:01", -61);
 * </pre>
 */
public final class RadioMapBuilder {

	private final Names accessPoints = new Names();
	private final Names sites = new Names();
	private final Names devices = new Names();
	private int size;
	private int readings;
	private int[] start = new int[1025];
	private int[] accessPoint = new int[16384];
	private byte[] rssi = new byte[16384];
	private double[] x = new double[1024];
	private double[] y = new double[1024];
	private short[] floor = new short[1024];
	private short[] site = new short[1024];
	private short[] device;
	private long[] timeMillis;

	/** The index of an access point, made where the name is new. */
	public int accessPoint(String name) {
		return accessPoints.index(name);
	}

	/** Access points named so far. */
	public int accessPointCount() {
		return accessPoints.list.size();
	}

	/** Samples begun so far. */
	public int size() {
		return size;
	}

	/**
	 * Begins the next sample.
	 *
	 * @param floorLevel within a short's range
	 * @param xMetres    floor frame, finite
	 * @param yMetres    floor frame, finite
	 * @throws IllegalArgumentException where a value is out of range, and for more than 32,768 sites
	 */
	public RadioMapBuilder sample(String siteName, int floorLevel, double xMetres, double yMetres) {
		if (!Double.isFinite(xMetres) || !Double.isFinite(yMetres)) {
			throw new IllegalArgumentException("position must be finite: " + xMetres + ", " + yMetres);
		}
		if (floorLevel < Short.MIN_VALUE || floorLevel > Short.MAX_VALUE) {
			throw new IllegalArgumentException("floor out of range: " + floorLevel);
		}
		short siteIndex = sites.shortIndex(siteName, "sites");
		closeSample();
		if (size == x.length) {
			growSamples();
		}
		x[size] = xMetres;
		y[size] = yMetres;
		floor[size] = (short) floorLevel;
		site[size] = siteIndex;
		size++;
		start[size] = readings;
		return this;
	}

	/** The device that recorded the sample last begun. */
	public RadioMapBuilder device(String name) {
		needSample();
		short deviceIndex = devices.shortIndex(name, "devices");
		if (device == null) {
			device = new short[x.length];
			Arrays.fill(device, (short) RadioMap.NO_DEVICE);
		}
		device[size - 1] = deviceIndex;
		return this;
	}

	/** When the sample last begun was recorded, in milliseconds since 1970-01-01T00:00Z. */
	public RadioMapBuilder time(long millis) {
		needSample();
		if (timeMillis == null) {
			timeMillis = new long[x.length];
			Arrays.fill(timeMillis, RadioMap.NO_TIME);
		}
		timeMillis[size - 1] = millis;
		return this;
	}

	/** As {@link #reading(int, int)}, by name. */
	public RadioMapBuilder reading(String accessPointName, int rssiDbm) {
		return reading(accessPoints.index(accessPointName), rssiDbm);
	}

	/**
	 * A reading of the sample last begun. Hearing one access point twice in a sample is an error that
	 * shows at the next sample or at {@link #build}.
	 *
	 * @throws IllegalArgumentException where the level is outside −120 … 0 dBm
	 */
	public RadioMapBuilder reading(int accessPointIndex, int rssiDbm) {
		needSample();
		if (rssiDbm < RadioMap.LOWEST_RSSI_DBM || rssiDbm > RadioMap.HIGHEST_RSSI_DBM) {
			throw new IllegalArgumentException("RSSI outside " + RadioMap.LOWEST_RSSI_DBM + " … 0 dBm: " + rssiDbm);
		}
		if (accessPointIndex < 0 || accessPointIndex >= accessPoints.list.size()) {
			throw new IllegalArgumentException("no access point " + accessPointIndex);
		}
		if (readings == accessPoint.length) {
			int grown = readings + (readings >> 1);
			accessPoint = Arrays.copyOf(accessPoint, grown);
			rssi = Arrays.copyOf(rssi, grown);
		}
		accessPoint[readings] = accessPointIndex;
		rssi[readings] = (byte) rssiDbm;
		readings++;
		start[size] = readings;
		return this;
	}

	/** The map of all samples begun. The builder may go on afterwards. */
	public RadioMap build() {
		closeSample();
		RadioMap.Columns c = new RadioMap.Columns();
		c.size = size;
		c.start = Arrays.copyOf(start, size + 1);
		c.accessPoint = Arrays.copyOf(accessPoint, readings);
		c.rssi = Arrays.copyOf(rssi, readings);
		c.x = Arrays.copyOf(x, size);
		c.y = Arrays.copyOf(y, size);
		c.floor = Arrays.copyOf(floor, size);
		c.site = Arrays.copyOf(site, size);
		c.device = device == null ? null : Arrays.copyOf(device, size);
		c.timeMillis = timeMillis == null ? null : Arrays.copyOf(timeMillis, size);
		c.accessPoints = List.copyOf(accessPoints.list);
		c.sites = List.copyOf(sites.list);
		c.devices = List.copyOf(devices.list);
		return new RadioMap(c, null);
	}

	/** Sorts the readings of the sample last begun by access point; insertion, as most arrive sorted. */
	private void closeSample() {
		if (size == 0) {
			return;
		}
		int from = start[size - 1];
		for (int k = from + 1; k < readings; k++) {
			int ap = accessPoint[k];
			byte level = rssi[k];
			int at = k - 1;
			while (at >= from && accessPoint[at] > ap) {
				accessPoint[at + 1] = accessPoint[at];
				rssi[at + 1] = rssi[at];
				at--;
			}
			if (at >= from && accessPoint[at] == ap) {
				throw new IllegalArgumentException(
						"sample " + (size - 1) + " hears " + accessPoints.list.get(ap) + " twice");
			}
			accessPoint[at + 1] = ap;
			rssi[at + 1] = level;
		}
	}

	private void needSample() {
		if (size == 0) {
			throw new IllegalStateException("no sample begun");
		}
	}

	private void growSamples() {
		int grown = size + (size >> 1);
		start = Arrays.copyOf(start, grown + 1);
		x = Arrays.copyOf(x, grown);
		y = Arrays.copyOf(y, grown);
		floor = Arrays.copyOf(floor, grown);
		site = Arrays.copyOf(site, grown);
		if (device != null) {
			device = Arrays.copyOf(device, grown);
			Arrays.fill(device, size, grown, (short) RadioMap.NO_DEVICE);
		}
		if (timeMillis != null) {
			timeMillis = Arrays.copyOf(timeMillis, grown);
			Arrays.fill(timeMillis, size, grown, RadioMap.NO_TIME);
		}
	}

	private static final class Names {
		final List<String> list = new ArrayList<>();
		private final Map<String, Integer> index = new HashMap<>();

		int index(String name) {
			Integer known = index.get(name);
			if (known == null) {
				known = list.size();
				index.put(name, known);
				list.add(name);
			}
			return known;
		}

		short shortIndex(String name, String what) {
			if (list.size() > Short.MAX_VALUE && !index.containsKey(name)) {
				throw new IllegalArgumentException("no more than " + list.size() + " " + what);
			}
			return (short) index(name);
		}
	}
}
