package org.cairnfield.curation.intake;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiChannel;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;

/**
 * Makes surveys of an archive from files that intake has read: one survey for each file, site and device.
 * Sites, floors, access points and devices that the archive does not know yet are made. The archive passed in
 * is not touched; {@link #command} changes it, and can be undone.
 */
public final class SurveyTaking {

	/** What a file held. */
	public record Taken(Path file, String surveyId, String site, int samples) {
	}

	private final SurveyKind kind;
	private final Names names;
	private final List<Taken> taken = new ArrayList<>();
	private final List<Known> known = new ArrayList<>();
	private final TakeSurveysCommand command;
	private final Intake intake;
	private final IntPredicate wanted;
	private final Map<Survey, List<Integer>> rows = new LinkedHashMap<>();

	private SurveyTaking(Archive archive, Intake intake, IntPredicate wanted, SurveyKind kind) {
		this.intake = intake;
		this.wanted = wanted;
		this.kind = kind;
		names = new Names(archive);
		command = new TakeSurveysCommand(archive);
	}

	/** A file of the same content as one that the archive has already. */
	public record Known(Path file, String surveyId) {
	}

	/** Name of the site of an archive that has one only. */
	public static Optional<String> onlySite(Archive archive) {
		return archive.getSites().size() == 1 ? Optional.of(ModelText.name(archive.getSites().get(0)))
				: Optional.empty();
	}

	/**
	 * @param digests SHA-256 of each file of the intake, hexadecimal, by file. A file whose content is in the
	 *                archive already is not taken again, see {@link #known}
	 */
	public static SurveyTaking of(Archive archive, Intake intake, SurveyKind kind, Map<Path, String> digests) {
		SurveyTaking taking = new SurveyTaking(archive, intake, s -> true, kind);
		Map<String, String> surveyOfDigest = new HashMap<>();
		archive.getSites().forEach(site -> site.getSurveys()
				.forEach(survey -> surveyOfDigest.putIfAbsent(survey.getSourceDigest(), survey.getId())));
		for (FileReport report : intake.reports()) {
			String digest = digests.get(report.file());
			if (report.samples() > 0 && surveyOfDigest.containsKey(digest)) {
				taking.known.add(new Known(report.file(), surveyOfDigest.get(digest)));
			} else if (report.samples() > 0) {
				taking.takeFile(report, digest);
				surveyOfDigest.put(digest, taking.taken.get(taking.taken.size() - 1).surveyId());
			}
		}
		return taking;
	}

	/**
	 * Every file, the same content twice too.
	 *
	 * @param wanted which samples of the intake are taken
	 */
	public static SurveyTaking of(Archive archive, Intake intake, IntPredicate wanted, SurveyKind kind) {
		SurveyTaking taking = new SurveyTaking(archive, intake, wanted, kind);
		intake.reports().stream().filter(report -> report.samples() > 0)
				.forEach(report -> taking.takeFile(report, null));
		return taking;
	}

	/** What each sample is called in the archive, by its place in the intake; null where it was not taken. */
	public SampleKey[] keys() {
		SampleKey[] keys = new SampleKey[intake.map().size()];
		rows.forEach((survey, samples) -> samples.forEach(s -> keys[s] = new SampleKey(survey.getId(), id(s))));
		return keys;
	}

	/** Files that were not taken, since the archive has their content already. */
	public List<Known> known() {
		return List.copyOf(known);
	}

	/** The surveys made. */
	public List<Taken> surveys() {
		return List.copyOf(taken);
	}

	/** Adds all of it to the archive, as one change. */
	public TakeSurveysCommand command() {
		return command;
	}

	/** What distinguishes the surveys of one file. */
	private record Part(int site, int device) {
	}

	private void takeFile(FileReport report, String digest) {
		RadioMap map = intake.map();
		Map<Part, List<Integer>> parts = new TreeMap<>(
				Comparator.comparingInt(Part::site).thenComparingInt(Part::device));
		for (int s = report.firstSample(); s < report.firstSample() + report.samples(); s++) {
			if (wanted.test(s)) {
				parts.computeIfAbsent(new Part(map.site(s), map.device(s)), p -> new ArrayList<>()).add(s);
			}
		}
		String stem = report.surveyName();
		Map<Integer, Long> ofSite = parts.keySet().stream()
				.collect(Collectors.groupingBy(Part::site, Collectors.counting()));
		parts.forEach((part, samples) -> {
			String siteName = map.sites().get(part.site());
			Site site = names.site(siteName, command);
			Survey survey = ModelFactory.eINSTANCE.createSurvey();
			survey.setId(names.unusedForSurvey(parts.size() == 1 ? stem
					: stem + "-" + siteName
							+ (part.device() == RadioMap.NO_DEVICE ? "" : "-" + map.devices().get(part.device()))));
			survey.setName(
					names.unusedName(site, part.device() == RadioMap.NO_DEVICE || ofSite.get(part.site()) == 1 ? stem
							: stem + ' ' + map.devices().get(part.device())));
			survey.setKind(kind);
			survey.setSourceFile(report.file().getFileName().toString());
			survey.setSourceDigest(digest);
			if (part.device() != RadioMap.NO_DEVICE) {
				survey.setDevice(names.device(map.devices().get(part.device()), command));
			}
			Samples holder = ModelFactory.eINSTANCE.createSamples();
			holder.setTable(table(samples));
			rows.put(survey, samples);
			survey.setSamples(holder);
			date(map, samples).ifPresent(survey::setDate);
			floors(map, samples, site, siteName);
			command.addSurvey(site, survey);
			taken.add(new Taken(report.file(), survey.getId(), siteName, samples.size()));
		});
	}

	/** Numbers of equal length sort as they count. */
	private String id(int sample) {
		String id = intake.sampleIds().get(sample);
		int width = Integer.toString(intake.map().size()).length();
		return id.chars().allMatch(Character::isDigit) ? "0".repeat(Math.max(0, width - id.length())) + id : id;
	}

	private SampleTable table(List<Integer> samples) {
		RadioMap map = intake.map();
		SampleTableBuilder builder = SampleTable.builder();
		Set<String> used = new HashSet<>();
		int[] index = new int[map.accessPointCount()];
		Arrays.fill(index, -1);
		for (int s : samples) {
			String id = id(s);
			if (!Ids.isUsableForSample(id) || !used.add(id)) {
				throw new UnfitSurveyException(
						Words.bind(Messages.SurveyTaking_aSampleCannotBeCalled, id, Ids.LONGEST));
			}
			builder.sample(id, map.floor(s), map.x(s), map.y(s));
			if (map.timeMillis(s) != RadioMap.NO_TIME) {
				builder.time(map.timeMillis(s));
			}
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int a = map.accessPoint(k);
				if (index[a] < 0) {
					index[a] = builder.accessPoint(accessPoint(map.accessPoints().get(a)).getId());
				}
				builder.reading(index[a], map.rssiDbm(k));
			}
		}
		return builder.build();
	}

	private AccessPoint accessPoint(String address) {
		return names.accessPoint(address, command, Optional.ofNullable(intake.channels().get(address)));
	}

	private static Optional<LocalDate> date(RadioMap map, List<Integer> samples) {
		return samples.stream().mapToLong(map::timeMillis).filter(t -> t != RadioMap.NO_TIME).boxed().min(Long::compare)
				.map(t -> Instant.ofEpochMilli(t).atZone(ZoneOffset.UTC).toLocalDate());
	}

	private void floors(RadioMap map, List<Integer> samples, Site site, String siteName) {
		for (int level : samples.stream().mapToInt(map::floor).distinct().sorted().toArray()) {
			if (names.newFloor(siteName, level)) {
				Floor floor = ModelFactory.eINSTANCE.createFloor();
				floor.setLevel(level);
				floor.setName(names.unusedName(site, Words.bind(Messages.SurveyTaking_floor, level)));
				command.addFloor(site, floor);
			}
		}
	}

	/** What the archive and the surveys being made know by name. */
	private static final class Names {
		private final Set<String> ids = new HashSet<>();
		private final Set<String> surveys = new HashSet<>();
		private final Map<String, Site> sites = new HashMap<>();
		private final Map<String, Device> devices = new HashMap<>();
		private final Map<String, Set<String>> shared = new HashMap<>();
		private final Map<Site, Set<String>> inSite = new HashMap<>();
		private final Map<String, AccessPoint> accessPoints = new HashMap<>();
		private final Set<String> floors = new HashSet<>();

		Names(Archive archive) {
			for (Site site : archive.getSites()) {
				String name = ModelText.name(site);
				sites.put(name, site);
				note(site.getName(), name);
				use(site.getId());
				site.getSurveys().forEach(survey -> {
					use(survey.getId());
					surveys.add(survey.getId().toLowerCase(Locale.ROOT));
					unusedName(site, survey.getName());
				});
				site.getFloors().forEach(floor -> {
					newFloor(name, floor.getLevel());
					unusedName(site, ModelText.name(floor));
				});
			}
			archive.getDevices().forEach(device -> {
				String name = ModelText.name(device);
				devices.put(name, device);
				note(device.getName(), name);
				use(device.getId());
			});
			archive.getAccessPoints().forEach(accessPoint -> {
				accessPoints.put(ModelText.address(accessPoint), accessPoint);
				use(accessPoint.getId());
			});
		}

		/** Notes a name that does not say which one is meant. */
		private void note(String name, String label) {
			if (name != null && !name.isBlank() && !name.equals(label)) {
				shared.computeIfAbsent(name, n -> new TreeSet<>()).add(label);
			}
		}

		private void requireOne(String what, String name) {
			if (shared.containsKey(name)) {
				throw new UnfitSurveyException(Words.bind(Messages.SurveyTaking_severalSOfTheArchive, what, name,
						String.join(Messages.SurveyTaking_or, shared.get(name))));
			}
		}

		/** The name, with a number behind it where a survey or a floor of the site has it already. */
		String unusedName(Site site, String name) {
			Set<String> used = inSite.computeIfAbsent(site, s -> new HashSet<>());
			String tried = name;
			for (int n = 2; !used.add(tried); n++) {
				tried = name + " (" + n + ')';
			}
			return tried;
		}

		private boolean use(String id) {
			return ids.add(id.toLowerCase(Locale.ROOT));
		}

		/** An id from a text that nothing has yet, letter case aside. */
		String unused(String text) {
			String id = Ids.from(text);
			String tried = id;
			for (int n = 2; !use(tried); n++) {
				tried = id.substring(0, Math.min(id.length(), Ids.LONGEST - 6)) + "-" + n;
			}
			return tried;
		}

		/** Likewise for a survey. A number is for a second survey; one called like its site is told from it by a word. */
		String unusedForSurvey(String text) {
			String id = Ids.from(text);
			String key = id.toLowerCase(Locale.ROOT);
			String made = unused(ids.contains(key) && !surveys.contains(key) ? id + "-survey" : id);
			surveys.add(made.toLowerCase(Locale.ROOT));
			return made;
		}

		boolean newFloor(String site, int level) {
			return floors.add(site + '\n' + level);
		}

		Site site(String name, TakeSurveysCommand command) {
			requireOne("site", name);
			return sites.computeIfAbsent(name, n -> {
				Site site = ModelFactory.eINSTANCE.createSite();
				site.setName(n);
				site.setId(unused(n.toLowerCase(Locale.ROOT)));
				command.addSite(site);
				return site;
			});
		}

		Device device(String name, TakeSurveysCommand command) {
			requireOne("device", name);
			return devices.computeIfAbsent(name, n -> {
				Device device = ModelFactory.eINSTANCE.createDevice();
				device.setName(n);
				device.setId(unused(n.toLowerCase(Locale.ROOT)));
				command.addDevice(device);
				return device;
			});
		}

		AccessPoint accessPoint(String address, TakeSurveysCommand command, Optional<WifiChannel> channel) {
			return accessPoints.computeIfAbsent(address, a -> {
				AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
				accessPoint.setAddress(a);
				// from the address alone, so that two people's imports of one access point merge
				String plain = MacAddress.find(a).map(mac -> mac.toString().replace(":", "").toLowerCase(Locale.ROOT))
						.orElse(a);
				accessPoint.setId(unused(plain));
				channel.ifPresent(known -> {
					accessPoint.setBand(known.band());
					accessPoint.setChannel(known.number());
				});
				command.addAccessPoint(accessPoint);
				return accessPoint;
			});
		}
	}
}
