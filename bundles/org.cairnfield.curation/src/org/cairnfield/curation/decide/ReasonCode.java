package org.cairnfield.curation.decide;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cairnfield.model.Decision;
import org.cairnfield.model.check.TakeBack;

/** Short words for reasons that people often give. A ledger may hold others. */
public enum ReasonCode {
	/** Evidence agrees. */
	FITS("fits", Messages.ReasonCode_theEvidenceAgrees, Decision.APPROVE),
	/** The reviewer knows the place. */
	KNOWN_PLACE("known-place", Messages.ReasonCode_theReviewerKnowsThePlace, Decision.APPROVE),
	/** Approved after an audit of the band. */
	BAND_AUDITED("band-audited", Messages.ReasonCode_approvedWithItsBandAfter, Decision.APPROVE),
	/** Too far from the cluster. */
	FAR("far", Messages.ReasonCode_tooFarFromTheCluster, Decision.POOL),
	/** Another floor. */
	OTHER_FLOOR("other-floor", Messages.ReasonCode_theClusterIsOnAnother, Decision.POOL),
	/** No cluster is the right one. */
	NO_CLUSTER("no-cluster", Messages.ReasonCode_noClusterFits, Decision.POOL),
	/** Another cluster fits better. */
	OTHER_CLUSTER("other-cluster", Messages.ReasonCode_anotherClusterFitsBetter, Decision.MOVE),
	/** The sample is faulty; it was set aside. */
	FAULTY("faulty", Messages.ReasonCode_theSampleIsFaulty, Decision.FAULTY),
	/** It was not taken where it is said to be. */
	WRONG_PLACE("wrong-place", Messages.ReasonCode_itsPlaceIsWrong, Decision.FAULTY),
	/** Its readings cannot be used. */
	BAD_READINGS("bad-readings", Messages.ReasonCode_itsReadingsAreNotSound, Decision.FAULTY),
	/** Somebody has to look on site. */
	LOOK_ON_SITE("look-on-site", Messages.ReasonCode_somebodyHasToLookOn, Decision.DEFER),
	/** Somebody who knows has to be asked. */
	ASK("ask", Messages.ReasonCode_somebodyWhoKnowsHasTo, Decision.DEFER),
	/** A verdict was taken back. */
	TAKEN_BACK(TakeBack.REASON, Messages.ReasonCode_anEarlierVerdictIsTaken, Decision.DEFER);

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
