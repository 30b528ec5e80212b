package org.cairnfield.curation.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.model.values.SampleTable;

/**
 * The samples that a table lists, as they were when it was made, by index 0 … size − 1. Two numbers a sample; immutable, for
 * any thread.
 */
public final class SampleRows {

	/** Nothing. */
	public static final SampleRows NONE = builder().done();

	/**
	 * What the samples of one survey have in common.
	 *
	 * @param device name; empty where the survey has none
	 */
	public record Part(String survey, String site, String device, SampleTable table) {
	}

	private final List<Part> parts;
	private final int[] firsts;
	private final int[] partOf;
	private final int[] rowOf;

	private SampleRows(List<Part> parts, int[] firsts, int[] partOf, int[] rowOf) {
		this.parts = parts;
		this.firsts = firsts;
		this.partOf = partOf;
		this.rowOf = rowOf;
	}

	/** Rows to be collected. */
	public static Builder builder() {
		return new Builder();
	}

	public int size() {
		return rowOf.length;
	}

	/** The surveys, in order of their rows. */
	public List<Part> parts() {
		return parts;
	}

	/** Number of the survey in {@link #parts}. */
	public int partNumber(int index) {
		return partOf[index];
	}

	/** The survey. */
	public Part part(int index) {
		return parts.get(partOf[index]);
	}

	/** Row in the survey's table. */
	public int row(int index) {
		return rowOf[index];
	}

	/** First index of a survey, by its number; that of the number after the last is the size. */
	int first(int part) {
		return firsts[part];
	}

	/** Index of the sample of that row of a survey, or −1 where the list does not have it. */
	public int index(int part, int row) {
		int found = Arrays.binarySearch(rowOf, firsts[part], firsts[part + 1], row);
		return found < 0 ? -1 : found;
	}

	/** Numbers of surveys by their ids. */
	Map<String, Integer> numbers() {
		Map<String, Integer> numbers = new HashMap<>();
		for (int p = 0; p < parts.size(); p++) {
			numbers.put(parts.get(p).survey(), p);
		}
		return numbers;
	}

	/** Collects rows: survey by survey, and within each by ascending row. */
	public static final class Builder {
		private final List<Part> parts = new ArrayList<>();
		private int[] firsts = new int[16];
		private int[] partOf = new int[1024];
		private int[] rowOf = new int[1024];
		private int size;

		private Builder() {
		}

		/** Begins a survey. */
		public Builder part(Part part) {
			if (parts.size() == firsts.length) {
				firsts = Arrays.copyOf(firsts, 2 * firsts.length);
			}
			firsts[parts.size()] = size;
			parts.add(part);
			return this;
		}

		/**
		 * A sample of the survey begun last.
		 *
		 * @throws IllegalArgumentException unless it comes after the one before
		 */
		public Builder row(int row) {
			int part = parts.size() - 1;
			if (size > firsts[part] && rowOf[size - 1] >= row) {
				throw new IllegalArgumentException("row " + row + " after row " + rowOf[size - 1]);
			}
			if (size == rowOf.length) {
				partOf = Arrays.copyOf(partOf, 2 * size);
				rowOf = Arrays.copyOf(rowOf, 2 * size);
			}
			partOf[size] = part;
			rowOf[size++] = row;
			return this;
		}

		/** All samples of a survey. */
		public Builder all(Part part) {
			part(part);
			for (int row = 0; row < part.table().size(); row++) {
				row(row);
			}
			return this;
		}

		public SampleRows done() {
			int[] bounds = Arrays.copyOf(firsts, parts.size() + 1);
			bounds[parts.size()] = size;
			return new SampleRows(List.copyOf(parts), bounds, Arrays.copyOf(partOf, size), Arrays.copyOf(rowOf, size));
		}
	}
}
