package org.cairnfield.curation.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.Preview;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.TestNames;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;

/**
 * Survey files that a person wants to take in, and what was said about each of them. Immutable, so that one thread can read
 * while the person goes on.
 */
public final class IntakeDraft {

	/** No file yet. */
	public static final IntakeDraft EMPTY = new IntakeDraft(Map.of(), IntakeOptions.GUESS);

	/**
	 * One file.
	 *
	 * @param options what the person knows better than the guess
	 */
	public record Entry(Path file, IntakeOptions options, SurveyKind kind) {
	}

	/**
	 * How a file is understood.
	 *
	 * @param preview empty where it cannot be read at all
	 * @param problem why it cannot be taken in like this, and what to do; empty where it can
	 */
	public record Look(Optional<Preview> preview, Optional<String> problem) {
	}

	private final Map<Path, Entry> entries;
	/** Of a file about which nothing was said. */
	private final IntakeOptions usual;

	private IntakeDraft(Map<Path, Entry> entries, IntakeOptions usual) {
		this.entries = entries;
		this.usual = usual;
	}

	/** No file yet, for an archive: what no column puts elsewhere goes to its only site. */
	public static IntakeDraft of(Archive archive) {
		return new IntakeDraft(Map.of(),
				IntakeOptions.GUESS.withUsualSite(SurveyTaking.onlySite(archive).orElse(null)));
	}

	/** With more files, of which everything is guessed, by their names also what they are for; those it has already stay as they are. */
	public IntakeDraft plus(Collection<Path> files) {
		Map<Path, Entry> more = new LinkedHashMap<>(entries);
		for (Path file : files) {
			Path absolute = file.toAbsolutePath().normalize();
			more.putIfAbsent(absolute, new Entry(absolute, usual, kind(absolute)));
		}
		return new IntakeDraft(more, usual);
	}

	/** What a name such as "tower-test.csv" says; else training. */
	private static SurveyKind kind(Path file) {
		return TestNames.sayTest(file.getFileName().toString()) ? SurveyKind.TEST : SurveyKind.TRAINING;
	}

	/** Without some files. */
	public IntakeDraft minus(Collection<Path> files) {
		Map<Path, Entry> fewer = new LinkedHashMap<>(entries);
		fewer.keySet().removeAll(files);
		return new IntakeDraft(fewer, usual);
	}

	/** With something said about some of the files. Files of one paired survey must be told the same. */
	public IntakeDraft with(Collection<Path> files, UnaryOperator<IntakeOptions> change) {
		return change(files, entry -> new Entry(entry.file(), change.apply(entry.options()), entry.kind()));
	}

	/** With some of the files for the map, or to measure it. */
	public IntakeDraft withKind(Collection<Path> files, SurveyKind kind) {
		return change(files, entry -> new Entry(entry.file(), entry.options(), kind));
	}

	private IntakeDraft change(Collection<Path> files, UnaryOperator<Entry> change) {
		Map<Path, Entry> changed = new LinkedHashMap<>(entries);
		files.forEach(file -> changed.computeIfPresent(file, (path, entry) -> change.apply(entry)));
		return new IntakeDraft(changed, usual);
	}

	/** The files in the order that they came. */
	public List<Entry> entries() {
		return List.copyOf(entries.values());
	}

	/** What was said about a file. */
	public Entry entry(Path file) {
		return Objects.requireNonNull(entries.get(file), () -> Words.bind(Messages.IntakeDraft_notInTheDraft, file));
	}

	/** Files that are read together: those of which the same was said. */
	private Map<IntakeOptions, List<Path>> groups() {
		Map<IntakeOptions, List<Path>> groups = new LinkedHashMap<>();
		entries.values().forEach(
				entry -> groups.computeIfAbsent(entry.options(), options -> new ArrayList<>()).add(entry.file()));
		return groups;
	}

	/** How each file would be understood, from its first rows. A file that cannot be read spoils no other. */
	public Map<Path, Look> look(Workers workers) {
		Map<Path, Look> looks = new LinkedHashMap<>();
		entries.keySet().forEach(file -> looks.put(file, null));
		workers.progress().begin(Messages.IntakeDraft_lookingAtTheFiles, entries.size());
		groups().forEach((options, files) -> {
			workers.checkCancelled();
			lookTogether(files, options, looks);
			workers.progress().advance(files.size());
		});
		return looks;
	}

	private static void lookTogether(List<Path> files, IntakeOptions options, Map<Path, Look> looks) {
		List<Path> left = new ArrayList<>(files);
		while (!left.isEmpty()) {
			try {
				for (Preview preview : SurveyIntake.preview(left, options)) {
					looks.put(preview.file(), new Look(Optional.of(preview),
							preview.problems().isEmpty() ? Optional.empty()
									: Optional.of(String.join(" ", preview.problems()))));
				}
				return;
			} catch (IntakeException e) {
				Path culprit = left.contains(e.file()) ? e.file() : left.get(0);
				looks.put(culprit, new Look(Optional.empty(), Optional.of(e.getMessage())));
				left.remove(culprit);
			}
		}
	}

	/**
	 * Reads all files as one map.
	 *
	 * @throws IntakeException where a file cannot be read or understood
	 * @throws java.util.concurrent.CancellationException once their progress is cancelled
	 */
	public Intake read(Workers workers) throws IntakeException {
		List<Intake> read = new ArrayList<>();
		for (Map.Entry<IntakeOptions, List<Path>> group : groups().entrySet()) {
			read.add(SurveyIntake.read(group.getValue(), group.getKey(), workers));
		}
		return JoinedIntake.of(read);
	}

	/**
	 * What taking it in would make of an archive, each survey of the kind that was said of its file.
	 *
	 * @param intake  from {@link #read}
	 * @param digests see {@link SurveyTaking#of}
	 */
	public SurveyTaking taking(Archive archive, Intake intake, Map<Path, String> digests) {
		SurveyTaking taking = SurveyTaking.of(archive, intake, SurveyKind.TRAINING, digests);
		Set<String> tests = new LinkedHashSet<>();
		for (SurveyTaking.Taken taken : taking.surveys()) {
			if (entry(taken.file()).kind() == SurveyKind.TEST) {
				tests.add(taken.surveyId());
			}
		}
		for (Object each : taking.command().getAffectedObjects()) {
			if (each instanceof Survey survey && tests.contains(survey.getId())) {
				survey.setKind(SurveyKind.TEST);
			}
		}
		return taking;
	}
}
