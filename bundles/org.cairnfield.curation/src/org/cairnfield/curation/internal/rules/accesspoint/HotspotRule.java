package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.simulate.ItuIndoor;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Spots;

/**
 * Senders that do not stay where they are. Three signs, each enough: those next to a place where it was heard well did
 * not hear it at all when they came earlier or later (one that is only heard badly is missed at any time); it is loud
 * at places of one floor farther apart than a sender of the highest power can be (ITU-R P.1238, office, 2.4 GHz); it
 * is loud at several sites, unless its name is no address.
 */
public final class HotspotRule extends DescribedRule {

	/** The figure that grows with the fault; findings of planted faults are compared by it. */
	public static final String STRENGTH = Messages.HotspotRule_shareThatMissedIt;

	public static final Parameter WELL = Parameter.number("well-heard-dbm",
			Messages.HotspotRule_levelAtWhichItsNeighbours, -70, -100, -30, "dBm",
			onCampuses(Messages.HotspotRule_80And60FindAll));
	public static final Parameter MISSED = Parameter.share("missed-share",
			Messages.HotspotRule_shareOfNeighboursThatDid, 0.2,
			onCampuses(Messages.HotspotRule_01And03));
	public static final Parameter LATER = Parameter.share("later-chance",
			Messages.HotspotRule_chanceThatOneThatMissed, 0.65,
			onCampuses(Messages.HotspotRule_033And098));
	public static final Parameter LOUD = Parameter.number("loud-dbm", Messages.HotspotRule_levelOfASenderNearby, -60,
			-90, -20, "dBm",
			onCampuses(Messages.HotspotRule_70FindsTheSame50));
	public static final Parameter POWER = Parameter.number("power-dbm", Messages.HotspotRule_highestRadiatedPower, 20,
			0, 40, "dBm",
			standard(
					Messages.HotspotRule_theMostAllowedAt2));
	public static final Parameter TOLERANCE = Parameter.number("times-farther",
			Messages.HotspotRule_fartherApartThanExpectedBy, 1.5,
			1, 10,
			"", onCampuses(Messages.HotspotRule_1And3FindThe));
	public static final Parameter COMMON = Parameter.share("common-names",
			Messages.HotspotRule_shareOfAccessPointsLoud, 0.2,
			onCampuses(Messages.HotspotRule_01And03));

	static final Threshold METRES = new Threshold(Messages.HotspotRule_neighboursOfAPlaceAre, 3.5, "m",
			judged(Messages.HotspotRule_aboutTheDistanceBetweenPlaces));
	static final Threshold FEWEST_ASKED = new Threshold(Messages.HotspotRule_neighboursAskedAtLeast, 12,
			standard(Messages.HotspotRule_ofFewerThe95Interval));
	private static final Threshold FEWEST_LOUD = new Threshold(Messages.HotspotRule_loudPlaces, 3,
			judged(Messages.HotspotRule_oneMisplacedSampleMustNot));
	private static final Threshold FREQUENCY_MHZ = new Threshold("frequency", 2437, "MHz",
			standard(Messages.HotspotRule_channel6TheMiddleOf));

	public HotspotRule() {
		super("hotspot", Messages.HotspotRule_mobileAccessPoint,
				Messages.HotspotRule_aHotspotInAPocket,
				Severity.WARNING, Topic.ACCESS_POINT, RuleScope.ARCHIVE, WELL, MISSED, LATER, LOUD, POWER, TOLERANCE,
				COMMON);
	}

	/** On one floor, twice the distance at which the highest power falls to the loud level. */
	static double farthestApart(double loudDbm, double powerDbm) {
		double atOneMetre = ItuIndoor.OFFICE_2_4_GHZ.lossDb(1, FREQUENCY_MHZ.value(), 0);
		double spare = powerDbm - loudDbm - atOneMetre;
		return 2 * Math.pow(10, Math.max(0, spare) / ItuIndoor.OFFICE_2_4_GHZ.distanceCoefficient());
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(List.of(METRES, FEWEST_ASKED, FEWEST_LOUD, FREQUENCY_MHZ), Walking.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		Spots spots = Spots.of(input);
		RadioMap map = spots.map();
		Absences absences = new Absences(input, settings.of(WELL), METRES.value());
		Loud loud = new Loud(map, settings.of(LOUD));
		List<Integer> abroad = new ArrayList<>();
		int heard = 0;
		for (int a = 0; a < map.accessPointCount(); a++) {
			heard += loud.count(a) > 0 ? 1 : 0;
			if (loud.sites(a).size() > 1) {
				abroad.add(a);
			}
		}
		List<Finding> findings = new ArrayList<>();
		boolean namesOnly = abroad.size() > 2 && abroad.size() > settings.of(COMMON) * heard;
		boolean[] recurs = recurring(map);
		List<Integer> names = abroad.stream().filter(a -> namesOnly || recurs[a]).toList();
		if (!names.isEmpty()) {
			findings.add(notAddresses(input.map(), names, heard, settings));
		}
		double limit = settings.of(TOLERANCE) * farthestApart(settings.of(LOUD), settings.of(POWER));
		for (int a = 0; a < map.accessPointCount(); a++) {
			List<String> signs = new ArrayList<>();
			if (Walking.isGone(absences, a, settings.of(MISSED), settings.of(LATER))) {
				signs.add(String.format(Locale.ROOT,
						Messages.HotspotRule_ofNeighboursOfPlacesWhere,
						absences.missed(a), absences.asked(a), RuleWords.number(settings.of(WELL))));
			}
			if (loud.farthest(a) > limit) {
				signs.add(String.format(Locale.ROOT,
						Messages.HotspotRule_dbmOrMoreAtPlaces,
						RuleWords.number(settings.of(LOUD)), loud.farthest(a), limit));
			}
			if (loud.sites(a).size() > 1 && !names.contains(a)) {
				signs.add(Words.bind(Messages.HotspotRule_loudAt, RuleWords.list(loud.sites(a))));
			}
			if (!signs.isEmpty()) {
				findings.add(finding(map.accessPoints().get(a), signs, absences, loud, a, recurs[a]));
			}
		}
		return RuleOutcome.found(findings);
	}

	/**
	 * Which names that are no addresses are heard at several sites: each site may have numbered its own. That they are loud at several
	 * sites says nothing, and setting one aside would set aside sound access points of its name.
	 */
	private static boolean[] recurring(RadioMap map) {
		int[] site = new int[map.accessPointCount()];
		Arrays.fill(site, -1);
		boolean[] recurs = new boolean[site.length];
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int a = map.accessPoint(k);
				recurs[a] |= site[a] >= 0 && site[a] != map.site(s);
				site[a] = map.site(s);
			}
		}
		for (int a = 0; a < recurs.length; a++) {
			recurs[a] &= MacAddress.find(map.accessPoints().get(a)).isEmpty();
		}
		return recurs;
	}

	private Finding finding(String address, List<String> signs, Absences absences, Loud loud, int a, boolean recurs) {
		Finding.Builder finding = Finding.of(this)
				.message(Words.bind(Messages.HotspotRule_doesNotStayWhereIt, address, String.join("; ", signs),
						recurs ? Messages.HotspotRule_itsNameIsNoAddress
								: ""))
				.about(new Subject.OfAccessPoint(address))
				.figure(Messages.HotspotRule_neighboursAsked, absences.asked(a), "")
				.figure(Messages.HotspotRule_neighboursThatMissedIt, absences.missed(a), "")
				.figure(STRENGTH,
						(double) absences.missed(a) / Math.max(1, absences.asked(a)), "")
				.figure(Messages.HotspotRule_loudPlacesFarthestApart, loud.farthest(a), "m")
				.figure("sites", loud.sites(a).size(), "");
		return recurs ? finding.build()
				: finding
						.remedy(new Remedy.SetAsideAccessPoints(List.of(address),
								Messages.HotspotRule_doesNotStayWhereIt2))
						.build();
	}

	private Finding notAddresses(SurveyedMap map, List<Integer> abroad, int heard, Settings settings) {
		List<String> names = abroad.stream().map(map.map().accessPoints()::get).toList();
		String message = String.format(Locale.ROOT,
				Messages.HotspotRule_ofAccessPointsAreLoud,
				abroad.size(), heard, RuleWords.number(settings.of(LOUD)));
		return Finding.of(this).severity(Severity.NOTE).message(message)
				.about(names.stream().map(Subject.OfAccessPoint::new).toList())
				.figure(Messages.HotspotRule_accessPoints, abroad.size(), "").build();
	}

	/** Where each access point is loud. */
	private static final class Loud {
		private final RadioMap map;
		private final Ints[] spots;

		Loud(RadioMap map, double loudDbm) {
			this.map = map;
			spots = new Ints[map.accessPointCount()];
			for (int s = 0; s < map.size(); s++) {
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					if (map.rssiDbm(k) >= loudDbm) {
						int a = map.accessPoint(k);
						spots[a] = spots[a] == null ? new Ints() : spots[a];
						spots[a].add(s);
					}
				}
			}
		}

		int count(int a) {
			return spots[a] == null ? 0 : spots[a].size();
		}

		/**
		 * Sites with some loud places, by name; not those with few against the most, where it is heard across the yard.
		 */
		List<String> sites(int a) {
			Map<String, Integer> counts = new TreeMap<>();
			for (int i = 0; i < count(a); i++) {
				counts.merge(map.sites().get(map.site(spots[a].get(i))), 1, Integer::sum);
			}
			int most = counts.values().stream().mapToInt(n -> n).max().orElse(0);
			counts.values().removeIf(n -> n < FEWEST_LOUD.count() || 5 * n < most);
			return List.copyOf(counts.keySet());
		}

		/**
		 * Along one of four directions on one floor, from a fifth of the loud places in to four fifths, in metres: a
		 * few misplaced samples do not make a sender walk.
		 */
		double farthest(int a) {
			Map<Long, Ints> floors = new TreeMap<>();
			for (int i = 0; i < count(a); i++) {
				int s = spots[a].get(i);
				floors.computeIfAbsent((long) map.site(s) << 32 | map.floor(s) & 0xFFFF_FFFFL, f -> new Ints()).add(s);
			}
			double farthest = 0;
			for (Ints floor : floors.values()) {
				for (int d = 0; floor.size() >= 2 * FEWEST_LOUD.count() && d < 4; d++) {
					double angle = d * Math.PI / 4;
					double[] along = Arrays.stream(floor.toArray())
							.mapToDouble(s -> map.x(s) * Math.cos(angle) + map.y(s) * Math.sin(angle)).sorted()
							.toArray();
					int in = along.length / 5;
					farthest = Math.max(farthest, along[along.length - 1 - in] - along[in]);
				}
			}
			return farthest;
		}
	}
}
