package org.cairnfield.model.values;

/**
 * What a split is made of: the archive, a site, or a floor. Text form: {@code archive}, {@code site/ID} or
 * {@code site/ID/LEVEL}.
 *
 * @param site  id of the site, or null for the archive
 * @param level of the floor, or null for all floors
 */
public record Scope(String site, Integer level) {

	/** Everything. */
	public static final Scope ARCHIVE = new Scope(null, null);

	/** @throws IllegalArgumentException for a floor without a site, or an id that is none */
	public Scope {
		if (site == null && level != null) {
			throw new IllegalArgumentException("a floor belongs to a site");
		}
		if (site != null && !Ids.isUsable(site)) {
			throw new IllegalArgumentException("no id of a site: '" + site + "'");
		}
	}

	/** All floors of a site. */
	public static Scope site(String id) {
		return new Scope(id, null);
	}

	/** One floor of a site. */
	public static Scope floor(String site, int level) {
		return new Scope(site, level);
	}

	/** @throws IllegalArgumentException for a text that is no scope */
	public static Scope parse(String text) {
		String[] steps = text.split("/", -1);
		if (text.equals("archive")) {
			return ARCHIVE;
		}
		if (!steps[0].equals("site") || steps.length < 2 || steps.length > 3) {
			throw new IllegalArgumentException("a scope is archive, site/ID or site/ID/LEVEL: '" + text + "'");
		}
		return steps.length == 2 ? site(steps[1]) : floor(steps[1], Integer.parseInt(steps[2]));
	}

	/** The text form. */
	@Override
	public String toString() {
		return site == null ? "archive" : level == null ? "site/" + site : "site/" + site + '/' + level;
	}
}
