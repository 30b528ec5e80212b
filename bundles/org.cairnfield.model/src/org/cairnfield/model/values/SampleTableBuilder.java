package org.cairnfield.model.values;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Collects samples into a {@link SampleTable}, in any order; fastest where they come sorted by id. Not safe for use by
 * several threads.
 *
 * <pre>
 * builder.sample("SH-0412", 1, 12.40, 7.85).time(millis);
 * builder.reading("00005e005301", -61);
 * </pre>
 *
 * Each method that takes a value throws an IllegalArgumentException where it is out of range, saying which, and leaves the
 * builder as it was.
 */
public final class SampleTableBuilder {

	private final Map<String, Integer> indices = new HashMap<>();
	private final List<String> accessPoints = new ArrayList<>();
	/** Each reason once, however many samples have it. */
	private final Map<String, String> reasons = new HashMap<>();
	private final List<SampleChunk> full = new ArrayList<>();
	private SampleChunk open;
	private boolean sorted = true;
	private String lastId;

	SampleTableBuilder() {
	}

	/** Samples begun so far. */
	public int size() {
		return full.size() * SampleChunk.ROWS + (open == null ? 0 : open.size);
	}

	/** The index of an access point for {@link #reading(int, int)}, made where the id is new. */
	public int accessPoint(String id) {
		Integer known = indices.get(id);
		if (known == null) {
			known = accessPoints.size();
			indices.put(SampleChecks.accessPoint(id), known);
			accessPoints.add(id);
		}
		return known;
	}

	/**
	 * Begins the next sample: kept, without time and readings.
	 *
	 * @param id         see {@link Ids#isUsableForSample}; one that came before shows in {@link #build}
	 * @param floorLevel −32768 … 32767
	 * @param xMetres    finite
	 * @param yMetres    finite
	 */
	public SampleTableBuilder sample(String id, int floorLevel, double xMetres, double yMetres) {
		SampleChecks.id(id);
		short level = SampleChecks.floorLevel(floorLevel);
		double x = SampleChecks.position(xMetres);
		double y = SampleChecks.position(yMetres);
		makeRoom();
		int i = open.size++;
		open.id[i] = id;
		open.floorLevel[i] = level;
		open.xMetres[i] = x;
		open.yMetres[i] = y;
		open.start[i + 1] = open.start[i];
		sorted &= lastId == null || lastId.compareTo(id) < 0;
		lastId = id;
		return this;
	}

	/** When the sample last begun was taken, in milliseconds since 1970-01-01T00:00Z. */
	public SampleTableBuilder time(long millis) {
		int i = last();
		if (open.timeMillis == null && millis != SampleTable.NO_TIME) {
			open.timeMillis = new long[SampleChunk.ROWS];
			Arrays.fill(open.timeMillis, SampleTable.NO_TIME);
		}
		if (open.timeMillis != null) {
			open.timeMillis[i] = millis;
		}
		return this;
	}

	/** Why the sample last begun is set aside, one line; null or blank: it is kept. */
	public SampleTableBuilder reason(String reason) {
		int i = last();
		String given = SampleChecks.reason(reason);
		if (open.reason == null && given != null) {
			open.reason = new String[SampleChunk.ROWS];
		}
		if (open.reason != null) {
			open.reason[i] = given == null ? null : reasons.computeIfAbsent(given, r -> r);
		}
		return this;
	}

	/** As {@link #reading(int, int)}, by the id of the access point. */
	public SampleTableBuilder reading(String accessPoint, int rssiDbm) {
		return reading(accessPoint(accessPoint), rssiDbm);
	}

	/** A reading of the sample last begun, −128 … 127 dBm; only one of each access point. */
	public SampleTableBuilder reading(int accessPoint, int rssiDbm) {
		int i = last();
		if (accessPoint < 0 || accessPoint >= accessPoints.size()) {
			throw new IllegalArgumentException("no access point " + accessPoint);
		}
		byte level = SampleChecks.rssiDbm(rssiDbm);
		int r = open.start[i + 1];
		for (int earlier = open.start[i]; earlier < r; earlier++) {
			if (open.accessPoint[earlier] == accessPoint) {
				throw new IllegalArgumentException(
						"sample " + open.id[i] + " hears " + accessPoints.get(accessPoint) + " twice");
			}
		}
		if (r == open.accessPoint.length) {
			open.accessPoint = Arrays.copyOf(open.accessPoint, r + (r >> 1));
			open.rssiDbm = Arrays.copyOf(open.rssiDbm, r + (r >> 1));
		}
		open.accessPoint[r] = accessPoint;
		open.rssiDbm[r] = level;
		open.start[i + 1] = r + 1;
		return this;
	}

	/** A whole sample. */
	public SampleTableBuilder add(Sample sample) {
		sample(sample.id(), sample.floorLevel(), sample.xMetres(), sample.yMetres());
		time(sample.timeMillis()).reason(sample.reason());
		for (int k = 0; k < sample.readings().size(); k++) {
			reading(sample.readings().accessPoint(k), sample.readings().rssiDbm(k));
		}
		return this;
	}

	/**
	 * The table of all samples. The builder must not be used afterwards.
	 *
	 * @throws IllegalArgumentException where two samples have one id, saying which
	 */
	public SampleTable build() {
		if (open != null) {
			full.add(trimmed(open));
			open = null;
		}
		List<String> names = accessPoints.stream().sorted().toList();
		SampleChunk[] chunks = full.toArray(SampleChunk[]::new);
		AccessPointOrder.apply(chunks, accessPoints, names);
		return new SampleTable(names, sorted ? chunks : inOrder(chunks));
	}

	private SampleChunk[] inOrder(SampleChunk[] chunks) {
		int size = 0;
		for (SampleChunk chunk : chunks) {
			size += chunk.size;
		}
		String[] ids = new String[size];
		for (int c = 0; c < chunks.length; c++) {
			System.arraycopy(chunks[c].id, 0, ids, c * SampleChunk.ROWS, chunks[c].size);
		}
		int[] order = IntStream.range(0, size).boxed().sorted((a, b) -> ids[a].compareTo(ids[b]))
				.mapToInt(Integer::intValue).toArray();
		SampleChunk[] inOrder = new SampleChunk[chunks.length];
		for (int c = 0; c < chunks.length; c++) {
			int from = c * SampleChunk.ROWS;
			inOrder[c] = SampleChunks.gather(chunks, Arrays.copyOfRange(order, from, from + chunks[c].size));
		}
		for (int k = 1; k < size; k++) {
			if (ids[order[k]].equals(ids[order[k - 1]])) {
				throw new IllegalArgumentException("two samples have the id '" + ids[order[k]] + "'");
			}
		}
		return inOrder;
	}

	private int last() {
		if (open == null) {
			throw new IllegalStateException("no sample begun");
		}
		return open.size - 1;
	}

	private void makeRoom() {
		if (open != null && open.size == SampleChunk.ROWS) {
			full.add(trimmed(open));
			open = null;
		}
		if (open == null) {
			open = new SampleChunk();
			open.id = new String[SampleChunk.ROWS];
			open.floorLevel = new short[SampleChunk.ROWS];
			open.xMetres = new double[SampleChunk.ROWS];
			open.yMetres = new double[SampleChunk.ROWS];
			open.start = new int[SampleChunk.ROWS + 1];
			open.accessPoint = new int[16];
			open.rssiDbm = new byte[16];
		}
	}

	private static SampleChunk trimmed(SampleChunk chunk) {
		int n = chunk.size;
		int readings = chunk.start[n];
		if (n < SampleChunk.ROWS) {
			chunk.id = Arrays.copyOf(chunk.id, n);
			chunk.floorLevel = Arrays.copyOf(chunk.floorLevel, n);
			chunk.xMetres = Arrays.copyOf(chunk.xMetres, n);
			chunk.yMetres = Arrays.copyOf(chunk.yMetres, n);
			chunk.timeMillis = chunk.timeMillis == null ? null : Arrays.copyOf(chunk.timeMillis, n);
			chunk.reason = chunk.reason == null ? null : Arrays.copyOf(chunk.reason, n);
			chunk.start = Arrays.copyOf(chunk.start, n + 1);
		}
		chunk.accessPoint = Arrays.copyOf(chunk.accessPoint, readings);
		chunk.rssiDbm = Arrays.copyOf(chunk.rssiDbm, readings);
		return chunk;
	}
}
