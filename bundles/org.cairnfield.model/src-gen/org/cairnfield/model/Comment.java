/**
 */
package org.cairnfield.model;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Comment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What somebody has said about something. It is never changed or taken out.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Comment#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Comment#getSubject <em>Subject</em>}</li>
 *   <li>{@link org.cairnfield.model.Comment#getText <em>Text</em>}</li>
 *   <li>{@link org.cairnfield.model.Comment#getPerson <em>Person</em>}</li>
 *   <li>{@link org.cairnfield.model.Comment#getTime <em>Time</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getComment()
 * @model annotation="urn:org.cairnfield:words label='Comment'"
 * @generated
 */
public interface Comment extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id, unique in the archive.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getComment_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Comment#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Subject</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is about: a word for its kind and what names it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Subject</em>' attribute.
	 * @see #setSubject(String)
	 * @see org.cairnfield.model.ModelPackage#getComment_Subject()
	 * @model annotation="urn:org.cairnfield:words label='Subject'"
	 * @generated
	 */
	String getSubject();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Comment#getSubject <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Subject</em>' attribute.
	 * @see #getSubject()
	 * @generated
	 */
	void setSubject(String value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the person’s words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see org.cairnfield.model.ModelPackage#getComment_Text()
	 * @model annotation="urn:org.cairnfield:words label='Text'"
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Comment#getText <em>Text</em>}' attribute.
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
	 * Who said it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see org.cairnfield.model.ModelPackage#getComment_Person()
	 * @model annotation="urn:org.cairnfield:words label='Person'"
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Comment#getPerson <em>Person</em>}' attribute.
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
	 * @see org.cairnfield.model.ModelPackage#getComment_Time()
	 * @model dataType="org.cairnfield.model.Time"
	 *        annotation="urn:org.cairnfield:words label='Time (UTC)'"
	 * @generated
	 */
	Instant getTime();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Comment#getTime <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time</em>' attribute.
	 * @see #getTime()
	 * @generated
	 */
	void setTime(Instant value);

} // Comment
