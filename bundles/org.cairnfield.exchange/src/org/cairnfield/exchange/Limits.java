package org.cairnfield.exchange;

/**
 * How much a survey may ask for before intake stops with an {@link IntakeException}, so that memory stays
 * bounded whatever a file holds.
 *
 * @param recordChars      characters of one record
 * @param columns          columns of one table
 * @param accessPoints     different access points
 * @param sites            different sites, and different devices
 * @param readings         readings in all; about 12 bytes each while they are collected
 * @param expansionFold    how many times its size a compressed file may grow, once past 64 MiB
 * @param quarantineKept   rows of one file kept for its quarantine file; further ones are only counted
 */
public record Limits(int recordChars, int columns, int accessPoints, int sites, long readings, int expansionFold,
		int quarantineKept) {

	/** Limits for ordinary use; readings by the memory that the program may have. */
	public static Limits usual() {
		return new Limits(8 << 20, 50_000, 500_000, 10_000,
				Math.min(1_400_000_000L, Runtime.getRuntime().maxMemory() / 16), 1000, 10_000);
	}
}
