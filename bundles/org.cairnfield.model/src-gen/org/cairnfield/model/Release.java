/**
 */
package org.cairnfield.model;

import java.time.Instant;

import java.util.Map;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Release</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A frozen version of the map.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Release#getVersion <em>Version</em>}</li>
 *   <li>{@link org.cairnfield.model.Release#getDigest <em>Digest</em>}</li>
 *   <li>{@link org.cairnfield.model.Release#getTag <em>Tag</em>}</li>
 *   <li>{@link org.cairnfield.model.Release#getNotes <em>Notes</em>}</li>
 *   <li>{@link org.cairnfield.model.Release#getSignedBy <em>Signed By</em>}</li>
 *   <li>{@link org.cairnfield.model.Release#getSignedAt <em>Signed At</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getRelease()
 * @model annotation="urn:org.cairnfield:words label='Release'"
 * @generated
 */
public interface Release extends EObject {
	/**
	 * Returns the value of the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For instance 1.1.0; also the name of a file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Version</em>' attribute.
	 * @see #setVersion(String)
	 * @see org.cairnfield.model.ModelPackage#getRelease_Version()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Version'"
	 * @generated
	 */
	String getVersion();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Release#getVersion <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Version</em>' attribute.
	 * @see #getVersion()
	 * @generated
	 */
	void setVersion(String value);

	/**
	 * Returns the value of the '<em><b>Digest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * SHA-256 of the content, 64 hexadecimal digits, lower case.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Digest</em>' attribute.
	 * @see #setDigest(String)
	 * @see org.cairnfield.model.ModelPackage#getRelease_Digest()
	 * @model annotation="urn:org.cairnfield:words label='Digest (SHA-256)'"
	 * @generated
	 */
	String getDigest();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Release#getDigest <em>Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Digest</em>' attribute.
	 * @see #getDigest()
	 * @generated
	 */
	void setDigest(String value);

	/**
	 * Returns the value of the '<em><b>Tag</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the tag in the history; unset before it is signed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tag</em>' attribute.
	 * @see #setTag(String)
	 * @see org.cairnfield.model.ModelPackage#getRelease_Tag()
	 * @model annotation="urn:org.cairnfield:words label='Tag'"
	 * @generated
	 */
	String getTag();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Release#getTag <em>Tag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tag</em>' attribute.
	 * @see #getTag()
	 * @generated
	 */
	void setTag(String value);

	/**
	 * Returns the value of the '<em><b>Notes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is new, in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Notes</em>' attribute.
	 * @see #setNotes(String)
	 * @see org.cairnfield.model.ModelPackage#getRelease_Notes()
	 * @model annotation="urn:org.cairnfield:words label='Notes'"
	 * @generated
	 */
	String getNotes();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Release#getNotes <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Notes</em>' attribute.
	 * @see #getNotes()
	 * @generated
	 */
	void setNotes(String value);

	/**
	 * Returns the value of the '<em><b>Signed By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Initials of who signed; unset: a draft.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Signed By</em>' attribute.
	 * @see #setSignedBy(String)
	 * @see org.cairnfield.model.ModelPackage#getRelease_SignedBy()
	 * @model annotation="urn:org.cairnfield:words label='Signed by'"
	 * @generated
	 */
	String getSignedBy();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Release#getSignedBy <em>Signed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Signed By</em>' attribute.
	 * @see #getSignedBy()
	 * @generated
	 */
	void setSignedBy(String value);

	/**
	 * Returns the value of the '<em><b>Signed At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it was signed; unset: a draft.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Signed At</em>' attribute.
	 * @see #setSignedAt(Instant)
	 * @see org.cairnfield.model.ModelPackage#getRelease_SignedAt()
	 * @model dataType="org.cairnfield.model.Time"
	 *        annotation="urn:org.cairnfield:words label='Signed at (UTC)'"
	 * @generated
	 */
	Instant getSignedAt();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Release#getSignedAt <em>Signed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Signed At</em>' attribute.
	 * @see #getSignedAt()
	 * @generated
	 */
	void setSignedAt(Instant value);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The version is set and can name a file.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean versionIsUsable(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A signed release has a digest, a tag, a person and a time.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean signatureIsComplete(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Release
