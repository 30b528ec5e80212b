package org.cairnfield.curation.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ModelText;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EditableTest {

	private Map<String, EObject> objects;

	@BeforeEach
	void makeAnArchive() {
		ModelFactory make = ModelFactory.eINSTANCE;
		Archive archive = make.createArchive();
		archive.setName("Marrow Quay Museums");
		Site site = make.createSite();
		site.setId("tide-house");
		archive.getSites().add(site);
		Floor floor = make.createFloor();
		site.getFloors().add(floor);
		Device device = make.createDevice();
		device.setId("wrist-a");
		archive.getDevices().add(device);
		AccessPoint accessPoint = make.createAccessPoint();
		accessPoint.setId("ap-1");
		accessPoint.setAddress("00:00:5E:00:53:01");
		archive.getAccessPoints().add(accessPoint);
		Survey survey = make.createSurvey();
		survey.setId("autumn");
		site.getSurveys().add(survey);
		objects = Map.of("archive", archive, "site", site, "floor", floor, "device", device, "accessPoint", accessPoint,
				"survey", survey);
	}

	private Editable field(String object, String name) {
		return Editable.of(objects.get(object)).stream().filter(field -> field.name().equals(name)).findFirst()
				.orElseThrow();
	}

	@Test
	void saysWhatWouldBeUndone() {
		assertEquals("Change the height metres of " + ModelText.name(objects.get("floor")),
				field("floor", "height-metres").change("3.5").getLabel());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "archive|name|Quay", "archive|site-order|tide-house", "site|name|Tide House",
			"site|georeference|52.5 -3.25 10.0", "site|map-from|2031-04-01",
			"site|map-until|2031-05-01", "floor|name|Ground floor", "floor|outline|0.0,0.0 40.0,0.0 40.0,25.0",
			"floor|height-metres|3.5",
			"device|name|Wrist guide A", "device|offset-db|-4.5", "accessPoint|band|2.4 GHz",
			"accessPoint|channel|11", "accessPoint|group|radio 7", "accessPoint|place|tide-house/0 12.5,3.0",
			"survey|name|Autumn walk", "survey|date|2031-10-05", "survey|kind|test",
			"survey|device|wrist-a", "survey|surveyor|MQ", "survey|protocol|three scans a stop" })
	void isChangedAndTakenBack(String object, String name, String text) {
		Editable field = field(object, name);
		String before = field.text();
		Command change = field.change(text);
		assertTrue(change.canExecute(), name);
		change.execute();
		assertEquals(text, field.text());
		assertFalse(field.change(' ' + text + ' ').canExecute(), "it has that value");
		change.undo();
		assertEquals(before, field.text());
		change.redo();
		assertEquals(text, field.text());
		if (!name.equals("kind") && !object.equals("archive")) {
			Command unset = field.change("");
			unset.execute();
			assertEquals("", field.text());
			unset.undo();
			assertEquals(text, field.text());
		}
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "archive|name||needs a name",
			"archive|site-order|tide-house nowhere|there is no site 'nowhere'",
			"archive|site-order|tide-house tide-house|named twice", "site|georeference|91 0 0|latitude",
			"site|map-from|soon|2020-01-15",
			"floor|outline|0,0 4,4 here|a corner is x,y", "floor|outline|0,0 4,4|outline",
			"floor|outline|0,0 9,7 9,0 0,4|crosses or touches itself", "floor|height-metres|high|not a number",
			"floor|height-metres|-3|height",
			"device|offset-db|77|offset", "accessPoint|band|60 GHz|none of 2.4 GHz, 5 GHz, 6 GHz",
			"accessPoint|channel|1.5|whole number",
			"accessPoint|place|tide-house/1 2,3|no site 'tide-house' of this archive has a floor 1",
			"accessPoint|place|Tide House/0 2,3|SITE/LEVEL X,Y", "survey|kind|both|none of",
			"survey|device|phone|none of wrist-a", "survey|surveyor|Margaret|initials" })
	void refusesWhatItCannotBe(String object, String name, String text, String why) {
		Editable field = field(object, name);
		String before = field.text();
		String said = assertThrows(UnfitValueException.class, () -> field.change(text == null ? "" : text))
				.getMessage();
		assertTrue(said.toLowerCase().contains(why.toLowerCase()), said);
		assertEquals(before, field.text());
	}

	@Test
	void twoValuesHaveToFit() {
		field("accessPoint", "band").change("2.4 GHz").execute();
		assertThrows(UnfitValueException.class, () -> field("accessPoint", "channel").change("36"));
		field("site", "map-from").change("2031-04-01").execute();
		assertThrows(UnfitValueException.class, () -> field("site", "map-until").change("2031-03-01"));
		((AccessPoint) objects.get("accessPoint")).setChannel(36);
		field("accessPoint", "group").change("what was wrong before does not matter here").execute();
		assertEquals(WifiBand.GHZ_2_4, ((AccessPoint) objects.get("accessPoint")).getBand());
	}

	@Test
	void whatOthersFollowFromIsNoField() {
		assertEquals(List.of(), Editable.of(objects.get("accessPoint")).stream().map(Editable::name)
				.filter(List.of("id", "address")::contains).toList());
		assertEquals(List.of(), Editable.of(ModelFactory.eINSTANCE.createVerdict()));
	}
}
