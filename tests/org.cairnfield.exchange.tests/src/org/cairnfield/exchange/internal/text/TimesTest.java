package org.cairnfield.exchange.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimesTest {

	// RFC 3339 section 5.8, values in milliseconds
	@ParameterizedTest
	@CsvSource({ "1985-04-12T23:20:50.52Z, 482196050520", "1985-04-12t23:20:50.52z, 482196050520",
			"1937-01-01T12:00:27.87+00:20, -1041337172130" })
	void readsTheExamplesOfRfc3339(String text, long millis) {
		assertEquals(millis, Times.rfc3339(text));
		assertEquals(millis, Times.parse(text));
	}

	@Test
	void readsTheOffsetExampleOfRfc3339() {
		// RFC 3339 section 5.8: 1996-12-19T16:39:57-08:00 is 1996-12-20T00:39:57Z
		assertEquals(Instant.parse("1996-12-20T00:39:57Z").toEpochMilli(), Times.rfc3339("1996-12-19T16:39:57-08:00"));
	}

	@Test
	void readsALeapSecondAsTheSecondBefore() {
		// RFC 3339 section 5.8: both are the same leap second
		long last = Instant.parse("1990-12-31T23:59:59Z").toEpochMilli();
		assertEquals(last, Times.rfc3339("1990-12-31T23:59:60Z"));
		assertEquals(last, Times.rfc3339("1990-12-31T15:59:60-08:00"));
		assertEquals(Times.NONE, Times.rfc3339("1990-12-31T15:59:60Z"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "2024-01-01T24:00:00Z", "2023-02-29T00:00:00Z", "2024-13-01T00:00:00Z",
			"2024-01-01T00:60:00Z", "2024-01-01T00:00:61Z", "2024-01-01T00:00:00+24:00", "2024-01-01T00:00:00+00:60" })
	void refusesWhatNoClockShows(String text) {
		assertEquals(Times.NONE, Times.rfc3339(text));
		assertEquals(Times.NONE, Times.parse(text));
	}

	@Test
	void demandsAnOffsetOnlyWhereRfc3339IsAskedFor() {
		assertEquals(Times.NONE, Times.rfc3339("2024-02-29T12:00:00"));
		assertEquals(Instant.parse("2024-02-29T12:00:00Z").toEpochMilli(), Times.parse("2024-02-29T12:00:00"));
		assertFalse(Times.statesZone("2024-02-29T12:00:00"));
		assertTrue(Times.statesZone("2024-02-29T12:00:00+01:00"));
	}

	@ParameterizedTest
	@CsvSource({ "1601130306, 2020-09-26T14:25:06Z", "1601130306000, 2020-09-26T14:25:06Z",
			"1601130306250, 2020-09-26T14:25:06.250Z", "20200926142506, 2020-09-26T14:25:06Z",
			"2020-09-26 14:25:06, 2020-09-26T14:25:06Z", "2020-09-26 14:25:06.5, 2020-09-26T14:25:06.500Z",
			"26.09.2020 14:25:06, 2020-09-26T14:25:06Z", "2020-09-26, 2020-09-26T00:00:00Z",
			"2020-09-26T16:25:06+0200, 2020-09-26T14:25:06Z" })
	void readsTheFormsOfSurveyFiles(String text, String instant) {
		assertEquals(Instant.parse(instant).toEpochMilli(), Times.parse(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "1", "30", "0101100101", "20201326142506", "noon", "-1601130306" })
	void takesCountersAndWordsForNoTime(String text) {
		assertEquals(Times.NONE, Times.parse(text));
	}
}
