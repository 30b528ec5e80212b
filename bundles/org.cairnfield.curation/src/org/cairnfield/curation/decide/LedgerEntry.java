package org.cairnfield.curation.decide;

import java.time.Instant;
import java.util.Locale;
import org.cairnfield.model.Decision;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Round;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;

/**
 * A verdict as the ledger holds it, as a value for any thread.
 *
 * @param cluster       the one that was proposed, −1 where none was; of a move, the one that the sample goes to
 * @param reasonCode    may be null
 * @param text          may be null
 * @param supersedes    id of the verdict that it replaces, or null
 * @param sampleContent key of what the sample held, null where not known
 * @param evidence      key of what the reviewer was shown, null where not known
 * @param batch         the audit that it belongs to, or null
 * @param enteredBy     who entered it for the person, or null
 */
public record LedgerEntry(String id, String split, SampleKey sample, int cluster, Decision decision, String reasonCode,
		String text, String person, Instant time, String supersedes, Round round, String sampleContent, String evidence,
		String batch, String enteredBy) {

	/** Of a verdict in a ledger. */
	public static LedgerEntry of(Verdict v) {
		return new LedgerEntry(v.getId(), v.getSplit(), v.getSample(), v.getCluster(), v.getDecision(),
				v.getReasonCode(),
				v.getText(), v.getPerson(), v.getTime(), v.getSupersedes(), v.getRound(), v.getSampleContent(),
				v.getEvidence(),
				v.getBatch(), v.getEnteredBy());
	}

	/** A new verdict that says the same. */
	public Verdict toModel() {
		Verdict v = ModelFactory.eINSTANCE.createVerdict();
		v.setId(id);
		v.setSplit(split);
		v.setSample(sample);
		v.setCluster(cluster);
		v.setDecision(decision);
		v.setReasonCode(reasonCode);
		v.setText(text);
		v.setPerson(person);
		v.setTime(time);
		v.setSupersedes(supersedes);
		v.setRound(round);
		v.setSampleContent(sampleContent);
		v.setEvidence(evidence);
		v.setBatch(batch);
		v.setEnteredBy(enteredBy);
		return v;
	}

	LedgerEntry withId(String newId) {
		return new LedgerEntry(newId, split, sample, cluster, decision, reasonCode, text, person, time, supersedes,
				round,
				sampleContent, evidence, batch, enteredBy);
	}

	/**
	 * The same, entered by somebody for who gave it.
	 *
	 * @param name null where that is not known
	 */
	LedgerEntry enteredBy(String name) {
		return new LedgerEntry(id, split, sample, cluster, decision, reasonCode, text, person, time, supersedes, round,
				sampleContent, evidence, batch, isBy(name) ? null : name);
	}

	/** Whether it does nothing but take an earlier verdict back. */
	public boolean takesBack() {
		return ReasonCode.TAKEN_BACK.code().equals(reasonCode) && supersedes != null;
	}

	/** Whether somebody of that name gave it, whatever the case of letters. */
	public boolean isBy(String name) {
		return isSame(person, name);
	}

	/** Whether it sends the sample to where a ruling does. */
	public boolean says(Ruling ruling) {
		return decision == ruling.decision() && (decision != Decision.MOVE || cluster == ruling.cluster());
	}

	/** Whether another verdict sends the sample to the same place. */
	public boolean agreesWith(LedgerEntry other) {
		return decision == other.decision && (decision != Decision.MOVE || cluster == other.cluster);
	}

	/** Whether two names are of one person, whatever the case of letters. */
	public static boolean isSame(String one, String other) {
		return one != null && other != null
				&& one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
	}
}
