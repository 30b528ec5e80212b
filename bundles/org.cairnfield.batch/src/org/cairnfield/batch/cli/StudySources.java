package org.cairnfield.batch.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Stack;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

import org.cairnfield.core.text.Words;

/** The maps of a study, in the order of the command line: which test survey and which name belongs to which. */
final class StudySources {

	/**
	 * One map: survey files, or an archive.
	 *
	 * @param map  empty for an archive
	 * @param test empty where it is to be measured on some of its own positions
	 */
	record Source(List<Path> map, List<Path> test, Path archive, String name) {

		private Source tested(List<Path> files) {
			return new Source(map, files, archive, name);
		}

		private Source named(String given) {
			return new Source(map, test, archive, given);
		}
	}

	private enum Kind {
		MAP, TEST, ARCHIVE, NAME
	}

	private record Word(Kind kind, List<String> values) {

		private List<Path> files() {
			return values.stream().map(Path::of).toList();
		}
	}

	private final List<Word> words = new ArrayList<>();

	/** Takes the values that follow an option up to the next one, for each time that it is given. */
	abstract static class Values implements IParameterConsumer {

		private final Kind kind;
		private final boolean several;

		private Values(Kind kind, boolean several) {
			this.kind = kind;
			this.several = several;
		}

		@Override
		public void consumeParameters(Stack<String> args, ArgSpec option, CommandSpec command) {
			List<String> values = new ArrayList<>();
			while (!args.isEmpty() && (values.isEmpty() || several)
					&& !command.optionsMap().containsKey(args.peek().replaceFirst("=.*", ""))) {
				values.add(args.pop());
			}
			if (values.isEmpty() || values.contains("")) {
				throw new ParameterException(command.commandLine(),
						Words.bind(Messages.StudySources_needsA, kind.name().toLowerCase(Locale.ROOT),
								kind == Kind.NAME ? "name" : kind == Kind.ARCHIVE ? "folder" : "file"));
			}
			try {
				values.forEach(Path::of);
			} catch (InvalidPathException e) {
				throw new ParameterException(command.commandLine(),
						Words.bind(Messages.StudySources_noPath, e.getInput()));
			}
			((StudyCommand) command.userObject()).sources.words.add(new Word(kind, values));
			option.setValue(option.getValue() instanceof List<?> before ? joined(before, values) : values);
		}

		private static List<Object> joined(List<?> before, List<String> values) {
			List<Object> all = new ArrayList<>(before);
			all.addAll(values);
			return all;
		}
	}

	/** Of {@code --map}. */
	static final class Maps extends Values {
		Maps() {
			super(Kind.MAP, true);
		}
	}

	/** Of {@code --test}. */
	static final class Tests extends Values {
		Tests() {
			super(Kind.TEST, true);
		}
	}

	/** Of {@code --archive}. */
	static final class Archives extends Values {
		Archives() {
			super(Kind.ARCHIVE, false);
		}
	}

	/** Of {@code --name}. */
	static final class Names extends Values {
		Names() {
			super(Kind.NAME, false);
		}
	}

	/** @throws ParameterException where there is no map, or it cannot be said which test survey belongs to which map */
	List<Source> all(CommandSpec command) {
		List<Source> all = new ArrayList<>();
		List<Integer> maps = new ArrayList<>();
		List<List<Path>> tests = new ArrayList<>();
		boolean eachAfterItsMap = true;
		Kind before = null;
		for (Word word : words) {
			int last = all.size() - 1;
			switch (word.kind) {
			case MAP -> {
				maps.add(all.size());
				all.add(new Source(word.files(), List.of(), null, null));
			}
			case ARCHIVE -> all.add(new Source(List.of(), List.of(), word.files().get(0), null));
			case NAME -> {
				if (last < 0 || all.get(last).name != null) {
					throw new ParameterException(command.commandLine(),
							Words.bind(Messages.StudySources_nameNamesTheMapOr, word.values.get(0)));
				}
				all.set(last, all.get(last).named(word.values.get(0)));
			}
			case TEST -> {
				tests.add(word.files());
				eachAfterItsMap &= before == Kind.MAP;
			}
			}
			if (word.kind == Kind.TEST && eachAfterItsMap) {
				all.set(last, all.get(last).tested(word.files()));
			}
			before = word.kind == Kind.NAME ? before : word.kind;
		}
		if (all.isEmpty()) {
			throw new ParameterException(command.commandLine(), Messages.StudySources_aStudyNeedsAMap);
		}
		if (!eachAfterItsMap) {
			if (tests.size() != maps.size()) {
				throw new ParameterException(command.commandLine(),
						Words.bind(Messages.StudySources_whichTestBelongsToWhich, maps.size(), tests.size()));
			}
			for (int i = 0; i < tests.size(); i++) {
				all.set(maps.get(i), all.get(maps.get(i)).tested(tests.get(i)));
			}
		}
		return named(all);
	}

	/** Names of files where none was given, made different from each other. */
	private static List<Source> named(List<Source> all) {
		Map<String, Integer> times = new HashMap<>();
		List<Source> named = new ArrayList<>();
		for (Source source : all) {
			String name = source.name != null ? source.name : usualName(source);
			int n = times.merge(name, 1, Integer::sum);
			named.add(source.named(n == 1 ? name : name + " (" + n + ")"));
		}
		return named;
	}

	/** The name of the folder of an archive or of several files; of one file its own, up to the first point. */
	private static String usualName(Source source) {
		if (source.archive != null) {
			return last(source.archive);
		}
		Path first = source.map.get(0);
		if (source.map.size() > 1 && first.toAbsolutePath().normalize().getParent() != null) {
			return last(first.toAbsolutePath().normalize().getParent());
		}
		return last(first).replaceFirst("(?<=.)\\..*", "");
	}

	private static String last(Path path) {
		Path name = path.toAbsolutePath().normalize().getFileName();
		return name == null ? path.toString() : name.toString();
	}
}
