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
		add("Sample", table.id(row));
		add("State", table.isKept(row) ? "part of the map" : "set aside: " + table.reason(row));
		add("Time (UTC)", table.timeMillis(row) == SampleTable.NO_TIME ? "" : PropertyValues.time(table.timeMillis(row)));
		add("Site", survey.getSite() == null ? "" : ModelText.name(survey.getSite()));
		add("Floor (level)", PropertyValues.number(table.floorLevel(row), 0));
		add("x (m)", PropertyValues.number(table.xMetres(row), 2));
		add("y (m)", PropertyValues.number(table.yMetres(row), 2));
		signals(survey, table, row);
		add("Survey", ModelText.name(survey));
		add("Kind", PropertyValues.text(survey.getKind(), null));
		add("Device", survey.getDevice() == null ? "" : ModelText.name(survey.getDevice()));
		add("Surveyor (initials)", survey.getSurveyor());
	}

	private void signals(Survey survey, SampleTable table, int row) {
		int strongest = -1;
		int weakest = -1;
		for (int k = 0; k < table.heard(row); k++) {
			strongest = strongest < 0 || table.rssiDbm(row, k) > table.rssiDbm(row, strongest) ? k : strongest;
			weakest = weakest < 0 || table.rssiDbm(row, k) < table.rssiDbm(row, weakest) ? k : weakest;
		}
		add("Access points heard", PropertyValues.number(table.heard(row), 0));
		add("Strongest level", reading(survey, table, row, strongest));
		add("Weakest level", reading(survey, table, row, weakest));
	}

	private static String reading(Survey survey, SampleTable table, int row, int k) {
		if (k < 0) {
			return "";
		}
		String id = table.accessPoints().get(table.accessPoint(row, k));
		String address = EcoreUtil.getRootContainer(survey) instanceof Archive archive
				? ArchiveIndex.of(archive).accessPoint(id).map(ModelText::address).orElse(id)
				: id;
		return PropertyValues.number(table.rssiDbm(row, k), 0) + " dBm, " + address;
	}

	private void several(List<SampleRef> samples) {
		Tally tally = new Tally();
		samples.forEach(sample -> tally.add(sample.survey().table(), sample.row()));
		add("Samples selected", PropertyValues.number(tally.samples, 0));
		add("Samples set aside", PropertyValues.number(tally.setAside, 0));
		if (tally.hasTimes()) {
			add("First sample (UTC)", PropertyValues.time(tally.first));
			add("Last sample (UTC)", PropertyValues.time(tally.last));
		}
		add("Sites", named(samples, sample -> sample.survey().getSite() == null ? "" : ModelText.name(sample.survey().getSite())));
		add("Floors (levels)", PropertyValues.text(tally.levels, null));
		add("x (m)", range(tally.left, tally.right));
		add("y (m)", range(tally.bottom, tally.top));
		add("Readings", PropertyValues.number(tally.readings, 0));
		add("Heard per sample", tally.fewest + " to " + tally.most);
		add("Surveys", named(samples, sample -> ModelText.name(sample.survey())));
	}

	private static String range(double from, double to) {
		return PropertyValues.number(from, 2) + " to " + PropertyValues.number(to, 2);
	}

	/** The names that most samples have, each with how many. */
	private static String named(List<SampleRef> samples, Function<SampleRef, String> name) {
		Map<String, Long> counts = samples.stream().collect(Collectors.groupingBy(name, Collectors.counting()));
		String some = counts.entrySet().stream().sorted(Map.Entry.<String, Long>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
				.limit(MOST_NAMED).map(each -> each.getKey() + " (" + PropertyValues.number(each.getValue(), 0) + ")").collect(Collectors.joining(", "));
		return some + (counts.size() > MOST_NAMED ? " and " + (counts.size() - MOST_NAMED) + " more" : "");
	}

	private void add(String name, String value) {
		all.add(new Property(name, value, ""));
	}
}
