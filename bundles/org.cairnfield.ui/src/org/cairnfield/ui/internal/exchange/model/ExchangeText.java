package org.cairnfield.ui.internal.exchange.model;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cairnfield.archive.Exchanged;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.values.Count;

/** An exchange in words. */
public final class ExchangeText {

	/** Titles of {@link #lines}. */
	public static final List<String> TITLES = List.of("", "Time", "Who", "What changed", "Save point");

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(ZoneId.systemDefault());
	private static final String EVEN = "You and the others have the same save points.";

	private ExchangeText() {
	}

	/** What an exchange has brought. */
	public static String done(Exchanged exchanged) {
		if (exchanged.received().isEmpty() && exchanged.sent().isEmpty()) {
			return "Nothing to exchange. " + EVEN + notes(exchanged);
		}
		String received = exchanged.received().isEmpty() ? "received nothing"
				: "received " + Count.of(exchanged.received().size(), "save point") + " from " + people(exchanged.received());
		String sent = exchanged.sent().isEmpty() ? "sent nothing" : "sent " + Count.of(exchanged.sent().size(), "save point");
		return "Exchanged: " + received + ", " + sent + '.' + notes(exchanged);
	}

	private static String notes(Exchanged exchanged) {
		return exchanged.notes().isEmpty() ? "" : exchanged.notes().size() == 1 ? " Note: " + exchanged.notes().get(0) + '.'
				: ' ' + Count.of(exchanged.notes().size(), "note") + " to read.";
	}

	/** How far this archive and the remote are apart. */
	public static String apart(Exchanged look) {
		if (look.received().isEmpty() && look.sent().isEmpty()) {
			return EVEN;
		}
		String conflicts = look.conflicts() == 0 || look.received().isEmpty() ? ""
				: " After the exchange there would be " + Count.of(look.conflicts(), "conflict") + " to decide.";
		return "Ahead " + look.sent().size() + ", behind " + look.received().size() + '.' + conflicts;
	}

	/** A line a save point, received ones first, each with {@link #TITLES}. */
	public static List<String[]> lines(Exchanged exchanged) {
		List<String[]> lines = new ArrayList<>();
		exchanged.received().forEach(point -> lines.add(line("Received", point)));
		exchanged.sent().forEach(point -> lines.add(line("Sent", point)));
		return lines;
	}

	private static String[] line(String way, SavePoint point) {
		return new String[] { way, TIME.format(point.time()), point.person(), point.summary(), point.shortId() };
	}

	private static String people(List<SavePoint> points) {
		return points.stream().map(SavePoint::person).distinct().sorted().collect(Collectors.joining(", "));
	}
}
