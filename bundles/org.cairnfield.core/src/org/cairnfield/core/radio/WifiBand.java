package org.cairnfield.core.radio;

/** A band of Wi-Fi channels. A channel number means nothing without its band: 1 … 233 occur in several. */
public enum WifiBand {

	/** Channels 1 … 13 at 2407 + 5c MHz, and 14 at 2484 MHz. */
	GHZ_2_4(2407, 1, 14),
	/** Channels 32 … 177 at 5000 + 5c MHz; centres of wider channels included. */
	GHZ_5(5000, 32, 177),
	/** Channels 1 … 233 at 5950 + 5c MHz; 2 is special, at 5935 MHz. Centres of wider channels included. */
	GHZ_6(5950, 1, 233);

	private final int startMhz;
	private final int first;
	private final int last;

	WifiBand(int startMhz, int first, int last) {
		this.startMhz = startMhz;
		this.first = first;
		this.last = last;
	}

	/** What the channel spacing is counted from, in MHz. */
	int startMhz() {
		return startMhz;
	}

	/** The lowest channel number taken. */
	public int first() {
		return first;
	}

	/** The highest channel number taken. */
	public int last() {
		return last;
	}
}
