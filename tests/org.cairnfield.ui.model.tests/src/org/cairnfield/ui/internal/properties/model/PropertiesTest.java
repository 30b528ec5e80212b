package org.cairnfield.ui.internal.properties.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.curation.rules.Figure;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

public class PropertiesTest {

	private final ModelFactory factory = ModelFactory.eINSTANCE;
	private final Archive archive = factory.createArchive();
	private final Site site = factory.createSite();
	private final Floor floor = factory.createFloor();
	private final Survey survey = factory.createSurvey();
	private final AccessPoint accessPoint = factory.createAccessPoint();
	private final Device device = factory.createDevice();

	@BeforeEach
	public void survey() {
		archive.setName("Marrow Quay Museums");
		archive.getSites().add(site);
		archive.getAccessPoints().add(accessPoint);
		archive.getDevices().add(device);
		site.setId("tide-house");
		site.setName("Tide House");
		site.setGeoreference(new Georeference(51.5, -0.25, 12));
		site.getFloors().add(floor);
		site.getSurveys().add(survey);
		floor.setLevel(-1);
		floor.setOutline(Outline.parse("0,0 30,0 30,12 0,12"));
		floor.setHeightMetres(3.5);
		floor.setPlanPlacement(new Placement(0.02, 3, 1, 2));
		accessPoint.setId("ap1");
		accessPoint.setAddress("02:00:5e:00:00:01");
		accessPoint.setBand(WifiBand.GHZ_2_4);
		accessPoint.setPlace(KnownPlace.parse("tide-house/-1 12.5,3"));
		device.setId("wrist-a");
		device.setName("Wrist guide A");
		device.setOffsetDb(-2.5);
		survey.setId("th-spring");
		survey.setName("Spring");
		survey.setDate(LocalDate.of(2026, 3, 14));
		survey.setDevice(device);
		survey.setSamples(factory.createSamples());
		survey.getSamples().setTable(SampleTable.builder().sample("TH-1", -1, 1.5, 2).reading("ap1", -60)
				.sample("TH-2", -1, 3, 1204.25).reading("ap1", -72).reason("in a lift").sample("TH-3", 0, 5, 6)
				.build());
	}

	private static Map<String, String> values(List<Property> properties) {
		Map<String, String> values = new TreeMap<>();
		properties.forEach(
				property -> assertEquals(null, values.put(property.name(), property.value()), "twice: " + property));
		return values;
	}

	private static Map<String, String> of(EObject object) {
		return values(ObjectProperties.of(object));
	}

	@Test
	public void areThereForEveryKindOfObject() {
		for (EClassifier each : ModelPackage.eINSTANCE.getEClassifiers()) {
			if (each instanceof EClass type && !type.isAbstract()) {
				List<Property> empty = ObjectProperties.of(factory.create(type));
				if (type != ModelPackage.Literals.SAMPLES) {
					assertFalse(empty.isEmpty(), type.getName());
				}
				empty.forEach(
						property -> assertFalse(property.value().contains("null") || property.value().contains("@"),
								type.getName() + ": " + property));
				assertEquals(empty.size(), new HashSet<>(empty.stream().map(Property::name).toList()).size(),
						type.getName());
			}
		}
	}

	@Test
	public void stateValuesAsPeopleReadThem() {
		Map<String, String> of = of(floor);
		assertEquals("Tide House", of.get("Site"));
		assertEquals("−1", of.get("Level"));
		assertEquals("4 corners, 360.0 m²", of.get("Outline"));
		assertEquals("3.5", of.get("Storey height (m)"));
		assertEquals("1 pixel is 2.00 cm, turned by 3.00°, first pixel at x 1.00 m, y 2.00 m",
				of.get("Plan placement"));
		assertEquals(Property.NONE, of.get("Plan image"));
		assertEquals("2", of.get("Samples"));
		assertEquals("1", of.get("Samples set aside"));
		assertEquals("51.500000° N, 0.250000° W, turned by 12.0°", of(site).get("Place on Earth"));
		assertEquals("2.4 GHz", of(accessPoint).get("Band"));
		assertEquals("Tide House, " + ModelText.name(floor) + ", x 12.50 m, y 3.00 m",
				of(accessPoint).get("Known place"));
		assertEquals(Property.NONE, of(accessPoint).get("Channel"), "0 means not known");
		assertEquals("−2.5", of(device).get("RSSI offset (dB)"));
	}

	@Test
	public void countWhatAnObjectContains() {
		assertEquals("3", of(archive).get("Samples"));
		assertEquals("1", of(archive).get("Access points"));
		Map<String, String> spring = of(survey);
		assertEquals("Wrist guide A", spring.get("Device"));
		assertEquals("training", spring.get("Kind"));
		assertEquals("2026-03-14", spring.get("Date"));
		assertEquals("−1, 0", spring.get("Floors (levels)"));
		assertEquals("0 to 1", spring.get("Heard per sample"));
		assertEquals("2", of(accessPoint).get("Samples that heard it"));
		assertEquals("−60", of(accessPoint).get("Strongest level (dBm)"));
		assertEquals("−72", of(accessPoint).get("Weakest level (dBm)"));
		assertEquals("1", of(device).get("Surveys"));
	}

	@Test
	public void nameWhatASplitIsOf() {
		Split split = factory.createSplit();
		archive.getSplits().add(split);
		split.setScope(Scope.floor("tide-house", -1));
		split.setEpsilon(163);
		assertEquals("Tide House, Floor -1", of(split).get("Scope"));
		assertEquals("163", of(split).get("ε (units of the distance)"));
		assertEquals("10 %", of(split).get("Gate (share of noise)"));
	}

	@Test
	public void endWithWhatProgramsGoBy() {
		Verdict verdict = factory.createVerdict();
		verdict.setId("v1");
		verdict.setBatch("audit-close-1");
		verdict.setTime(Instant.parse("2026-03-14T09:26:53Z"));
		List<Property> properties = ObjectProperties.of(verdict);
		assertEquals("Split", properties.get(0).name());
		assertEquals("2026-03-14 09:26:53", values(properties).get("Time (UTC)"));
		assertEquals("audit-close-1", properties.get(properties.size() - 1).value());
	}

	@Test
	public void describeASampleAndSeveralTogether() {
		Map<String, String> one = values(SampleProperties.of(List.of(new SampleRef(survey, 1))));
		assertEquals("set aside: in a lift", one.get("State"));
		assertEquals("1,204.25", one.get("y (m)"));
		assertEquals("−72 dBm, 02:00:5e:00:00:01", one.get("Strongest level"));
		assertEquals(Property.NONE, values(SampleProperties.of(List.of(new SampleRef(survey, 2)))).get("Weakest level"),
				"it heard nothing");
		Map<String, String> all = values(
				SampleProperties
						.of(List.of(new SampleRef(survey, 0), new SampleRef(survey, 1), new SampleRef(survey, 2))));
		assertEquals("3", all.get("Samples selected"));
		assertEquals("1.50 to 5.00", all.get("x (m)"));
		assertEquals("Tide House (3)", all.get("Sites"));
	}

	@Test
	public void describeAFinding() {
		Finding finding = new Finding("swapped-axes", Severity.ERROR, "28 samples lie outside.",
				List.of(new Subject.OfSample("th-spring/TH-1", 1, 1)), List.of(),
				List.of(new Figure("distance", 2.5, "m")), Optional.empty());
		Map<String, String> of = values(FindingProperties.of(finding));
		assertEquals("th-spring/TH-1", of.get("About"));
		assertEquals("2.500", of.get("distance (m)"));
		assertTrue(of.get("Rule").length() > 3);
	}
}
