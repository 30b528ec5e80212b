package org.cairnfield.curation.split;

import java.util.List;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.SetProposalsCommand;
import org.cairnfield.curation.propose.SplitProposals;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.model.values.Scope;
import org.cairnfield.testkit.SmallMaps;

/** Archives for tests, made of radio maps. */
public final class SmallArchives {

	private SmallArchives() {
	}

	/** One training survey "spring" and, where there are test samples, a test survey "visit", at the sites of the map. */
	public static Archive of(RadioMap training, RadioMap test) {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		archive.setName("marrow-quay");
		for (String name : training.sites()) {
			Site site = ModelFactory.eINSTANCE.createSite();
			site.setId(Ids.from(name.toLowerCase(java.util.Locale.ROOT)));
			site.setName(name);
			archive.getSites().add(site);
		}
		for (String address : training.accessPoints()) {
			AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
			accessPoint.setId(apId(address));
			accessPoint.setAddress(address);
			archive.getAccessPoints().add(accessPoint);
		}
		add(archive, "spring", SurveyKind.TRAINING, training);
		if (test != null) {
			add(archive, "visit", SurveyKind.TEST, test);
		}
		return archive;
	}

	private static String apId(String address) {
		return Ids.from("ap-" + address.replace(":", ""));
	}

	/** Another survey of the archive's sites; ids of samples are S0, S1 … */
	public static void add(Archive archive, String id, SurveyKind kind, RadioMap map) {
		for (int at = 0; at < map.sites().size(); at++) {
			int wanted = at;
			SampleTableBuilder table = SampleTable.builder();
			for (int s = 0; s < map.size(); s++) {
				if (map.site(s) == wanted) {
					table.sample(String.format(java.util.Locale.ROOT, "S%05d", s), map.floor(s), map.x(s), map.y(s));
					for (int k = map.firstReading(s); k < map.endReading(s); k++) {
						table.reading(apId(map.accessPoints().get(map.accessPoint(k))), map.rssiDbm(k));
					}
				}
			}
			Survey survey = ModelFactory.eINSTANCE.createSurvey();
			survey.setId(at == 0 ? id : id + "-" + at);
			survey.setName(survey.getId());
			survey.setKind(kind);
			Samples samples = ModelFactory.eINSTANCE.createSamples();
			samples.setTable(table.build());
			survey.setSamples(samples);
			String site = map.sites().get(at);
			archive.getSites().stream().filter(s -> s.getName().equals(site)).findFirst().orElseThrow().getSurveys()
					.add(survey);
		}
	}

	/** 400 samples of a building of two floors, and 150 test samples. */
	public static Archive simulated() {
		return of(SmallMaps.simulated(400), SmallMaps.visit(150));
	}

	/** Keeps a split of the whole archive, with proposals from any share of noise on. */
	public static org.cairnfield.model.Split split(Archive archive, String id, double epsilon, int minPts) {
		org.cairnfield.model.Split split = new SplitMaker(new SplitStudies(2))
				.make(archive, new SplitPlan(id, Scope.ARCHIVE, false,
						SplitRequest.automatic(1).published(epsilon, minPts)), Workers.inline())
				.splits().get(0);
		new AddSplitsCommand(archive, List.of(split)).execute();
		propose(archive, split, 0.1);
		return split;
	}

	/** Proposes anew. */
	public static void propose(Archive archive, org.cairnfield.model.Split split, double threshold) {
		SetProposalsCommand command = new SetProposalsCommand(split,
				SplitProposals.of(SplitOnMap.of(archive, split), 0, threshold, Workers.inline()));
		if (command.canExecute()) {
			command.execute();
		}
	}
}
