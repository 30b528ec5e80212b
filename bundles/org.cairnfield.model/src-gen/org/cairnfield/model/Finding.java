/**
 */
package org.cairnfield.model;

import org.cairnfield.model.values.Subject;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Finding</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a cleaning rule reports. A result of a run, never saved.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Finding#getRule <em>Rule</em>}</li>
 *   <li>{@link org.cairnfield.model.Finding#getSeverity <em>Severity</em>}</li>
 *   <li>{@link org.cairnfield.model.Finding#getMessage <em>Message</em>}</li>
 *   <li>{@link org.cairnfield.model.Finding#getSubjects <em>Subjects</em>}</li>
 *   <li>{@link org.cairnfield.model.Finding#getContentKey <em>Content Key</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getFinding()
 * @model annotation="urn:org.cairnfield:words label='Finding'"
 * @generated
 */
public interface Finding extends EObject {
	/**
	 * Returns the value of the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the rule.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rule</em>' attribute.
	 * @see #setRule(String)
	 * @see org.cairnfield.model.ModelPackage#getFinding_Rule()
	 * @model annotation="urn:org.cairnfield:words label='Rule'"
	 * @generated
	 */
	String getRule();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Finding#getRule <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule</em>' attribute.
	 * @see #getRule()
	 * @generated
	 */
	void setRule(String value);

	/**
	 * Returns the value of the '<em><b>Severity</b></em>' attribute.
	 * The literals are from the enumeration {@link org.cairnfield.model.Severity}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How bad it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Severity</em>' attribute.
	 * @see org.cairnfield.model.Severity
	 * @see #setSeverity(Severity)
	 * @see org.cairnfield.model.ModelPackage#getFinding_Severity()
	 * @model annotation="urn:org.cairnfield:words label='Severity'"
	 * @generated
	 */
	Severity getSeverity();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Finding#getSeverity <em>Severity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Severity</em>' attribute.
	 * @see org.cairnfield.model.Severity
	 * @see #getSeverity()
	 * @generated
	 */
	void setSeverity(Severity value);

	/**
	 * Returns the value of the '<em><b>Message</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is wrong and where.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Message</em>' attribute.
	 * @see #setMessage(String)
	 * @see org.cairnfield.model.ModelPackage#getFinding_Message()
	 * @model annotation="urn:org.cairnfield:words label='Message'"
	 * @generated
	 */
	String getMessage();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Finding#getMessage <em>Message</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Message</em>' attribute.
	 * @see #getMessage()
	 * @generated
	 */
	void setMessage(String value);

	/**
	 * Returns the value of the '<em><b>Subjects</b></em>' attribute list.
	 * The list contents are of type {@link org.cairnfield.model.values.Subject}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is about, the most important first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Subjects</em>' attribute list.
	 * @see org.cairnfield.model.ModelPackage#getFinding_Subjects()
	 * @model dataType="org.cairnfield.model.Subject"
	 *        annotation="urn:org.cairnfield:words label='About'"
	 * @generated
	 */
	EList<Subject> getSubjects();

	/**
	 * Returns the value of the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Text made from what the finding is about, the same in the next run as long as that does not change.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Content Key</em>' attribute.
	 * @see #setContentKey(String)
	 * @see org.cairnfield.model.ModelPackage#getFinding_ContentKey()
	 * @model annotation="urn:org.cairnfield:words label='Content key'"
	 * @generated
	 */
	String getContentKey();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Finding#getContentKey <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Content Key</em>' attribute.
	 * @see #getContentKey()
	 * @generated
	 */
	void setContentKey(String value);

} // Finding
