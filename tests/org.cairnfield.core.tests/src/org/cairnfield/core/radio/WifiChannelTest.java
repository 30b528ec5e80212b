package org.cairnfield.core.radio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WifiChannelTest {

	// 2.4 GHz channel 6, 5 GHz 40, and 6 GHz 37, 42 and 91: a vendor's documentation of its WLAN channel function.
	// The others by the same formulas; 6 GHz channel 2 (operating class 136) from memory.
	@ParameterizedTest
	@CsvSource({ "GHZ_2_4, 1, 2412", "GHZ_2_4, 6, 2437", "GHZ_2_4, 11, 2462", "GHZ_2_4, 13, 2472",
			"GHZ_2_4, 14, 2484", "GHZ_5, 36, 5180", "GHZ_5, 40, 5200", "GHZ_5, 64, 5320", "GHZ_5, 100, 5500",
			"GHZ_5, 149, 5745", "GHZ_5, 165, 5825", "GHZ_5, 177, 5885", "GHZ_5, 42, 5210", "GHZ_5, 155, 5775",
			"GHZ_6, 1, 5955", "GHZ_6, 5, 5975", "GHZ_6, 7, 5985", "GHZ_6, 37, 6135", "GHZ_6, 42, 6160",
			"GHZ_6, 91, 6405", "GHZ_6, 93, 6415", "GHZ_6, 233, 7115", "GHZ_6, 2, 5935" })
	void convertsBothWays(WifiBand band, int number, int mhz) {
		WifiChannel channel = new WifiChannel(band, number);
		assertEquals(mhz, channel.centreMhz());
		assertEquals(Optional.of(channel), WifiChannel.atMhz(mhz));
	}

	// A formula often copied, (f − 2412)/5 + 1, makes 15 of 2484 MHz; 2407 MHz is where counting starts, no channel.
	@ParameterizedTest
	@ValueSource(ints = { 2407, 2477, 2479, 2413, 2489, 5155, 5890, 5950, 5960, 7120, 0, -5 })
	void hasNoChannelBetween(int mhz) {
		assertEquals(Optional.empty(), WifiChannel.atMhz(mhz));
	}

	@Test
	void numberMeansNothingWithoutItsBand() {
		assertNotEquals(new WifiChannel(WifiBand.GHZ_2_4, 1).centreMhz(),
				new WifiChannel(WifiBand.GHZ_6, 1).centreMhz());
		assertNotEquals(new WifiChannel(WifiBand.GHZ_5, 149).centreMhz(),
				new WifiChannel(WifiBand.GHZ_6, 149).centreMhz());
		assertThrows(IllegalArgumentException.class, () -> new WifiChannel(WifiBand.GHZ_2_4, 15));
		assertThrows(IllegalArgumentException.class, () -> new WifiChannel(WifiBand.GHZ_5, 6));
		assertThrows(IllegalArgumentException.class, () -> new WifiChannel(WifiBand.GHZ_6, 234));
	}
}
