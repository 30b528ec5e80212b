package org.cairnfield.exchange;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.radio.WifiChannel;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.Guard;

/** Reads which channel each access point was heard on, from a table whose rows list {@code name:channel}. */
final class ChannelLists {

	private final FilePlan signals;
	private final IntakeOptions options;
	private final MapSink sink;

	ChannelLists(FilePlan signals, IntakeOptions options, MapSink sink) {
		this.signals = signals;
		this.options = options;
		this.sink = sink;
	}

	/** Gives each access point the channel that it has most often. Cells that are no such pair count for nothing. */
	void read() throws IntakeException {
		Map<String, Map<Integer, Integer>> counts = new HashMap<>();
		long strange = 0;
		try (RowReader row = new RowReader(signals.channels.file, signals.channels.dialect, options.limits())) {
			while (row.next()) {
				for (int i = 0; i < row.size(); i++) {
					String cell = row.get(i).strip();
					int start = ListCells.numberStart(cell);
					int number = start < 0 ? 0 : number(cell.substring(start));
					if (channel(number).isPresent()) {
						counts.computeIfAbsent(Guard.off(cell.substring(0, start - 1).strip()), n -> new HashMap<>())
								.merge(number, 1, Integer::sum);
					} else {
						strange += cell.isEmpty() ? 0 : 1;
					}
				}
			}
		}
		counts.forEach((name, of) -> sink.channel(name, signals.site,
				channel(of.entrySet().stream().max(Map.Entry.<Integer, Integer>comparingByValue()
						.thenComparing(Map.Entry.comparingByKey())).orElseThrow().getKey()).orElseThrow()));
		signals.note(Words.bind(Messages.ChannelLists_channelsOfAccessPoints1, CellWords.count(counts.size()),
				strange == 0 ? "" : Words.bind(Messages.ChannelLists_cellsHoldNoChannel, CellWords.count(strange))));
	}

	private static int number(String text) {
		try {
			return Integer.parseInt(text.strip());
		} catch (NumberFormatException e) {
			return 0;
		}
	}

	/** In the older bands: a bare number says nothing about 6 GHz. */
	private static Optional<WifiChannel> channel(int number) {
		return Stream.of(WifiBand.GHZ_2_4, WifiBand.GHZ_5)
				.filter(band -> number >= band.first() && number <= band.last())
				.map(band -> new WifiChannel(band, number)).findFirst();
	}
}
