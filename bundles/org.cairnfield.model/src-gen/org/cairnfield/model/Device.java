/**
 */
package org.cairnfield.model;

import java.util.Map;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Device</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What records surveys: a phone, a wrist guide, a tag.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Device#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Device#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.Device#getOffsetDb <em>Offset Db</em>}</li>
 *   <li>{@link org.cairnfield.model.Device#getMapSlope <em>Map Slope</em>}</li>
 *   <li>{@link org.cairnfield.model.Device#getMapShiftDb <em>Map Shift Db</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getDevice()
 * @model annotation="urn:org.cairnfield:words label='Device'"
 * @generated
 */
public interface Device extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getDevice_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Device#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What people call the device.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.cairnfield.model.ModelPackage#getDevice_Name()
	 * @model annotation="urn:org.cairnfield:words label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Device#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Offset Db</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By how many dB the device reads above the reference device, within ±40; take it off to compare. Unset while the device is not calibrated.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offset Db</em>' attribute.
	 * @see #setOffsetDb(Double)
	 * @see org.cairnfield.model.ModelPackage#getDevice_OffsetDb()
	 * @model annotation="urn:org.cairnfield:words label='RSSI offset (dB)'"
	 * @generated
	 */
	Double getOffsetDb();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Device#getOffsetDb <em>Offset Db</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offset Db</em>' attribute.
	 * @see #getOffsetDb()
	 * @generated
	 */
	void setOffsetDb(Double value);

	/**
	 * Returns the value of the '<em><b>Map Slope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By which factor its levels are multiplied in the map, 0.25 … 4; unset: 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Map Slope</em>' attribute.
	 * @see #setMapSlope(Double)
	 * @see org.cairnfield.model.ModelPackage#getDevice_MapSlope()
	 * @model annotation="urn:org.cairnfield:words label='Slope in the map'"
	 * @generated
	 */
	Double getMapSlope();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Device#getMapSlope <em>Map Slope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Map Slope</em>' attribute.
	 * @see #getMapSlope()
	 * @generated
	 */
	void setMapSlope(Double value);

	/**
	 * Returns the value of the '<em><b>Map Shift Db</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many dB are then added, within ±60; unset: none. With slope and shift unset, levels are in the map as they were read.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Map Shift Db</em>' attribute.
	 * @see #setMapShiftDb(Double)
	 * @see org.cairnfield.model.ModelPackage#getDevice_MapShiftDb()
	 * @model annotation="urn:org.cairnfield:words label='Shift in the map (dB)'"
	 * @generated
	 */
	Double getMapShiftDb();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Device#getMapShiftDb <em>Map Shift Db</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Map Shift Db</em>' attribute.
	 * @see #getMapShiftDb()
	 * @generated
	 */
	void setMapShiftDb(Double value);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the offset is known.
	 * <!-- end-model-doc -->
	 * @model kind="operation"
	 * @generated
	 */
	boolean isCalibrated();

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id is set.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean idIsUsable(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An offset that is set is within ±40 dB.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean offsetIsPlausible(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Device
