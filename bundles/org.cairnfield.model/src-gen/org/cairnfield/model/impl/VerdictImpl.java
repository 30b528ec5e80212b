/**
 */
package org.cairnfield.model.impl;

import java.time.Instant;

import java.util.Map;

import org.cairnfield.model.Decision;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Round;
import org.cairnfield.model.Verdict;

import org.cairnfield.model.check.VerdictCheck;

import org.cairnfield.model.values.SampleKey;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Verdict</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getSplit <em>Split</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getSample <em>Sample</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getCluster <em>Cluster</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getDecision <em>Decision</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getReasonCode <em>Reason Code</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getText <em>Text</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getPerson <em>Person</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getTime <em>Time</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getSupersedes <em>Supersedes</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getRound <em>Round</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getSampleContent <em>Sample Content</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getEvidence <em>Evidence</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getBatch <em>Batch</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.VerdictImpl#getEnteredBy <em>Entered By</em>}</li>
 * </ul>
 *
 * @generated
 */
public class VerdictImpl extends MinimalEObjectImpl.Container implements Verdict {
	/**
	 * The default value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected static final String ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected String id = ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getSplit() <em>Split</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSplit()
	 * @generated
	 * @ordered
	 */
	protected static final String SPLIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSplit() <em>Split</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSplit()
	 * @generated
	 * @ordered
	 */
	protected String split = SPLIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSample() <em>Sample</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSample()
	 * @generated
	 * @ordered
	 */
	protected static final SampleKey SAMPLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSample() <em>Sample</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSample()
	 * @generated
	 * @ordered
	 */
	protected SampleKey sample = SAMPLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCluster() <em>Cluster</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCluster()
	 * @generated
	 * @ordered
	 */
	protected static final int CLUSTER_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getCluster() <em>Cluster</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCluster()
	 * @generated
	 * @ordered
	 */
	protected int cluster = CLUSTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getDecision() <em>Decision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDecision()
	 * @generated
	 * @ordered
	 */
	protected static final Decision DECISION_EDEFAULT = Decision.DEFER;

	/**
	 * The cached value of the '{@link #getDecision() <em>Decision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDecision()
	 * @generated
	 * @ordered
	 */
	protected Decision decision = DECISION_EDEFAULT;

	/**
	 * The default value of the '{@link #getReasonCode() <em>Reason Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReasonCode()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReasonCode() <em>Reason Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReasonCode()
	 * @generated
	 * @ordered
	 */
	protected String reasonCode = REASON_CODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected static final String TEXT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected String text = TEXT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPerson() <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerson()
	 * @generated
	 * @ordered
	 */
	protected static final String PERSON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPerson() <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerson()
	 * @generated
	 * @ordered
	 */
	protected String person = PERSON_EDEFAULT;

	/**
	 * The default value of the '{@link #getTime() <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTime()
	 * @generated
	 * @ordered
	 */
	protected static final Instant TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTime() <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTime()
	 * @generated
	 * @ordered
	 */
	protected Instant time = TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupersedes() <em>Supersedes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupersedes()
	 * @generated
	 * @ordered
	 */
	protected static final String SUPERSEDES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupersedes() <em>Supersedes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupersedes()
	 * @generated
	 * @ordered
	 */
	protected String supersedes = SUPERSEDES_EDEFAULT;

	/**
	 * The default value of the '{@link #getRound() <em>Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRound()
	 * @generated
	 * @ordered
	 */
	protected static final Round ROUND_EDEFAULT = Round.FIRST;

	/**
	 * The cached value of the '{@link #getRound() <em>Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRound()
	 * @generated
	 * @ordered
	 */
	protected Round round = ROUND_EDEFAULT;

	/**
	 * The default value of the '{@link #getSampleContent() <em>Sample Content</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSampleContent()
	 * @generated
	 * @ordered
	 */
	protected static final String SAMPLE_CONTENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSampleContent() <em>Sample Content</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSampleContent()
	 * @generated
	 * @ordered
	 */
	protected String sampleContent = SAMPLE_CONTENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getEvidence() <em>Evidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEvidence()
	 * @generated
	 * @ordered
	 */
	protected static final String EVIDENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEvidence() <em>Evidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEvidence()
	 * @generated
	 * @ordered
	 */
	protected String evidence = EVIDENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBatch() <em>Batch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatch()
	 * @generated
	 * @ordered
	 */
	protected static final String BATCH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBatch() <em>Batch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatch()
	 * @generated
	 * @ordered
	 */
	protected String batch = BATCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getEnteredBy() <em>Entered By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnteredBy()
	 * @generated
	 * @ordered
	 */
	protected static final String ENTERED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEnteredBy() <em>Entered By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnteredBy()
	 * @generated
	 * @ordered
	 */
	protected String enteredBy = ENTERED_BY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected VerdictImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.VERDICT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getId() {
		return id;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setId(String newId) {
		String oldId = id;
		id = newId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSplit() {
		return split;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSplit(String newSplit) {
		String oldSplit = split;
		split = newSplit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__SPLIT, oldSplit, split));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SampleKey getSample() {
		return sample;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSample(SampleKey newSample) {
		SampleKey oldSample = sample;
		sample = newSample;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__SAMPLE, oldSample, sample));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCluster() {
		return cluster;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCluster(int newCluster) {
		int oldCluster = cluster;
		cluster = newCluster;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__CLUSTER, oldCluster, cluster));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Decision getDecision() {
		return decision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDecision(Decision newDecision) {
		Decision oldDecision = decision;
		decision = newDecision == null ? DECISION_EDEFAULT : newDecision;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__DECISION, oldDecision, decision));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReasonCode() {
		return reasonCode;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReasonCode(String newReasonCode) {
		String oldReasonCode = reasonCode;
		reasonCode = newReasonCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__REASON_CODE, oldReasonCode, reasonCode));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText() {
		return text;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setText(String newText) {
		String oldText = text;
		text = newText;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__TEXT, oldText, text));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPerson() {
		return person;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerson(String newPerson) {
		String oldPerson = person;
		person = newPerson;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__PERSON, oldPerson, person));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getTime() {
		return time;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTime(Instant newTime) {
		Instant oldTime = time;
		time = newTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__TIME, oldTime, time));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSupersedes() {
		return supersedes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupersedes(String newSupersedes) {
		String oldSupersedes = supersedes;
		supersedes = newSupersedes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__SUPERSEDES, oldSupersedes, supersedes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Round getRound() {
		return round;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRound(Round newRound) {
		Round oldRound = round;
		round = newRound == null ? ROUND_EDEFAULT : newRound;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__ROUND, oldRound, round));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSampleContent() {
		return sampleContent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSampleContent(String newSampleContent) {
		String oldSampleContent = sampleContent;
		sampleContent = newSampleContent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__SAMPLE_CONTENT, oldSampleContent, sampleContent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEvidence() {
		return evidence;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEvidence(String newEvidence) {
		String oldEvidence = evidence;
		evidence = newEvidence;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__EVIDENCE, oldEvidence, evidence));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBatch() {
		return batch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBatch(String newBatch) {
		String oldBatch = batch;
		batch = newBatch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__BATCH, oldBatch, batch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEnteredBy() {
		return enteredBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnteredBy(String newEnteredBy) {
		String oldEnteredBy = enteredBy;
		enteredBy = newEnteredBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VERDICT__ENTERED_BY, oldEnteredBy, enteredBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isAccountedFor(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return VerdictCheck.isAccountedFor(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.VERDICT__ID:
				return getId();
			case ModelPackage.VERDICT__SPLIT:
				return getSplit();
			case ModelPackage.VERDICT__SAMPLE:
				return getSample();
			case ModelPackage.VERDICT__CLUSTER:
				return getCluster();
			case ModelPackage.VERDICT__DECISION:
				return getDecision();
			case ModelPackage.VERDICT__REASON_CODE:
				return getReasonCode();
			case ModelPackage.VERDICT__TEXT:
				return getText();
			case ModelPackage.VERDICT__PERSON:
				return getPerson();
			case ModelPackage.VERDICT__TIME:
				return getTime();
			case ModelPackage.VERDICT__SUPERSEDES:
				return getSupersedes();
			case ModelPackage.VERDICT__ROUND:
				return getRound();
			case ModelPackage.VERDICT__SAMPLE_CONTENT:
				return getSampleContent();
			case ModelPackage.VERDICT__EVIDENCE:
				return getEvidence();
			case ModelPackage.VERDICT__BATCH:
				return getBatch();
			case ModelPackage.VERDICT__ENTERED_BY:
				return getEnteredBy();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.VERDICT__ID:
				setId((String)newValue);
				return;
			case ModelPackage.VERDICT__SPLIT:
				setSplit((String)newValue);
				return;
			case ModelPackage.VERDICT__SAMPLE:
				setSample((SampleKey)newValue);
				return;
			case ModelPackage.VERDICT__CLUSTER:
				setCluster((Integer)newValue);
				return;
			case ModelPackage.VERDICT__DECISION:
				setDecision((Decision)newValue);
				return;
			case ModelPackage.VERDICT__REASON_CODE:
				setReasonCode((String)newValue);
				return;
			case ModelPackage.VERDICT__TEXT:
				setText((String)newValue);
				return;
			case ModelPackage.VERDICT__PERSON:
				setPerson((String)newValue);
				return;
			case ModelPackage.VERDICT__TIME:
				setTime((Instant)newValue);
				return;
			case ModelPackage.VERDICT__SUPERSEDES:
				setSupersedes((String)newValue);
				return;
			case ModelPackage.VERDICT__ROUND:
				setRound((Round)newValue);
				return;
			case ModelPackage.VERDICT__SAMPLE_CONTENT:
				setSampleContent((String)newValue);
				return;
			case ModelPackage.VERDICT__EVIDENCE:
				setEvidence((String)newValue);
				return;
			case ModelPackage.VERDICT__BATCH:
				setBatch((String)newValue);
				return;
			case ModelPackage.VERDICT__ENTERED_BY:
				setEnteredBy((String)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ModelPackage.VERDICT__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.VERDICT__SPLIT:
				setSplit(SPLIT_EDEFAULT);
				return;
			case ModelPackage.VERDICT__SAMPLE:
				setSample(SAMPLE_EDEFAULT);
				return;
			case ModelPackage.VERDICT__CLUSTER:
				setCluster(CLUSTER_EDEFAULT);
				return;
			case ModelPackage.VERDICT__DECISION:
				setDecision(DECISION_EDEFAULT);
				return;
			case ModelPackage.VERDICT__REASON_CODE:
				setReasonCode(REASON_CODE_EDEFAULT);
				return;
			case ModelPackage.VERDICT__TEXT:
				setText(TEXT_EDEFAULT);
				return;
			case ModelPackage.VERDICT__PERSON:
				setPerson(PERSON_EDEFAULT);
				return;
			case ModelPackage.VERDICT__TIME:
				setTime(TIME_EDEFAULT);
				return;
			case ModelPackage.VERDICT__SUPERSEDES:
				setSupersedes(SUPERSEDES_EDEFAULT);
				return;
			case ModelPackage.VERDICT__ROUND:
				setRound(ROUND_EDEFAULT);
				return;
			case ModelPackage.VERDICT__SAMPLE_CONTENT:
				setSampleContent(SAMPLE_CONTENT_EDEFAULT);
				return;
			case ModelPackage.VERDICT__EVIDENCE:
				setEvidence(EVIDENCE_EDEFAULT);
				return;
			case ModelPackage.VERDICT__BATCH:
				setBatch(BATCH_EDEFAULT);
				return;
			case ModelPackage.VERDICT__ENTERED_BY:
				setEnteredBy(ENTERED_BY_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ModelPackage.VERDICT__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.VERDICT__SPLIT:
				return SPLIT_EDEFAULT == null ? split != null : !SPLIT_EDEFAULT.equals(split);
			case ModelPackage.VERDICT__SAMPLE:
				return SAMPLE_EDEFAULT == null ? sample != null : !SAMPLE_EDEFAULT.equals(sample);
			case ModelPackage.VERDICT__CLUSTER:
				return cluster != CLUSTER_EDEFAULT;
			case ModelPackage.VERDICT__DECISION:
				return decision != DECISION_EDEFAULT;
			case ModelPackage.VERDICT__REASON_CODE:
				return REASON_CODE_EDEFAULT == null ? reasonCode != null : !REASON_CODE_EDEFAULT.equals(reasonCode);
			case ModelPackage.VERDICT__TEXT:
				return TEXT_EDEFAULT == null ? text != null : !TEXT_EDEFAULT.equals(text);
			case ModelPackage.VERDICT__PERSON:
				return PERSON_EDEFAULT == null ? person != null : !PERSON_EDEFAULT.equals(person);
			case ModelPackage.VERDICT__TIME:
				return TIME_EDEFAULT == null ? time != null : !TIME_EDEFAULT.equals(time);
			case ModelPackage.VERDICT__SUPERSEDES:
				return SUPERSEDES_EDEFAULT == null ? supersedes != null : !SUPERSEDES_EDEFAULT.equals(supersedes);
			case ModelPackage.VERDICT__ROUND:
				return round != ROUND_EDEFAULT;
			case ModelPackage.VERDICT__SAMPLE_CONTENT:
				return SAMPLE_CONTENT_EDEFAULT == null ? sampleContent != null : !SAMPLE_CONTENT_EDEFAULT.equals(sampleContent);
			case ModelPackage.VERDICT__EVIDENCE:
				return EVIDENCE_EDEFAULT == null ? evidence != null : !EVIDENCE_EDEFAULT.equals(evidence);
			case ModelPackage.VERDICT__BATCH:
				return BATCH_EDEFAULT == null ? batch != null : !BATCH_EDEFAULT.equals(batch);
			case ModelPackage.VERDICT__ENTERED_BY:
				return ENTERED_BY_EDEFAULT == null ? enteredBy != null : !ENTERED_BY_EDEFAULT.equals(enteredBy);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (id: ");
		result.append(id);
		result.append(", split: ");
		result.append(split);
		result.append(", sample: ");
		result.append(sample);
		result.append(", cluster: ");
		result.append(cluster);
		result.append(", decision: ");
		result.append(decision);
		result.append(", reasonCode: ");
		result.append(reasonCode);
		result.append(", text: ");
		result.append(text);
		result.append(", person: ");
		result.append(person);
		result.append(", time: ");
		result.append(time);
		result.append(", supersedes: ");
		result.append(supersedes);
		result.append(", round: ");
		result.append(round);
		result.append(", sampleContent: ");
		result.append(sampleContent);
		result.append(", evidence: ");
		result.append(evidence);
		result.append(", batch: ");
		result.append(batch);
		result.append(", enteredBy: ");
		result.append(enteredBy);
		result.append(')');
		return result.toString();
	}

} //VerdictImpl
