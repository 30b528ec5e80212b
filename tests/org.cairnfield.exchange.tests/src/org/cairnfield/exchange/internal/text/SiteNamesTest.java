package org.cairnfield.exchange.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteNamesTest {

	@ParameterizedTest
	@CsvSource({ "corridor_train.csv.gz, corridor", "corridor_test.csv.gz, corridor",
			"Training_Tide-House.csv, Tide-House",
			"lantern_store.CSV, lantern_store", "trn01.csv, 01", "testimony.csv, testimony", "test.csv, ''",
			"hall.2024.train.tsv, hall.2024" })
	void dropsEndingsAndMarksOfTrainingAndTest(String file, String bare) {
		assertEquals(bare, SiteNames.withoutMarks(SiteNames.stem(file)));
	}

	@Test
	void goesOutwardsUntilANameIsLeft() {
		assertEquals("tide-house", SiteNames.choose(List.of("trn01", "01", "tide-house", "surveys")));
		assertEquals("site", SiteNames.choose(List.of("train", "01")));
	}
}
