/**
 */
package org.cairnfield.model.impl;

import java.util.Map;

import org.cairnfield.model.Device;
import org.cairnfield.model.ModelPackage;

import org.cairnfield.model.check.DeviceCheck;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Device</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.DeviceImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.DeviceImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.DeviceImpl#getOffsetDb <em>Offset Db</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.DeviceImpl#getMapSlope <em>Map Slope</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.DeviceImpl#getMapShiftDb <em>Map Shift Db</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DeviceImpl extends MinimalEObjectImpl.Container implements Device {
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
	 * The default value of the '{@link #getOffsetDb() <em>Offset Db</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffsetDb()
	 * @generated
	 * @ordered
	 */
	protected static final Double OFFSET_DB_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOffsetDb() <em>Offset Db</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffsetDb()
	 * @generated
	 * @ordered
	 */
	protected Double offsetDb = OFFSET_DB_EDEFAULT;

	/**
	 * The default value of the '{@link #getMapSlope() <em>Map Slope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapSlope()
	 * @generated
	 * @ordered
	 */
	protected static final Double MAP_SLOPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMapSlope() <em>Map Slope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapSlope()
	 * @generated
	 * @ordered
	 */
	protected Double mapSlope = MAP_SLOPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMapShiftDb() <em>Map Shift Db</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapShiftDb()
	 * @generated
	 * @ordered
	 */
	protected static final Double MAP_SHIFT_DB_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMapShiftDb() <em>Map Shift Db</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMapShiftDb()
	 * @generated
	 * @ordered
	 */
	protected Double mapShiftDb = MAP_SHIFT_DB_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DeviceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.DEVICE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE__ID, oldId, id));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOffsetDb() {
		return offsetDb;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffsetDb(Double newOffsetDb) {
		Double oldOffsetDb = offsetDb;
		offsetDb = newOffsetDb;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE__OFFSET_DB, oldOffsetDb, offsetDb));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMapSlope() {
		return mapSlope;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMapSlope(Double newMapSlope) {
		Double oldMapSlope = mapSlope;
		mapSlope = newMapSlope;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE__MAP_SLOPE, oldMapSlope, mapSlope));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMapShiftDb() {
		return mapShiftDb;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMapShiftDb(Double newMapShiftDb) {
		Double oldMapShiftDb = mapShiftDb;
		mapShiftDb = newMapShiftDb;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE__MAP_SHIFT_DB, oldMapShiftDb, mapShiftDb));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isCalibrated() {
		return getOffsetDb() != null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean idIsUsable(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return DeviceCheck.idIsUsable(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean offsetIsPlausible(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return DeviceCheck.offsetIsPlausible(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.DEVICE__ID:
				return getId();
			case ModelPackage.DEVICE__NAME:
				return getName();
			case ModelPackage.DEVICE__OFFSET_DB:
				return getOffsetDb();
			case ModelPackage.DEVICE__MAP_SLOPE:
				return getMapSlope();
			case ModelPackage.DEVICE__MAP_SHIFT_DB:
				return getMapShiftDb();
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
			case ModelPackage.DEVICE__ID:
				setId((String)newValue);
				return;
			case ModelPackage.DEVICE__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.DEVICE__OFFSET_DB:
				setOffsetDb((Double)newValue);
				return;
			case ModelPackage.DEVICE__MAP_SLOPE:
				setMapSlope((Double)newValue);
				return;
			case ModelPackage.DEVICE__MAP_SHIFT_DB:
				setMapShiftDb((Double)newValue);
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
			case ModelPackage.DEVICE__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.DEVICE__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.DEVICE__OFFSET_DB:
				setOffsetDb(OFFSET_DB_EDEFAULT);
				return;
			case ModelPackage.DEVICE__MAP_SLOPE:
				setMapSlope(MAP_SLOPE_EDEFAULT);
				return;
			case ModelPackage.DEVICE__MAP_SHIFT_DB:
				setMapShiftDb(MAP_SHIFT_DB_EDEFAULT);
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
			case ModelPackage.DEVICE__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.DEVICE__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.DEVICE__OFFSET_DB:
				return OFFSET_DB_EDEFAULT == null ? offsetDb != null : !OFFSET_DB_EDEFAULT.equals(offsetDb);
			case ModelPackage.DEVICE__MAP_SLOPE:
				return MAP_SLOPE_EDEFAULT == null ? mapSlope != null : !MAP_SLOPE_EDEFAULT.equals(mapSlope);
			case ModelPackage.DEVICE__MAP_SHIFT_DB:
				return MAP_SHIFT_DB_EDEFAULT == null ? mapShiftDb != null : !MAP_SHIFT_DB_EDEFAULT.equals(mapShiftDb);
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
		result.append(", offsetDb: ");
		result.append(offsetDb);
		result.append(", mapSlope: ");
		result.append(mapSlope);
		result.append(", mapShiftDb: ");
		result.append(mapShiftDb);
		result.append(')');
		return result.toString();
	}

} //DeviceImpl
