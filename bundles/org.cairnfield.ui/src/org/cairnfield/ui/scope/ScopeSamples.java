package org.cairnfield.ui.scope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.EObject;

/**
 * The samples of a scope as they were when it was made, in the order of sites, surveys and rows. Two numbers a sample, so that
 * a million cost next to nothing; tables are immutable, so it may be read on any thread.
 */
public final class ScopeSamples {

	private final List<Survey> surveys;
	private final List<SampleTable> tables;
	private final int[] surveyOf;
	private final int[] rowOf;

	private ScopeSamples(List<Survey> surveys, List<SampleTable> tables, int[] surveyOf, int[] rowOf) {
		this.surveys = surveys;
		this.tables = tables;
		this.surveyOf = surveyOf;
		this.rowOf = rowOf;
	}

	/** @param scope see {@link ArchiveSelection#scope}; what holds no samples has none */
	public static ScopeSamples of(Archive archive, EObject scope) {
		Builder builder = new Builder();
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (scope instanceof Floor floor) {
					if (floor.eContainer() == site) {
						SampleTable table = survey.table();
						builder.add(survey, row -> table.floorLevel(row) == floor.getLevel());
					}
				} else if (scope instanceof AccessPoint accessPoint) {
					builder.addHearing(survey, accessPoint.getId());
				} else if (scope instanceof Split split) {
					builder.addLabelled(survey, split.getLabels());
				} else if (scope == archive || scope == site || scope == survey
						|| scope instanceof Device && survey.getDevice() == scope) {
					builder.add(survey, row -> true);
				}
			}
		}
		return builder.done();
	}

	public int size() {
		return surveyOf.length;
	}

	public Survey survey(int index) {
		return surveys.get(surveyOf[index]);
	}

	/** The table that the sample's values are in. */
	public SampleTable table(int index) {
		return tables.get(surveyOf[index]);
	}

	/** Row in {@link #table}. */
	public int row(int index) {
		return rowOf[index];
	}

	public SampleRef ref(int index) {
		return new SampleRef(survey(index), rowOf[index]);
	}

	/** Where a sample is in this list, or -1. */
	public int indexOf(SampleRef ref) {
		int survey = surveys.indexOf(ref.survey());
		if (survey < 0) {
			return -1;
		}
		int from = lowerBound(survey);
		int to = lowerBound(survey + 1);
		int found = Arrays.binarySearch(rowOf, from, to, ref.row());
		return found < 0 ? -1 : found;
	}

	private int lowerBound(int survey) {
		int low = 0;
		int high = surveyOf.length;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (surveyOf[middle] < survey) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}

	private interface RowTest {
		boolean test(int row);
	}

	private static final class Builder {
		private final List<Survey> surveys = new ArrayList<>();
		private final List<SampleTable> tables = new ArrayList<>();
		private int[] surveyOf = new int[1024];
		private int[] rowOf = new int[1024];
		private int size;

		void add(Survey survey, RowTest test) {
			SampleTable table = survey.table();
			int number = surveys.size();
			surveys.add(survey);
			tables.add(table);
			for (int row = 0; row < table.size(); row++) {
				if (test.test(row)) {
					if (size == rowOf.length) {
						surveyOf = Arrays.copyOf(surveyOf, 2 * size);
						rowOf = Arrays.copyOf(rowOf, 2 * size);
					}
					surveyOf[size] = number;
					rowOf[size++] = row;
				}
			}
		}

		void addHearing(Survey survey, String accessPointId) {
			SampleTable table = survey.table();
			int wanted = table.accessPoints().indexOf(accessPointId);
			if (wanted >= 0) {
				add(survey, row -> level(table, row, wanted) != NOT_HEARD);
			}
		}

		void addLabelled(Survey survey, Labels labels) {
			if (labels != null) {
				SampleTable table = survey.table();
				add(survey, row -> labels.row(new SampleKey(survey.getId(), table.id(row))) >= 0);
			}
		}

		ScopeSamples done() {
			return new ScopeSamples(surveys, tables, Arrays.copyOf(surveyOf, size), Arrays.copyOf(rowOf, size));
		}
	}

	/** What {@link #level} says where the access point was not heard. */
	public static final int NOT_HEARD = Integer.MIN_VALUE;

	/**
	 * RSSI (dBm) of an access point in a sample.
	 *
	 * @param accessPoint index in {@link SampleTable#accessPoints}
	 * @return {@link #NOT_HEARD} where it was not
	 */
	public static int level(SampleTable table, int row, int accessPoint) {
		int low = 0;
		int high = table.heard(row) - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int at = table.accessPoint(row, middle);
			if (at == accessPoint) {
				return table.rssiDbm(row, middle);
			} else if (at < accessPoint) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return NOT_HEARD;
	}
}
