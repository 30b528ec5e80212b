/**
 */
package org.cairnfield.model.impl;

import java.time.LocalDate;

import java.util.Map;

import org.cairnfield.model.Device;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;

import org.cairnfield.model.check.SurveyCheck;

import org.cairnfield.model.values.SampleTable;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Survey</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getSite <em>Site</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getDate <em>Date</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getSurveyor <em>Surveyor</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getDevice <em>Device</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getProtocol <em>Protocol</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getSourceFile <em>Source File</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getSourceDigest <em>Source Digest</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SurveyImpl#getSamples <em>Samples</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SurveyImpl extends MinimalEObjectImpl.Container implements Survey {
	/**
	 * The default value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected static final String ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected String id = ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected LocalDate date = DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSurveyor() <em>Surveyor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurveyor()
	 * @generated
	 * @ordered
	 */
	protected static final String SURVEYOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSurveyor() <em>Surveyor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurveyor()
	 * @generated
	 * @ordered
	 */
	protected String surveyor = SURVEYOR_EDEFAULT;

	/**
	 * The cached value of the '{@link #getDevice() <em>Device</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevice()
	 * @generated
	 * @ordered
	 */
	protected Device device;

	/**
	 * The default value of the '{@link #getProtocol() <em>Protocol</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtocol()
	 * @generated
	 * @ordered
	 */
	protected static final String PROTOCOL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtocol() <em>Protocol</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtocol()
	 * @generated
	 * @ordered
	 */
	protected String protocol = PROTOCOL_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final SurveyKind KIND_EDEFAULT = SurveyKind.TRAINING;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected SurveyKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getSourceFile() <em>Source File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSourceFile()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSourceFile() <em>Source File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSourceFile()
	 * @generated
	 * @ordered
	 */
	protected String sourceFile = SOURCE_FILE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSourceDigest() <em>Source Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSourceDigest()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_DIGEST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSourceDigest() <em>Source Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSourceDigest()
	 * @generated
	 * @ordered
	 */
	protected String sourceDigest = SOURCE_DIGEST_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSamples() <em>Samples</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamples()
	 * @generated
	 * @ordered
	 */
	protected Samples samples;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SurveyImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SURVEY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getId() {
		return id;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setId(String newId) {
		String oldId = id;
		id = newId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Site getSite() {
		if (eContainerFeatureID() != ModelPackage.SURVEY__SITE) return null;
		return (Site)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSite(Site newSite, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newSite, ModelPackage.SURVEY__SITE, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSite(Site newSite) {
		if (newSite != eInternalContainer() || (eContainerFeatureID() != ModelPackage.SURVEY__SITE && newSite != null)) {
			if (EcoreUtil.isAncestor(this, newSite))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newSite != null)
				msgs = ((InternalEObject)newSite).eInverseAdd(this, ModelPackage.SITE__SURVEYS, Site.class, msgs);
			msgs = basicSetSite(newSite, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__SITE, newSite, newSite));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate) {
		LocalDate oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSurveyor() {
		return surveyor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSurveyor(String newSurveyor) {
		String oldSurveyor = surveyor;
		surveyor = newSurveyor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__SURVEYOR, oldSurveyor, surveyor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Device getDevice() {
		return device;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDevice(Device newDevice) {
		Device oldDevice = device;
		device = newDevice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__DEVICE, oldDevice, device));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProtocol() {
		return protocol;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtocol(String newProtocol) {
		String oldProtocol = protocol;
		protocol = newProtocol;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__PROTOCOL, oldProtocol, protocol));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SurveyKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(SurveyKind newKind) {
		SurveyKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSourceFile() {
		return sourceFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSourceFile(String newSourceFile) {
		String oldSourceFile = sourceFile;
		sourceFile = newSourceFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__SOURCE_FILE, oldSourceFile, sourceFile));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSourceDigest() {
		return sourceDigest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSourceDigest(String newSourceDigest) {
		String oldSourceDigest = sourceDigest;
		sourceDigest = newSourceDigest;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__SOURCE_DIGEST, oldSourceDigest, sourceDigest));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Samples getSamples() {
		if (samples != null && samples.eIsProxy()) {
			InternalEObject oldSamples = (InternalEObject)samples;
			samples = (Samples)eResolveProxy(oldSamples);
			if (samples != oldSamples) {
				InternalEObject newSamples = (InternalEObject)samples;
				NotificationChain msgs = oldSamples.eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SURVEY__SAMPLES, null, null);
				if (newSamples.eInternalContainer() == null) {
					msgs = newSamples.eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SURVEY__SAMPLES, null, msgs);
				}
				if (msgs != null) msgs.dispatch();
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SURVEY__SAMPLES, oldSamples, samples));
			}
		}
		return samples;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Samples basicGetSamples() {
		return samples;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSamples(Samples newSamples, NotificationChain msgs) {
		Samples oldSamples = samples;
		samples = newSamples;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__SAMPLES, oldSamples, newSamples);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSamples(Samples newSamples) {
		if (newSamples != samples) {
			NotificationChain msgs = null;
			if (samples != null)
				msgs = ((InternalEObject)samples).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SURVEY__SAMPLES, null, msgs);
			if (newSamples != null)
				msgs = ((InternalEObject)newSamples).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SURVEY__SAMPLES, null, msgs);
			msgs = basicSetSamples(newSamples, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SURVEY__SAMPLES, newSamples, newSamples));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SampleTable table() {
		Samples held = getSamples();
		return held == null || held.getTable() == null ? SampleTable.EMPTY : held.getTable();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean idIsUsable(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SurveyCheck.idIsUsable(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean surveyorIsInitials(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SurveyCheck.surveyorIsInitials(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean digestIsSha256(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SurveyCheck.digestIsSha256(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean levelsAreKnown(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SurveyCheck.levelsAreKnown(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean accessPointsAreKnown(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SurveyCheck.accessPointsAreKnown(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SURVEY__SITE:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetSite((Site)otherEnd, msgs);
		}
		return super.eInverseAdd(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SURVEY__SITE:
				return basicSetSite(null, msgs);
			case ModelPackage.SURVEY__SAMPLES:
				return basicSetSamples(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eBasicRemoveFromContainerFeature(NotificationChain msgs) {
		switch (eContainerFeatureID()) {
			case ModelPackage.SURVEY__SITE:
				return eInternalContainer().eInverseRemove(this, ModelPackage.SITE__SURVEYS, Site.class, msgs);
		}
		return super.eBasicRemoveFromContainerFeature(msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SURVEY__ID:
				return getId();
			case ModelPackage.SURVEY__SITE:
				return getSite();
			case ModelPackage.SURVEY__NAME:
				return getName();
			case ModelPackage.SURVEY__DATE:
				return getDate();
			case ModelPackage.SURVEY__SURVEYOR:
				return getSurveyor();
			case ModelPackage.SURVEY__DEVICE:
				return getDevice();
			case ModelPackage.SURVEY__PROTOCOL:
				return getProtocol();
			case ModelPackage.SURVEY__KIND:
				return getKind();
			case ModelPackage.SURVEY__SOURCE_FILE:
				return getSourceFile();
			case ModelPackage.SURVEY__SOURCE_DIGEST:
				return getSourceDigest();
			case ModelPackage.SURVEY__SAMPLES:
				if (resolve) return getSamples();
				return basicGetSamples();
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
			case ModelPackage.SURVEY__ID:
				setId((String)newValue);
				return;
			case ModelPackage.SURVEY__SITE:
				setSite((Site)newValue);
				return;
			case ModelPackage.SURVEY__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.SURVEY__DATE:
				setDate((LocalDate)newValue);
				return;
			case ModelPackage.SURVEY__SURVEYOR:
				setSurveyor((String)newValue);
				return;
			case ModelPackage.SURVEY__DEVICE:
				setDevice((Device)newValue);
				return;
			case ModelPackage.SURVEY__PROTOCOL:
				setProtocol((String)newValue);
				return;
			case ModelPackage.SURVEY__KIND:
				setKind((SurveyKind)newValue);
				return;
			case ModelPackage.SURVEY__SOURCE_FILE:
				setSourceFile((String)newValue);
				return;
			case ModelPackage.SURVEY__SOURCE_DIGEST:
				setSourceDigest((String)newValue);
				return;
			case ModelPackage.SURVEY__SAMPLES:
				setSamples((Samples)newValue);
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
			case ModelPackage.SURVEY__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.SURVEY__SITE:
				setSite((Site)null);
				return;
			case ModelPackage.SURVEY__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.SURVEY__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case ModelPackage.SURVEY__SURVEYOR:
				setSurveyor(SURVEYOR_EDEFAULT);
				return;
			case ModelPackage.SURVEY__DEVICE:
				setDevice((Device)null);
				return;
			case ModelPackage.SURVEY__PROTOCOL:
				setProtocol(PROTOCOL_EDEFAULT);
				return;
			case ModelPackage.SURVEY__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.SURVEY__SOURCE_FILE:
				setSourceFile(SOURCE_FILE_EDEFAULT);
				return;
			case ModelPackage.SURVEY__SOURCE_DIGEST:
				setSourceDigest(SOURCE_DIGEST_EDEFAULT);
				return;
			case ModelPackage.SURVEY__SAMPLES:
				setSamples((Samples)null);
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
			case ModelPackage.SURVEY__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.SURVEY__SITE:
				return getSite() != null;
			case ModelPackage.SURVEY__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.SURVEY__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case ModelPackage.SURVEY__SURVEYOR:
				return SURVEYOR_EDEFAULT == null ? surveyor != null : !SURVEYOR_EDEFAULT.equals(surveyor);
			case ModelPackage.SURVEY__DEVICE:
				return device != null;
			case ModelPackage.SURVEY__PROTOCOL:
				return PROTOCOL_EDEFAULT == null ? protocol != null : !PROTOCOL_EDEFAULT.equals(protocol);
			case ModelPackage.SURVEY__KIND:
				return kind != KIND_EDEFAULT;
			case ModelPackage.SURVEY__SOURCE_FILE:
				return SOURCE_FILE_EDEFAULT == null ? sourceFile != null : !SOURCE_FILE_EDEFAULT.equals(sourceFile);
			case ModelPackage.SURVEY__SOURCE_DIGEST:
				return SOURCE_DIGEST_EDEFAULT == null ? sourceDigest != null : !SOURCE_DIGEST_EDEFAULT.equals(sourceDigest);
			case ModelPackage.SURVEY__SAMPLES:
				return samples != null;
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
		result.append(" (id: ");
		result.append(id);
		result.append(", name: ");
		result.append(name);
		result.append(", date: ");
		result.append(date);
		result.append(", surveyor: ");
		result.append(surveyor);
		result.append(", protocol: ");
		result.append(protocol);
		result.append(", kind: ");
		result.append(kind);
		result.append(", sourceFile: ");
		result.append(sourceFile);
		result.append(", sourceDigest: ");
		result.append(sourceDigest);
		result.append(')');
		return result.toString();
	}

} //SurveyImpl
