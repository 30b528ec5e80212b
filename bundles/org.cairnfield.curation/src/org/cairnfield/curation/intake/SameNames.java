package org.cairnfield.curation.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiChannel;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.Intake;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.SampleTable;

/**
 * Access points of one name, which is no address, at several sites: one sender, or a number that each site gave anew? Only a person
 * can tell. The answer stays with the archive by what its access points are called: {@code site/name} where each site has its own.
 */
public final class SameNames {

	/** What a person says of them. */
	public enum Answer {
		/** One sender, heard at several sites. */
		ONE_SENDER("one-sender"),
		/** As many access points as there are sites. */
		PER_SITE("per-site");

		private final String code;

		Answer(String code) {
			this.code = code;
		}

		/** As files and commands write it. */
		@Override
		public String toString() {
			return code;
		}
	}

	private static final int NAMED = 4;

	private final List<String> names;
	private final List<String> sites;
	private final Optional<Answer> kept;

	private SameNames(List<String> names, List<String> sites, Optional<Answer> kept) {
		this.names = names;
		this.sites = sites;
		this.kept = kept;
	}

	/**
	 * The question that surveys raise in an archive.
	 *
	 * @param archive that they would be taken into; its samples count as well
	 */
	public static SameNames of(Archive archive, Intake intake) {
		Map<String, Set<String>> sitesOf = sitesOf(archive);
		Optional<Answer> kept = kept(archive, sitesOf);
		Set<String> fresh = new TreeSet<>();
		RadioMap map = intake.map();
		for (int s = 0; s < map.size(); s++) {
			String site = map.sites().get(map.site(s));
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				String name = map.accessPoints().get(map.accessPoint(k));
				sitesOf.computeIfAbsent(name, n -> new TreeSet<>()).add(site);
				fresh.add(name);
			}
		}
		List<String> names = fresh.stream().filter(name -> !isAddress(name) && sitesOf.get(name).size() > 1).toList();
		Set<String> sites = new TreeSet<>();
		names.forEach(name -> sites.addAll(sitesOf.get(name)));
		return new SameNames(names, List.copyOf(sites), kept);
	}

	private static boolean isAddress(String name) {
		return MacAddress.find(name).isPresent();
	}

	/** Sites by the name of the access points heard there. */
	private static Map<String, Set<String>> sitesOf(Archive archive) {
		Map<String, String> addresses = new HashMap<>();
		archive.getAccessPoints()
				.forEach(accessPoint -> addresses.put(accessPoint.getId(), ModelText.address(accessPoint)));
		Map<String, Set<String>> sitesOf = new TreeMap<>();
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				SampleTable table = survey.table();
				table.accessPoints()
						.forEach(id -> sitesOf.computeIfAbsent(addresses.getOrDefault(id, id), n -> new TreeSet<>())
								.add(ModelText.name(site)));
			}
		}
		return sitesOf;
	}

	private static Optional<Answer> kept(Archive archive, Map<String, Set<String>> sitesOf) {
		boolean apart = archive.getSites().stream().map(ModelText::name)
				.anyMatch(site -> sitesOf.keySet().stream().anyMatch(name -> name.startsWith(site + "/")));
		boolean one = sitesOf.entrySet().stream()
				.anyMatch(each -> !isAddress(each.getKey()) && each.getValue().size() > 1);
		return apart ? Optional.of(Answer.PER_SITE) : one ? Optional.of(Answer.ONE_SENDER) : Optional.empty();
	}

	/** Whether there is anything to ask. */
	public boolean areFound() {
		return !names.isEmpty();
	}

	/** The names, sorted. */
	public List<String> names() {
		return names;
	}

	/** The answer that the archive was made with; empty where it has met no such names. */
	public Optional<Answer> kept() {
		return kept;
	}

	/** The question, for a person. */
	public String question() {
		return Words.bind(Messages.SameNames_usedAtSeveralSitesAt, names.size(),
				names.size() == 1 ? Messages.SameNames_nameOfAnAccessPoint : Messages.SameNames_namesOfAccessPointsAre,
				String.join(", ", names.subList(0, Math.min(NAMED, names.size()))), names.size() > NAMED ? " …" : "",
				String.join(", ", sites),
				names.size() == 1 ? Messages.SameNames_isNoAddress : Messages.SameNames_areNoAddresses);
	}

	/** The surveys as an answer has them. */
	public Intake as(Answer answer, Intake intake) {
		return answer == Answer.PER_SITE && areFound() ? apart(intake) : intake;
	}

	/** Every name that is no address gets its site put before it, also those that are not at several sites yet. */
	private static Intake apart(Intake intake) {
		RadioMap map = intake.map();
		RadioMapBuilder builder = new RadioMapBuilder();
		Map<String, WifiChannel> channels = new HashMap<>();
		for (int s = 0; s < map.size(); s++) {
			String site = map.sites().get(map.site(s));
			builder.sample(site, map.floor(s), map.x(s), map.y(s));
			if (map.device(s) != RadioMap.NO_DEVICE) {
				builder.device(map.devices().get(map.device(s)));
			}
			if (map.timeMillis(s) != RadioMap.NO_TIME) {
				builder.time(map.timeMillis(s));
			}
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				String name = map.accessPoints().get(map.accessPoint(k));
				String own = isAddress(name) ? name : site + "/" + name;
				builder.reading(own, map.rssiDbm(k));
				if (intake.channels().containsKey(name)) {
					channels.put(own, intake.channels().get(name));
				}
			}
		}
		return new Intake(builder.build(), intake.sampleIds(), intake.reports(), intake.quarantines(),
				intake.notHeard(), intake.notes(),
				channels);
	}
}
