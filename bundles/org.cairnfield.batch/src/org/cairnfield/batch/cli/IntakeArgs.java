package org.cairnfield.batch.cli;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.ColumnRole;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.Layout;
import org.cairnfield.exchange.Mapping;
import org.cairnfield.exchange.SurveyIntake;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Which survey files, and how to read them where the guess is wrong. */
final class IntakeArgs {

	@Option(names = "--map", arity = "1..*", required = true, paramLabel = "FILE", descriptionKey = "IntakeArgs_map")
	List<Path> map;

	@Mixin
	Reading reading;

	/** How to read; shared with commands that name their files otherwise. */
	static final class Reading {

		/** As intake takes from a column. */
		private static final int HIGHEST_FLOOR = 999;

		@Option(names = "--mapping", paramLabel = "FILE", descriptionKey = "IntakeArgs_mapping")
		Path mapping;

		@Option(names = "--layout", descriptionKey = "IntakeArgs_layout")
		Layout layout;

		@Option(names = "--not-heard", paramLabel = "VALUE", descriptionKey = "IntakeArgs_notHeard")
		String notHeard;

		@Option(names = "--separator", paramLabel = "CHAR", converter = SeparatorConverter.class, descriptionKey = "IntakeArgs_separator")
		Character separator;

		@Option(names = "--charset", paramLabel = "NAME", converter = CharsetConverter.class, descriptionKey = "IntakeArgs_charset")
		Charset charset;

		@Option(names = "--decimal", paramLabel = "CHAR", descriptionKey = "IntakeArgs_decimal")
		Character decimal;

		@Option(names = "--column", paramLabel = "NAME=ROLE", descriptionKey = "IntakeArgs_column")
		Map<String, String> columns = new LinkedHashMap<>();

		@Option(names = "--site", paramLabel = "NAME", descriptionKey = "IntakeArgs_site")
		String site;

		@Option(names = "--floor", paramLabel = "LEVEL", descriptionKey = "IntakeArgs_floor")
		Integer floor;

		@Option(names = "--device", paramLabel = "NAME", descriptionKey = "IntakeArgs_device")
		String device;

		@Option(names = "--swap-xy", descriptionKey = "IntakeArgs_swapXy")
		boolean swapXy;

		@Option(names = "--metres-per-unit", paramLabel = "M", descriptionKey = "IntakeArgs_metresPerUnit")
		Double metresPerUnit;

		@Option(names = "--access-points-per-site", descriptionKey = "IntakeArgs_accessPointsPerSite")
		boolean accessPointsPerSite;

		@Option(names = "--quarantine", paramLabel = "DIR", descriptionKey = "IntakeArgs_quarantine")
		Path quarantine;

		@Spec(Spec.Target.MIXEE)
		CommandSpec spec;

		/** @throws ParameterException for an option out of range */
		/** The only site of the archive that takes the files in; null where there is none or several. */
		String usualSite;

		IntakeOptions options() throws IntakeException {
			requireUsable();
			IntakeOptions o = (mapping == null ? IntakeOptions.GUESS : Mapping.read(mapping)).withUsualSite(usualSite);
			o = layout == null ? o : o.withLayout(layout);
			o = notHeard == null ? o : o.withNotHeard(notHeard);
			o = separator == null ? o : o.withSeparator(separator);
			o = charset == null ? o : o.withCharset(charset);
			o = site == null ? o : o.withSite(site);
			o = floor == null ? o : o.withFloor(floor);
			o = device == null ? o : o.withDevice(device);
			o = swapXy ? o.withSwapXY(true) : o;
			o = accessPointsPerSite ? o.withAccessPointsPerSite(true) : o;
			try {
				o = decimal == null ? o : o.withDecimalMark(decimal);
				o = metresPerUnit == null ? o : o.withMetresPerUnit(metresPerUnit);
			} catch (IllegalArgumentException e) {
				throw wrong(e.getMessage());
			}
			for (Map.Entry<String, String> column : columns.entrySet()) {
				o = o.withRole(column.getKey(), role(column.getKey(), column.getValue()));
			}
			return o;
		}

		private void requireUsable() {
			if (floor != null && Math.abs(floor) > HIGHEST_FLOOR) {
				throw wrong(
						Words.bind(Messages.IntakeArgs_floorMustBeWithinWas, HIGHEST_FLOOR, HIGHEST_FLOOR, floor));
			}
			requireName("--site", site);
			requireName("--device", device);
		}

		private void requireName(String option, String name) {
			if (name != null && name.isBlank()) {
				throw wrong(Words.bind(Messages.IntakeArgs_mustBeANameWas, option));
			}
		}

		private ColumnRole role(String column, String word) {
			try {
				return ColumnRole.of(word);
			} catch (IllegalArgumentException e) {
				throw wrong(Words.bind(Messages.IntakeArgs_columnIsNotOneOf, column, word, word,
						Arrays.stream(ColumnRole.values()).map(ColumnRole::word).collect(Collectors.joining(", "))));
			}
		}

		private ParameterException wrong(String message) {
			return new ParameterException(spec.commandLine(), message);
		}

		Intake read(List<Path> files, Workers workers) throws IntakeException {
			return SurveyIntake.read(files, options(), workers);
		}
	}

	static final class SeparatorConverter implements ITypeConverter<Character> {
		@Override
		public Character convert(String value) {
			return switch (value) {
			case "comma" -> ',';
			case "semicolon" -> ';';
			case "tab", "\\t" -> '\t';
			default -> {
				if (value.length() != 1 || "\"\r\n".contains(value)) {
					throw new TypeConversionException(
							Words.bind(Messages.IntakeArgs_isNotCommaSemicolonTab, value));
				}
				yield value.charAt(0);
			}
			};
		}
	}

	static final class CharsetConverter implements ITypeConverter<Charset> {
		@Override
		public Charset convert(String value) {
			try {
				return Charset.forName(value);
			} catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
				throw new TypeConversionException(Words.bind(Messages.IntakeArgs_noCharacterSet, value));
			}
		}
	}
}
