/**
 */
package org.cairnfield.model;

import java.time.LocalDate;

import java.util.Map;

import org.cairnfield.core.radio.WifiBand;

import org.cairnfield.model.values.KnownPlace;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Access Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One BSSID. Readings refer to it by its id.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.AccessPoint#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getAddress <em>Address</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getBand <em>Band</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getChannel <em>Channel</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getFirstHeard <em>First Heard</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getLastHeard <em>Last Heard</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getGroup <em>Group</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getPlace <em>Place</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getCountsAs <em>Counts As</em>}</li>
 *   <li>{@link org.cairnfield.model.AccessPoint#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getAccessPoint()
 * @model annotation="urn:org.cairnfield:words label='Access point'"
 * @generated
 */
public interface AccessPoint extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id. Two people who meet the same access point should make the same id, so it is best made from the address.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As the surveys have it: a MAC address, or any other text where a data set hides addresses.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Address</em>' attribute.
	 * @see #setAddress(String)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_Address()
	 * @model annotation="urn:org.cairnfield:words label='Address'"
	 * @generated
	 */
	String getAddress();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getAddress <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Address</em>' attribute.
	 * @see #getAddress()
	 * @generated
	 */
	void setAddress(String value);

	/**
	 * Returns the value of the '<em><b>Band</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The band it was heard in; unset if not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Band</em>' attribute.
	 * @see #setBand(WifiBand)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_Band()
	 * @model dataType="org.cairnfield.model.WifiBand"
	 *        annotation="urn:org.cairnfield:words label='Band'"
	 * @generated
	 */
	WifiBand getBand();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getBand <em>Band</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Band</em>' attribute.
	 * @see #getBand()
	 * @generated
	 */
	void setBand(WifiBand value);

	/**
	 * Returns the value of the '<em><b>Channel</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of the channel in its band; 0 if not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Channel</em>' attribute.
	 * @see #setChannel(int)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_Channel()
	 * @model default="0"
	 *        annotation="urn:org.cairnfield:words label='Channel'"
	 * @generated
	 */
	int getChannel();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getChannel <em>Channel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Channel</em>' attribute.
	 * @see #getChannel()
	 * @generated
	 */
	void setChannel(int value);

	/**
	 * Returns the value of the '<em><b>First Heard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day of the earliest survey that heard it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>First Heard</em>' attribute.
	 * @see #setFirstHeard(LocalDate)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_FirstHeard()
	 * @model dataType="org.cairnfield.model.Date"
	 *        annotation="urn:org.cairnfield:words label='First heard'"
	 * @generated
	 */
	LocalDate getFirstHeard();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getFirstHeard <em>First Heard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Heard</em>' attribute.
	 * @see #getFirstHeard()
	 * @generated
	 */
	void setFirstHeard(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Last Heard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day of the latest survey that heard it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Last Heard</em>' attribute.
	 * @see #setLastHeard(LocalDate)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_LastHeard()
	 * @model dataType="org.cairnfield.model.Date"
	 *        annotation="urn:org.cairnfield:words label='Last heard'"
	 * @generated
	 */
	LocalDate getLastHeard();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getLastHeard <em>Last Heard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Heard</em>' attribute.
	 * @see #getLastHeard()
	 * @generated
	 */
	void setLastHeard(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the access points of one radio have in common, any text; unset: no other is known to share its radio.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Group</em>' attribute.
	 * @see #setGroup(String)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_Group()
	 * @model annotation="urn:org.cairnfield:words label='Radio'"
	 * @generated
	 */
	String getGroup();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getGroup <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Group</em>' attribute.
	 * @see #getGroup()
	 * @generated
	 */
	void setGroup(String value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where somebody knows that it is mounted, as site/level x,y in metres; unset: nobody said so. Nothing is computed from it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(KnownPlace)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_Place()
	 * @model dataType="org.cairnfield.model.KnownPlace"
	 *        annotation="urn:org.cairnfield:words label='Known place'"
	 * @generated
	 */
	KnownPlace getPlace();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(KnownPlace value);

	/**
	 * Returns the value of the '<em><b>Counts As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the access point that its readings count for in the map: its successor, or another address of the same radio; unset: itself.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Counts As</em>' attribute.
	 * @see #setCountsAs(String)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_CountsAs()
	 * @model annotation="urn:org.cairnfield:words label='Counts as'"
	 * @generated
	 */
	String getCountsAs();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getCountsAs <em>Counts As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Counts As</em>' attribute.
	 * @see #getCountsAs()
	 * @generated
	 */
	void setCountsAs(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why it is set aside, that is left out of the map; unset while it is kept.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see org.cairnfield.model.ModelPackage#getAccessPoint_Reason()
	 * @model annotation="urn:org.cairnfield:words label='Set aside because'"
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.AccessPoint#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is part of the map.
	 * <!-- end-model-doc -->
	 * @model kind="operation"
	 * @generated
	 */
	boolean isKept();

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id is set and can stand in a line of readings.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean idIsUsable(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The address is set and, where it is a MAC address, an individual one.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean addressIsOfOneRadio(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A channel that is set exists in the band.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean channelIsInBand(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * It was not last heard before it was first heard.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean heardInOrder(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A place that is set is on a floor that the archive has.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean placeIsOnAFloor(DiagnosticChain diagnostics, Map<Object, Object> context);

} // AccessPoint
