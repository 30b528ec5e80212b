package org.cairnfield.archive.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.time.Instant;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MomentTextTest {

	private static long parsed(String text) {
		byte[] bytes = Lines.ascii(text);
		return new MomentText().parse(bytes, 0, bytes.length);
	}

	// RFC 3339, section 5.8: the first example; the others as java.time has them
	@ParameterizedTest
	@CsvSource({ "1985-04-12T23:20:50.52Z,482196050520", "1970-01-01T00:00:00Z,0", "1969-12-31T23:59:59.999Z,-1",
			"2000-02-29T12:00:00Z,951825600000", "0000-01-01T00:00:00Z,-62167219200000",
			"9999-12-31T23:59:59.999Z,253402300799999" })
	void readsAndWritesMoments(String text, long millis) throws IOException {
		assertEquals(millis, parsed(text));
		assertEquals(text, Lines.written(line -> new MomentText().write(millis, line)));
	}

	@Test
	void agreesWithJavaTime() throws IOException {
		Random random = new Random(1);
		MomentText moments = new MomentText();
		for (int i = 0; i < 20_000; i++) {
			long millis = i % 2 == 0 ? (random.nextLong() >> 14) : 1_933_000_000_000L + random.nextInt();
			String text = Lines.written(line -> moments.write(millis, line));
			assertEquals(millis, Instant.parse(text).toEpochMilli(), text);
			byte[] bytes = Lines.ascii(text);
			assertEquals(millis, moments.parse(bytes, 0, bytes.length), text);
		}
	}

	// RFC 3339 knows no hour 24, and its leap seconds can not be held: java.time makes other moments of both, silently
	@ParameterizedTest
	@ValueSource(strings = { "2024-01-01T24:00:00Z", "1990-12-31T23:59:60Z", "", "-", "2023-02-29T00:00:00Z",
			"2024-13-01T00:00:00Z", "2024-01-01T24:00:01Z", "2024-01-01T00:60:00Z",
			"2024-01-01T00:00:61Z", "2024-01-01 00:00:00Z", "2024-01-01T00:00:00", "2024-01-01T00:00:00.1234Z",
			"2024-01-01T0a:00:00Z", "2024-01-01T00:00:00+01:00x", "x024-01-01T00:00:00Z" })
	void knowsWhatIsNoMoment(String text) {
		assertEquals(MomentText.NONE, parsed(text), text);
	}
}
