/**
 */
package org.cairnfield.model;

import java.util.Map;

import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Archive</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Everything: sites with their surveys, access points, devices, splits, ledgers and waivers.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Archive#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getReviewPolicy <em>Review Policy</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getSiteOrder <em>Site Order</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getSites <em>Sites</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getAccessPoints <em>Access Points</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getWaivers <em>Waivers</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getSplits <em>Splits</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getLedgers <em>Ledgers</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getConflicts <em>Conflicts</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getComments <em>Comments</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getAssignments <em>Assignments</em>}</li>
 *   <li>{@link org.cairnfield.model.Archive#getRuleSettings <em>Rule Settings</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getArchive()
 * @model annotation="urn:org.cairnfield:words label='Archive'"
 * @generated
 */
public interface Archive extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What people call the archive.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.cairnfield.model.ModelPackage#getArchive_Name()
	 * @model annotation="urn:org.cairnfield:words label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Archive#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The version of the layout on disk, counted from 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(int)
	 * @see org.cairnfield.model.ModelPackage#getArchive_FormatVersion()
	 * @model default="1"
	 *        annotation="urn:org.cairnfield:words label='Format version'"
	 * @generated
	 */
	int getFormatVersion();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Archive#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(int value);

	/**
	 * Returns the value of the '<em><b>Review Policy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How proposals are reviewed, in words: bands of strength, which of them need a second reviewer, and how strict audits are; unset: as usual.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Review Policy</em>' attribute.
	 * @see #setReviewPolicy(String)
	 * @see org.cairnfield.model.ModelPackage#getArchive_ReviewPolicy()
	 * @model annotation="urn:org.cairnfield:words label='Review policy'"
	 * @generated
	 */
	String getReviewPolicy();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Archive#getReviewPolicy <em>Review Policy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Review Policy</em>' attribute.
	 * @see #getReviewPolicy()
	 * @generated
	 */
	void setReviewPolicy(String value);

	/**
	 * Returns the value of the '<em><b>Site Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ids of sites with blanks between them, in the order in which they are shown; those that it does not name come behind, by id. Nothing is computed from it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Site Order</em>' attribute.
	 * @see #setSiteOrder(String)
	 * @see org.cairnfield.model.ModelPackage#getArchive_SiteOrder()
	 * @model annotation="urn:org.cairnfield:words label='Order of sites'"
	 * @generated
	 */
	String getSiteOrder();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Archive#getSiteOrder <em>Site Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site Order</em>' attribute.
	 * @see #getSiteOrder()
	 * @generated
	 */
	void setSiteOrder(String value);

	/**
	 * Returns the value of the '<em><b>Sites</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Site}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The buildings, each with its surveys.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sites</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Sites()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Sites'"
	 * @generated
	 */
	EList<Site> getSites();

	/**
	 * Returns the value of the '<em><b>Access Points</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.AccessPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Every access point that a survey of the archive heard.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Access Points</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_AccessPoints()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Access points'"
	 * @generated
	 */
	EList<AccessPoint> getAccessPoints();

	/**
	 * Returns the value of the '<em><b>Devices</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Device}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What recorded the surveys.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Devices</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Devices()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Devices'"
	 * @generated
	 */
	EList<Device> getDevices();

	/**
	 * Returns the value of the '<em><b>Waivers</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Waiver}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Findings that somebody decided to live with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Waivers</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Waivers()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Waivers'"
	 * @generated
	 */
	EList<Waiver> getWaivers();

	/**
	 * Returns the value of the '<em><b>Splits</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Split}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Clusterings of the map or of part of it; each may be in a resource of its own.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Splits</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Splits()
	 * @model containment="true" resolveProxies="true"
	 *        annotation="urn:org.cairnfield:words label='Splits'"
	 * @generated
	 */
	EList<Split> getSplits();

	/**
	 * Returns the value of the '<em><b>Ledgers</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Ledger}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Verdicts on proposals; each may be in a resource of its own.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ledgers</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Ledgers()
	 * @model containment="true" resolveProxies="true"
	 *        annotation="urn:org.cairnfield:words label='Ledgers'"
	 * @generated
	 */
	EList<Ledger> getLedgers();

	/**
	 * Returns the value of the '<em><b>Conflicts</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Conflict}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What several people have set to different values, for somebody to decide.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Conflicts</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Conflicts()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Conflicts'"
	 * @generated
	 */
	EList<Conflict> getConflicts();

	/**
	 * Returns the value of the '<em><b>Comments</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Comment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What people have said about proposals, findings and releases; only added to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Comments</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Comments()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Comments'"
	 * @generated
	 */
	EList<Comment> getComments();

	/**
	 * Returns the value of the '<em><b>Assignments</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Assignment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who is to review which proposals.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Assignments</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_Assignments()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Assignments'"
	 * @generated
	 */
	EList<Assignment> getAssignments();

	/**
	 * Returns the value of the '<em><b>Rule Settings</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.RuleSetting}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What cleaning rules are told otherwise than usual.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rule Settings</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getArchive_RuleSettings()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Rule settings'"
	 * @generated
	 */
	EList<RuleSetting> getRuleSettings();

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * No two sites, surveys, devices or access points of the archive share an id, nor two splits or two ledgers, whatever the case of letters: ids name files.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean idsAreUnique(DiagnosticChain diagnostics, Map<Object, Object> context);

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * No two access points have the same address.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean addressesAreUnique(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Archive
