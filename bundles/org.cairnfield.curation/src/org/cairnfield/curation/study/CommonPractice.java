package org.cairnfield.curation.study;

import java.util.Optional;

/**
 * Directions that people of the trade expect, beside what a map shows. They are common practice and have no source.
 */
public enum CommonPractice {

	/** As it is told. */
	DROPPED_ERROR(Messages.CommonPractice_droppingNoiseRaisesTheMean, 0.25, false) {
		@Override
		double change(Rows rows) {
			return rows.dropped.figures().toPlain() - 1;
		}
	},
	/** Likewise. */
	DROPPED_TIME(Messages.CommonPractice_splittingNoiseDroppedCutsMatch, -0.9, true) {
		@Override
		double change(Rows rows) {
			return rows.dropped.figures().matchTimeRatio() - 1;
		}
	},
	/** The same without the clock, by what is compared. */
	DROPPED_COMPARISONS(Messages.CommonPractice_theSameInFingerprintsCompared, -0.9, true) {
		@Override
		double change(Rows rows) {
			return rows.dropped.figures().comparisonShare() - 1;
		}
	},
	/** Likewise. */
	CORRELATED_ERROR(Messages.CommonPractice_givingCorrelatedNoiseBackTakes, -0.1, false) {
		@Override
		double change(Rows rows) {
			return rows.correlated.figures().meanErrorM() / rows.dropped.figures().meanErrorM() - 1;
		}
	},
	/** Likewise. */
	CORRELATED_TIME(Messages.CommonPractice_thatCostsAboutATenth, 0.1, false) {
		@Override
		double change(Rows rows) {
			return rows.correlated.figures().matchTimeRatio() / rows.dropped.figures().matchTimeRatio() - 1;
		}
	},
	/** Likewise; "multiplies" is taken as doubles at least. */
	PCA_ERROR(Messages.CommonPractice_principalComponentsOnTopMultiply, 1, true) {
		@Override
		double change(Rows rows) {
			return rows.reduced.figures().meanErrorM() / rows.correlated.figures().meanErrorM() - 1;
		}
	};

	/** How a map agrees with what is expected. */
	public enum Verdict {
		/** In its direction, and half to twice as much; where more than an amount is said, that amount at least. */
		MET("met"),
		/** In its direction, and less. */
		LESS(Messages.CommonPractice_directionMetLess),
		/** In its direction, and more. */
		MORE(Messages.CommonPractice_directionMetMore),
		/** Not in its direction. */
		NOT_MET(Messages.CommonPractice_notMet);

		private final String word;

		Verdict(String word) {
			this.word = word;
		}

		/** For a person. */
		public String word() {
			return word;
		}
	}

	/** "About" is half to twice as much. */
	private static final double ABOUT = 2;

	private record Rows(StudyRow dropped, StudyRow correlated, StudyRow reduced) {
	}

	private final String words;
	private final double expected;
	private final boolean atLeast;

	/**
	 * @param expected change, as a share
	 * @param atLeast  whether so much or more is said, not about so much
	 */
	CommonPractice(String words, double expected, boolean atLeast) {
		this.words = words;
		this.expected = expected;
		this.atLeast = atLeast;
	}

	abstract double change(Rows rows);

	/** What is said. */
	public String words() {
		return words;
	}

	/** The change that a map shows, as a share of what is changed; empty where a row that it needs was not measured. */
	public Optional<Double> on(StudyTable table, String map) {
		StudyRow dropped = table.row(map, StudyMethod.DBSCAN).orElse(null);
		StudyRow correlated = table.row(map, StudyMethod.DBSCAN_CORRELATION).orElse(null);
		StudyRow reduced = table.row(map, StudyMethod.DBSCAN_PCA).orElse(null);
		boolean known = dropped != null && (correlated != null || ordinal() <= DROPPED_COMPARISONS.ordinal())
				&& (reduced != null || this != PCA_ERROR);
		return known ? Optional.of(change(new Rows(dropped, correlated, reduced))).filter(Double::isFinite)
				: Optional.empty();
	}

	/** @param change of {@link #on} */
	public Verdict verdict(double change) {
		double share = change / expected;
		if (share <= 0) {
			return Verdict.NOT_MET;
		}
		if (atLeast) {
			return share >= 1 ? Verdict.MET : Verdict.LESS;
		}
		return share < 1 / ABOUT ? Verdict.LESS : share > ABOUT ? Verdict.MORE : Verdict.MET;
	}
}
