/**
 */
package org.cairnfield.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cluster</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A cluster of a split. Its centroid follows from the labels and is not stored.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Cluster#getNumber <em>Number</em>}</li>
 *   <li>{@link org.cairnfield.model.Cluster#getSize <em>Size</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getCluster()
 * @model annotation="urn:org.cairnfield:words label='Cluster'"
 * @generated
 */
public interface Cluster extends EObject {
	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Counted from 0; the labels refer to it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(int)
	 * @see org.cairnfield.model.ModelPackage#getCluster_Number()
	 * @model annotation="urn:org.cairnfield:words label='Number'"
	 * @generated
	 */
	int getNumber();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Cluster#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(int value);

	/**
	 * Returns the value of the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Samples that are core or border.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Size</em>' attribute.
	 * @see #setSize(int)
	 * @see org.cairnfield.model.ModelPackage#getCluster_Size()
	 * @model annotation="urn:org.cairnfield:words label='Size (samples)'"
	 * @generated
	 */
	int getSize();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Cluster#getSize <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Size</em>' attribute.
	 * @see #getSize()
	 * @generated
	 */
	void setSize(int value);

} // Cluster
