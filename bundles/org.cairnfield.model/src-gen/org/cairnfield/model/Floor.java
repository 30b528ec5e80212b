/**
 */
package org.cairnfield.model;

import java.util.Map;

import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Floor</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A level of a building.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Floor#getLevel <em>Level</em>}</li>
 *   <li>{@link org.cairnfield.model.Floor#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.Floor#getOutline <em>Outline</em>}</li>
 *   <li>{@link org.cairnfield.model.Floor#getHeightMetres <em>Height Metres</em>}</li>
 *   <li>{@link org.cairnfield.model.Floor#getPlanImage <em>Plan Image</em>}</li>
 *   <li>{@link org.cairnfield.model.Floor#getPlanPlacement <em>Plan Placement</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getFloor()
 * @model annotation="urn:org.cairnfield:words label='Floor'"
 * @generated
 */
public interface Floor extends EObject {
	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of the floor, −32768 … 32767; 0 is the ground floor by custom, not by rule.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(int)
	 * @see org.cairnfield.model.ModelPackage#getFloor_Level()
	 * @model default="0"
	 *        annotation="urn:org.cairnfield:words label='Level'"
	 * @generated
	 */
	int getLevel();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Floor#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(int value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What people call the floor; unset: its level.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.cairnfield.model.ModelPackage#getFloor_Name()
	 * @model annotation="urn:org.cairnfield:words label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Floor#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Corners of the floor in the frame of the site, in metres.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outline</em>' attribute.
	 * @see #setOutline(Outline)
	 * @see org.cairnfield.model.ModelPackage#getFloor_Outline()
	 * @model dataType="org.cairnfield.model.Outline"
	 *        annotation="urn:org.cairnfield:words label='Outline (x,y in m)'"
	 * @generated
	 */
	Outline getOutline();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Floor#getOutline <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outline</em>' attribute.
	 * @see #getOutline()
	 * @generated
	 */
	void setOutline(Outline value);

	/**
	 * Returns the value of the '<em><b>Height Metres</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From this floor up to the next, in metres; unset if not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height Metres</em>' attribute.
	 * @see #setHeightMetres(Double)
	 * @see org.cairnfield.model.ModelPackage#getFloor_HeightMetres()
	 * @model annotation="urn:org.cairnfield:words label='Storey height (m)'"
	 * @generated
	 */
	Double getHeightMetres();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Floor#getHeightMetres <em>Height Metres</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Metres</em>' attribute.
	 * @see #getHeightMetres()
	 * @generated
	 */
	void setHeightMetres(Double value);

	/**
	 * Returns the value of the '<em><b>Plan Image</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Path of the picture of the floor, relative to the folder of the archive, with / between its steps.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plan Image</em>' attribute.
	 * @see #setPlanImage(String)
	 * @see org.cairnfield.model.ModelPackage#getFloor_PlanImage()
	 * @model annotation="urn:org.cairnfield:words label='Plan image'"
	 * @generated
	 */
	String getPlanImage();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Floor#getPlanImage <em>Plan Image</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plan Image</em>' attribute.
	 * @see #getPlanImage()
	 * @generated
	 */
	void setPlanImage(String value);

	/**
	 * Returns the value of the '<em><b>Plan Placement</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Takes pixels of the plan image to metres of the floor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plan Placement</em>' attribute.
	 * @see #setPlanPlacement(Placement)
	 * @see org.cairnfield.model.ModelPackage#getFloor_PlanPlacement()
	 * @model dataType="org.cairnfield.model.Placement"
	 *        annotation="urn:org.cairnfield:words label='Plan placement'"
	 * @generated
	 */
	Placement getPlanPlacement();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Floor#getPlanPlacement <em>Plan Placement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plan Placement</em>' attribute.
	 * @see #getPlanPlacement()
	 * @generated
	 */
	void setPlanPlacement(Placement value);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The level fits the samples’ column.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean levelIsInRange(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An outline that is set has three corners or more, encloses an area and does not cross itself.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean outlineIsAnArea(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A height that is set is above 0 and at most 100 m.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean heightIsPlausible(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The path of the plan image is relative and does not leave the archive.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean planImageStaysInside(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Floor
