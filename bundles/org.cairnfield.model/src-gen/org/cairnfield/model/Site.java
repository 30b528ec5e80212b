/**
 */
package org.cairnfield.model;

import java.time.LocalDate;

import java.util.Map;

import org.cairnfield.model.values.Georeference;

import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A building. All its floors share one frame, x and y in metres.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Site#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Site#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.Site#getGeoreference <em>Georeference</em>}</li>
 *   <li>{@link org.cairnfield.model.Site#getMapFrom <em>Map From</em>}</li>
 *   <li>{@link org.cairnfield.model.Site#getMapUntil <em>Map Until</em>}</li>
 *   <li>{@link org.cairnfield.model.Site#getFloors <em>Floors</em>}</li>
 *   <li>{@link org.cairnfield.model.Site#getSurveys <em>Surveys</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getSite()
 * @model annotation="urn:org.cairnfield:words label='Site'"
 * @generated
 */
public interface Site extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id, also the name of a folder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getSite_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Site#getId <em>Id</em>}' attribute.
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
	 * What people call the building.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.cairnfield.model.ModelPackage#getSite_Name()
	 * @model annotation="urn:org.cairnfield:words label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Site#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Georeference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where on Earth the frame of the floors lies; unset if not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Georeference</em>' attribute.
	 * @see #setGeoreference(Georeference)
	 * @see org.cairnfield.model.ModelPackage#getSite_Georeference()
	 * @model dataType="org.cairnfield.model.Georeference"
	 *        annotation="urn:org.cairnfield:words label='Georeference'"
	 * @generated
	 */
	Georeference getGeoreference();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Site#getGeoreference <em>Georeference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Georeference</em>' attribute.
	 * @see #getGeoreference()
	 * @generated
	 */
	void setGeoreference(Georeference value);

	/**
	 * Returns the value of the '<em><b>Map From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Training surveys of an earlier day are no part of the map; unset: from the first on. Surveys without a date always are.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Map From</em>' attribute.
	 * @see #setMapFrom(LocalDate)
	 * @see org.cairnfield.model.ModelPackage#getSite_MapFrom()
	 * @model dataType="org.cairnfield.model.Date"
	 *        annotation="urn:org.cairnfield:words label='Map from'"
	 * @generated
	 */
	LocalDate getMapFrom();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Site#getMapFrom <em>Map From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Map From</em>' attribute.
	 * @see #getMapFrom()
	 * @generated
	 */
	void setMapFrom(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Map Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Training surveys of a later day are no part of the map; unset: up to the last.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Map Until</em>' attribute.
	 * @see #setMapUntil(LocalDate)
	 * @see org.cairnfield.model.ModelPackage#getSite_MapUntil()
	 * @model dataType="org.cairnfield.model.Date"
	 *        annotation="urn:org.cairnfield:words label='Map until'"
	 * @generated
	 */
	LocalDate getMapUntil();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Site#getMapUntil <em>Map Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Map Until</em>' attribute.
	 * @see #getMapUntil()
	 * @generated
	 */
	void setMapUntil(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Floors</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Floor}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The levels of the building.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Floors</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getSite_Floors()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Floors'"
	 * @generated
	 */
	EList<Floor> getFloors();

	/**
	 * Returns the value of the '<em><b>Surveys</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Survey}.
	 * It is bidirectional and its opposite is '{@link org.cairnfield.model.Survey#getSite <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The campaigns of measurement in this building.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Surveys</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getSite_Surveys()
	 * @see org.cairnfield.model.Survey#getSite
	 * @model opposite="site" containment="true"
	 *        annotation="urn:org.cairnfield:words label='Surveys'"
	 * @generated
	 */
	EList<Survey> getSurveys();

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id is set and can name a folder.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean idIsUsable(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * No two floors have the same level.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean levelsAreUnique(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Site
