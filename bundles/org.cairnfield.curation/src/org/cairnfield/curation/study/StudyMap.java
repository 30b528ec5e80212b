package org.cairnfield.curation.study;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.Archive;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * One of the maps of a study.
 *
 * @param name      by which it is told apart from the others
 * @param training  its cleaned samples
 * @param test      samples to measure with, which no choice looks at
 * @param isHeldOut whether these are blocks of its own positions, for want of a test survey
 * @param setAside  samples left out of the map for what they heard
 */
public record StudyMap(String name, RadioMap training, RadioMap test, boolean isHeldOut, int setAside) {

	private static final int FEWEST = 10;

	/** @throws UnfitSurveyException where there is too little to measure with */
	public StudyMap {
		if (training.size() < FEWEST || test.size() == 0) {
			throw new UnfitSurveyException(
					Words.bind(Messages.StudyMap_aStudyNeedsSamplesOf, name, FEWEST, training.size(), test.size()));
		}
	}

	/** Of survey files, cleaned as a run cleans them. */
	public static StudyMap of(String name, FileArchive files, Workers workers) {
		int setAside = files.setAsideFewReadings(workers);
		return new StudyMap(name, ArchiveMap.of(files.archive()).map(), test(files.archive()), files.isHeldOut(),
				setAside);
	}

	/** Of an archive: its map as it is kept, and its test surveys or, where there is none, a fifth of the map by blocks of positions. */
	public static StudyMap of(String name, Archive archive, long seed) {
		RadioMap map = ArchiveMap.of(archive, Scope.ARCHIVE, SurveyKind.TRAINING).map();
		RadioMap test = test(archive);
		if (test.size() > 0) {
			return new StudyMap(name, map, test, false, 0);
		}
		boolean[] out = PositionBlocks.of(map).holdOut(FileArchive.HELD_OUT_SHARE, seed);
		return new StudyMap(name, map.where(s -> !out[s]), map.where(s -> out[s]), true, 0);
	}

	private static RadioMap test(Archive archive) {
		return ArchiveMap.of(archive, Scope.ARCHIVE, SurveyKind.TEST).map();
	}

	/** SHA-256 of all that a method or a measurement looks at. */
	String digest() {
		try {
			MessageDigest sha = MessageDigest.getInstance("SHA-256");
			put(sha, name);
			put(sha, training);
			put(sha, test);
			put(sha, isHeldOut + " " + setAside);
			return HexFormat.of().formatHex(sha.digest());
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException(e); // every JDK has it
		}
	}

	private static void put(MessageDigest sha, RadioMap map) {
		put(sha, map.accessPoints().toString());
		put(sha, map.sites().toString());
		for (int s = 0; s < map.size(); s++) {
			StringBuilder line = new StringBuilder().append(map.site(s)).append(' ').append(map.floor(s)).append(' ')
					.append(map.x(s)).append(' ').append(map.y(s));
			for (int r = map.firstReading(s), end = map.endReading(s); r < end; r++) {
				line.append(' ').append(map.accessPoint(r)).append(':').append(map.rssiDbm(r));
			}
			put(sha, line.toString());
		}
	}

	private static void put(MessageDigest sha, String text) {
		sha.update(text.getBytes(StandardCharsets.UTF_8));
		sha.update((byte) '\n');
	}
}
