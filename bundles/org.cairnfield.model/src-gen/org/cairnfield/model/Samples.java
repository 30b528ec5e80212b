/**
 */
package org.cairnfield.model;

import org.cairnfield.model.values.SampleTable;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Samples</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The samples of one survey: the root of their resource.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Samples#getTable <em>Table</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getSamples()
 * @model annotation="urn:org.cairnfield:words label='Samples'"
 * @generated
 */
public interface Samples extends EObject {
	/**
	 * Returns the value of the '<em><b>Table</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * All samples with their readings, sorted by id. Replaced as a whole; a changed table shares what is unchanged with the one before.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Table</em>' attribute.
	 * @see #setTable(SampleTable)
	 * @see org.cairnfield.model.ModelPackage#getSamples_Table()
	 * @model dataType="org.cairnfield.model.SampleTable"
	 *        annotation="urn:org.cairnfield:words label='Table'"
	 * @generated
	 */
	SampleTable getTable();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Samples#getTable <em>Table</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Table</em>' attribute.
	 * @see #getTable()
	 * @generated
	 */
	void setTable(SampleTable value);

} // Samples
