package org.cairnfield.archive.history;

import java.util.Locale;

import org.cairnfield.archive.signature.Signature;

/**
 * What a signature says of who gave a verdict.
 *
 * @param file      the ledger
 * @param id        of the verdict
 * @param person    who gave it, as it says; empty where it names nobody
 * @param enteredBy who entered it for that person, as it says; empty for nobody
 * @param where     the save point that brought it
 * @param signature of that save point
 */
public record VerdictProof(String file, String id, String person, String enteredBy, SavePoint where, Kind kind,
		Signature signature) {

	/** How far it is proven. */
	public enum Kind {
		/** By the signature of the person. */
		SIGNED,
		/** By that of who entered it, which says nothing of the person. */
		ENTERED,
		/** Its save point carries no signature. */
		UNSIGNED,
		/** Nobody here knows the key, or nothing can check it. */
		UNKNOWN,
		/** Somebody else has signed it. */
		OTHER,
		/** The signature does not fit. */
		BAD,
		/** A merge brought it, and none of the states that it brought together had it. */
		MERGED;

		/** Whether something is wrong. */
		public boolean isProblem() {
			return this == OTHER || this == BAD || this == MERGED;
		}

		/** In words, for people and programs. */
		@Override
		public String toString() {
			return switch (this) {
			case ENTERED -> Messages.VerdictProof_signedByWhoEnteredIt;
			case UNSIGNED -> Messages.VerdictProof_notSigned;
			case UNKNOWN -> Messages.VerdictProof_signatureNotKnown;
			case OTHER -> Messages.VerdictProof_signedBySomebodyElse;
			case BAD -> Messages.VerdictProof_badSignature;
			case MERGED -> Messages.VerdictProof_broughtByAMergeAlone;
			default -> name().toLowerCase(Locale.ROOT);
			};
		}
	}
}
