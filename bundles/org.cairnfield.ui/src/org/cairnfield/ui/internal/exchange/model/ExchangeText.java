package org.cairnfield.ui.internal.exchange.model;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.archive.Exchanged;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.values.Count;
import org.eclipse.osgi.util.NLS;

/** An exchange in words. */
public final class ExchangeText {

	/** Titles of {@link #lines}. */
	public static final List<String> TITLES = List.of("", Messages.ExchangeText_time, Messages.ExchangeText_who,
			Messages.ExchangeText_whatChanged, Messages.ExchangeText_savePoint);

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
			.withZone(ZoneId.systemDefault());
	private static final String EVEN = Messages.ExchangeText_youAndTheOthersHave;

	private ExchangeText() {
	}

	/** What an exchange has brought. */
	public static String done(Exchanged exchanged) {
		if (exchanged.received().isEmpty() && exchanged.sent().isEmpty()) {
			return NLS.bind(Messages.ExchangeText_nothingToExchange, EVEN, notes(exchanged));
		}
		String received = exchanged.received().isEmpty() ? Messages.ExchangeText_receivedNothing
				: NLS.bind(Messages.ExchangeText_receivedFrom,
						Count.of(exchanged.received().size(), Messages.ExchangeText_savePoint2),
						people(exchanged.received()));
		String sent = exchanged.sent().isEmpty() ? Messages.ExchangeText_sentNothing
				: NLS.bind(Messages.ExchangeText_sent,
						Count.of(exchanged.sent().size(), Messages.ExchangeText_savePoint2));
		return NLS.bind(Messages.ExchangeText_exchanged, new Object[] { received, sent, notes(exchanged) });
	}

	private static String notes(Exchanged exchanged) {
		return exchanged.notes().isEmpty() ? ""
				: exchanged.notes().size() == 1 ? NLS.bind(Messages.ExchangeText_note, exchanged.notes().get(0))
						: NLS.bind(Messages.ExchangeText_toRead, Count.of(exchanged.notes().size(), "note"));
	}

	/** How far this archive and the remote are apart. */
	public static String apart(Exchanged look) {
		if (look.received().isEmpty() && look.sent().isEmpty()) {
			return EVEN;
		}
		String conflicts = look.conflicts() == 0 || look.received().isEmpty() ? ""
				: NLS.bind(Messages.ExchangeText_afterTheExchangeThereWould, Count.of(look.conflicts(), "conflict"));
		return NLS.bind(Messages.ExchangeText_aheadBehind,
				new Object[] { look.sent().size(), look.received().size(), conflicts });
	}

	/** A line a save point, received ones first, each with {@link #TITLES}. */
	public static List<String[]> lines(Exchanged exchanged) {
		List<String[]> lines = new ArrayList<>();
		exchanged.received().forEach(point -> lines.add(line(Messages.ExchangeText_received, point)));
		exchanged.sent().forEach(point -> lines.add(line(Messages.ExchangeText_sent2, point)));
		return lines;
	}

	private static String[] line(String way, SavePoint point) {
		return new String[] { way, TIME.format(point.time()), point.person(), point.summary(), point.shortId() };
	}

	private static String people(List<SavePoint> points) {
		return points.stream().map(SavePoint::person).distinct().sorted().collect(Collectors.joining(", "));
	}
}
