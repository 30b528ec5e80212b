package org.cairnfield.model.edit;

import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;

/** One site of the Marrow Quay Museums with six floors and two surveys of three samples each. */
final class Surveys {

	final Archive archive = ModelFactory.eINSTANCE.createArchive();
	final Site site = ModelFactory.eINSTANCE.createSite();
	final Floor ground = ModelFactory.eINSTANCE.createFloor();
	final Survey spring = survey("th-spring");
	final Survey autumn = survey("th-autumn");

	Surveys() {
		archive.getSites().add(site);
		site.setId("tide-house");
		site.setName("Tide House");
		site.getFloors().add(ground);
		for (int level = 1; level <= 5; level++) {
			Floor upper = ModelFactory.eINSTANCE.createFloor();
			upper.setLevel(level);
			site.getFloors().add(upper);
		}
		site.getSurveys().addAll(List.of(spring, autumn));
		for (String id : List.of("ap1", "ap2")) {
			AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
			accessPoint.setId(id);
			archive.getAccessPoints().add(accessPoint);
		}
	}

	private static Survey survey(String id) {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id);
		survey.setSamples(ModelFactory.eINSTANCE.createSamples());
		survey.getSamples()
				.setTable(SampleTable.builder().sample("S-1", 0, 1, 2).reading("ap1", -60).reading("ap2", 100)
						.sample("S-2", 0, 3, 3).reading("ap1", -70).sample("S-3", 1, 5, 6).reading("ap2", 100).build());
		return survey;
	}

	static List<SampleRef> all(Survey... surveys) {
		return List.of(surveys).stream()
				.flatMap(
						survey -> IntStream.range(0, survey.table().size()).mapToObj(row -> new SampleRef(survey, row)))
				.toList();
	}
}
