package org.cairnfield.curation.samples;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.EObject;

/**
 * The samples that a view shows, as they were when it was made: by index 0 … size − 1, survey by survey, and within each by
 * ascending row. Two numbers a sample, so that a million cost next to nothing; immutable, for any thread.
 */
public final class SampleRows {

	/** Nothing. */
	public static final SampleRows NONE = builder().done();

	/**
	 * What the samples of one survey have in common.
	 *
	 * @param source the survey itself, for the thread of its archive
	 * @param survey its id
	 * @param site   name
	 * @param device name; empty where the survey has none
	 * @param kind   whether the map is made of them, or measured with them
	 */
	public record Part(Survey source, String survey, String site, String device, SurveyKind kind, SampleTable table) {

		static Part of(Survey survey) {
			return new Part(survey, survey.getId(), survey.getSite() == null ? "" : ModelText.name(survey.getSite()),
					survey.getDevice() == null ? "" : ModelText.name(survey.getDevice()), survey.getKind(),
					survey.table());
		}
	}

	private final List<Part> parts;
	private final Map<Survey, Integer> partOfSurvey = new HashMap<>();
	private final int[] firsts;
	private final int[] partOf;
	private final int[] rowOf;

	private SampleRows(List<Part> parts, int[] firsts, int[] partOf, int[] rowOf) {
		this.parts = parts;
		this.firsts = firsts;
		this.partOf = partOf;
		this.rowOf = rowOf;
		for (int p = 0; p < parts.size(); p++) {
			partOfSurvey.put(parts.get(p).source(), p);
		}
	}

	/**
	 * Those of a scope, in the order of sites and surveys.
	 *
	 * @param scope of the archive: itself, a site, floor or survey; an access point or a device for what they heard; a split for
	 *              what it labels. What holds no samples has none
	 */
	public static SampleRows of(Archive archive, EObject scope) {
		Builder builder = new Builder();
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				IntPredicate wanted = wanted(archive, scope, survey);
				if (wanted != null) {
					builder.add(survey, wanted, false);
				}
			}
		}
		return builder.done();
	}

	/** Those that say they are on a floor; all surveys of its site are parts. */
	public static SampleRows of(Floor floor) {
		Builder builder = new Builder();
		if (floor.eContainer() instanceof Site site) {
			for (Survey survey : site.getSurveys()) {
				SampleTable table = survey.table();
				builder.add(survey, row -> table.floorLevel(row) == floor.getLevel(), true);
			}
		}
		return builder.done();
	}

	/** Rows to be collected. */
	public static Builder builder() {
		return new Builder();
	}

	/** Which rows of a survey are of a scope; null for none. */
	private static IntPredicate wanted(Archive archive, EObject scope, Survey survey) {
		SampleTable table = survey.table();
		if (scope instanceof Floor floor) {
			return floor.eContainer() == survey.getSite() ? row -> table.floorLevel(row) == floor.getLevel() : null;
		} else if (scope instanceof AccessPoint accessPoint) {
			int heard = table.accessPoints().indexOf(accessPoint.getId());
			return heard < 0 ? null : row -> table.reading(row, heard) >= 0;
		} else if (scope instanceof Split split) {
			Labels labels = split.getLabels();
			return labels == null ? null : row -> labels.row(new SampleKey(survey.getId(), table.id(row))) >= 0;
		}
		boolean all = scope == archive || scope == survey.getSite() || scope == survey
				|| scope instanceof Device && survey.getDevice() == scope;
		return all ? row -> true : null;
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

	/** What the sample's values are in. */
	public SampleTable table(int index) {
		return part(index).table();
	}

	/** Row in the survey's table. */
	public int row(int index) {
		return rowOf[index];
	}

	/** As selections and commands name it. */
	public SampleRef ref(int index) {
		return new SampleRef(part(index).source(), rowOf[index]);
	}

	/** First index of a survey, by its number; that of the number after the last is the size. */
	int first(int part) {
		return firsts[part];
	}

	/** Index of a sample, or −1 where the list does not have it. */
	public int indexOf(SampleRef ref) {
		Integer part = partOfSurvey.get(ref.survey());
		return part == null ? -1 : index(part, ref.row());
	}

	/** Index of the sample of that row of a survey, or −1 where the list does not have it. */
	public int index(int part, int row) {
		int found = Arrays.binarySearch(rowOf, firsts[part], firsts[part + 1], row);
		return found < 0 ? -1 : found;
	}

	/** Whether an index means the same sample in both. Rows outlive edits, but not a survey that is taken away. */
	public boolean hasSameRows(SampleRows other) {
		boolean same = parts.size() == other.parts.size() && Arrays.equals(firsts, other.firsts)
				&& Arrays.equals(rowOf, other.rowOf);
		for (int p = 0; same && p < parts.size(); p++) {
			same = parts.get(p).source() == other.parts.get(p).source()
					&& parts.get(p).table().size() == other.parts.get(p).table().size();
		}
		return same;
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

		/** @param evenEmpty whether a survey without a wanted row is a part */
		private void add(Survey survey, IntPredicate wanted, boolean evenEmpty) {
			part(Part.of(survey));
			for (int row = 0; row < survey.table().size(); row++) {
				if (wanted.test(row)) {
					row(row);
				}
			}
			if (!evenEmpty && firsts[parts.size() - 1] == size) {
				parts.remove(parts.size() - 1);
			}
		}

		public SampleRows done() {
			int[] bounds = Arrays.copyOf(firsts, parts.size() + 1);
			bounds[parts.size()] = size;
			return new SampleRows(List.copyOf(parts), bounds, Arrays.copyOf(partOf, size), Arrays.copyOf(rowOf, size));
		}
	}
}
