package org.cairnfield.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.cairnfield.core.cluster.Role;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.samples.ClusterMarks;
import org.cairnfield.curation.samples.FindingMarks;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;

/** Tables of samples to test with. */
public final class SmallTables {

	/** 2031-04-07T09:30:00Z. */
	public static final long MORNING = 1_933_320_600_000L;

	private SmallTables() {
	}

	/**
	 * Five samples of two surveys: A1, A2, A3 at the Sailmakers' Hall by guide A, B1 and B2 at the Tide House by nobody knows
	 * what. A2 is set aside, A3 and B1 have findings, A1 is core of cluster 7, A2 noise, the others are in no split.
	 */
	public static SampleContent five() {
		SampleTable hall = SampleTable.builder()
				.sample("SH-A1", 0, 1.5, 2).time(MORNING).reading("00005e005301", -50).reading("00005e005302", -70)
				.sample("SH-A2", 1, 12.404, 7.85).time(MORNING + 60_000).reason("courier's hotspot")
				.reading("00005e005302", -55)
				.sample("SH-A3", 1, 3, -4).reading("00005e005301", -65).reading("00005e005302", -60)
				.reading("00005e005303", -55)
				.reading("00005e005304", -90).build();
		SampleTable tide = SampleTable.builder().sample("TH-B1", 2, 0, 0).time(MORNING + 86_400_000)
				.reading("00005e005303", -61)
				.sample("TH-B2", -1, 5, 5).build();
		SampleRows rows = SampleRows.builder()
				.all(new SampleRows.Part(null, "sh-spring", "Sailmakers' Hall", "Wrist guide A", SurveyKind.TRAINING,
						hall))
				.all(new SampleRows.Part(null, "th-spring", "Tide House", "", SurveyKind.TEST, tide)).done();
		Labels labels = Labels.builder().add(new SampleKey("sh-spring", "SH-A1"), 7, Role.CORE)
				.add(new SampleKey("sh-spring", "SH-A2"), Labels.NOISE, Role.NOISE).build();
		return new SampleContent(rows,
				FindingMarks.of(rows, List.of(finding("swapped-axes", Severity.WARNING, "sh-spring/SH-A3"),
						finding("wrong-floor", Severity.ERROR, "sh-spring/SH-A3", "th-spring/TH-B1"),
						finding("gap", Severity.NOTE, "elsewhere/SH-A1", "sh-spring/gone"))),
				ClusterMarks.of(rows, labels),
				Map.of("00005e005301", "00:00:5E:00:53:01", "00005e005302", "00:00:5E:00:53:02",
						"00005e005303", "00:00:5E:00:53:03"));
	}

	static Finding finding(String rule, Severity severity, String... samples) {
		List<Subject> subjects = new ArrayList<>();
		for (String sample : samples) {
			subjects.add(new Subject.OfSample(sample, sample.hashCode(), sample.hashCode()));
		}
		return new Finding(rule, severity, "something is odd", subjects, List.of(), List.of(), Optional.empty());
	}

	/** Many samples with many ties and gaps. */
	public static SampleContent random(long seed, int size) {
		Random random = new Random(seed);
		SampleRows.Builder rows = SampleRows.builder();
		LabelsBuilder labels = Labels.builder();
		List<Finding> findings = new ArrayList<>();
		int surveys = 1 + random.nextInt(4);
		for (int s = 0; s < surveys; s++) {
			SampleTableBuilder table = SampleTable.builder();
			for (int n = 0; n < size / surveys; n++) {
				String id = "S" + (10_000 + n);
				table.sample(id, random.nextInt(4) - 1, random.nextInt(40) / 4.0, random.nextGaussian() * 10);
				if (random.nextInt(3) > 0) {
					table.time(MORNING + random.nextInt(20) * 3_600_000L);
				}
				if (random.nextInt(5) == 0) {
					table.reason(List.of("measured twice", "position doubtful").get(random.nextInt(2)));
				}
				for (int a = 0, heard = random.nextInt(6); a < heard; a++) {
					table.reading("00005e00530" + a, -90 + random.nextInt(60));
				}
				if (random.nextInt(3) == 0) {
					int cluster = random.nextInt(4) - 1;
					labels.add(new SampleKey("survey-" + s, id), cluster,
							cluster < 0 ? Role.NOISE : Role.values()[random.nextInt(2)]);
				}
				if (random.nextInt(6) == 0) {
					findings.add(finding("rule-" + random.nextInt(3), Severity.values()[random.nextInt(3)],
							"survey-" + s + '/' + id));
				}
			}
			rows.all(new SampleRows.Part(null, "survey-" + s, "Tide House", s == 0 ? "" : "guide " + s % 2,
					SurveyKind.values()[s % 2], table.build()));
		}
		SampleRows done = rows.done();
		return new SampleContent(done, FindingMarks.of(done, findings), ClusterMarks.of(done, labels.build()),
				Map.of());
	}
}
