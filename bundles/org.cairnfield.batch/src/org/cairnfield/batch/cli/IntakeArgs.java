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

	@Option(names = "--map", arity = "1..*", required = true, paramLabel = "FILE", description = "Survey files of the map: wide, long or paired tables, plain or gzip.")
	List<Path> map;

	@Mixin
	Reading reading;

	/** How to read; shared with commands that name their files otherwise. */
	static final class Reading {

		/** As intake takes from a column. */
		private static final int HIGHEST_FLOOR = 999;

		@Option(names = "--mapping", paramLabel = "FILE", description = "Read settings kept in a mapping file first.")
		Path mapping;

		@Option(names = "--layout", description = "Layout of the tables: ${COMPLETION-CANDIDATES}.")
		Layout layout;

		@Option(names = "--not-heard", paramLabel = "VALUE", description = "What means not heard, e.g. 100, -110 or empty.")
		String notHeard;

		@Option(names = "--separator", paramLabel = "CHAR", converter = SeparatorConverter.class, description = "comma, semicolon, tab or the character itself.")
		Character separator;

		@Option(names = "--charset", paramLabel = "NAME", converter = CharsetConverter.class, description = "Such as UTF-8 or ISO-8859-1.")
		Charset charset;

		@Option(names = "--decimal", paramLabel = "CHAR", description = "Decimal mark: . or ,")
		Character decimal;

		@Option(names = "--column", paramLabel = "NAME=ROLE", description = "What a column is (name, or #number): x, y, "
				+ "floor, site, id, time, device, surveyor, access-point, rssi, signal, ignored. May be repeated.")
		Map<String, String> columns = new LinkedHashMap<>();

		@Option(names = "--site", paramLabel = "NAME", description = "Site of all samples, where the table does not say.")
		String site;

		@Option(names = "--floor", paramLabel = "LEVEL", description = "Floor of all samples, where the table does not say.")
		Integer floor;

		@Option(names = "--device", paramLabel = "NAME", description = "Device of all samples, where the table does not say.")
		String device;

		@Option(names = "--swap-xy", description = "The table has x and y the wrong way round.")
		boolean swapXy;

		@Option(names = "--metres-per-unit", paramLabel = "M", description = "Length of one unit of the coordinates.")
		Double metresPerUnit;

		@Option(names = "--access-points-per-site", description = "Equal names at two sites are two access points.")
		boolean accessPointsPerSite;

		@Option(names = "--quarantine", paramLabel = "DIR", description = "Folder for quarantined rows, made where there is none; otherwise they are written beside "
				+ "the survey file.")
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
				throw wrong("--floor must be within -" + HIGHEST_FLOOR + " … " + HIGHEST_FLOOR + ", was " + floor);
			}
			requireName("--site", site);
			requireName("--device", device);
		}

		private void requireName(String option, String name) {
			if (name != null && name.isBlank()) {
				throw wrong(option + " must be a name, was blank");
			}
		}

		private ColumnRole role(String column, String word) {
			try {
				return ColumnRole.of(word);
			} catch (IllegalArgumentException e) {
				throw wrong("--column " + column + "=" + word + ": '" + word + "' is not one of "
						+ Arrays.stream(ColumnRole.values()).map(ColumnRole::word).collect(Collectors.joining(", ")));
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
							"'" + value + "' is not comma, semicolon, tab or one character that can separate");
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
				throw new TypeConversionException("no character set '" + value + "'");
			}
		}
	}
}
