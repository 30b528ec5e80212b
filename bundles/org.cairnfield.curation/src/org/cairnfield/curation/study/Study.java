package org.cairnfield.curation.study;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.cairnfield.core.task.TimeLimit;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.split.UnfitSurveyException;

/**
 * Sets ways of splitting side by side: each method on each map, its settings chosen on held-out training positions within one
 * budget of comparisons, its figures measured on test samples that no choice looked at. With the same seed all figures are the
 * same, but for times and for what was skipped for want of time.
 */
public final class Study {

	/** Raised whenever a row would come out otherwise, so that older rows are not taken for done. */
	private static final int FORMAT = 1;

	private final List<StudyMap> maps;
	private final StudySettings settings;
	private final StudyRecords records;
	private final StudyListener listener;
	private final Workers workers;
	private final TimeLeft timeLeft;
	private final List<StudyRow> rows = new ArrayList<>();

	private Study(List<StudyMap> maps, StudySettings settings, StudyRecords records, StudyListener listener,
			Workers workers) {
		this.maps = List.copyOf(maps);
		this.settings = settings;
		this.records = records;
		this.listener = listener;
		this.workers = workers;
		timeLeft = new TimeLeft(this.maps, settings.methods());
	}

	/**
	 * Does it, map by map. Rows that are kept are not done again.
	 *
	 * @param maps    of different names
	 * @param records where rows are kept
	 * @throws CancellationException where it is cancelled; rows that are done are kept
	 * @throws StudyFolderException  where a row cannot be kept
	 */
	public static StudyTable run(List<StudyMap> maps, StudySettings settings, StudyRecords records,
			StudyListener listener, Workers workers) {
		Study study = new Study(maps, settings, records, listener, workers);
		study.maps.forEach(study::on);
		return StudyTable.of(study.rows, settings.seed());
	}

	private void on(StudyMap map) {
		String digest = map.digest();
		MapUnderStudy under = null;
		List<StudyRow> ofMap = new ArrayList<>();
		for (StudyMethod method : settings.methods()) {
			String key = key(digest, method, ofMap);
			Optional<StudyRow> kept = records.find(key).filter(this::isStillRight);
			StudyRow row;
			if (kept.isPresent()) {
				row = kept.get();
				timeLeft.kept(map, method);
			} else {
				listener.begun(new StudyListener.Step(map.name(), method, rows.size(),
						maps.size() * settings.methods().size(), timeLeft.left()));
				long begin = System.nanoTime();
				under = under == null ? new MapUnderStudy(map, settings) : under;
				row = row(under, method, ofMap);
				timeLeft.did(map, method, (System.nanoTime() - begin) / 1e9);
				records.keep(key, row);
			}
			ofMap.add(row);
			rows.add(row);
			listener.done(row, kept.isPresent());
		}
	}

	/** What was too slow is tried again where it may take longer now. */
	private boolean isStillRight(StudyRow row) {
		return row.isMeasured() || row.limitS() >= settings.most().toMillis() / 1e3;
	}

	/** Plain matching takes as long as it takes: all others are set beside it. */
	private StudyRow row(MapUnderStudy under, StudyMethod method, List<StudyRow> others) {
		try {
			if (method.isPlain()) {
				return under.row(method, others, workers.quietly());
			}
			return TimeLimit.of(settings.most()).run(workers, within -> under.row(method, others, within))
					.orElseGet(() -> under.skipped(method,
							Words.bind(Messages.Study_tooSlowNotDoneIn, settings.most().toMillis() / 1e3)));
		} catch (UnfitSurveyException e) {
			return under.skipped(method, e.getMessage());
		}
	}

	/** Of all that a row depends on. @param others rows of the same map before it, which the choice looks at */
	private String key(String digest, StudyMethod method, List<StudyRow> others) {
		StringBuilder text = new StringBuilder().append(FORMAT).append('\n').append(digest).append('\n')
				.append(method.code()).append('\n').append(settings.seed());
		if (method == StudyMethod.CHOSEN) {
			others.forEach(row -> text.append('\n').append(row.method()).append(' ').append(row.best()));
		}
		try {
			return HexFormat.of().formatHex(
					MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8)));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException(e); // every JDK has it
		}
	}
}
