package org.cairnfield.core.radio;

import java.util.Objects;
import java.util.Optional;

/**
 * A Wi-Fi channel: band and number, with its centre frequency by the numbering of IEEE 802.11. Numbers in
 * between those that a country opens are taken too; a survey tells what it heard.
 *
 * @param number within {@link WifiBand#first} … {@link WifiBand#last}
 */
public record WifiChannel(WifiBand band, int number) {

	private static final int SPACING_MHZ = 5;
	private static final int LAST_OF_2_4_MHZ = 2484;
	/** The lone 20 MHz channel below the raster of the 6 GHz band (operating class 136). */
	private static final int SECOND_OF_6_MHZ = 5935;

	/** @throws IllegalArgumentException where the band has no such number */
	public WifiChannel {
		Objects.requireNonNull(band);
		if (number < band.first() || number > band.last()) {
			throw new IllegalArgumentException("no channel " + number + " in band " + band);
		}
	}

	/** The centre, in MHz. */
	public int centreMhz() {
		if (band == WifiBand.GHZ_2_4 && number == 14) {
			return LAST_OF_2_4_MHZ;
		}
		if (band == WifiBand.GHZ_6 && number == 2) {
			return SECOND_OF_6_MHZ;
		}
		return band.startMhz() + SPACING_MHZ * number;
	}

	/** The channel with that centre, or empty where none has it. */
	public static Optional<WifiChannel> atMhz(int centreMhz) {
		if (centreMhz == LAST_OF_2_4_MHZ) {
			return Optional.of(new WifiChannel(WifiBand.GHZ_2_4, 14));
		}
		if (centreMhz == SECOND_OF_6_MHZ) {
			return Optional.of(new WifiChannel(WifiBand.GHZ_6, 2));
		}
		for (WifiBand band : WifiBand.values()) {
			int above = centreMhz - band.startMhz();
			int number = above / SPACING_MHZ;
			if (above % SPACING_MHZ == 0 && number >= band.first() && number <= band.last()) {
				WifiChannel channel = new WifiChannel(band, number);
				// Not where the raster would give a number that stands for another frequency.
				return channel.centreMhz() == centreMhz ? Optional.of(channel) : Optional.empty();
			}
		}
		return Optional.empty();
	}
}
