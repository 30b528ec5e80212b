package org.cairnfield.curation.rules;

import org.cairnfield.core.text.Words;

/** Something that a finding is about. */
public sealed interface Subject {

	/** The name that people know it by. */
	String label();

	/** A key of its content: the same thing has the same key in every run, whatever row it is in and however it is named. */
	long key();

	/**
	 * The key that it had while sites and devices were known by name. Waivers of that time hold on, as long as nothing that they
	 * cover is renamed.
	 */
	default long keyByName() {
		return key();
	}

	/** A sample, by its id; its key is that of what it holds, see {@link SurveyedMap#contentKey}. */
	record OfSample(String id, long key, long keyByName) implements Subject {
		@Override
		public String label() {
			return id;
		}
	}

	/** An access point, by its address. */
	record OfAccessPoint(String address) implements Subject {
		@Override
		public String label() {
			return address;
		}

		@Override
		public long key() {
			return ContentKeys.join(1, ContentKeys.of(address));
		}
	}

	/** A survey, by its id. */
	record OfSurvey(String id) implements Subject {
		@Override
		public String label() {
			return id;
		}

		@Override
		public long key() {
			return ContentKeys.join(2, ContentKeys.of(id));
		}
	}

	/** A device. */
	record OfDevice(String id, String name) implements Subject {
		@Override
		public String label() {
			return name;
		}

		@Override
		public long key() {
			return ContentKeys.join(3, ContentKeys.of(id));
		}

		@Override
		public long keyByName() {
			return new OfDevice(name, name).key();
		}
	}

	/** A site. */
	record OfSite(String id, String name) implements Subject {
		@Override
		public String label() {
			return name;
		}

		@Override
		public long key() {
			return ContentKeys.join(4, ContentKeys.of(id));
		}

		@Override
		public long keyByName() {
			return new OfSite(name, name).key();
		}
	}

	/**
	 * A square piece of a floor.
	 *
	 * @param siteId id of the site
	 * @param site   its name
	 * @param x      lower left corner, metres, floor frame
	 * @param y      likewise
	 * @param side   metres
	 */
	record OfCell(String siteId, String site, int floor, double x, double y, double side) implements Subject {
		@Override
		public String label() {
			return Words.bind(Messages.Subject_floor, site, floor, RuleWords.place(x, y));
		}

		@Override
		public long key() {
			long key = ContentKeys.join(ContentKeys.join(5, ContentKeys.of(siteId)), floor);
			key = ContentKeys.join(key, Double.doubleToLongBits(x));
			return ContentKeys.join(ContentKeys.join(key, Double.doubleToLongBits(y)), Double.doubleToLongBits(side));
		}

		@Override
		public long keyByName() {
			return new OfCell(site, site, floor, x, y, side).key();
		}
	}
}
