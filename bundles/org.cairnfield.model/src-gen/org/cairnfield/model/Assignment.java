/**
 */
package org.cairnfield.model;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Assignment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Some proposals of a split that one person is to review.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Assignment#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Assignment#getSplit <em>Split</em>}</li>
 *   <li>{@link org.cairnfield.model.Assignment#getReviewer <em>Reviewer</em>}</li>
 *   <li>{@link org.cairnfield.model.Assignment#getShare <em>Share</em>}</li>
 *   <li>{@link org.cairnfield.model.Assignment#getPerson <em>Person</em>}</li>
 *   <li>{@link org.cairnfield.model.Assignment#getTime <em>Time</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getAssignment()
 * @model annotation="urn:org.cairnfield:words label='Assignment'"
 * @generated
 */
public interface Assignment extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id, unique in the archive.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getAssignment_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Assignment#getId <em>Id</em>}' attribute.
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
	 * Id of the split.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Split</em>' attribute.
	 * @see #setSplit(String)
	 * @see org.cairnfield.model.ModelPackage#getAssignment_Split()
	 * @model annotation="urn:org.cairnfield:words label='Split'"
	 * @generated
	 */
	String getSplit();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Assignment#getSplit <em>Split</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Split</em>' attribute.
	 * @see #getSplit()
	 * @generated
	 */
	void setSplit(String value);

	/**
	 * Returns the value of the '<em><b>Reviewer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who is to review them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reviewer</em>' attribute.
	 * @see #setReviewer(String)
	 * @see org.cairnfield.model.ModelPackage#getAssignment_Reviewer()
	 * @model annotation="urn:org.cairnfield:words label='Reviewer'"
	 * @generated
	 */
	String getReviewer();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Assignment#getReviewer <em>Reviewer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reviewer</em>' attribute.
	 * @see #getReviewer()
	 * @generated
	 */
	void setReviewer(String value);

	/**
	 * Returns the value of the '<em><b>Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which of them: a band, a site, a floor or an equal part, as a text.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Share</em>' attribute.
	 * @see #setShare(String)
	 * @see org.cairnfield.model.ModelPackage#getAssignment_Share()
	 * @model annotation="urn:org.cairnfield:words label='Share'"
	 * @generated
	 */
	String getShare();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Assignment#getShare <em>Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Share</em>' attribute.
	 * @see #getShare()
	 * @generated
	 */
	void setShare(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who assigned them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see org.cairnfield.model.ModelPackage#getAssignment_Person()
	 * @model annotation="urn:org.cairnfield:words label='Person'"
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Assignment#getPerson <em>Person</em>}' attribute.
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
	 * @see org.cairnfield.model.ModelPackage#getAssignment_Time()
	 * @model dataType="org.cairnfield.model.Time"
	 *        annotation="urn:org.cairnfield:words label='Time (UTC)'"
	 * @generated
	 */
	Instant getTime();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Assignment#getTime <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time</em>' attribute.
	 * @see #getTime()
	 * @generated
	 */
	void setTime(Instant value);

} // Assignment
