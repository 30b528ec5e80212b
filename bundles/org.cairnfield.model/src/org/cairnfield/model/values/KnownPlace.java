package org.cairnfield.model.values;

/**
 * A place on a floor that somebody knows. Text form: {@code SITE/LEVEL X,Y}, for instance {@code lantern-store/1 12.5,3.0}.
 *
 * @param site    id
 * @param level   of the floor
 * @param xMetres in the frame of the floor
 * @param yMetres likewise
 */
public record KnownPlace(String site, int level, double xMetres, double yMetres) {

	/** @throws IllegalArgumentException for an id that is none, or what is no position */
	public KnownPlace {
		if (!Ids.isUsable(site)) {
			throw new IllegalArgumentException("no id of a site: '" + site + "'");
		}
		xMetres = SampleChecks.position(xMetres);
		yMetres = SampleChecks.position(yMetres);
	}

	/** @throws IllegalArgumentException for a text that is no place */
	public static KnownPlace parse(String text) {
		String[] parts = text.strip().split("[/,\\s]+", -1);
		try {
			if (parts.length != 4 || !text.strip().matches("[^/\\s]+/[^/\\s]+\\s+[^,\\s]+,[^,\\s]+")) {
				throw new NumberFormatException();
			}
			return new KnownPlace(parts[0], Integer.parseInt(parts[1]), Double.parseDouble(parts[2]),
					Double.parseDouble(parts[3]));
		} catch (NumberFormatException e) {
			throw new IllegalArgumentException("a place is SITE/LEVEL X,Y with metres: '" + text + "'", e);
		}
	}

	/** The text form. */
	@Override
	public String toString() {
		return site + '/' + level + ' ' + xMetres + ',' + yMetres;
	}
}
