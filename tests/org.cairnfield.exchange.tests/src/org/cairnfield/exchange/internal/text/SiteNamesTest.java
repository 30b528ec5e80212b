package org.cairnfield.exchange.internal.text;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cairnfield.exchange.TestNames;
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

	@Test
	void tellsTestDataFromTrainingDataByTheName() {
		for (String test : List.of("Testing_hall.csv", "tower-test.csv.gz", "tst01_rss.csv", "hall.validation.txt",
				"EVAL hall.tsv", "test.csv")) {
			assertTrue(TestNames.sayTest(test), test);
		}
		for (String other : List.of("hall.csv", "trn01.csv", "train_and_test.csv", "latest.csv", "testament.csv",
				"contest-hall.csv", "valley.csv", "evals.csv")) {
			assertFalse(TestNames.sayTest(other), other);
		}
	}
}
