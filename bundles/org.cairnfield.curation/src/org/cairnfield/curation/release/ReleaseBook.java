package org.cairnfield.curation.release;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.timeline.MapAge;
import org.cairnfield.exchange.export.Checksums;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * The releases of an archive. One is prepared, which checks the gates and writes a manifest that can still be thrown away, and
 * signed, which freezes it; where the archive wants it by another person.
 */
public final class ReleaseBook {

	private final OpenArchive open;
	private final Clock clock;
	private final KnownReleases known;

	/** @param clock tells when a release was prepared and signed */
	public ReleaseBook(OpenArchive open, Clock clock) {
		this(open, clock, KnownReleases.ofUser());
	}

	/** @param known the releases that were seen on this computer */
	public ReleaseBook(OpenArchive open, Clock clock, KnownReleases known) {
		this.open = open;
		this.clock = clock;
		this.known = known;
	}

	/** Path of the manifest of a version, below the archive's folder. */
	public static String path(String version) {
		return "releases/" + version + ".json";
	}

	/** SHA-256 by path of the files of a state that its digest leaves out: plans, but nothing about releases. */
	static Map<String, String> otherFiles(History history, SavePoint point) throws IOException {
		Map<String, String> sums = new TreeMap<>();
		for (String path : history.otherFiles(point)) {
			if (!path.startsWith("releases/")) {
				sums.put(path, Checksums.of(history.file(point, path).orElseThrow()));
			}
		}
		return sums;
	}

	/** The gates of the archive: those of its file, or the usual ones. */
	public GateSet gates() throws IOException {
		Path file = open.folder().resolve("releases").resolve(GateSet.FILE);
		try {
			return Files.isRegularFile(file) ? GateSet.parse(Files.readString(file)) : GateSet.USUAL;
		} catch (IllegalArgumentException e) {
			throw new ArchiveException(e.getMessage(),
					Words.bind(Messages.ReleaseBook_correctTheFileReleases, GateSet.FILE), e);
		}
	}

	/** Keeps gates in the archive, in the name of a person; they are in the next save point. */
	public void keep(GateSet gates, Person person) throws IOException {
		open.putAboutReleases(GateSet.FILE, gates.toString(), person);
	}

	/** All releases, the highest version first. Tags that are no versions, or without a manifest, are passed over. */
	public List<ReleasedState> list() throws IOException {
		if (!open.hasHistory()) {
			return List.of();
		}
		try (History history = History.of(open.folder())) {
			return list(history);
		}
	}

	private static List<ReleasedState> list(History history) throws IOException {
		List<ReleasedState> found = new ArrayList<>();
		for (ReleaseTag tag : history.releases()) {
			if (SemanticVersion.is(tag.version())) {
				Optional<byte[]> manifest = history.file(tag.savePoint(), path(tag.version()));
				if (manifest.isPresent()) {
					try {
						found.add(new ReleasedState(SemanticVersion.parse(tag.version()), tag,
								ManifestJson.read(new String(manifest.get(), StandardCharsets.UTF_8))));
					} catch (IllegalArgumentException e) {
						throw new ArchiveException(
								Words.bind(Messages.ReleaseBook_theManifestOfReleaseCannot, tag.version(),
										e.getMessage()),
								Messages.ReleaseBook_verifyTheRelease, e);
					}
				}
			}
		}
		found.sort(Comparator.comparing(ReleasedState::version).reversed());
		return found;
	}

	/** A release by its version. */
	public ReleasedState find(String version) throws IOException {
		return list().stream().filter(r -> r.tag().version().equals(version)).findFirst()
				.orElseThrow(
						() -> new ArchiveException(Words.bind(Messages.ReleaseBook_thereIsNoRelease, version),
								Messages.ReleaseBook_lookAtTheListOf));
	}

	/** The content of a release, to look at. */
	public PastState openReadOnly(String version) throws IOException {
		try (History history = History.of(open.folder())) {
			return history.open(find(version).tag().savePoint());
		}
	}

	/**
	 * Makes a release the working state again, by a new save point. Releases stay as they are, and so do the gates.
	 *
	 * @return empty if the archive is like that already
	 */
	public Optional<SavePoint> restore(String version, Person person, String note) throws IOException {
		return open.restore(find(version).tag().savePoint(), person, note);
	}

	/** Looks whether every release still is what it was, by version, the highest first, and last at the history as a whole. */
	public List<Verification> verify() throws IOException {
		try (History history = History.of(open.folder())) {
			return new ArchiveVerification(open.folder(), history, known).all();
		}
	}

	/** Checks the gates of the content as it is in memory. */
	public GateCheck ask(PackRequest request, Workers workers) throws IOException {
		return ask(ArchiveCopy.of(open.archive()), request, workers);
	}

	/** Checks the gates of a copy of the content, for work beside a user interface. */
	public GateCheck ask(Archive copy, PackRequest request, Workers workers) throws IOException {
		return GateCheck.of(copy, gates(), last(), request, workers);
	}

	/**
	 * Measures the content and earlier releases, each with its own map, on the test samples of the content.
	 *
	 * @param copy     of the content
	 * @param known    what the gates have measured of it already, or null
	 * @param versions of the releases to compare with; one without a sample is passed over
	 */
	public SideBySide measure(Archive copy, Measures known, List<String> versions, PackRequest request, Workers workers)
			throws IOException {
		GateSet gates = gates();
		ArchiveMap test = ArchiveMap.of(copy, Scope.ARCHIVE, SurveyKind.TEST);
		Measures measures = known != null ? known
				: Measures.of(ReleasedMap.of(copy, gates.policy(copy)), test.map(), request, workers);
		List<Way> ways = new ArrayList<>(measures.ways());
		for (String version : ways.isEmpty() ? List.<String>of() : versions) {
			workers.checkCancelled();
			Archive then = sound(openReadOnly(version));
			ReleasedMap map = ReleasedMap.of(then, gates.policy(then));
			if (map.map().size() > 0) {
				ways.add(earlier(find(version), map, test.map(), ways.get(0), workers));
			}
		}
		return SideBySide.of(test, ways);
	}

	private static Way earlier(ReleasedState release, ReleasedMap map, RadioMap test, Way plain, Workers workers) {
		Way way = Measures.released(map, test, release.manifest().settings(), plain, workers);
		return way.named(Way.ofRelease(release.version().toString()));
	}

	/** A map that has lost samples is no measure of another. */
	private static Archive sound(PastState released) throws DamagedException {
		if (!released.damages().isEmpty()) {
			throw new DamagedException(
					Words.bind(Messages.ReleaseBook_theStateAtSavePoint, released.savePoint().shortId()),
					Messages.ReleaseBook_verifyTheReleases, released.damages());
		}
		return released.archive();
	}

	private GateCheck.Last last() throws IOException {
		if (!open.hasHistory()) {
			return null;
		}
		try (History history = History.of(open.folder())) {
			List<ReleasedState> all = list(history);
			return all.isEmpty() ? null
					: new GateCheck.Last(all.get(0).tag().version(), sound(history.open(all.get(0).tag().savePoint())),
							all.get(0).manifest().settings());
		}
	}

	/** What changed since the last release as far as it is saved, and which version that makes. */
	public Bump propose() throws IOException {
		if (!open.hasHistory()) {
			return Bump.after(null, null);
		}
		try (History history = History.of(open.folder())) {
			List<ReleasedState> all = list(history);
			return all.isEmpty() ? Bump.after(null, null)
					: Bump.after(all.get(0).version(), changes(history, all.get(0)));
		}
	}

	/** What changed since the last release as far as it is saved, in words; empty where there is none. */
	public List<String> changes() throws IOException {
		if (!open.hasHistory()) {
			return List.of();
		}
		try (History history = History.of(open.folder())) {
			List<ReleasedState> all = list(history);
			return all.isEmpty() ? List.of() : changes(history, all.get(0)).summary();
		}
	}

	private static ArchiveDiff changes(History history, ReleasedState last) throws IOException {
		return history.compareWithSaved(last.tag().savePoint());
	}

	/**
	 * Writes the manifest of a release that somebody is to sign. Makes a save point of what is not in one. A manifest that
	 * was prepared before and not signed is replaced.
	 *
	 * @param version null: the proposed one
	 * @param check   of this content, by {@link #ask}, with gates overridden where somebody did
	 * @throws ArchiveException where a gate holds the release back, and for a version that is not higher than the last
	 */
	public ReleaseManifest prepare(SemanticVersion version, GateCheck check, Person person, String notes)
			throws IOException {
		requireGates(check);
		open.savePoint(person, null);
		try (History history = History.of(open.folder())) {
			List<ReleasedState> all = list(history);
			ReleasedState last = all.isEmpty() ? null : all.get(0);
			ArchiveDiff changes = last == null ? null : changes(history, last);
			Bump bump = Bump.after(last == null ? null : last.version(), changes);
			SemanticVersion chosen = version == null ? bump.version() : version;
			if (last != null && chosen.compareTo(last.version()) <= 0) {
				throw new ArchiveException(
						Words.bind(Messages.ReleaseBook_nothingWasReleasedIsNot, chosen, last.version()),
						Words.bind(Messages.ReleaseBook_chooseOrHigher, bump.version()));
			}
			UntaggedRelease.requireHigher(history, chosen);
			List<String> reasons = new ArrayList<>(bump.reasons());
			if (!chosen.equals(bump.version())) {
				reasons.add(Words.bind(Messages.ReleaseBook_wasProposedAndChosenBy, bump.version(), chosen,
						person.name()));
			}
			ReleaseManifest manifest = new ReleaseManifest(chosen.toString(),
					Objects.requireNonNullElse(open.archive().getName(), ""), open.digest(),
					last == null ? "" : last.tag().version(), List.copyOf(reasons), counts(check),
					check.released().splits(), check.settings(),
					otherFiles(history, history.last()),
					check.results().stream().map(ReleaseManifest.AskedGate::of).toList(),
					check.gates().toString(),
					check.measures().ways().stream().map(ReleaseManifest.Measured::of).toList(),
					changes == null ? List.of() : changes.summary(), check.ages().stream().map(MapAge::words).toList(),
					RuleSettings.of(open.archive()).rules().words(), Objects.requireNonNullElse(notes, ""),
					person.name(), now(), "", "");
			open.putAboutReleases(chosen + ".json", ManifestJson.write(manifest), person);
			return manifest;
		}
	}

	private static void requireGates(GateCheck check) throws ArchiveException {
		if (!check.holding().isEmpty()) {
			GateResult first = check.holding().get(0);
			throw new ArchiveException(
					Words.bind(Messages.ReleaseBook_nothingWasReleasedOfGates, check.holding().size(),
							check.results().size(), first.gate().title(), first.shownFigure(), first.shownBound()),
					Messages.ReleaseBook_seeToItOrOverride);
		}
	}

	/** Manifests of all versions that were prepared and not released, the highest first. */
	public List<ReleaseManifest> prepared() throws IOException {
		return PreparedManifests.in(open.folder(), versions());
	}

	/** The manifest of a version that was prepared and not released; empty where there is none. */
	public Optional<ReleaseManifest> prepared(String version) throws IOException {
		return PreparedManifests.one(open.folder(), version, versions());
	}

	/**
	 * Throws away what was prepared and nobody has signed; it can be prepared again.
	 *
	 * @throws ArchiveException where nothing was prepared, or somebody has signed it
	 */
	public void discard(String version, Person person) throws IOException {
		String nothing = Messages.ReleaseBook_nothingWasDiscarded;
		Optional<UntaggedRelease> signed = UntaggedRelease.of(open, version);
		if (signed.isPresent()) {
			throw signed.get().refuse(nothing);
		}
		if (versions().contains(version)) {
			throw new ArchiveException(Words.bind(Messages.ReleaseBook_isReleasedAndWhatIs, nothing, version),
					Messages.ReleaseBook_releaseAHigherVersion);
		}
		String file = path(version);
		if (!Files.isRegularFile(open.folder().resolve(file))) {
			throw new ArchiveException(Words.bind(Messages.ReleaseBook_wasNotPrepared, nothing, version),
					Messages.ReleaseBook_nameAVersionThatWas);
		}
		open.deleteAboutReleases(file.substring(file.indexOf('/') + 1), person);
	}

	private Set<String> versions() throws IOException {
		return list().stream().map(release -> release.tag().version()).collect(Collectors.toSet());
	}

	/**
	 * Signs for a release that was prepared, and freezes it. One that was signed and has no tag is finished as it was signed.
	 *
	 * @param notes null: those of the manifest
	 * @throws ArchiveException where nothing was prepared, content or gates are no longer the same, or the archive wants
	 *                          another person
	 */
	public ReleaseTag sign(String version, Person person, String notes) throws IOException {
		Optional<UntaggedRelease> begun = UntaggedRelease.of(open, version);
		if (begun.isPresent()) {
			return remembered(begun.get().finish(open, person, known));
		}
		ReleaseManifest manifest = prepared(version).orElseThrow(() -> new ArchiveException(
				Words.bind(Messages.ReleaseBook_nothingWasReleasedWasNot, version),
				Messages.ReleaseBook_prepareItWhichChecksThe));
		if (open.isModified() || !open.digest().equals(manifest.digest())) {
			throw new ArchiveException(
					Words.bind(Messages.ReleaseBook_nothingWasReleasedTheContent, manifest.preparedBy()),
					Messages.ReleaseBook_prepareTheReleaseAgain);
		}
		GateSet gates = gates();
		if (!gates.toString().equals(manifest.gateSet())) {
			throw new ArchiveException(
					Words.bind(Messages.ReleaseBook_nothingWasReleasedTheGates, version),
					Messages.ReleaseBook_prepareTheReleaseAgain);
		}
		if (gates.anotherSigns() && person.name().equalsIgnoreCase(manifest.preparedBy())) {
			throw new ArchiveException(
					Words.bind(Messages.ReleaseBook_nothingWasReleasedPreparedAnd, person.name(), version),
					Messages.ReleaseBook_letSomebodyElseSign);
		}
		ReleaseManifest signed = (notes == null ? manifest : manifest.withNotes(notes)).signed(person.name(), now());
		return remembered(open.release(version, ManifestJson.write(signed), signed.digest(), signed.message(), person));
	}

	/** What is released is released, whether or not it can be remembered. */
	private ReleaseTag remembered(ReleaseTag made) {
		try (History history = History.of(open.folder())) {
			history.check().beginning().ifPresent(archive -> known.remember(archive, List.of(made)));
		} catch (IOException e) {
			// the next verification remembers it
		}
		return made;
	}

	/** What is missing from {@link #list}: tags that are no releases, and releases without a tag; in words. */
	public List<String> gaps() throws IOException {
		if (!open.hasHistory()) {
			return List.of();
		}
		try (History history = History.of(open.folder())) {
			return ArchiveVerification.gaps(history);
		}
	}

	/**
	 * How the content came about: save points, the latest first; none before the first one.
	 *
	 * @param release down from that; null: down from the last save point
	 */
	public List<SavePoint> steps(ReleasedState release) throws IOException {
		if (!open.hasHistory()) {
			return List.of();
		}
		try (History history = History.of(open.folder())) {
			List<SavePoint> all = history.list(Integer.MAX_VALUE);
			return release == null ? all
					: all.stream().dropWhile(point -> !point.id().equals(release.tag().savePoint().id())).toList();
		}
	}

	private String now() {
		return clock.instant().truncatedTo(ChronoUnit.SECONDS).toString();
	}

	private Map<String, Long> counts(GateCheck check) {
		Archive archive = open.archive();
		Map<String, Long> counts = new LinkedHashMap<>();
		long surveys = 0;
		long samples = 0;
		for (Site site : archive.getSites()) {
			surveys += site.getSurveys().size();
			for (Survey survey : site.getSurveys()) {
				samples += survey.table().size();
			}
		}
		counts.put("sites", (long) archive.getSites().size());
		counts.put("surveys", surveys);
		counts.put("samples", samples);
		counts.put(Messages.ReleaseBook_samplesInTheMap, (long) check.released().map().size());
		counts.put(Messages.ReleaseBook_testSamples, (long) check.measures().test());
		counts.put(Messages.ReleaseBook_accessPoints, (long) archive.getAccessPoints().size());
		counts.put(Messages.ReleaseBook_accessPointsSetAside,
				archive.getAccessPoints().stream().filter(a -> !a.isKept()).count());
		counts.put("clusters", (long) check.released().clusters());
		counts.put("waivers", (long) archive.getWaivers().size());
		return counts;
	}
}
