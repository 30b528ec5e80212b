package org.cairnfield.curation.decide;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cairnfield.model.Decision;
import org.cairnfield.model.check.TakeBack;

/** Short words for reasons that people often give. A ledger may hold others. */
public enum ReasonCode {
	/** Evidence agrees. */
	FITS("fits", "the evidence agrees", Decision.APPROVE),
	/** The reviewer knows the place. */
	KNOWN_PLACE("known-place", "the reviewer knows the place", Decision.APPROVE),
	/** Approved after an audit of the band. */
	BAND_AUDITED("band-audited", "approved with its band after an audit", Decision.APPROVE),
	/** Too far from the cluster. */
	FAR("far", "too far from the cluster", Decision.POOL),
	/** Another floor. */
	OTHER_FLOOR("other-floor", "the cluster is on another floor", Decision.POOL),
	/** No cluster is the right one. */
	NO_CLUSTER("no-cluster", "no cluster fits", Decision.POOL),
	/** Another cluster fits better. */
	OTHER_CLUSTER("other-cluster", "another cluster fits better", Decision.MOVE),
	/** The sample is faulty; it was set aside. */
	FAULTY("faulty", "the sample is faulty", Decision.FAULTY),
	/** It was not taken where it is said to be. */
	WRONG_PLACE("wrong-place", "its place is wrong", Decision.FAULTY),
	/** Its readings cannot be used. */
	BAD_READINGS("bad-readings", "its readings are not sound", Decision.FAULTY),
	/** Somebody has to look on site. */
	LOOK_ON_SITE("look-on-site", "somebody has to look on site", Decision.DEFER),
	/** Somebody who knows has to be asked. */
	ASK("ask", "somebody who knows has to be asked", Decision.DEFER),
	/** A verdict was taken back. */
	TAKEN_BACK(TakeBack.REASON, "an earlier verdict is taken back", Decision.DEFER);

	private final String code;
	private final String title;
	private final Decision decision;

	ReasonCode(String code, String title, Decision decision) {
		this.code = code;
		this.title = title;
		this.decision = decision;
	}

	/** As the ledger has it. */
	public String code() {
		return code;
	}

	/** For a person. */
	public String title() {
		return title;
	}

	/** Those that a person may choose for a decision, the usual one first. */
	public static List<ReasonCode> of(Decision decision) {
		return Arrays.stream(values()).filter(r -> r.decision == decision && r != TAKEN_BACK && r != BAND_AUDITED)
				.toList();
	}

	/** By its code; empty for one of people's own. */
	public static Optional<ReasonCode> named(String code) {
		return Arrays.stream(values()).filter(r -> r.code.equals(code)).findFirst();
	}
}
