package org.cairnfield.curation.rules;

/** Something that a finding is about. */
public sealed interface Subject {

	/** The name that people know it by. */
	String label();

	/** A key of its content: the same thing has the same key in every run, whatever row it is in. */
	long key();

	/** A sample, by its id; its key is that of what it holds, see {@link SurveyedMap#contentKey}. */
	record OfSample(String id, long key) implements Subject {
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

	/** A device, by its name. */
	record OfDevice(String name) implements Subject {
		@Override
		public String label() {
			return name;
		}

		@Override
		public long key() {
			return ContentKeys.join(3, ContentKeys.of(name));
		}
	}

	/** A site, by its name. */
	record OfSite(String name) implements Subject {
		@Override
		public String label() {
			return name;
		}

		@Override
		public long key() {
			return ContentKeys.join(4, ContentKeys.of(name));
		}
	}

	/**
	 * A square piece of a floor.
	 *
	 * @param x    lower left corner, metres, floor frame
	 * @param y    likewise
	 * @param side metres
	 */
	record OfCell(String site, int floor, double x, double y, double side) implements Subject {
		@Override
		public String label() {
			return site + " floor " + floor + " " + Words.place(x, y);
		}

		@Override
		public long key() {
			long key = ContentKeys.join(ContentKeys.join(5, ContentKeys.of(site)), floor);
			key = ContentKeys.join(key, Double.doubleToLongBits(x));
			return ContentKeys.join(ContentKeys.join(key, Double.doubleToLongBits(y)), Double.doubleToLongBits(side));
		}
	}
}
