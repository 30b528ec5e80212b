package org.cairnfield.ui.internal.properties.model;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Locale;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** Values as people read them. Numbers with a point, whatever the language of the machine. */
final class PropertyValues {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT)
			.withZone(ZoneOffset.UTC);

	private PropertyValues() {
	}

	/** @param archive that names what a value refers to; may be null */
	static String text(Object value, Archive archive) {
		if (value instanceof Outline outline) {
			return Count.of(outline.size(), "corner") + ", " + number(outline.areaSquareMetres(), 1) + " m²";
		} else if (value instanceof Placement placement) {
			return NLS.bind(Messages.PropertyValues_1PixelIsCmTurned,
					new Object[] { number(placement.metresPerPixel() * 100, 2), number(placement.turnDegrees(), 2),
							number(placement.xMetres(), 2), number(placement.yMetres(), 2) });
		} else if (value instanceof Georeference place) {
			return NLS.bind(Messages.PropertyValues_turnedBy, new Object[] { degrees(place.latitudeDegrees(), "N", "S"),
					degrees(place.longitudeDegrees(), "E", "W"), number(place.bearingDegrees(), 1) });
		} else if (value instanceof KnownPlace place) {
			return ModelText.place(place, archive);
		} else if (value instanceof Scope scope) {
			return scope(scope, archive);
		} else if (value instanceof WifiBand band) {
			return band(band);
		} else if (value instanceof Enumerator literal) {
			return literal.getLiteral();
		} else if (value instanceof Instant time) {
			return TIME.format(time);
		} else if (value instanceof Double number) {
			return trimmed(number);
		} else if (value instanceof Integer number) {
			return number(number, 0);
		} else if (value instanceof Collection<?> several) {
			return several.stream().map(each -> text(each, archive)).reduce((a, b) -> a + ", " + b).orElse("");
		} else if (value instanceof EObject object) {
			return ModelText.name(object);
		}
		return value == null ? "" : value.toString();
	}

	static String time(long millis) {
		return TIME.format(Instant.ofEpochMilli(millis));
	}

	/** "2.4 GHz" for the first band, and so on. */
	private static String band(WifiBand band) {
		return NLS.bind(Messages.PropertyValues_ghz,
				band.name().substring(band.name().indexOf('_') + 1).replace('_', '.'));
	}

	private static String scope(Scope scope, Archive archive) {
		if (scope.site() == null) {
			return Messages.PropertyValues_theWholeArchive;
		}
		Site site = archive == null ? null : ArchiveIndex.of(archive).site(scope.site()).orElse(null);
		String name = site == null ? scope.site() : ModelText.name(site);
		if (scope.level() == null) {
			return name;
		}
		Floor floor = site == null ? null : ArchiveIndex.floor(site, scope.level()).orElse(null);
		return name + ", "
				+ (floor == null ? NLS.bind(Messages.PropertyValues_floor, scope.level()) : ModelText.name(floor));
	}

	private static String degrees(double degrees, String positive, String negative) {
		return number(Math.abs(degrees), 6) + "° " + (degrees < 0 ? negative : positive);
	}

	/** With as many decimals as it has, six at most. */
	private static String trimmed(double value) {
		String text = number(value, 6);
		return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
	}

	static String number(double value, int decimals) {
		return Double.isFinite(value) ? String.format(Locale.ROOT, "%,." + decimals + "f", value).replace('-', '−')
				: "";
	}

	static String percent(double share) {
		return trimmed(Math.rint(share * 1000) / 10) + " %";
	}
}
