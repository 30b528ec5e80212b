/**
 */
package org.cairnfield.model;

import java.time.Instant;

import java.util.Map;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Waiver</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Somebody’s decision to live with a finding.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Waiver#getRule <em>Rule</em>}</li>
 *   <li>{@link org.cairnfield.model.Waiver#getContentKey <em>Content Key</em>}</li>
 *   <li>{@link org.cairnfield.model.Waiver#getReason <em>Reason</em>}</li>
 *   <li>{@link org.cairnfield.model.Waiver#getPerson <em>Person</em>}</li>
 *   <li>{@link org.cairnfield.model.Waiver#getTime <em>Time</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getWaiver()
 * @model annotation="urn:org.cairnfield:words label='Waiver'"
 * @generated
 */
public interface Waiver extends EObject {
	/**
	 * Returns the value of the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the rule.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rule</em>' attribute.
	 * @see #setRule(String)
	 * @see org.cairnfield.model.ModelPackage#getWaiver_Rule()
	 * @model annotation="urn:org.cairnfield:words label='Rule'"
	 * @generated
	 */
	String getRule();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Waiver#getRule <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule</em>' attribute.
	 * @see #getRule()
	 * @generated
	 */
	void setRule(String value);

	/**
	 * Returns the value of the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Content key of the finding.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Content Key</em>' attribute.
	 * @see #setContentKey(String)
	 * @see org.cairnfield.model.ModelPackage#getWaiver_ContentKey()
	 * @model annotation="urn:org.cairnfield:words label='Content key'"
	 * @generated
	 */
	String getContentKey();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Waiver#getContentKey <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Content Key</em>' attribute.
	 * @see #getContentKey()
	 * @generated
	 */
	void setContentKey(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why the finding may stay.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see org.cairnfield.model.ModelPackage#getWaiver_Reason()
	 * @model annotation="urn:org.cairnfield:words label='Reason'"
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Waiver#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Initials of who decided.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see org.cairnfield.model.ModelPackage#getWaiver_Person()
	 * @model annotation="urn:org.cairnfield:words label='Person'"
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Waiver#getPerson <em>Person</em>}' attribute.
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
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Time</em>' attribute.
	 * @see #setTime(Instant)
	 * @see org.cairnfield.model.ModelPackage#getWaiver_Time()
	 * @model dataType="org.cairnfield.model.Time"
	 *        annotation="urn:org.cairnfield:words label='Time (UTC)'"
	 * @generated
	 */
	Instant getTime();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Waiver#getTime <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time</em>' attribute.
	 * @see #getTime()
	 * @generated
	 */
	void setTime(Instant value);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rule, content key, reason, person and time are set.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean isAccountedFor(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Waiver
