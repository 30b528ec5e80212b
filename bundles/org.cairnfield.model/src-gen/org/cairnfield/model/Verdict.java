/**
 */
package org.cairnfield.model;

import java.time.Instant;

import java.util.Map;

import org.cairnfield.model.values.SampleKey;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Verdict</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A reviewer’s decision on one proposal.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Verdict#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getSplit <em>Split</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getSample <em>Sample</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getCluster <em>Cluster</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getDecision <em>Decision</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getReasonCode <em>Reason Code</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getText <em>Text</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getPerson <em>Person</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getTime <em>Time</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getSupersedes <em>Supersedes</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getRound <em>Round</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getSampleContent <em>Sample Content</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getEvidence <em>Evidence</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getBatch <em>Batch</em>}</li>
 *   <li>{@link org.cairnfield.model.Verdict#getEnteredBy <em>Entered By</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getVerdict()
 * @model annotation="urn:org.cairnfield:words label='Verdict'"
 * @generated
 */
public interface Verdict extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id, unique in the ledger.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Split</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the split that the proposal belongs to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Split</em>' attribute.
	 * @see #setSplit(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Split()
	 * @model annotation="urn:org.cairnfield:words label='Split'"
	 * @generated
	 */
	String getSplit();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getSplit <em>Split</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Split</em>' attribute.
	 * @see #getSplit()
	 * @generated
	 */
	void setSplit(String value);

	/**
	 * Returns the value of the '<em><b>Sample</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The sample that is noise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sample</em>' attribute.
	 * @see #setSample(SampleKey)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Sample()
	 * @model dataType="org.cairnfield.model.SampleKey"
	 *        annotation="urn:org.cairnfield:words label='Sample'"
	 * @generated
	 */
	SampleKey getSample();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getSample <em>Sample</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sample</em>' attribute.
	 * @see #getSample()
	 * @generated
	 */
	void setSample(SampleKey value);

	/**
	 * Returns the value of the '<em><b>Cluster</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of the cluster that was proposed; of a move, of the cluster that the sample goes to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cluster</em>' attribute.
	 * @see #setCluster(int)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Cluster()
	 * @model annotation="urn:org.cairnfield:words label='Cluster'"
	 * @generated
	 */
	int getCluster();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getCluster <em>Cluster</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cluster</em>' attribute.
	 * @see #getCluster()
	 * @generated
	 */
	void setCluster(int value);

	/**
	 * Returns the value of the '<em><b>Decision</b></em>' attribute.
	 * The literals are from the enumeration {@link org.cairnfield.model.Decision}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the sample goes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Decision</em>' attribute.
	 * @see org.cairnfield.model.Decision
	 * @see #setDecision(Decision)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Decision()
	 * @model annotation="urn:org.cairnfield:words label='Decision'"
	 * @generated
	 */
	Decision getDecision();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getDecision <em>Decision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Decision</em>' attribute.
	 * @see org.cairnfield.model.Decision
	 * @see #getDecision()
	 * @generated
	 */
	void setDecision(Decision value);

	/**
	 * Returns the value of the '<em><b>Reason Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A short word for the reason.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason Code</em>' attribute.
	 * @see #setReasonCode(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_ReasonCode()
	 * @model annotation="urn:org.cairnfield:words label='Reason'"
	 * @generated
	 */
	String getReasonCode();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getReasonCode <em>Reason Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason Code</em>' attribute.
	 * @see #getReasonCode()
	 * @generated
	 */
	void setReasonCode(String value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The reason in the reviewer’s own words; may be unset.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Text()
	 * @model annotation="urn:org.cairnfield:words label='Remark'"
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Initials of the reviewer.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Person()
	 * @model annotation="urn:org.cairnfield:words label='Person'"
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getPerson <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person</em>' attribute.
	 * @see #getPerson()
	 * @generated
	 */
	void setPerson(String value);

	/**
	 * Returns the value of the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it was given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Time</em>' attribute.
	 * @see #setTime(Instant)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Time()
	 * @model dataType="org.cairnfield.model.Time"
	 *        annotation="urn:org.cairnfield:words label='Time (UTC)'"
	 * @generated
	 */
	Instant getTime();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getTime <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time</em>' attribute.
	 * @see #getTime()
	 * @generated
	 */
	void setTime(Instant value);

	/**
	 * Returns the value of the '<em><b>Supersedes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the verdict that this one replaces; unset: none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Supersedes</em>' attribute.
	 * @see #setSupersedes(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Supersedes()
	 * @model annotation="urn:org.cairnfield:words label='Supersedes'"
	 * @generated
	 */
	String getSupersedes();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getSupersedes <em>Supersedes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supersedes</em>' attribute.
	 * @see #getSupersedes()
	 * @generated
	 */
	void setSupersedes(String value);

	/**
	 * Returns the value of the '<em><b>Round</b></em>' attribute.
	 * The literals are from the enumeration {@link org.cairnfield.model.Round}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is the first look at the proposal, a second one, or settles the two.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Round</em>' attribute.
	 * @see org.cairnfield.model.Round
	 * @see #setRound(Round)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Round()
	 * @model annotation="urn:org.cairnfield:words label='Round'"
	 * @generated
	 */
	Round getRound();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getRound <em>Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Round</em>' attribute.
	 * @see org.cairnfield.model.Round
	 * @see #getRound()
	 * @generated
	 */
	void setRound(Round value);

	/**
	 * Returns the value of the '<em><b>Sample Content</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Key of what the sample held when the verdict was given, as 16 hexadecimal digits; unset: not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sample Content</em>' attribute.
	 * @see #setSampleContent(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_SampleContent()
	 * @model annotation="urn:org.cairnfield:words label='Sample content'"
	 * @generated
	 */
	String getSampleContent();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getSampleContent <em>Sample Content</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sample Content</em>' attribute.
	 * @see #getSampleContent()
	 * @generated
	 */
	void setSampleContent(String value);

	/**
	 * Returns the value of the '<em><b>Evidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Key of the evidence that was shown, as 16 hexadecimal digits; unset: not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Evidence</em>' attribute.
	 * @see #setEvidence(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Evidence()
	 * @model annotation="urn:org.cairnfield:words label='Evidence'"
	 * @generated
	 */
	String getEvidence();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getEvidence <em>Evidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Evidence</em>' attribute.
	 * @see #getEvidence()
	 * @generated
	 */
	void setEvidence(String value);

	/**
	 * Returns the value of the '<em><b>Batch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the audit that the verdict belongs to, as one of the samples looked at or as one approved after it; unset: none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Batch</em>' attribute.
	 * @see #setBatch(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_Batch()
	 * @model annotation="urn:org.cairnfield:words label='Batch'"
	 * @generated
	 */
	String getBatch();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getBatch <em>Batch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Batch</em>' attribute.
	 * @see #getBatch()
	 * @generated
	 */
	void setBatch(String value);

	/**
	 * Returns the value of the '<em><b>Entered By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who entered it for the person, from a table; unset where the person gave it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Entered By</em>' attribute.
	 * @see #setEnteredBy(String)
	 * @see org.cairnfield.model.ModelPackage#getVerdict_EnteredBy()
	 * @model annotation="urn:org.cairnfield:words label='Entered by'"
	 * @generated
	 */
	String getEnteredBy();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Verdict#getEnteredBy <em>Entered By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Entered By</em>' attribute.
	 * @see #getEnteredBy()
	 * @generated
	 */
	void setEnteredBy(String value);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Split, sample, person and time are set, so is the reason for taking a sample out of the map, and a move names a cluster.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean isAccountedFor(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Verdict
