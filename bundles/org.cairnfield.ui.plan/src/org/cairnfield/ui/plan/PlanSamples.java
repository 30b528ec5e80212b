package org.cairnfield.ui.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;

/** The samples of a floor in columns, of all surveys of its site, in the order of surveys and rows. Immutable. */
public final class PlanSamples {

	/** None at all. */
	public static final PlanSamples NONE = new PlanSamples(List.of(), new int[0], new int[0]);

	private final List<Survey> surveys;
	private final List<SampleTable> tables;
	private final int[] surveyOf;
	private final int[] rowOf;
	private final double[] xMetres;
	private final double[] yMetres;

	private PlanSamples(List<Survey> surveys, int[] surveyOf, int[] rowOf) {
		this.surveys = surveys;
		this.tables = surveys.stream().map(Survey::table).toList();
		this.surveyOf = surveyOf;
		this.rowOf = rowOf;
		xMetres = new double[rowOf.length];
		yMetres = new double[rowOf.length];
		for (int i = 0; i < rowOf.length; i++) {
			xMetres[i] = table(i).xMetres(rowOf[i]);
			yMetres[i] = table(i).yMetres(rowOf[i]);
		}
	}

	/** Those that say they are on the floor. */
	public static PlanSamples of(Floor floor) {
		Site site = (Site) floor.eContainer();
		if (site == null) {
			return NONE;
		}
		List<Survey> surveys = new ArrayList<>(site.getSurveys());
		int[] surveyOf = new int[1024];
		int[] rowOf = new int[1024];
		int size = 0;
		for (int s = 0; s < surveys.size(); s++) {
			SampleTable table = surveys.get(s).table();
			for (int row = 0; row < table.size(); row++) {
				if (table.floorLevel(row) == floor.getLevel()) {
					if (size == rowOf.length) {
						surveyOf = Arrays.copyOf(surveyOf, 2 * size);
						rowOf = Arrays.copyOf(rowOf, 2 * size);
					}
					surveyOf[size] = s;
					rowOf[size++] = row;
				}
			}
		}
		return new PlanSamples(surveys, Arrays.copyOf(surveyOf, size), Arrays.copyOf(rowOf, size));
	}

	public int size() {
		return rowOf.length;
	}

	/** All surveys of the site, also those without a sample here. */
	public List<Survey> surveys() {
		return surveys;
	}

	/** Index in {@link #surveys}. */
	public int surveyIndex(int sample) {
		return surveyOf[sample];
	}

	public Survey survey(int sample) {
		return surveys.get(surveyOf[sample]);
	}

	/** What the sample's values are in. */
	public SampleTable table(int sample) {
		return tables.get(surveyOf[sample]);
	}

	/** Row in {@link #table}. */
	public int row(int sample) {
		return rowOf[sample];
	}

	public boolean isKept(int sample) {
		return table(sample).isKept(rowOf[sample]);
	}

	public SampleRef ref(int sample) {
		return new SampleRef(survey(sample), rowOf[sample]);
	}

	/** Where a sample is, or -1 if it is elsewhere. */
	public int indexOf(SampleRef ref) {
		int survey = surveys.indexOf(ref.survey());
		if (survey < 0) {
			return -1;
		}
		int low = 0;
		int high = rowOf.length - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int order = surveyOf[middle] != survey ? Integer.compare(surveyOf[middle], survey)
					: Integer.compare(rowOf[middle], ref.row());
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

	/** Of all samples, metres; not to be changed. */
	public double[] xMetres() {
		return xMetres;
	}

	/** Of all samples, metres; not to be changed. */
	public double[] yMetres() {
		return yMetres;
	}
}
