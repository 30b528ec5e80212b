package org.cairnfield.ui.internal.properties.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

/** What there is to know about a sample, or about several together. */
public final class SampleProperties {

	private static final int MOST_NAMED = 5;

	private final List<Property> all = new ArrayList<>();

	private SampleProperties() {
	}

	/** @param samples one or more, in the archive */
	public static List<Property> of(List<SampleRef> samples) {
		SampleProperties made = new SampleProperties();
		if (samples.size() == 1) {
			made.one(samples.get(0));
		} else {
			made.several(samples);
		}
		return made.all;
	}

	private void one(SampleRef ref) {
		SampleTable table = ref.survey().table();
		int row = ref.row();
		Survey survey = ref.survey();
		add(Messages.SampleProperties_sample, table.id(row));
		add(Messages.SampleProperties_state, table.isKept(row) ? Messages.SampleProperties_partOfTheMap
				: NLS.bind(Messages.SampleProperties_setAside, table.reason(row)));
		add(Messages.SampleProperties_timeUtc,
				table.timeMillis(row) == SampleTable.NO_TIME ? "" : PropertyValues.time(table.timeMillis(row)));
		add(Messages.SampleProperties_site, survey.getSite() == null ? "" : ModelText.name(survey.getSite()));
		add(Messages.SampleProperties_floorLevel, PropertyValues.number(table.floorLevel(row), 0));
		add("x (m)", PropertyValues.number(table.xMetres(row), 2));
		add("y (m)", PropertyValues.number(table.yMetres(row), 2));
		signals(survey, table, row);
		add(Messages.SampleProperties_survey, ModelText.name(survey));
		add(Messages.SampleProperties_kind, PropertyValues.text(survey.getKind(), null));
		add(Messages.SampleProperties_device, survey.getDevice() == null ? "" : ModelText.name(survey.getDevice()));
		add(Messages.SampleProperties_surveyorInitials, survey.getSurveyor());
	}

	private void signals(Survey survey, SampleTable table, int row) {
		int strongest = -1;
		int weakest = -1;
		for (int k = 0; k < table.heard(row); k++) {
			strongest = strongest < 0 || table.rssiDbm(row, k) > table.rssiDbm(row, strongest) ? k : strongest;
			weakest = weakest < 0 || table.rssiDbm(row, k) < table.rssiDbm(row, weakest) ? k : weakest;
		}
		add(Messages.SampleProperties_accessPointsHeard, PropertyValues.number(table.heard(row), 0));
		add(Messages.SampleProperties_strongestLevel, reading(survey, table, row, strongest));
		add(Messages.SampleProperties_weakestLevel, reading(survey, table, row, weakest));
	}

	private static String reading(Survey survey, SampleTable table, int row, int k) {
		if (k < 0) {
			return "";
		}
		String id = table.accessPoints().get(table.accessPoint(row, k));
		String address = EcoreUtil.getRootContainer(survey) instanceof Archive archive
				? ArchiveIndex.of(archive).accessPoint(id).map(ModelText::address).orElse(id)
				: id;
		return NLS.bind(Messages.SampleProperties_dbm, PropertyValues.number(table.rssiDbm(row, k), 0), address);
	}

	private void several(List<SampleRef> samples) {
		Tally tally = new Tally();
		samples.forEach(sample -> tally.add(sample.survey().table(), sample.row()));
		add(Messages.SampleProperties_samplesSelected, PropertyValues.number(tally.samples, 0));
		add(Messages.SampleProperties_samplesSetAside, PropertyValues.number(tally.setAside, 0));
		if (tally.hasTimes()) {
			add(Messages.SampleProperties_firstSampleUtc, PropertyValues.time(tally.first));
			add(Messages.SampleProperties_lastSampleUtc, PropertyValues.time(tally.last));
		}
		add(Messages.SampleProperties_sites, named(samples,
				sample -> sample.survey().getSite() == null ? "" : ModelText.name(sample.survey().getSite())));
		add(Messages.SampleProperties_floorsLevels, PropertyValues.text(tally.levels, null));
		add("x (m)", range(tally.left, tally.right));
		add("y (m)", range(tally.bottom, tally.top));
		add(Messages.SampleProperties_readings, PropertyValues.number(tally.readings, 0));
		add(Messages.SampleProperties_heardPerSample, NLS.bind(Messages.SampleProperties_to, tally.fewest, tally.most));
		add(Messages.SampleProperties_surveys, named(samples, sample -> ModelText.name(sample.survey())));
	}

	private static String range(double from, double to) {
		return NLS.bind(Messages.SampleProperties_to, PropertyValues.number(from, 2), PropertyValues.number(to, 2));
	}

	/** The names that most samples have, each with how many. */
	private static String named(List<SampleRef> samples, Function<SampleRef, String> name) {
		Map<String, Long> counts = samples.stream().collect(Collectors.groupingBy(name, Collectors.counting()));
		String some = counts.entrySet().stream()
				.sorted(Map.Entry.<String, Long>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
				.limit(MOST_NAMED).map(each -> each.getKey() + " (" + PropertyValues.number(each.getValue(), 0) + ")")
				.collect(Collectors.joining(", "));
		return some
				+ (counts.size() > MOST_NAMED ? NLS.bind(Messages.SampleProperties_andMore, counts.size() - MOST_NAMED)
						: "");
	}

	private void add(String name, String value) {
		all.add(new Property(name, value, ""));
	}
}
