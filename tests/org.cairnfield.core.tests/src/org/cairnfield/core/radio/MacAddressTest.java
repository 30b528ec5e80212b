package org.cairnfield.core.radio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MacAddressTest {

	// Group and local bits as RFC 9542 section 2.1 and RFC 7042 section 2.1 define them (0x01 and 0x02 of the
	// first octet). 02:18:0A is called universal on a vendor's page; its local bit is set.
	@ParameterizedTest
	@CsvSource({ "00:00:5E:00:53:01, false, false", "02:00:00:00:00:01, false, true",
			"06:00:00:00:00:01, false, true", "0A:00:00:00:00:01, false, true", "0E:00:00:00:00:01, false, true",
			"02:18:0A:00:00:01, false, true", "DA:A1:19:00:00:01, false, true", "01:00:5E:90:10:00, true, false",
			"33:33:00:00:00:01, true, true", "FF:FF:FF:FF:FF:FF, true, true", "3C:22:FB:00:00:01, false, false" })
	void readsGroupAndLocalBits(String text, boolean group, boolean local) {
		MacAddress address = MacAddress.parse(text);
		assertEquals(group, address.isGroup());
		assertEquals(local, address.isLocal());
	}

	@ParameterizedTest
	@ValueSource(strings = { "00:00:5e:00:53:0f", "00-00-5E-00-53-0F", "0000.5e00.530f", "00005E00530F" })
	void readsTheUsualSpellingsAndWritesOne(String text) {
		assertEquals("00:00:5E:00:53:0F", MacAddress.parse(text).toString());
		assertEquals(0x0000_5E00_530FL, MacAddress.parse(text).value());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "00:00:5E:00:53", "00:00:5E:00:53:0G", "00:00-5E:00:53:01", "00 00 5E 00 53 01",
			"0000:5E00:5301", "00:00:5E:00:53:0\u0661", "00:00:5E:00:53:01:02", "+0:00:5E:00:53:01" })
	void refusesWhatIsNoAddress(String text) {
		assertTrue(MacAddress.find(text).isEmpty());
		assertThrows(IllegalArgumentException.class, () -> MacAddress.parse(text));
	}

	@Test
	void bssidIsIndividualAndNotZero() {
		assertTrue(MacAddress.parse("00:00:5E:00:53:01").canBeBssid());
		assertTrue(MacAddress.parse("02:00:00:00:00:01").canBeBssid());
		assertFalse(MacAddress.parse("01:00:5E:90:10:00").canBeBssid());
		assertFalse(new MacAddress(0).canBeBssid());
		MacAddress broadcast = MacAddress.parse("FF:FF:FF:FF:FF:FF");
		assertTrue(broadcast.isBroadcast());
		assertFalse(broadcast.canBeBssid());
	}

	// The range 00-00-5E-00-53-00 to FF is for documentation (RFC 7042, RFC 9542).
	@Test
	void knowsTheDocumentationRange() {
		assertEquals("00:00:5E:00:53:00", MacAddress.documentation(0).toString());
		assertEquals("00:00:5E:00:53:FF", MacAddress.documentation(255).toString());
		assertTrue(MacAddress.documentation(255).isDocumentation());
		assertFalse(MacAddress.parse("00:00:5E:00:54:00").isDocumentation());
		assertFalse(MacAddress.parse("01:00:5E:00:53:00").isDocumentation());
		assertThrows(IllegalArgumentException.class, () -> MacAddress.documentation(256));
	}

	@Test
	void ordersByValue() {
		assertTrue(MacAddress.documentation(2).compareTo(MacAddress.documentation(10)) < 0);
		assertThrows(IllegalArgumentException.class, () -> new MacAddress(1L << 48));
	}
}
