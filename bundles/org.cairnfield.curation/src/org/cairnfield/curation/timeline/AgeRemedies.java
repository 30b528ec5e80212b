package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.cairnfield.core.change.AccessPointFate;
import org.cairnfield.core.change.Fate;
import org.cairnfield.core.change.LevelFit;
import org.cairnfield.core.change.SharedPlaces;
import org.cairnfield.core.change.ChangeLimits;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.rules.LevelLine;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Scope;

/**
 * Works out what to do about the map of a site once a newer survey is there, and measures it: half of the newer survey's places
 * propose, the other half judge, and the other way round. The newer survey may be part of the map or not.
 */
public final class AgeRemedies {

	private final Archive archive;
	private final Site site;
	private final Workers workers;
	private final LocalDate day;
	/** The map before that day, then the newer surveys. */
	private final SurveyedMap all;
	private final int[] older;
	private final int[] newer;
	private final Set<String> elsewhere;

	private AgeRemedies(Archive archive, Site site, LocalDate day, Workers workers) {
		this.archive = archive;
		this.site = site;
		this.day = day;
		this.workers = workers;
		all = ArchiveMap.of(archive, Scope.site(site.getId()), survey -> isNewer(survey) || isOlder(survey)).surveyed();
		elsewhere = heardElsewhere();
		Set<String> days = new HashSet<>(ids());
		older = IntStream.range(0, all.size()).filter(s -> !days.contains(all.surveys().get(all.survey(s)).id()))
				.toArray();
		newer = IntStream.range(0, all.size()).filter(s -> days.contains(all.surveys().get(all.survey(s)).id()))
				.toArray();
	}

	/** For the newest training survey of a site that has a date; empty where there is none, or no map before it. */
	public static Optional<AgePlan> of(Archive archive, Site site, Workers workers) {
		return site.getSurveys().stream()
				.filter(survey -> survey.getKind() == SurveyKind.TRAINING && survey.getDate() != null)
				.map(Survey::getDate)
				.max(Comparator.naturalOrder()).flatMap(day -> of(archive, site, day, workers));
	}

	/**
	 * For the training surveys of one day.
	 *
	 * @param archive that nobody changes meanwhile
	 * @return empty where the day or the map before it has no samples
	 */
	public static Optional<AgePlan> of(Archive archive, Site site, LocalDate day, Workers workers) {
		AgeRemedies remedies = new AgeRemedies(archive, site, day, workers);
		return remedies.older.length == 0 || remedies.newer.length == 0 ? Optional.empty()
				: Optional.of(remedies.plan());
	}

	private boolean isNewer(Survey survey) {
		return survey.getKind() == SurveyKind.TRAINING && day.equals(survey.getDate());
	}

	private boolean isOlder(Survey survey) {
		return ArchiveMap.isOfTheMap(survey) && (survey.getDate() == null || survey.getDate().isBefore(day));
	}

	private List<String> ids() {
		return site.getSurveys().stream().filter(this::isNewer).map(Survey::getId).toList();
	}

	private AgePlan plan() {
		int[][] halves = Halves.of(all.map(), newer);
		Map<AgeRemedyKind, List<Remedy>> whole = proposed(newer);
		List<AgeRemedy> measured = new ArrayList<>();
		Map<AgeRemedyKind, List<Remedy>> first = proposed(halves[0]);
		Map<AgeRemedyKind, List<Remedy>> second = proposed(halves[1]);
		whole.forEach((kind, remedies) -> {
			workers.checkCancelled();
			double[][] one = errors(kind, first.getOrDefault(kind, List.of()), halves[0], halves[1]);
			double[][] two = errors(kind, second.getOrDefault(kind, List.of()), halves[1], halves[0]);
			measured.add(measured(kind, remedies, joined(one[0], two[0]), joined(one[1], two[1])));
		});
		return new AgePlan(site.getId(), day, ids(),
				SurveyError.of(all.only(older).map(), all.only(newer).map(), workers), measured);
	}

	private static AgeRemedy measured(AgeRemedyKind kind, List<Remedy> remedies, double[] before, double[] after) {
		double[] change = IntStream.range(0, before.length).mapToDouble(p -> after[p] - before[p])
				.filter(each -> !Double.isNaN(each)).toArray();
		return new AgeRemedy(kind, remedies, change.length, SurveyError.of(before), SurveyError.of(after),
				change.length == 0 ? SurveyError.NONE.interval() : SurveyError.interval(change));
	}

	private static double[] joined(double[] one, double[] other) {
		return Stream.of(one, other).flatMapToDouble(Arrays::stream).toArray();
	}

	/** @return by place of the judging half, the error before and after */
	private double[][] errors(AgeRemedyKind kind, List<Remedy> remedies, int[] proposing, int[] judging) {
		boolean takenIn = kind == AgeRemedyKind.REVISITED || kind == AgeRemedyKind.START_ANEW;
		SurveyedMap before = all
				.only(takenIn ? IntStream.concat(Arrays.stream(older), Arrays.stream(proposing)).toArray() : older);
		SurveyedMap questions = all.only(judging);
		return new double[][] { SurveyError.errors(before.map(), questions.map(), workers), SurveyError
				.errors(RemediedMap.of(before, remedies).map().map(), RemediedMap.of(questions, remedies).map().map(),
						workers) };
	}

	/** What some samples of the newer survey propose. */
	private Map<AgeRemedyKind, List<Remedy>> proposed(int[] samples) {
		Map<AgeRemedyKind, List<Remedy>> proposed = new EnumMap<>(AgeRemedyKind.class);
		if (samples.length == 0) {
			return proposed;
		}
		RadioMap then = all.only(older).map();
		RadioMap now = all.only(samples).map();
		SharedPlaces places = SharedPlaces.of(then, now, ChangeLimits.SAME_PLACE_METRES);
		if (places.size() == 0) {
			return proposed;
		}
		SiteChange change = SiteChange.between(then, now, ChangeLimits.SAME_PLACE_METRES);
		List<String> vanished = addresses(change, elsewhere, Fate.VANISHED);
		List<String> gone = addresses(change, elsewhere, Fate.VANISHED, Fate.REPLACED);
		Map<String, String> successors = new TreeMap<>();
		change.with(Fate.REPLACED).stream().filter(each -> !elsewhere.contains(each.address()))
				.forEach(each -> successors.put(each.address(), each.successor()));
		if (!gone.isEmpty()) {
			proposed.put(AgeRemedyKind.VANISHED, List.of(setAside(gone)));
		}
		if (!successors.isEmpty()) {
			Remedy counted = new Remedy.CountAs(successors, Words.bind(Messages.AgeRemedies_replacedBy, day));
			proposed.put(AgeRemedyKind.SUCCESSORS,
					vanished.isEmpty() ? List.of(counted) : List.of(counted, setAside(vanished)));
		}
		proposed.put(AgeRemedyKind.REVISITED,
				List.of(new Remedy.SetAsideSamples(revisited(places),
						Words.bind(Messages.AgeRemedies_measuredAnewOn, day))));
		proposed.put(AgeRemedyKind.START_ANEW, List.of(new Remedy.MapFrom(site.getId(), ArchiveMap.nameOf(site), day)));
		corrected(then, now, samples).ifPresent(remedy -> proposed.put(AgeRemedyKind.DEVICE, List.of(remedy)));
		return proposed;
	}

	private Remedy setAside(List<String> addresses) {
		return new Remedy.SetAsideAccessPoints(addresses, Words.bind(Messages.AgeRemedies_notHeardOnWhereIt, day));
	}

	private List<String> revisited(SharedPlaces places) {
		return IntStream.range(0, places.size()).flatMap(p -> Arrays.stream(places.before(p)))
				.mapToObj(s -> all.sampleId(older[s])).toList();
	}

	private static List<String> addresses(SiteChange change, Set<String> without, Fate... fates) {
		return change.with(fates).stream().map(AccessPointFate::address).filter(address -> !without.contains(address))
				.toList();
	}

	/** At other sites: what is set aside is so for the whole archive. */
	private Set<String> heardElsewhere() {
		Set<String> ids = new HashSet<>();
		for (Site other : archive.getSites()) {
			if (other != site) {
				other.getSurveys().stream().filter(ArchiveMap::isOfTheMap)
						.forEach(survey -> ids.addAll(survey.table().accessPoints()));
			}
		}
		return archive.getAccessPoints().stream().filter(accessPoint -> ids.contains(accessPoint.getId()))
				.map(ModelText::address).collect(Collectors.toSet());
	}

	/** Only where one device made the newer survey, and not the older ones. */
	private Optional<Remedy> corrected(RadioMap then, RadioMap now, int[] samples) {
		Set<String> devices = new HashSet<>();
		Arrays.stream(samples).forEach(s -> devices.add(all.device(s)));
		if (devices.size() != 1 || all.map().device(samples[0]) == RadioMap.NO_DEVICE
				|| Arrays.stream(older).anyMatch(s -> devices.contains(all.device(s)))) {
			return Optional.empty();
		}
		String device = all.device(samples[0]);
		return LevelFit.of(now, then, ChangeLimits.SAME_PLACE_METRES).filter(fit -> fit.hasOffset() || fit.hasSlope())
				.map(fit -> new Remedy.CorrectDevice(all.deviceNamed(device).id(), device,
						new LevelLine(fit.slope(), fit.shiftDb())));
	}
}
