/**
 */
package org.cairnfield.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rule Setting</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a cleaning rule is told otherwise than usual. One that this version does not know is kept as it is.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.RuleSetting#getRule <em>Rule</em>}</li>
 *   <li>{@link org.cairnfield.model.RuleSetting#getParameter <em>Parameter</em>}</li>
 *   <li>{@link org.cairnfield.model.RuleSetting#getValue <em>Value</em>}</li>
 *   <li>{@link org.cairnfield.model.RuleSetting#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getRuleSetting()
 * @model annotation="urn:org.cairnfield:words label='Rule setting'"
 * @generated
 */
public interface RuleSetting extends EObject {
	/**
	 * Returns the value of the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the rule.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rule</em>' attribute.
	 * @see #setRule(String)
	 * @see org.cairnfield.model.ModelPackage#getRuleSetting_Rule()
	 * @model annotation="urn:org.cairnfield:words label='Rule'"
	 * @generated
	 */
	String getRule();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.RuleSetting#getRule <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule</em>' attribute.
	 * @see #getRule()
	 * @generated
	 */
	void setRule(String value);

	/**
	 * Returns the value of the '<em><b>Parameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the number that is set; unset: whether the rule is asked at all.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parameter</em>' attribute.
	 * @see #setParameter(String)
	 * @see org.cairnfield.model.ModelPackage#getRuleSetting_Parameter()
	 * @model annotation="urn:org.cairnfield:words label='Parameter'"
	 * @generated
	 */
	String getParameter();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.RuleSetting#getParameter <em>Parameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parameter</em>' attribute.
	 * @see #getParameter()
	 * @generated
	 */
	void setParameter(String value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The number, as a text; off for a rule that is not asked.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(String)
	 * @see org.cairnfield.model.ModelPackage#getRuleSetting_Value()
	 * @model annotation="urn:org.cairnfield:words label='Value'"
	 * @generated
	 */
	String getValue();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.RuleSetting#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why, in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see org.cairnfield.model.ModelPackage#getRuleSetting_Reason()
	 * @model annotation="urn:org.cairnfield:words label='Reason'"
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.RuleSetting#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

} // RuleSetting
