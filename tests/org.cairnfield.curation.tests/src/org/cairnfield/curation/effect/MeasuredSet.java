package org.cairnfield.curation.effect;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultyCampus;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.simulate.SimulatedSurvey;
import org.cairnfield.curation.rules.OpenSurveys;
import org.cairnfield.curation.rules.SimulatedSurveys;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.exchange.IntakeException;

/**
 * A map with a test survey that it has nothing to do with.
 *
 * @param test measures the map, and plays no other part
 */
public record MeasuredSet(String name, SurveyedMap map, RadioMap test) {

	/** The demo. */
	public static MeasuredSet demo() {
		return simulated("Marrow Quay", MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED));
	}

	/** Four campuses with faults of every kind. */
	public static List<MeasuredSet> campuses() {
		return List.of(simulated("campus 6601", FaultyCampus.surveys(6601, CampusSize.of(3, 3, 140))),
				simulated("campus 6602", FaultyCampus.surveys(6602, CampusSize.of(2, 4, 120))),
				simulated("campus 6603", FaultyCampus.surveys(6603, CampusSize.of(4, 2, 190))),
				simulated("campus 6604", FaultyCampus.surveys(6604, CampusSize.of(2, 3, 150))));
	}

	public static MeasuredSet simulated(String name, SimulatedArchive archive) {
		return new MeasuredSet(name, SimulatedSurveys.of(archive),
				SimulatedSurveys.of(archive, archive.surveys(SimulatedSurvey.Role.TEST)).map());
	}

	/** An open set with a test survey of its own. */
	public static MeasuredSet open(String set, String training, String test) throws IOException, IntakeException {
		return new MeasuredSet(set, OpenSurveys.read(set, training), OpenSurveys.read(set, test).map());
	}

	/** An open set without one: a fifth of its samples, by whole blocks of places. */
	public static MeasuredSet heldOut(String set, String part) throws IOException, IntakeException {
		SurveyedMap all = OpenSurveys.read(set, part);
		boolean[] out = PositionBlocks.of(all.map()).holdOut(0.2, 1);
		return new MeasuredSet(set, all.only(IntStream.range(0, out.length).filter(s -> !out[s]).toArray()),
				all.map().where(s -> out[s]));
	}
}
