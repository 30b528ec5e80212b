/**
 */
package org.cairnfield.model.impl;

import java.time.LocalDate;

import java.util.Map;

import org.cairnfield.core.radio.WifiBand;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.ModelPackage;

import org.cairnfield.model.check.AccessPointCheck;

import org.cairnfield.model.values.KnownPlace;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Access Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getAddress <em>Address</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getBand <em>Band</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getChannel <em>Channel</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getFirstHeard <em>First Heard</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getLastHeard <em>Last Heard</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getGroup <em>Group</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getCountsAs <em>Counts As</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.AccessPointImpl#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AccessPointImpl extends MinimalEObjectImpl.Container implements AccessPoint {
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
	 * The default value of the '{@link #getAddress() <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAddress()
	 * @generated
	 * @ordered
	 */
	protected static final String ADDRESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAddress() <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAddress()
	 * @generated
	 * @ordered
	 */
	protected String address = ADDRESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBand() <em>Band</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBand()
	 * @generated
	 * @ordered
	 */
	protected static final WifiBand BAND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBand() <em>Band</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBand()
	 * @generated
	 * @ordered
	 */
	protected WifiBand band = BAND_EDEFAULT;

	/**
	 * The default value of the '{@link #getChannel() <em>Channel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChannel()
	 * @generated
	 * @ordered
	 */
	protected static final int CHANNEL_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getChannel() <em>Channel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChannel()
	 * @generated
	 * @ordered
	 */
	protected int channel = CHANNEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getFirstHeard() <em>First Heard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstHeard()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate FIRST_HEARD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFirstHeard() <em>First Heard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstHeard()
	 * @generated
	 * @ordered
	 */
	protected LocalDate firstHeard = FIRST_HEARD_EDEFAULT;

	/**
	 * The default value of the '{@link #getLastHeard() <em>Last Heard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastHeard()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate LAST_HEARD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLastHeard() <em>Last Heard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastHeard()
	 * @generated
	 * @ordered
	 */
	protected LocalDate lastHeard = LAST_HEARD_EDEFAULT;

	/**
	 * The default value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected static final String GROUP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected String group = GROUP_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final KnownPlace PLACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected KnownPlace place = PLACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCountsAs() <em>Counts As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCountsAs()
	 * @generated
	 * @ordered
	 */
	protected static final String COUNTS_AS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCountsAs() <em>Counts As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCountsAs()
	 * @generated
	 * @ordered
	 */
	protected String countsAs = COUNTS_AS_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AccessPointImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.ACCESS_POINT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAddress() {
		return address;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAddress(String newAddress) {
		String oldAddress = address;
		address = newAddress;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__ADDRESS, oldAddress, address));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WifiBand getBand() {
		return band;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBand(WifiBand newBand) {
		WifiBand oldBand = band;
		band = newBand;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__BAND, oldBand, band));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getChannel() {
		return channel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChannel(int newChannel) {
		int oldChannel = channel;
		channel = newChannel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__CHANNEL, oldChannel, channel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getFirstHeard() {
		return firstHeard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirstHeard(LocalDate newFirstHeard) {
		LocalDate oldFirstHeard = firstHeard;
		firstHeard = newFirstHeard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__FIRST_HEARD, oldFirstHeard, firstHeard));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastHeard() {
		return lastHeard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastHeard(LocalDate newLastHeard) {
		LocalDate oldLastHeard = lastHeard;
		lastHeard = newLastHeard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__LAST_HEARD, oldLastHeard, lastHeard));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getGroup() {
		return group;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroup(String newGroup) {
		String oldGroup = group;
		group = newGroup;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__GROUP, oldGroup, group));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public KnownPlace getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(KnownPlace newPlace) {
		KnownPlace oldPlace = place;
		place = newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCountsAs() {
		return countsAs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCountsAs(String newCountsAs) {
		String oldCountsAs = countsAs;
		countsAs = newCountsAs;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__COUNTS_AS, oldCountsAs, countsAs));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACCESS_POINT__REASON, oldReason, reason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isKept() {
		return getReason() == null || getReason().isBlank();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean idIsUsable(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return AccessPointCheck.idIsUsable(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean addressIsOfOneRadio(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return AccessPointCheck.addressIsOfOneRadio(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean channelIsInBand(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return AccessPointCheck.channelIsInBand(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean heardInOrder(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return AccessPointCheck.heardInOrder(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean placeIsOnAFloor(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return AccessPointCheck.placeIsOnAFloor(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.ACCESS_POINT__ID:
				return getId();
			case ModelPackage.ACCESS_POINT__ADDRESS:
				return getAddress();
			case ModelPackage.ACCESS_POINT__BAND:
				return getBand();
			case ModelPackage.ACCESS_POINT__CHANNEL:
				return getChannel();
			case ModelPackage.ACCESS_POINT__FIRST_HEARD:
				return getFirstHeard();
			case ModelPackage.ACCESS_POINT__LAST_HEARD:
				return getLastHeard();
			case ModelPackage.ACCESS_POINT__GROUP:
				return getGroup();
			case ModelPackage.ACCESS_POINT__PLACE:
				return getPlace();
			case ModelPackage.ACCESS_POINT__COUNTS_AS:
				return getCountsAs();
			case ModelPackage.ACCESS_POINT__REASON:
				return getReason();
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
			case ModelPackage.ACCESS_POINT__ID:
				setId((String)newValue);
				return;
			case ModelPackage.ACCESS_POINT__ADDRESS:
				setAddress((String)newValue);
				return;
			case ModelPackage.ACCESS_POINT__BAND:
				setBand((WifiBand)newValue);
				return;
			case ModelPackage.ACCESS_POINT__CHANNEL:
				setChannel((Integer)newValue);
				return;
			case ModelPackage.ACCESS_POINT__FIRST_HEARD:
				setFirstHeard((LocalDate)newValue);
				return;
			case ModelPackage.ACCESS_POINT__LAST_HEARD:
				setLastHeard((LocalDate)newValue);
				return;
			case ModelPackage.ACCESS_POINT__GROUP:
				setGroup((String)newValue);
				return;
			case ModelPackage.ACCESS_POINT__PLACE:
				setPlace((KnownPlace)newValue);
				return;
			case ModelPackage.ACCESS_POINT__COUNTS_AS:
				setCountsAs((String)newValue);
				return;
			case ModelPackage.ACCESS_POINT__REASON:
				setReason((String)newValue);
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
			case ModelPackage.ACCESS_POINT__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__ADDRESS:
				setAddress(ADDRESS_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__BAND:
				setBand(BAND_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__CHANNEL:
				setChannel(CHANNEL_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__FIRST_HEARD:
				setFirstHeard(FIRST_HEARD_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__LAST_HEARD:
				setLastHeard(LAST_HEARD_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__GROUP:
				setGroup(GROUP_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__COUNTS_AS:
				setCountsAs(COUNTS_AS_EDEFAULT);
				return;
			case ModelPackage.ACCESS_POINT__REASON:
				setReason(REASON_EDEFAULT);
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
			case ModelPackage.ACCESS_POINT__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.ACCESS_POINT__ADDRESS:
				return ADDRESS_EDEFAULT == null ? address != null : !ADDRESS_EDEFAULT.equals(address);
			case ModelPackage.ACCESS_POINT__BAND:
				return BAND_EDEFAULT == null ? band != null : !BAND_EDEFAULT.equals(band);
			case ModelPackage.ACCESS_POINT__CHANNEL:
				return channel != CHANNEL_EDEFAULT;
			case ModelPackage.ACCESS_POINT__FIRST_HEARD:
				return FIRST_HEARD_EDEFAULT == null ? firstHeard != null : !FIRST_HEARD_EDEFAULT.equals(firstHeard);
			case ModelPackage.ACCESS_POINT__LAST_HEARD:
				return LAST_HEARD_EDEFAULT == null ? lastHeard != null : !LAST_HEARD_EDEFAULT.equals(lastHeard);
			case ModelPackage.ACCESS_POINT__GROUP:
				return GROUP_EDEFAULT == null ? group != null : !GROUP_EDEFAULT.equals(group);
			case ModelPackage.ACCESS_POINT__PLACE:
				return PLACE_EDEFAULT == null ? place != null : !PLACE_EDEFAULT.equals(place);
			case ModelPackage.ACCESS_POINT__COUNTS_AS:
				return COUNTS_AS_EDEFAULT == null ? countsAs != null : !COUNTS_AS_EDEFAULT.equals(countsAs);
			case ModelPackage.ACCESS_POINT__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
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
		result.append(", address: ");
		result.append(address);
		result.append(", band: ");
		result.append(band);
		result.append(", channel: ");
		result.append(channel);
		result.append(", firstHeard: ");
		result.append(firstHeard);
		result.append(", lastHeard: ");
		result.append(lastHeard);
		result.append(", group: ");
		result.append(group);
		result.append(", place: ");
		result.append(place);
		result.append(", countsAs: ");
		result.append(countsAs);
		result.append(", reason: ");
		result.append(reason);
		result.append(')');
		return result.toString();
	}

} //AccessPointImpl
