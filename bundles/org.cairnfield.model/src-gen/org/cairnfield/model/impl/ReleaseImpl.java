/**
 */
package org.cairnfield.model.impl;

import java.time.Instant;

import java.util.Map;

import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Release;

import org.cairnfield.model.check.ReleaseCheck;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Release</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.ReleaseImpl#getVersion <em>Version</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ReleaseImpl#getDigest <em>Digest</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ReleaseImpl#getTag <em>Tag</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ReleaseImpl#getNotes <em>Notes</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ReleaseImpl#getSignedBy <em>Signed By</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ReleaseImpl#getSignedAt <em>Signed At</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReleaseImpl extends MinimalEObjectImpl.Container implements Release {
	/**
	 * The default value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected static final String VERSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected String version = VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getDigest() <em>Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDigest()
	 * @generated
	 * @ordered
	 */
	protected static final String DIGEST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDigest() <em>Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDigest()
	 * @generated
	 * @ordered
	 */
	protected String digest = DIGEST_EDEFAULT;

	/**
	 * The default value of the '{@link #getTag() <em>Tag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTag()
	 * @generated
	 * @ordered
	 */
	protected static final String TAG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTag() <em>Tag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTag()
	 * @generated
	 * @ordered
	 */
	protected String tag = TAG_EDEFAULT;

	/**
	 * The default value of the '{@link #getNotes() <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotes()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNotes() <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotes()
	 * @generated
	 * @ordered
	 */
	protected String notes = NOTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getSignedBy() <em>Signed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignedBy()
	 * @generated
	 * @ordered
	 */
	protected static final String SIGNED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSignedBy() <em>Signed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignedBy()
	 * @generated
	 * @ordered
	 */
	protected String signedBy = SIGNED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getSignedAt() <em>Signed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant SIGNED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSignedAt() <em>Signed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant signedAt = SIGNED_AT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReleaseImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.RELEASE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVersion() {
		return version;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVersion(String newVersion) {
		String oldVersion = version;
		version = newVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RELEASE__VERSION, oldVersion, version));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDigest() {
		return digest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDigest(String newDigest) {
		String oldDigest = digest;
		digest = newDigest;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RELEASE__DIGEST, oldDigest, digest));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTag() {
		return tag;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTag(String newTag) {
		String oldTag = tag;
		tag = newTag;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RELEASE__TAG, oldTag, tag));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNotes() {
		return notes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNotes(String newNotes) {
		String oldNotes = notes;
		notes = newNotes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RELEASE__NOTES, oldNotes, notes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSignedBy() {
		return signedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSignedBy(String newSignedBy) {
		String oldSignedBy = signedBy;
		signedBy = newSignedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RELEASE__SIGNED_BY, oldSignedBy, signedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getSignedAt() {
		return signedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSignedAt(Instant newSignedAt) {
		Instant oldSignedAt = signedAt;
		signedAt = newSignedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RELEASE__SIGNED_AT, oldSignedAt, signedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean versionIsUsable(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return ReleaseCheck.versionIsUsable(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean signatureIsComplete(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return ReleaseCheck.signatureIsComplete(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.RELEASE__VERSION:
				return getVersion();
			case ModelPackage.RELEASE__DIGEST:
				return getDigest();
			case ModelPackage.RELEASE__TAG:
				return getTag();
			case ModelPackage.RELEASE__NOTES:
				return getNotes();
			case ModelPackage.RELEASE__SIGNED_BY:
				return getSignedBy();
			case ModelPackage.RELEASE__SIGNED_AT:
				return getSignedAt();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.RELEASE__VERSION:
				setVersion((String)newValue);
				return;
			case ModelPackage.RELEASE__DIGEST:
				setDigest((String)newValue);
				return;
			case ModelPackage.RELEASE__TAG:
				setTag((String)newValue);
				return;
			case ModelPackage.RELEASE__NOTES:
				setNotes((String)newValue);
				return;
			case ModelPackage.RELEASE__SIGNED_BY:
				setSignedBy((String)newValue);
				return;
			case ModelPackage.RELEASE__SIGNED_AT:
				setSignedAt((Instant)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ModelPackage.RELEASE__VERSION:
				setVersion(VERSION_EDEFAULT);
				return;
			case ModelPackage.RELEASE__DIGEST:
				setDigest(DIGEST_EDEFAULT);
				return;
			case ModelPackage.RELEASE__TAG:
				setTag(TAG_EDEFAULT);
				return;
			case ModelPackage.RELEASE__NOTES:
				setNotes(NOTES_EDEFAULT);
				return;
			case ModelPackage.RELEASE__SIGNED_BY:
				setSignedBy(SIGNED_BY_EDEFAULT);
				return;
			case ModelPackage.RELEASE__SIGNED_AT:
				setSignedAt(SIGNED_AT_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ModelPackage.RELEASE__VERSION:
				return VERSION_EDEFAULT == null ? version != null : !VERSION_EDEFAULT.equals(version);
			case ModelPackage.RELEASE__DIGEST:
				return DIGEST_EDEFAULT == null ? digest != null : !DIGEST_EDEFAULT.equals(digest);
			case ModelPackage.RELEASE__TAG:
				return TAG_EDEFAULT == null ? tag != null : !TAG_EDEFAULT.equals(tag);
			case ModelPackage.RELEASE__NOTES:
				return NOTES_EDEFAULT == null ? notes != null : !NOTES_EDEFAULT.equals(notes);
			case ModelPackage.RELEASE__SIGNED_BY:
				return SIGNED_BY_EDEFAULT == null ? signedBy != null : !SIGNED_BY_EDEFAULT.equals(signedBy);
			case ModelPackage.RELEASE__SIGNED_AT:
				return SIGNED_AT_EDEFAULT == null ? signedAt != null : !SIGNED_AT_EDEFAULT.equals(signedAt);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (version: ");
		result.append(version);
		result.append(", digest: ");
		result.append(digest);
		result.append(", tag: ");
		result.append(tag);
		result.append(", notes: ");
		result.append(notes);
		result.append(", signedBy: ");
		result.append(signedBy);
		result.append(", signedAt: ");
		result.append(signedAt);
		result.append(')');
		return result.toString();
	}

} //ReleaseImpl
