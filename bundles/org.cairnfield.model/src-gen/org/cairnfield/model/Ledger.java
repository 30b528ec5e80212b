/**
 */
package org.cairnfield.model;

import java.util.Map;

import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ledger</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An append-only record of verdicts: the root of its resource.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Ledger#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Ledger#getVerdicts <em>Verdicts</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getLedger()
 * @model annotation="urn:org.cairnfield:words label='Ledger'"
 * @generated
 */
public interface Ledger extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id, also the name of a file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getLedger_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Ledger#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Verdicts</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Verdict}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the order in which they were given; one that was wrong is followed by one that supersedes it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Verdicts</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getLedger_Verdicts()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Verdicts'"
	 * @generated
	 */
	EList<Verdict> getVerdicts();

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
	 * What a verdict supersedes is in the ledger.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean superseded(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Ledger
