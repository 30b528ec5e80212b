/**
 */
package org.cairnfield.model;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Conflict</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One thing that several people have set to different values, each without knowing of the other. Until somebody decides, it is as it was before.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Conflict#getPlace <em>Place</em>}</li>
 *   <li>{@link org.cairnfield.model.Conflict#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.cairnfield.model.Conflict#getBase <em>Base</em>}</li>
 *   <li>{@link org.cairnfield.model.Conflict#getClaims <em>Claims</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getConflict()
 * @model annotation="urn:org.cairnfield:words label='Conflict'"
 * @generated
 */
public interface Conflict extends EObject {
	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it belongs to: words for objects with their ids from the outermost in, as site th/survey spring/sample S-12.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(String)
	 * @see org.cairnfield.model.ModelPackage#getConflict_Place()
	 * @model annotation="urn:org.cairnfield:words label='Place'"
	 * @generated
	 */
	String getPlace();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Conflict#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What of it was set, such as position; presence where it was removed and changed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.cairnfield.model.ModelPackage#getConflict_Unit()
	 * @model annotation="urn:org.cairnfield:words label='Unit'"
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Conflict#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Base</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The value before, as a text; unset where there was none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Base</em>' attribute.
	 * @see #setBase(String)
	 * @see org.cairnfield.model.ModelPackage#getConflict_Base()
	 * @model annotation="urn:org.cairnfield:words label='Before'"
	 * @generated
	 */
	String getBase();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Conflict#getBase <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base</em>' attribute.
	 * @see #getBase()
	 * @generated
	 */
	void setBase(String value);

	/**
	 * Returns the value of the '<em><b>Claims</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Claim}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it was set to, at least two, in the order of their values.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Claims</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getConflict_Claims()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Claims'"
	 * @generated
	 */
	EList<Claim> getClaims();

} // Conflict
