package org.cairnfield.exchange.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.crypto.spec.SecretKeySpec;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;

class ExportOptionsTest {

	/** RFC 4231 sections 4.2 and 4.3, test cases 1 and 2 of HMAC-SHA-256. */
	@Test
	void hashesWithAKeyAsRfc4231Says() {
		byte[] key = HexFormat.of().parseHex("0b".repeat(20));
		assertEquals("b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7",
				HexFormat.of().formatHex(Pseudonyms.hmac(new SecretKeySpec(key, "HmacSHA256"),
						"Hi There".getBytes(StandardCharsets.US_ASCII))));
		assertEquals("b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7",
				HexFormat.of().formatHex(new Pseudonyms(key).hash("Hi There")));
		SecretKeySpec jefe = new SecretKeySpec("Jefe".getBytes(StandardCharsets.US_ASCII), "HmacSHA256");
		assertEquals("5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843", HexFormat.of()
				.formatHex(Pseudonyms.hmac(jefe, "what do ya want for nothing?".getBytes(StandardCharsets.US_ASCII))));
	}

	@Test
	void givesOneNameToOneAddressHoweverWrittenAndOtherNamesByOtherKeys() {
		Pseudonyms one = new Pseudonyms(new byte[16]);
		Pseudonyms other = new Pseudonyms("another key, as long".getBytes(StandardCharsets.US_ASCII));
		assertEquals(one.of("00:00:5E:00:53:01"), one.of("00-00-5e-00-53-01"));
		assertNotEquals(one.of("00:00:5E:00:53:01"), one.of("00:00:5E:00:53:02"));
		assertNotEquals(one.of("00:00:5E:00:53:01"), other.of("00:00:5E:00:53:01"));
		assertTrue(one.of("x").matches("p-[0-9a-f]{16}"));
		assertThrows(IllegalArgumentException.class, () -> new Pseudonyms(new byte[15]));
	}

	@Test
	void coarsensTimesDownwards() {
		long time = Instant.parse("2031-04-07T13:59:59.999Z").toEpochMilli();
		List<String> expected = List.of("2031-04-07T13:59:59.999Z", "2031-04-07T13:00:00Z", "2031-04-07T00:00:00Z",
				"2031-04-01T00:00:00Z");
		for (int i = 0; i < expected.size(); i++) {
			assertEquals(expected.get(i), Instant.ofEpochMilli(TimeGrain.values()[i].coarsen(time)).toString());
		}
		assertEquals(RadioMap.NO_TIME, TimeGrain.NONE.coarsen(time));
		assertEquals(RadioMap.NO_TIME, TimeGrain.DAY.coarsen(RadioMap.NO_TIME));
		// before 1970 too
		assertEquals(Instant.parse("1937-01-01T12:00:00Z").toEpochMilli(),
				TimeGrain.HOUR.coarsen(Instant.parse("1937-01-01T12:00:27.87Z").toEpochMilli()));
	}

	@Test
	void leavesOutLocalAddressesButNoSample() {
		RadioMap out = new ExportOptions(true, null, TimeGrain.FULL, true).apply(Exports.map());
		assertEquals(List.of("00:00:5E:00:53:01", "=cmd"), out.accessPoints());
		assertEquals(4, out.size());
		assertEquals(1, out.heard(0));
		assertEquals(Exports.map().timeMillis(0), out.timeMillis(0));
		assertEquals("guide A", out.devices().get(out.device(0)));
	}

	@Test
	void saysWhatWouldLeave() {
		ExportOptions all = ExportOptions.ALL;
		String open = String.join("\n", Caution.leaving(all.apply(Exports.map()), all));
		assertTrue(open.contains("3 access points by their addresses") && open.contains("names of devices")
				&& open.contains("those of phones"), open);
		ExportOptions tight = new ExportOptions(true, new Pseudonyms(new byte[16]), TimeGrain.MONTH, false);
		String page = Caution.page("Marrow Quay", List.of("release 1.0.0"), tight.apply(Exports.map()), tight);
		for (String said : List.of("release 1.0.0", "HMAC-SHA-256", "times to the month", "no names of devices",
				"no locally administered",
				"not for safety of life without independent validation", "personal data", "Local law",
				"qualified practice")) {
			assertTrue(page.replaceAll("\\s+", " ").contains(said), said + " is missing in\n" + page);
		}
	}

	private static RadioMap heardEverywhere(List<String> accessPoints) {
		RadioMapBuilder builder = new RadioMapBuilder();
		accessPoints.forEach(builder::accessPoint);
		for (int s = 0; s < 3; s++) {
			builder.sample("Quay", 0, s, 1);
			for (int a = 0; a < accessPoints.size(); a++) {
				builder.reading(a, -40 - a);
			}
		}
		return builder.build();
	}

	/** The order of the columns is that of the pseudonyms, whatever the order of the addresses, and so are readings and GeoPackage rows. */
	@Test
	void ordersByPseudonymSoThatTheOrderTellsNothingOfTheAddresses() {
		List<String> addresses = IntStream.range(0, 40).mapToObj(i -> String.format("00:00:5E:00:53:%02X", i)).toList();
		List<String> shuffled = new ArrayList<>(addresses);
		Collections.shuffle(shuffled, new Random(3));
		ExportOptions hidden = new ExportOptions(false, new Pseudonyms(new byte[16]), TimeGrain.FULL, true);
		RadioMap one = hidden.apply(heardEverywhere(addresses));
		assertEquals(one.accessPoints().stream().sorted().toList(), one.accessPoints());
		assertEquals(one.accessPoints(), hidden.apply(heardEverywhere(shuffled)).accessPoints());
		for (int k = one.firstReading(0) + 1; k < one.endReading(0); k++) {
			assertTrue(one.accessPoint(k - 1) < one.accessPoint(k));
		}
		// the level names the address that was given it: each is still with its own
		for (int a = 0; a < addresses.size(); a++) {
			int column = one.accessPoints().indexOf(hidden.pseudonyms().of(addresses.get(a)));
			assertEquals(-40 - a, one.rssiDbm(one.firstReading(0) + column));
		}
		assertEquals(addresses, ExportOptions.ALL.apply(heardEverywhere(addresses)).accessPoints());
	}
}
