package org.cairnfield.exchange.export;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Geometries as a GeoPackage keeps them (OGC 12-128 clause 2.1.3): a short header, then well-known binary (OGC 06-103r4). */
final class Geometries {

	private static final int WGS84 = 4326;
	private static final byte LITTLE_ENDIAN = 1;
	/** Flags: little-endian, no envelope; and with an envelope of minx, maxx, miny, maxy. */
	private static final byte PLAIN = 0b0000_0001;
	private static final byte WITH_ENVELOPE = 0b0000_0011;
	private static final int POINT = 1;
	private static final int POLYGON = 3;

	private Geometries() {
	}

	static byte[] point(double[] lonLat) {
		ByteBuffer out = header(8 + 21, PLAIN);
		out.put(LITTLE_ENDIAN).putInt(POINT).putDouble(lonLat[0]).putDouble(lonLat[1]);
		return out.array();
	}

	static byte[] polygon(double[][] ring) {
		double minX = Double.POSITIVE_INFINITY;
		double maxX = Double.NEGATIVE_INFINITY;
		double minY = Double.POSITIVE_INFINITY;
		double maxY = Double.NEGATIVE_INFINITY;
		for (double[] corner : ring) {
			minX = Math.min(minX, corner[0]);
			maxX = Math.max(maxX, corner[0]);
			minY = Math.min(minY, corner[1]);
			maxY = Math.max(maxY, corner[1]);
		}
		ByteBuffer out = header(8 + 32 + 13 + 16 * ring.length, WITH_ENVELOPE);
		out.putDouble(minX).putDouble(maxX).putDouble(minY).putDouble(maxY);
		out.put(LITTLE_ENDIAN).putInt(POLYGON).putInt(1).putInt(ring.length);
		for (double[] corner : ring) {
			out.putDouble(corner[0]).putDouble(corner[1]);
		}
		return out.array();
	}

	private static ByteBuffer header(int bytes, byte flags) {
		return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN).put((byte) 'G').put((byte) 'P').put((byte) 0)
				.put(flags)
				.putInt(WGS84);
	}
}
