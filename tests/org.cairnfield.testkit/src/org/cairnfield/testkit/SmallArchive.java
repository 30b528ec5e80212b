package org.cairnfield.testkit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.model.values.Scope;

/** One corridor of the Tide House: 24 samples, a test survey of 6, a split of two clusters with one noise sample. */
public final class SmallArchive {

	private SmallArchive() {
	}

	public static OpenArchive create(ArchiveStore store, Path folder) throws Exception {
		OpenArchive open = store.create(folder, "Tide House alone");
		Archive archive = open.archive();
		for (int i = 0; i < 6; i++) {
			AccessPoint ap = ModelFactory.eINSTANCE.createAccessPoint();
			ap.setId("00005e00530" + i);
			ap.setAddress("00:00:5E:00:53:0" + i);
			archive.getAccessPoints().add(ap);
		}
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		site.setName("Tide House");
		site.setGeoreference(new Georeference(40, -40, 30));
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(0);
		floor.setOutline(Outline.parse("0,0 60,0 60,10 0,10"));
		site.getFloors().add(floor);
		archive.getSites().add(site);
		site.getSurveys().add(survey("th-spring", SurveyKind.TRAINING, 24, 2.0));
		site.getSurveys().add(survey("th-test", SurveyKind.TEST, 6, 7.3));
		archive.getSplits().add(split());
		return open;
	}

	private static Survey survey(String id, SurveyKind kind, int samples, double apart) {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id);
		survey.setName(id);
		survey.setKind(kind);
		survey.setDate(LocalDate.of(2031, 4, 7));
		SampleTableBuilder table = SampleTable.builder();
		for (int s = 0; s < samples; s++) {
			double x = 1 + s * apart;
			table.sample(String.format("S%02d", s), 0, x, 5).time(1_933_000_000_000L + s * 10_000L);
			for (int a = 0; a < 6; a++) {
				int level = (int) Math.round(-35 - 1.3 * Math.abs(x - 10 * a) - (s * 7 + a * 3) % 5);
				if (level > -95) {
					table.reading("00005e00530" + a, level);
				}
			}
		}
		Samples holder = ModelFactory.eINSTANCE.createSamples();
		holder.setTable(table.build());
		survey.setSamples(holder);
		return survey;
	}

	private static Split split() {
		Split split = ModelFactory.eINSTANCE.createSplit();
		split.setId("all");
		split.setScope(Scope.ARCHIVE);
		split.setRepresentation("positive");
		split.setDistance("city-block");
		split.setEpsilon(30);
		split.setMinPts(3);
		split.setGate(0);
		split.setThreshold(0.1);
		LabelsBuilder labels = Labels.builder();
		List<Proposal> proposals = new ArrayList<>();
		for (int s = 0; s < 24; s++) {
			SampleKey key = new SampleKey("th-spring", String.format("S%02d", s));
			boolean noise = s == 12;
			labels.add(key, noise ? Labels.NOISE : s < 12 ? 0 : 1, noise ? Role.NOISE : Role.CORE);
			if (noise) {
				proposals.add(new Proposal(key, 0, 0.95, 0.1, new SampleKey("th-spring", "S11"), 0));
			}
		}
		split.setLabels(labels.build());
		split.setProposals(Proposals.of(proposals));
		return split;
	}

	public static Split splitOf(OpenArchive open) {
		return open.archive().getSplits().get(0);
	}

	public static SampleKey noise() {
		return new SampleKey("th-spring", "S12");
	}
}
