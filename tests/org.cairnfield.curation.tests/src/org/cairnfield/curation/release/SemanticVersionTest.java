package org.cairnfield.curation.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.curation.release.SemanticVersion.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SemanticVersionTest {

	private static SemanticVersion v(String text) {
		return SemanticVersion.parse(text);
	}

	/** Semantic Versioning 2.0.0, item 11: both chains of the standard. */
	@Test
	void ordersTheChainsOfTheStandard() {
		for (List<String> chain : List.of(List.of("1.0.0", "2.0.0", "2.1.0", "2.1.1"),
				List.of("1.0.0-alpha", "1.0.0-alpha.1",
						"1.0.0-alpha.beta", "1.0.0-beta", "1.0.0-beta.2", "1.0.0-beta.11", "1.0.0-rc.1", "1.0.0"))) {
			for (int i = 0; i < chain.size(); i++) {
				for (int j = 0; j < chain.size(); j++) {
					assertEquals(Integer.compare(i, j), Integer.signum(v(chain.get(i)).compareTo(v(chain.get(j)))),
							chain.get(i) + " to " + chain.get(j));
				}
			}
		}
	}

	/** Items 10 and 11: build metadata is passed over; identifiers with letters compare as ASCII. */
	@Test
	void passesOverBuildMetadataAndComparesWordsAsAscii() {
		assertEquals(0, v("1.0.0+a").compareTo(v("1.0.0+b")));
		assertNotEquals(v("1.0.0+a"), v("1.0.0+b"));
		assertTrue(v("1.0.0-alpha11").compareTo(v("1.0.0-alpha2")) < 0);
		assertTrue(v("1.0.0-RC").compareTo(v("1.0.0-alpha")) < 0);
		assertTrue(v("1.0.0-1").compareTo(v("1.0.0-a")) < 0);
		assertTrue(v("99999999999999999999.0.0").compareTo(v("100000000000000000000.0.0")) < 0);
	}

	@ParameterizedTest
	@ValueSource(strings = { "1.0", "01.0.0", "1.0.0-01", "1.0.0-", "1.0.0+", "v1.0.0", "1.0.0-a..b", "1.0.0 ", "",
			"1.0.0-é", "-1.0.0", "1.0.0\n" })
	void refusesWhatTheStandardDoes(String text) {
		assertThrows(IllegalArgumentException.class, () -> v(text));
		assertFalse(SemanticVersion.is(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "0.0.0", "1.0.0-0", "1.0.0-0a", "1.0.0--", "1.0.0-alpha.1+exp.sha.5114f85",
			"10.20.30+0.01" })
	void writesWhatItHasRead(String text) {
		assertEquals(text, v(text).toString());
	}

	@ParameterizedTest
	@CsvSource({ "1.2.3,MAJOR,2.0.0", "1.2.3,MINOR,1.3.0", "1.2.3,PATCH,1.2.4", "1.3.0-rc.1,MINOR,1.3.0",
			"1.3.0-rc.1,PATCH,1.3.0",
			"1.3.0-rc.1,MAJOR,2.0.0", "2.0.0-1+b,MAJOR,2.0.0", "1.2.3+b,PATCH,1.2.4" })
	void countsOn(String from, Part part, String to) {
		assertEquals(to, v(from).next(part).toString());
	}
}
