/**
 */
package org.cairnfield.model;

import java.time.LocalDate;

import java.util.Map;

import org.cairnfield.model.values.SampleTable;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Survey</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One campaign of measurement at one site.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Survey#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getSite <em>Site</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getDate <em>Date</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getSurveyor <em>Surveyor</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getDevice <em>Device</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getProtocol <em>Protocol</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getKind <em>Kind</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getSourceFile <em>Source File</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getSourceDigest <em>Source Digest</em>}</li>
 *   <li>{@link org.cairnfield.model.Survey#getSamples <em>Samples</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getSurvey()
 * @model annotation="urn:org.cairnfield:words label='Survey'"
 * @generated
 */
public interface Survey extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id, unique in the archive, also the name of a file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Site</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link org.cairnfield.model.Site#getSurveys <em>Surveys</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The building, which contains the survey.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Site</em>' container reference.
	 * @see #setSite(Site)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Site()
	 * @see org.cairnfield.model.Site#getSurveys
	 * @model opposite="surveys" resolveProxies="false" transient="false"
	 *        annotation="urn:org.cairnfield:words label='Site'"
	 * @generated
	 */
	Site getSite();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getSite <em>Site</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site</em>' container reference.
	 * @see #getSite()
	 * @generated
	 */
	void setSite(Site value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What people call the survey; unset: its id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Name()
	 * @model annotation="urn:org.cairnfield:words label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The day on which it began.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Date()
	 * @model dataType="org.cairnfield.model.Date"
	 *        annotation="urn:org.cairnfield:words label='Date'"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Surveyor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Initials of who walked, at most four letters; no names.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Surveyor</em>' attribute.
	 * @see #setSurveyor(String)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Surveyor()
	 * @model annotation="urn:org.cairnfield:words label='Surveyor (initials)'"
	 * @generated
	 */
	String getSurveyor();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getSurveyor <em>Surveyor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Surveyor</em>' attribute.
	 * @see #getSurveyor()
	 * @generated
	 */
	void setSurveyor(String value);

	/**
	 * Returns the value of the '<em><b>Device</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What recorded it; unset if not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Device</em>' reference.
	 * @see #setDevice(Device)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Device()
	 * @model resolveProxies="false"
	 *        annotation="urn:org.cairnfield:words label='Device'"
	 * @generated
	 */
	Device getDevice();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getDevice <em>Device</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Device</em>' reference.
	 * @see #getDevice()
	 * @generated
	 */
	void setDevice(Device value);

	/**
	 * Returns the value of the '<em><b>Protocol</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it was taken: at stops or walking, scans a stop, headings.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Protocol</em>' attribute.
	 * @see #setProtocol(String)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Protocol()
	 * @model annotation="urn:org.cairnfield:words label='Protocol'"
	 * @generated
	 */
	String getProtocol();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getProtocol <em>Protocol</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protocol</em>' attribute.
	 * @see #getProtocol()
	 * @generated
	 */
	void setProtocol(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.cairnfield.model.SurveyKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What its samples are for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.cairnfield.model.SurveyKind
	 * @see #setKind(SurveyKind)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Kind()
	 * @model annotation="urn:org.cairnfield:words label='Kind'"
	 * @generated
	 */
	SurveyKind getKind();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.cairnfield.model.SurveyKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(SurveyKind value);

	/**
	 * Returns the value of the '<em><b>Source File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the file that was taken in, without folders.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source File</em>' attribute.
	 * @see #setSourceFile(String)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_SourceFile()
	 * @model annotation="urn:org.cairnfield:words label='Source file'"
	 * @generated
	 */
	String getSourceFile();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getSourceFile <em>Source File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source File</em>' attribute.
	 * @see #getSourceFile()
	 * @generated
	 */
	void setSourceFile(String value);

	/**
	 * Returns the value of the '<em><b>Source Digest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * SHA-256 of that file, 64 hexadecimal digits, lower case.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source Digest</em>' attribute.
	 * @see #setSourceDigest(String)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_SourceDigest()
	 * @model annotation="urn:org.cairnfield:words label='Source digest (SHA-256)'"
	 * @generated
	 */
	String getSourceDigest();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getSourceDigest <em>Source Digest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source Digest</em>' attribute.
	 * @see #getSourceDigest()
	 * @generated
	 */
	void setSourceDigest(String value);

	/**
	 * Returns the value of the '<em><b>Samples</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The samples, usually in a resource of their own.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Samples</em>' containment reference.
	 * @see #setSamples(Samples)
	 * @see org.cairnfield.model.ModelPackage#getSurvey_Samples()
	 * @model containment="true" resolveProxies="true"
	 *        annotation="urn:org.cairnfield:words label='Samples'"
	 * @generated
	 */
	Samples getSamples();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Survey#getSamples <em>Samples</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Samples</em>' containment reference.
	 * @see #getSamples()
	 * @generated
	 */
	void setSamples(Samples value);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The samples as a table, empty where there are none.
	 * <!-- end-model-doc -->
	 * @model dataType="org.cairnfield.model.SampleTable"
	 * @generated
	 */
	SampleTable table();

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id is set and can name a file.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean idIsUsable(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * No more than four letters tell who walked.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean surveyorIsInitials(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A digest that is set is one of SHA-256.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean digestIsSha256(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Each level that a sample names is a floor of the site.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean levelsAreKnown(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Each access point of a reading is in the archive.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean accessPointsAreKnown(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Survey
