/**
 */
package org.cairnfield.model.impl;

import java.time.LocalDate;

import java.util.Collection;
import java.util.Map;

import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;

import org.cairnfield.model.check.SiteCheck;

import org.cairnfield.model.values.Georeference;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.SiteImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SiteImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SiteImpl#getGeoreference <em>Georeference</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SiteImpl#getMapFrom <em>Map From</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SiteImpl#getMapUntil <em>Map Until</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SiteImpl#getFloors <em>Floors</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SiteImpl#getSurveys <em>Surveys</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SiteImpl extends MinimalEObjectImpl.Container implements Site {
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
	 * The default value of the '{@link #getGeoreference() <em>Georeference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGeoreference()
	 * @generated
	 * @ordered
	 */
	protected static final Georeference GEOREFERENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGeoreference() <em>Georeference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGeoreference()
	 * @generated
	 * @ordered
	 */
	protected Georeference georeference = GEOREFERENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMapFrom() <em>Map From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapFrom()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate MAP_FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMapFrom() <em>Map From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapFrom()
	 * @generated
	 * @ordered
	 */
	protected LocalDate mapFrom = MAP_FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getMapUntil() <em>Map Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapUntil()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate MAP_UNTIL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMapUntil() <em>Map Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapUntil()
	 * @generated
	 * @ordered
	 */
	protected LocalDate mapUntil = MAP_UNTIL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFloors() <em>Floors</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFloors()
	 * @generated
	 * @ordered
	 */
	protected EList<Floor> floors;

	/**
	 * The cached value of the '{@link #getSurveys() <em>Surveys</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurveys()
	 * @generated
	 * @ordered
	 */
	protected EList<Survey> surveys;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SiteImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SITE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SITE__ID, oldId, id));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SITE__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Georeference getGeoreference() {
		return georeference;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGeoreference(Georeference newGeoreference) {
		Georeference oldGeoreference = georeference;
		georeference = newGeoreference;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SITE__GEOREFERENCE, oldGeoreference, georeference));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getMapFrom() {
		return mapFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMapFrom(LocalDate newMapFrom) {
		LocalDate oldMapFrom = mapFrom;
		mapFrom = newMapFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SITE__MAP_FROM, oldMapFrom, mapFrom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getMapUntil() {
		return mapUntil;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMapUntil(LocalDate newMapUntil) {
		LocalDate oldMapUntil = mapUntil;
		mapUntil = newMapUntil;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SITE__MAP_UNTIL, oldMapUntil, mapUntil));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Floor> getFloors() {
		if (floors == null) {
			floors = new EObjectContainmentEList<Floor>(Floor.class, this, ModelPackage.SITE__FLOORS);
		}
		return floors;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Survey> getSurveys() {
		if (surveys == null) {
			surveys = new EObjectContainmentWithInverseEList<Survey>(Survey.class, this, ModelPackage.SITE__SURVEYS, ModelPackage.SURVEY__SITE);
		}
		return surveys;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean idIsUsable(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SiteCheck.idIsUsable(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean levelsAreUnique(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SiteCheck.levelsAreUnique(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SITE__SURVEYS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getSurveys()).basicAdd(otherEnd, msgs);
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
			case ModelPackage.SITE__FLOORS:
				return ((InternalEList<?>)getFloors()).basicRemove(otherEnd, msgs);
			case ModelPackage.SITE__SURVEYS:
				return ((InternalEList<?>)getSurveys()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SITE__ID:
				return getId();
			case ModelPackage.SITE__NAME:
				return getName();
			case ModelPackage.SITE__GEOREFERENCE:
				return getGeoreference();
			case ModelPackage.SITE__MAP_FROM:
				return getMapFrom();
			case ModelPackage.SITE__MAP_UNTIL:
				return getMapUntil();
			case ModelPackage.SITE__FLOORS:
				return getFloors();
			case ModelPackage.SITE__SURVEYS:
				return getSurveys();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.SITE__ID:
				setId((String)newValue);
				return;
			case ModelPackage.SITE__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.SITE__GEOREFERENCE:
				setGeoreference((Georeference)newValue);
				return;
			case ModelPackage.SITE__MAP_FROM:
				setMapFrom((LocalDate)newValue);
				return;
			case ModelPackage.SITE__MAP_UNTIL:
				setMapUntil((LocalDate)newValue);
				return;
			case ModelPackage.SITE__FLOORS:
				getFloors().clear();
				getFloors().addAll((Collection<? extends Floor>)newValue);
				return;
			case ModelPackage.SITE__SURVEYS:
				getSurveys().clear();
				getSurveys().addAll((Collection<? extends Survey>)newValue);
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
			case ModelPackage.SITE__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.SITE__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.SITE__GEOREFERENCE:
				setGeoreference(GEOREFERENCE_EDEFAULT);
				return;
			case ModelPackage.SITE__MAP_FROM:
				setMapFrom(MAP_FROM_EDEFAULT);
				return;
			case ModelPackage.SITE__MAP_UNTIL:
				setMapUntil(MAP_UNTIL_EDEFAULT);
				return;
			case ModelPackage.SITE__FLOORS:
				getFloors().clear();
				return;
			case ModelPackage.SITE__SURVEYS:
				getSurveys().clear();
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
			case ModelPackage.SITE__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.SITE__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.SITE__GEOREFERENCE:
				return GEOREFERENCE_EDEFAULT == null ? georeference != null : !GEOREFERENCE_EDEFAULT.equals(georeference);
			case ModelPackage.SITE__MAP_FROM:
				return MAP_FROM_EDEFAULT == null ? mapFrom != null : !MAP_FROM_EDEFAULT.equals(mapFrom);
			case ModelPackage.SITE__MAP_UNTIL:
				return MAP_UNTIL_EDEFAULT == null ? mapUntil != null : !MAP_UNTIL_EDEFAULT.equals(mapUntil);
			case ModelPackage.SITE__FLOORS:
				return floors != null && !floors.isEmpty();
			case ModelPackage.SITE__SURVEYS:
				return surveys != null && !surveys.isEmpty();
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
		result.append(", georeference: ");
		result.append(georeference);
		result.append(", mapFrom: ");
		result.append(mapFrom);
		result.append(", mapUntil: ");
		result.append(mapUntil);
		result.append(')');
		return result.toString();
	}

} //SiteImpl
