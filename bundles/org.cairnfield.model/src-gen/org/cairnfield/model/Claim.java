/**
 */
package org.cairnfield.model;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Claim</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What one person has set something to.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Claim#getValue <em>Value</em>}</li>
 *   <li>{@link org.cairnfield.model.Claim#getPerson <em>Person</em>}</li>
 *   <li>{@link org.cairnfield.model.Claim#getTime <em>Time</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getClaim()
 * @model annotation="urn:org.cairnfield:words label='Claim'"
 * @generated
 */
public interface Claim extends EObject {
	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As a text; unset where it was taken away.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(String)
	 * @see org.cairnfield.model.ModelPackage#getClaim_Value()
	 * @model annotation="urn:org.cairnfield:words label='Value'"
	 * @generated
	 */
	String getValue();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Claim#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who set it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see org.cairnfield.model.ModelPackage#getClaim_Person()
	 * @model annotation="urn:org.cairnfield:words label='Person'"
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Claim#getPerson <em>Person</em>}' attribute.
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
	 * When it was recorded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Time</em>' attribute.
	 * @see #setTime(Instant)
	 * @see org.cairnfield.model.ModelPackage#getClaim_Time()
	 * @model dataType="org.cairnfield.model.Time"
	 *        annotation="urn:org.cairnfield:words label='Time (UTC)'"
	 * @generated
	 */
	Instant getTime();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Claim#getTime <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time</em>' attribute.
	 * @see #getTime()
	 * @generated
	 */
	void setTime(Instant value);

} // Claim
