package org.cairnfield.curation.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.FieldChange;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.ObjectChange.Way;
import org.cairnfield.archive.history.SurveyDiff;
import org.junit.jupiter.api.Test;

class BumpTest {

	private static final SemanticVersion LAST = SemanticVersion.parse("1.4.2");

	private static Bump bump(ObjectChange... changes) {
		return Bump.after(LAST, new ArchiveDiff(List.of(), List.of(changes), List.of()));
	}

	private static ObjectChange changed(String what, String field) {
		return new ObjectChange(what, "th", Way.CHANGED, List.of(new FieldChange(field, "a", "b")));
	}

	@Test
	void beginsWithOne() {
		assertEquals("1.0.0", Bump.after(null, null).version().toString());
	}

	@Test
	void isMajorWherePositionsMeanAnotherPlaceAndSaysWhere() {
		Bump moved = bump(changed("site", "georeference"), changed("access point", "reason"));
		assertEquals("2.0.0", moved.version().toString());
		assertTrue(moved.reasons().get(0).contains("site th") && moved.reasons().get(0).contains("georeference"),
				moved.reasons()::toString);
		assertEquals("2.0.0", bump(new ObjectChange("floor", "th/1", Way.REMOVED, List.of())).version().toString());
	}

	@Test
	void isMinorWhereTheMapIsAnother() {
		assertEquals("1.5.0", bump(new ObjectChange("floor", "th/1", Way.ADDED, List.of())).version().toString());
		assertEquals("1.5.0", bump(changed("access point", "reason")).version().toString());
		assertEquals("1.5.0", bump(changed("site", "mapFrom")).version().toString());
		assertEquals("1.4.3", bump(changed("site", "name")).version().toString());
		assertEquals("1.5.0", bump(new ObjectChange("verdict", "v-1", Way.ADDED, List.of())).version().toString());
		assertEquals("1.5.0", bump(changed("label", "label")).version().toString());
		Bump samples = Bump.after(LAST,
				new ArchiveDiff(List.of(new SurveyDiff("th-spring", List.of(), 1, 0, 0)), List.of(), List.of()));
		assertEquals("1.5.0", samples.version().toString());
		assertTrue(samples.reasons().toString().contains("samples or readings differ"));
	}

	@Test
	void isAPatchWhereOnlyTextsDifferOrNothingDoes() {
		assertEquals("1.4.3", bump(changed("site", "name"), changed("survey", "surveyor"), changed("archive", "name"),
				changed("access point", "place")).version().toString());
		assertEquals("1.4.3", bump().version().toString());
		assertEquals(List.of("nothing differs"), bump().reasons());
		assertEquals("1.4.3", bump(new ObjectChange("waiver", "w", Way.ADDED, List.of())).version().toString());
	}
}
