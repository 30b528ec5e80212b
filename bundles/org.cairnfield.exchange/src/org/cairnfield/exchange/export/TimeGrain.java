package org.cairnfield.exchange.export;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;

import org.cairnfield.core.map.RadioMap;

/** How exactly times leave; all in UTC, rounded down. */
public enum TimeGrain {

	/** As recorded. */
	FULL,
	/** To the hour. */
	HOUR,
	/** To the day. */
	DAY,
	/** To the first of the month. */
	MONTH,
	/** No times. */
	NONE;

	/** A time in milliseconds since 1970-01-01T00:00Z as it leaves; {@link RadioMap#NO_TIME} stays. */
	public long coarsen(long millis) {
		if (millis == RadioMap.NO_TIME) {
			return millis;
		}
		Instant time = Instant.ofEpochMilli(millis);
		return switch (this) {
		case FULL -> millis;
		case HOUR -> time.truncatedTo(ChronoUnit.HOURS).toEpochMilli();
		case DAY -> time.truncatedTo(ChronoUnit.DAYS).toEpochMilli();
		case MONTH -> YearMonth.from(time.atOffset(ZoneOffset.UTC)).atDay(1).atStartOfDay().toInstant(ZoneOffset.UTC)
				.toEpochMilli();
		case NONE -> RadioMap.NO_TIME;
		};
	}
}
