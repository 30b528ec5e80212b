package org.cairnfield.curation.run;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.exchange.Intake;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.SampleKey;

/**
 * Survey files as an archive in memory: what is done with them goes the way of every archive, and nothing is written.
 *
 * @param intake the survey of the map
 * @param keys   of its samples in the archive, in the order of the files; null for those held out
 * @param tests  samples to measure with
 * @param isHeldOut whether these were held out of the map
 */
public record FileArchive(Archive archive, Intake intake, SampleKey[] keys, int tests, boolean isHeldOut) {

	/** Held out where no test survey is given. */
	public static final double HELD_OUT_SHARE = 0.2;
	private static final String CLEANING = "few-readings";

	/** All samples make the map. */
	public static FileArchive of(Intake map) {
		return of(map, s -> true);
	}

	/** A test survey measures the map. */
	public static FileArchive of(Intake map, Intake test) {
		FileArchive made = of(map);
		Intake named = named(test);
		take(made.archive, named, s -> true, SurveyKind.TEST);
		return new FileArchive(made.archive, map, made.keys, test.map().size(), false);
	}

	/** A fifth of the samples measures the map: whole blocks of positions. */
	public static FileArchive heldOut(Intake map, long seed) {
		boolean[] out = PositionBlocks.of(map.map()).holdOut(HELD_OUT_SHARE, seed);
		FileArchive made = of(map, s -> !out[s]);
		take(made.archive, named(map), s -> out[s], SurveyKind.TEST);
		return new FileArchive(made.archive, map, made.keys,
				(int) IntStream.range(0, out.length).filter(s -> out[s]).count(), true);
	}

	private static FileArchive of(Intake map, IntPredicate wanted) {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		return new FileArchive(archive, map, take(archive, named(map), wanted, SurveyKind.TRAINING), 0, false);
	}

	private static SampleKey[] take(Archive archive, Intake intake, IntPredicate wanted, SurveyKind kind) {
		SurveyTaking taking = SurveyTaking.of(archive, intake, wanted, kind);
		taking.command().execute();
		return taking.keys();
	}

	/** With running numbers in place of names that an archive cannot keep. */
	private static Intake named(Intake intake) {
		return intake.sampleIds().stream().allMatch(Ids::isUsableForSample) ? intake
				: new Intake(intake.map(),
						IntStream.rangeClosed(1, intake.map().size()).mapToObj(Integer::toString).toList(),
						intake.reports(),
						intake.quarantines(), intake.notHeard(), intake.notes());
	}

	/** Sets samples aside that heard fewer access points than the rule of that name asks for; answers how many. */
	public int setAsideFewReadings(Workers workers) {
		List<Finding> found = RuleCheck
				.of(archive, new RuleRun(CleaningRules.registry().some(List.of(CLEANING))), workers).open();
		RemedyCommands commands = new RemedyCommands(archive);
		found.forEach(finding -> finding.remedy().ifPresent(commands::apply));
		return training() - ArchiveMap.of(archive).map().size();
	}

	/** Samples of the map, test samples left out. */
	public int training() {
		return (int) IntStream.range(0, keys.length).filter(s -> keys[s] != null).count();
	}
}
