package org.cairnfield.model.values;

/**
 * Some consecutive samples of a table, in columns. Once in a table nothing in it changes; a {@link SampleEdit} copies the
 * columns that it writes to and shares the others.
 */
final class SampleChunk {

	/** Samples of a chunk, except the last one of a table. A change copies columns of this length. */
	static final int ROWS = 1024;

	int size;
	String[] id;
	short[] floorLevel;
	double[] xMetres;
	double[] yMetres;
	/** Null where no sample has a time. */
	long[] timeMillis;
	/** Null where no sample is set aside; null in it for a sample that is kept. */
	String[] reason;
	/** Sample i has the readings start[i] … start[i + 1] − 1. */
	int[] start;
	/** Indices into the table's list, ascending within a sample. */
	int[] accessPoint;
	byte[] rssiDbm;

	/** Another chunk with the same columns. */
	SampleChunk share() {
		SampleChunk same = new SampleChunk();
		same.size = size;
		same.id = id;
		same.floorLevel = floorLevel;
		same.xMetres = xMetres;
		same.yMetres = yMetres;
		same.timeMillis = timeMillis;
		same.reason = reason;
		same.start = start;
		same.accessPoint = accessPoint;
		same.rssiDbm = rssiDbm;
		return same;
	}

	long timeMillis(int i) {
		return timeMillis == null ? SampleTable.NO_TIME : timeMillis[i];
	}

	String reason(int i) {
		return reason == null ? null : reason[i];
	}

	int heard(int i) {
		return start[i + 1] - start[i];
	}
}
