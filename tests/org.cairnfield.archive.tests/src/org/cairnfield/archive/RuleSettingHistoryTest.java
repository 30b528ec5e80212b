package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.RuleSetting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What rules are told is in the files, in the history by name, and can be taken back by itself. */
class RuleSettingHistoryTest extends HistoryFixture {

	private RuleSetting set(String rule, String parameter, String value, String reason) {
		RuleSetting setting = ModelFactory.eINSTANCE.createRuleSetting();
		setting.setRule(rule);
		setting.setParameter(parameter);
		setting.setValue(value);
		setting.setReason(reason);
		open.archive().getRuleSettings().add(setting);
		return setting;
	}

	private List<String> values() {
		return open.archive().getRuleSettings().stream().map(setting -> setting.getRule() + ' ' + setting.getValue())
				.toList();
	}

	@Test
	void namesWhatWasSetAndSetBack() throws IOException {
		RuleSetting fewest = set("few-readings", "fewest-readings", "4", null);
		set("jump", null, "off", "walked: by bicycle");
		ArchiveDiff added = history.changesOf(savePoint());
		assertEquals(List.of("rule settings changed: few-readings.fewest-readings = 4, jump = off"), added.summary());
		assertEquals(List.of("few-readings.fewest-readings = 4", "jump = off: walked: by bicycle"),
				added.objects().stream().map(ObjectChange::id).toList());
		fewest.setValue("5");
		open.archive().getRuleSettings().remove(1);
		SavePoint changed = savePoint();
		assertEquals("rule settings changed: few-readings.fewest-readings = 5, jump back to the default",
				changed.summary());
		assertEquals(List.of("value: 4 -> 5"),
				history.changesOf(changed).objects().get(0).fields().stream().map(Object::toString).toList());
	}

	@Test
	void countsThoseBeyondThree() throws IOException {
		for (int i = 0; i < 5; i++) {
			set("rule-" + i, "number", "1", null);
		}
		assertTrue(savePoint().summary().endsWith("rule-2.number = 1 and 2 more"), () -> open.archive().toString());
	}

	@Test
	void takesOneChangeBackAndKeepsWhatElseWasDone() throws IOException {
		set("few-readings", "fewest-readings", "4", null);
		SavePoint wrong = savePoint();
		open.archive().setName("Quay");
		savePoint();
		open.undo(wrong, PERSON, null);
		assertEquals(List.of(), values());
		assertEquals("Quay", open.archive().getName());
	}

	@Test
	void refusesToTakeBackWhatWasSetAgainSince() throws IOException {
		RuleSetting fewest = set("few-readings", "fewest-readings", "4", null);
		SavePoint wrong = savePoint();
		fewest.setValue("5");
		savePoint();
		assertThrows(ArchiveException.class, () -> open.undo(wrong, PERSON, null));
		assertEquals(List.of("few-readings 5"), values());
	}

	@ParameterizedTest
	@ValueSource(strings = { "=cmd|' /C calc'!A0", "<x a=\"&amp;\">", "two\nlines\tand a tab", "right \u202eto left",
			"off | jump = off", "\ud83d\ude80" })
	void readsWhatWasSavedWhateverTheTexts(String text) throws IOException {
		set(text, text, text, text);
		set("jump", null, "off", text);
		String before = ModelText.of(open.archive());
		savePoint();
		try (OpenArchive again = store.open(open.folder(), Mode.READ)) {
			assertEquals(List.of(), again.damages());
			assertEquals(before, ModelText.of(again.archive()));
			assertEquals(open.digest(), again.digest());
		}
	}

	@Test
	void areInTheFileInOrderWhateverTheOrderOfSetting() throws IOException {
		String usual = open.digest();
		set("wrong-place", "farthest", "20", null);
		set("jump", "fastest", "4", null);
		set("jump", null, "off", "a");
		String digest = open.digest();
		open.archive().getRuleSettings().move(0, 2);
		assertEquals(digest, open.digest());
		open.archive().getRuleSettings().clear();
		assertEquals(usual, open.digest(), "an archive that tells the rules nothing is as those of before");
	}
}
