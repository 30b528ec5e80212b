package org.cairnfield.model.values;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

import org.cairnfield.core.map.RadioMap;

/**
 * All samples of a survey with their readings, in columns, sorted by id. Immutable: {@link #edit} makes a changed table,
 * which shares with this one all that has not changed.
 *
 * <p>Why not an object of the model for each sample: a million of them with adapters, notifications and lists would take
 * several times the memory of their numbers, and a table that shows them asks for numbers by row anyway. A table takes
 * about 90 bytes a sample, ids included, and 5 bytes a reading. Undo keeps the table from before the change: that costs
 * the columns of the chunks that were touched, and restoring it is exact. A row names the same sample in a table and in
 * whatever was edited from it.
 *
 * <p>Two tables are equal if they have the same samples, however they were made.
 */
public final class SampleTable {

	/** What {@link #timeMillis} answers where no time was recorded. */
	public static final long NO_TIME = RadioMap.NO_TIME;
	/** A survey without samples. */
	public static final SampleTable EMPTY = new SampleTable(List.of(), new SampleChunk[0]);

	final SampleChunk[] chunks;
	private final List<String> accessPoints;
	private final int size;

	/** Takes the chunks as its own; all of them are full except the last. */
	SampleTable(List<String> accessPoints, SampleChunk[] chunks) {
		this.accessPoints = accessPoints;
		this.chunks = chunks;
		this.size = chunks.length == 0 ? 0
				: (chunks.length - 1) * SampleChunk.ROWS + chunks[chunks.length - 1].size;
	}

	/** A table to be filled. */
	public static SampleTableBuilder builder() {
		return new SampleTableBuilder();
	}

	/** Changes to this table; the table itself stays as it is. */
	public SampleEdit edit() {
		return new SampleEdit(this);
	}

	/** The number of samples. */
	public int size() {
		return size;
	}

	/** Ids of access points, ascending; readings refer to them by index. Some may have no reading left. */
	public List<String> accessPoints() {
		return accessPoints;
	}

	/** Row of the sample with this id, or −1. */
	public int row(String id) {
		int low = 0;
		int high = size - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int order = id(middle).compareTo(id);
			if (order == 0) {
				return middle;
			} else if (order < 0) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return -1;
	}

	/** Id of a sample, ascending in the row. */
	public String id(int row) {
		return chunk(row).id[at(row)];
	}

	/** Level of its floor. */
	public int floorLevel(int row) {
		return chunk(row).floorLevel[at(row)];
	}

	/** Metres, in the frame of the site's floors. */
	public double xMetres(int row) {
		return chunk(row).xMetres[at(row)];
	}

	/** Metres, in the frame of the site's floors. */
	public double yMetres(int row) {
		return chunk(row).yMetres[at(row)];
	}

	/** Milliseconds since 1970-01-01T00:00Z, or {@link #NO_TIME}. */
	public long timeMillis(int row) {
		return chunk(row).timeMillis(at(row));
	}

	/** Whether the sample is part of the map. */
	public boolean isKept(int row) {
		return reason(row) == null;
	}

	/** Why the sample is set aside, or null while it is kept. */
	public String reason(int row) {
		return chunk(row).reason(at(row));
	}

	/** How many access points the sample heard. */
	public int heard(int row) {
		return chunk(row).heard(at(row));
	}

	/** Index into {@link #accessPoints} of reading {@code k} of a sample, k = 0 … heard − 1, ascending in k. */
	public int accessPoint(int row, int k) {
		SampleChunk chunk = chunk(row);
		return chunk.accessPoint[chunk.start[at(row)] + Objects.checkIndex(k, chunk.heard(at(row)))];
	}

	/** Level of reading {@code k} of a sample, in dBm, k = 0 … heard − 1. */
	public int rssiDbm(int row, int k) {
		SampleChunk chunk = chunk(row);
		return chunk.rssiDbm[chunk.start[at(row)] + Objects.checkIndex(k, chunk.heard(at(row)))];
	}

	/**
	 * Which reading of a row is of an access point: an index for {@link #rssiDbm}, or -1 where it was not heard.
	 *
	 * @param accessPoint index in {@link #accessPoints}, by which the readings of a row are sorted
	 */
	public int reading(int row, int accessPoint) {
		int low = 0;
		int high = heard(row) - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int at = accessPoint(row, middle);
			if (at == accessPoint) {
				return middle;
			} else if (at < accessPoint) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return -1;
	}

	/** The readings of a sample, on their own. */
	public Readings readings(int row) {
		SampleChunk chunk = chunk(row);
		int from = chunk.start[at(row)];
		String[] names = new String[chunk.heard(at(row))];
		for (int k = 0; k < names.length; k++) {
			names[k] = accessPoints.get(chunk.accessPoint[from + k]);
		}
		return new Readings(names, Arrays.copyOfRange(chunk.rssiDbm, from, from + names.length));
	}

	/** A sample, on its own. */
	public Sample sample(int row) {
		return new Sample(id(row), floorLevel(row), xMetres(row), yMetres(row), timeMillis(row), reason(row),
				readings(row));
	}

	/** Readings of all samples. */
	public long readingCount() {
		long count = 0;
		for (SampleChunk chunk : chunks) {
			count += chunk.start[chunk.size];
		}
		return count;
	}

	/** How many samples are part of the map. */
	public int keptCount() {
		int kept = size;
		for (SampleChunk chunk : chunks) {
			for (int i = 0; chunk.reason != null && i < chunk.size; i++) {
				kept -= chunk.reason[i] == null ? 0 : 1;
			}
		}
		return kept;
	}

	/** For each of {@link #accessPoints}, how many samples heard it, set aside or not. */
	public int[] heardCounts() {
		int[] counts = new int[accessPoints.size()];
		for (SampleChunk chunk : chunks) {
			for (int r = 0, end = chunk.start[chunk.size]; r < end; r++) {
				counts[chunk.accessPoint[r]]++;
			}
		}
		return counts;
	}

	private SampleChunk chunk(int row) {
		return chunks[Objects.checkIndex(row, size) / SampleChunk.ROWS];
	}

	private static int at(int row) {
		return row % SampleChunk.ROWS;
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof SampleTable table && SameSamples.in(this, table);
	}

	/** From the ids and the number heard only: cheap, and the same for equal tables. */
	@Override
	public int hashCode() {
		int hash = size;
		for (int row = 0; row < size; row++) {
			hash = hash * 31 + id(row).hashCode() + heard(row);
		}
		return hash;
	}

	/** The number of samples and readings. */
	@Override
	public String toString() {
		return size + " samples, " + readingCount() + " readings";
	}
}
