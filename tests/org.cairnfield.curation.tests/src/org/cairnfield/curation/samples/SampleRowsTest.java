package org.cairnfield.curation.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.cairnfield.core.cluster.Role;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

class SampleRowsTest {

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();
	private final Site site = ModelFactory.eINSTANCE.createSite();
	private final Floor floor = ModelFactory.eINSTANCE.createFloor();

	SampleRowsTest() {
		floor.setLevel(1);
		site.getFloors().add(floor);
	}

	private Survey survey(String id, SampleTableBuilder table) {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id);
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(table.build());
		survey.setSamples(samples);
		site.getSurveys().add(survey);
		return survey;
	}

	@Test
	void takesTheSamplesOfTheLevelFromAllSurveysOfTheSite() {
		Survey spring = survey("spring",
				SampleTable.builder().sample("a", 0, 1, 1).sample("b", 1, 2, 3).sample("c", 1, 4, 5));
		Survey autumn = survey("autumn",
				SampleTable.builder().sample("d", 1, 6, 7).reason("blurred").sample("e", 2, 8, 9));
		SampleRows samples = SampleRows.of(floor);
		assertEquals(3, samples.size());
		assertEquals(new SampleRef(spring, 1), samples.ref(0));
		assertEquals(new SampleRef(autumn, 0), samples.ref(2));
		assertEquals(6, samples.table(2).xMetres(samples.row(2)));
		assertEquals("autumn", samples.part(2).survey());
		for (int i = 0; i < samples.size(); i++) {
			assertEquals(i, samples.indexOf(samples.ref(i)));
		}
		assertEquals(-1, samples.indexOf(new SampleRef(spring, 0)));
		assertEquals(-1, samples.indexOf(new SampleRef(autumn, 1)));
	}

	@Test
	void hasNoneForAFloorWithoutASite() {
		assertEquals(0, SampleRows.of(ModelFactory.eINSTANCE.createFloor()).size());
	}

	/** Colours of surveys stay the same on all floors, so that each has its part; a table lists only what there is. */
	@Test
	void hasAllSurveysOfAFloorAsPartsButOnlyThoseWithRowsOfAScope() {
		archive.getSites().add(site);
		survey("spring", SampleTable.builder().sample("a", 0, 1, 1));
		survey("autumn", SampleTable.builder().sample("d", 1, 6, 7));
		assertEquals(2, SampleRows.of(floor).parts().size());
		assertEquals(1, SampleRows.of(floor).partNumber(0));
		assertEquals(1, SampleRows.of(archive, floor).parts().size());
		assertEquals(0, SampleRows.of(archive, floor).partNumber(0));
	}

	@Test
	void takesTheSamplesOfEachKindOfScope() {
		archive.getSites().add(site);
		Device device = ModelFactory.eINSTANCE.createDevice();
		AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
		accessPoint.setId("ap2");
		Survey spring = survey("spring",
				SampleTable.builder().sample("a", 0, 1, 1).reading("ap1", -50).sample("b", 1, 2, 3)
						.reading("ap1", -60).reading("ap2", -70));
		Survey autumn = survey("autumn", SampleTable.builder().sample("d", 1, 6, 7).reading("ap1", -60));
		autumn.setDevice(device);
		Split split = ModelFactory.eINSTANCE.createSplit();
		split.setLabels(Labels.builder().add(new SampleKey("spring", "a"), 0, Role.CORE)
				.add(new SampleKey("autumn", "d"), 0, Role.CORE).build());
		Map<EObject, List<String>> wanted = Map.of(archive, List.of("spring/a", "spring/b", "autumn/d"), site,
				List.of("spring/a", "spring/b", "autumn/d"), floor, List.of("spring/b", "autumn/d"), spring,
				List.of("spring/a", "spring/b"),
				device, List.of("autumn/d"), accessPoint, List.of("spring/b"), split, List.of("spring/a", "autumn/d"),
				ModelFactory.eINSTANCE.createSplit(), List.of());
		wanted.forEach((scope, keys) -> {
			SampleRows rows = SampleRows.of(archive, scope);
			assertEquals(keys, IntStream.range(0, rows.size()).mapToObj(i -> rows.ref(i).key().toString()).toList(),
					scope.eClass().getName());
		});
	}

	@Test
	void knowsWhetherAnIndexStillMeansTheSameSample() {
		archive.getSites().add(site);
		Survey spring = survey("spring", SampleTable.builder().sample("a", 0, 1, 1).sample("b", 1, 2, 3));
		Survey autumn = survey("autumn", SampleTable.builder().sample("d", 1, 6, 7));
		SampleRows before = SampleRows.of(archive, archive);
		spring.getSamples().setTable(spring.table().edit().position(0, 9, 9).done());
		assertTrue(before.hasSameRows(SampleRows.of(archive, archive)), "moved only");
		assertFalse(before.hasSameRows(SampleRows.of(archive, floor)));
		site.getSurveys().remove(autumn);
		assertFalse(before.hasSameRows(SampleRows.of(archive, archive)));
	}
}
