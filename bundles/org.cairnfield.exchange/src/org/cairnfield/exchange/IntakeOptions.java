package org.cairnfield.exchange;

import java.nio.charset.Charset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the caller knows better than a guess. Immutable; whatever is not set is guessed. A column is named as
 * in the header, or {@code #3} for the third. {@link Mapping} keeps options in a file.
 */
public final class IntakeOptions {

	/** Everything is guessed. */
	public static final IntakeOptions GUESS = new IntakeOptions();

	private Layout layout;
	private Character separator;
	private Charset charset;
	private Character decimalMark;
	private Boolean header;
	private String notHeard;
	private String site;
	private String usualSite;
	private Integer floor;
	private String device;
	private boolean swapXY;
	private Double metresPerUnit;
	private boolean accessPointsPerSite;
	private Map<String, ColumnRole> roles = Map.of();
	private Map<String, Integer> floors = Map.of();
	private Limits limits = Limits.usual();

	private IntakeOptions() {
	}

	/** The layout of all files. */
	public Optional<Layout> layout() {
		return Optional.ofNullable(layout);
	}

	/** As {@link #layout()}; null to guess. */
	public IntakeOptions withLayout(Layout value) {
		return with(o -> o.layout = value);
	}

	/** The character between fields. */
	public Optional<Character> separator() {
		return Optional.ofNullable(separator);
	}

	/** As {@link #separator()}; null to guess. */
	public IntakeOptions withSeparator(Character value) {
		return with(o -> o.separator = value);
	}

	/** The character set of files without a byte order mark. */
	public Optional<Charset> charset() {
		return Optional.ofNullable(charset);
	}

	/** As {@link #charset()}; null to guess. */
	public IntakeOptions withCharset(Charset value) {
		return with(o -> o.charset = value);
	}

	/** The point or comma in decimals. */
	public Optional<Character> decimalMark() {
		return Optional.ofNullable(decimalMark);
	}

	/**
	 * As {@link #decimalMark()}; null to guess.
	 *
	 * @throws IllegalArgumentException for anything but a point or comma
	 */
	public IntakeOptions withDecimalMark(Character value) {
		if (value != null && value != '.' && value != ',') {
			throw new IllegalArgumentException("decimal mark must be a point or a comma: " + value);
		}
		return with(o -> o.decimalMark = value);
	}

	/** Whether the first row names the columns. */
	public Optional<Boolean> header() {
		return Optional.ofNullable(header);
	}

	/** As {@link #header()}; null to guess. */
	public IntakeOptions withHeader(Boolean value) {
		return with(o -> o.header = value);
	}

	/** What says "not heard": "empty", or values separated by blanks such as "100" or "-110 NaN". */
	public Optional<String> notHeard() {
		return Optional.ofNullable(notHeard);
	}

	/** As {@link #notHeard()}; null to guess. */
	public IntakeOptions withNotHeard(String value) {
		return with(o -> o.notHeard = value);
	}

	/** The site of all samples, whatever a column says. */
	public Optional<String> site() {
		return Optional.ofNullable(site);
	}

	/** As {@link #site()}; null for what the files say. */
	public IntakeOptions withSite(String value) {
		return with(o -> o.site = value);
	}

	/** The site of samples of which no column tells it, such as the only one that an archive has. Not kept in mapping files. */
	public Optional<String> usualSite() {
		return Optional.ofNullable(usualSite);
	}

	/** As {@link #usualSite()}; null to name it after file or folder. */
	public IntakeOptions withUsualSite(String value) {
		return with(o -> o.usualSite = value);
	}

	/** The floor of all samples, whatever a column says. */
	public Optional<Integer> floor() {
		return Optional.ofNullable(floor);
	}

	/** As {@link #floor()}; null for what the files say. */
	public IntakeOptions withFloor(Integer value) {
		return with(o -> o.floor = value);
	}

	/** The device of all samples, whatever a column says. */
	public Optional<String> device() {
		return Optional.ofNullable(device);
	}

	/** As {@link #device()}; null for what the files say. */
	public IntakeOptions withDevice(String value) {
		return with(o -> o.device = value);
	}

	/** Whether x and y change places. */
	public boolean swapXY() {
		return swapXY;
	}

	/** As {@link #swapXY()}. */
	public IntakeOptions withSwapXY(boolean value) {
		return with(o -> o.swapXY = value);
	}

	/** Metres to a unit of the coordinates, such as 0.6 for the steps of a grid. */
	public Optional<Double> metresPerUnit() {
		return Optional.ofNullable(metresPerUnit);
	}

	/**
	 * As {@link #metresPerUnit()}; null for what the header says, or 1.
	 *
	 * @throws IllegalArgumentException unless positive and finite
	 */
	public IntakeOptions withMetresPerUnit(Double value) {
		if (value != null && !(value > 0 && value < 1e6)) {
			throw new IllegalArgumentException("metres to a unit must be positive: " + value);
		}
		return with(o -> o.metresPerUnit = value);
	}

	/**
	 * Whether access points of different sites are different though their names agree, as where each table
	 * numbers its own; names then begin with the site and a stroke.
	 */
	public boolean accessPointsPerSite() {
		return accessPointsPerSite;
	}

	/** As {@link #accessPointsPerSite()}. */
	public IntakeOptions withAccessPointsPerSite(boolean value) {
		return with(o -> o.accessPointsPerSite = value);
	}

	/** Roles by column, in the order given. */
	public Map<String, ColumnRole> roles() {
		return roles;
	}

	/** Adds the role of a column, named as in the header or {@code #3}. */
	public IntakeOptions withRole(String column, ColumnRole role) {
		return with(o -> {
			Map<String, ColumnRole> more = new LinkedHashMap<>(roles);
			more.put(column, Objects.requireNonNull(role));
			o.roles = java.util.Collections.unmodifiableMap(more);
		});
	}

	/** Levels by floor name, in the order given. */
	public Map<String, Integer> floors() {
		return floors;
	}

	/** Adds the level of a floor name. */
	public IntakeOptions withFloorName(String name, int level) {
		return with(o -> {
			Map<String, Integer> more = new LinkedHashMap<>(floors);
			more.put(name, level);
			o.floors = java.util.Collections.unmodifiableMap(more);
		});
	}

	/** How much a survey may ask for. Not kept in mapping files. */
	public Limits limits() {
		return limits;
	}

	/** As {@link #limits()}. */
	public IntakeOptions withLimits(Limits value) {
		return with(o -> o.limits = Objects.requireNonNull(value));
	}

	private IntakeOptions with(Consumer<IntakeOptions> change) {
		IntakeOptions copy = new IntakeOptions();
		copy.layout = layout;
		copy.separator = separator;
		copy.charset = charset;
		copy.decimalMark = decimalMark;
		copy.header = header;
		copy.notHeard = notHeard;
		copy.site = site;
		copy.usualSite = usualSite;
		copy.floor = floor;
		copy.device = device;
		copy.swapXY = swapXY;
		copy.metresPerUnit = metresPerUnit;
		copy.accessPointsPerSite = accessPointsPerSite;
		copy.roles = roles;
		copy.floors = floors;
		copy.limits = limits;
		change.accept(copy);
		return copy;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof IntakeOptions o && limits.equals(o.limits) && Objects.equals(usualSite, o.usualSite)
				&& Mapping.format(this).equals(Mapping.format(o));
	}

	@Override
	public int hashCode() {
		return Mapping.format(this).hashCode();
	}
}
