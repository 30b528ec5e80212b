package org.cairnfield.model.values;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Changes to samples of a table, gathered into a new one. Rows stay what they are: an edit adds no samples and removes
 * none. Only the columns written to are copied, a chunk at a time. Each method throws an IllegalArgumentException where a
 * value is out of range and an IndexOutOfBoundsException for a row that is not there. Not safe for use by several threads.
 */
public final class SampleEdit {

	private static final int FLOOR = 1;
	private static final int POSITION = 2;
	private static final int REASON = 4;

	private final SampleTable before;
	private final SampleChunk[] chunks;
	/** Of each chunk, which columns are copies already. */
	private final byte[] own;
	/** New readings by row, ascending. */
	private final TreeMap<Integer, Readings> readings = new TreeMap<>();
	private boolean changed;

	SampleEdit(SampleTable before) {
		this.before = before;
		this.chunks = before.chunks.clone();
		this.own = new byte[chunks.length];
	}

	/** Sets a sample aside for a reason, one line; keeps it where the reason is null or blank. */
	public SampleEdit reason(int row, String reason) {
		String given = SampleChecks.reason(reason);
		if (!Objects.equals(given, now(row).reason(at(row)))) {
			column(row, REASON).reason[at(row)] = given;
		}
		return this;
	}

	/** Gives a sample another position, in metres, finite. */
	public SampleEdit position(int row, double xMetres, double yMetres) {
		double x = SampleChecks.position(xMetres);
		double y = SampleChecks.position(yMetres);
		SampleChunk chunk = now(row);
		if (chunk.xMetres[at(row)] != x || chunk.yMetres[at(row)] != y) {
			column(row, POSITION).xMetres[at(row)] = x;
			chunks[row / SampleChunk.ROWS].yMetres[at(row)] = y;
		}
		return this;
	}

	/** Puts a sample on another floor, −32768 … 32767. */
	public SampleEdit floorLevel(int row, int level) {
		short floor = SampleChecks.floorLevel(level);
		if (now(row).floorLevel[at(row)] != floor) {
			column(row, FLOOR).floorLevel[at(row)] = floor;
		}
		return this;
	}

	/** Gives a sample other readings. */
	public SampleEdit readings(int row, Readings given) {
		Objects.requireNonNull(given);
		now(row);
		readings.put(row, given);
		return this;
	}

	/** The changed table; the same table where nothing has changed. The edit must not be used afterwards. */
	public SampleTable done() {
		readings.entrySet().removeIf(e -> e.getValue().equals(before.readings(e.getKey())));
		if (readings.isEmpty()) {
			return changed ? new SampleTable(before.accessPoints(), chunks) : before;
		}
		List<String> names = allAccessPoints();
		if (!names.equals(before.accessPoints())) {
			for (int c = 0; c < chunks.length; c++) {
				chunks[c] = chunks[c].share();
				chunks[c].accessPoint = chunks[c].accessPoint.clone();
			}
			// the readings of a sample stay in order: both lists ascend
			AccessPointOrder.apply(chunks, before.accessPoints(), names);
		}
		for (int c = 0; c < chunks.length; c++) {
			int first = c * SampleChunk.ROWS;
			Map<Integer, Readings> here = readings.subMap(first, first + SampleChunk.ROWS);
			if (!here.isEmpty()) {
				chunks[c] = withReadings(chunks[c], first, here, names);
			}
		}
		return new SampleTable(names, chunks);
	}

	private List<String> allAccessPoints() {
		TreeSet<String> names = new TreeSet<>(before.accessPoints());
		for (Readings given : readings.values()) {
			for (int k = 0; k < given.size(); k++) {
				names.add(given.accessPoint(k));
			}
		}
		return names.size() == before.accessPoints().size() ? before.accessPoints() : List.copyOf(names);
	}

	private static SampleChunk withReadings(SampleChunk chunk, int first, Map<Integer, Readings> given,
			List<String> names) {
		SampleChunk made = chunk.share();
		made.start = new int[chunk.size + 1];
		for (int i = 0; i < chunk.size; i++) {
			Readings here = given.get(first + i);
			made.start[i + 1] = made.start[i] + (here == null ? chunk.heard(i) : here.size());
		}
		made.accessPoint = new int[made.start[chunk.size]];
		made.rssiDbm = new byte[made.start[chunk.size]];
		for (int i = 0; i < chunk.size; i++) {
			Readings here = given.get(first + i);
			if (here == null) {
				System.arraycopy(chunk.accessPoint, chunk.start[i], made.accessPoint, made.start[i], chunk.heard(i));
				System.arraycopy(chunk.rssiDbm, chunk.start[i], made.rssiDbm, made.start[i], chunk.heard(i));
			} else {
				for (int k = 0; k < here.size(); k++) {
					made.accessPoint[made.start[i] + k] = Collections.binarySearch(names, here.accessPoint(k));
					made.rssiDbm[made.start[i] + k] = (byte) here.rssiDbm(k);
				}
			}
		}
		return made;
	}

	private SampleChunk now(int row) {
		return chunks[Objects.checkIndex(row, before.size()) / SampleChunk.ROWS];
	}

	private static int at(int row) {
		return row % SampleChunk.ROWS;
	}

	/** The chunk of a row, with the column its own. */
	private SampleChunk column(int row, int which) {
		int c = row / SampleChunk.ROWS;
		if (own[c] == 0) {
			chunks[c] = chunks[c].share();
		}
		SampleChunk chunk = chunks[c];
		if ((own[c] & which) == 0) {
			switch (which) {
			case FLOOR -> chunk.floorLevel = chunk.floorLevel.clone();
			case POSITION -> {
				chunk.xMetres = chunk.xMetres.clone();
				chunk.yMetres = chunk.yMetres.clone();
			}
			default -> chunk.reason = chunk.reason == null ? new String[chunk.size]
					: Arrays.copyOf(chunk.reason, chunk.size);
			}
			own[c] |= (byte) which;
		}
		changed = true;
		return chunk;
	}
}
