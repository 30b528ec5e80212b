/**
 */
package org.cairnfield.model;

import java.util.Map;

import org.cairnfield.core.match.Search;

import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.Scope;

import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Split</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One clustering of the map, or of part of it, by DBSCAN or another method.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.Split#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getScope <em>Scope</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getRepresentation <em>Representation</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getEpsilon <em>Epsilon</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getMinPts <em>Min Pts</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getPcaShare <em>Pca Share</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getMethod <em>Method</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getSeed <em>Seed</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getGate <em>Gate</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getThreshold <em>Threshold</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getSearch <em>Search</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getSearchReason <em>Search Reason</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#isInRelease <em>In Release</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getClusters <em>Clusters</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getLabels <em>Labels</em>}</li>
 *   <li>{@link org.cairnfield.model.Split#getProposals <em>Proposals</em>}</li>
 * </ul>
 *
 * @see org.cairnfield.model.ModelPackage#getSplit()
 * @model annotation="urn:org.cairnfield:words label='Split'"
 * @generated
 */
public interface Split extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable text id, also the name of a file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Id()
	 * @model id="true"
	 *        annotation="urn:org.cairnfield:words label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Scope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was clustered: the archive, a site or a floor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scope</em>' attribute.
	 * @see #setScope(Scope)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Scope()
	 * @model dataType="org.cairnfield.model.Scope"
	 *        annotation="urn:org.cairnfield:words label='Scope'"
	 * @generated
	 */
	Scope getScope();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getScope <em>Scope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scope</em>' attribute.
	 * @see #getScope()
	 * @generated
	 */
	void setScope(Scope value);

	/**
	 * Returns the value of the '<em><b>Representation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How a level became a value; the names are those of org.cairnfield.core.distance.Representation.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Representation</em>' attribute.
	 * @see #setRepresentation(String)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Representation()
	 * @model annotation="urn:org.cairnfield:words label='Representation'"
	 * @generated
	 */
	String getRepresentation();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getRepresentation <em>Representation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Representation</em>' attribute.
	 * @see #getRepresentation()
	 * @generated
	 */
	void setRepresentation(String value);

	/**
	 * Returns the value of the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Between fingerprints; the names are those of org.cairnfield.core.distance.Distance.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Distance</em>' attribute.
	 * @see #setDistance(String)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Distance()
	 * @model annotation="urn:org.cairnfield:words label='Distance'"
	 * @generated
	 */
	String getDistance();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getDistance <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance</em>' attribute.
	 * @see #getDistance()
	 * @generated
	 */
	void setDistance(String value);

	/**
	 * Returns the value of the '<em><b>Epsilon</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * DBSCAN’s ε, 0 or more, in units of the distance.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Epsilon</em>' attribute.
	 * @see #setEpsilon(double)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Epsilon()
	 * @model annotation="urn:org.cairnfield:words label='\u03b5 (units of the distance)'"
	 * @generated
	 */
	double getEpsilon();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getEpsilon <em>Epsilon</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Epsilon</em>' attribute.
	 * @see #getEpsilon()
	 * @generated
	 */
	void setEpsilon(double value);

	/**
	 * Returns the value of the '<em><b>Min Pts</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * DBSCAN’s minPts, 1 or more, the sample itself counted.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Min Pts</em>' attribute.
	 * @see #setMinPts(int)
	 * @see org.cairnfield.model.ModelPackage#getSplit_MinPts()
	 * @model default="1"
	 *        annotation="urn:org.cairnfield:words label='minPts (samples)'"
	 * @generated
	 */
	int getMinPts();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getMinPts <em>Min Pts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Min Pts</em>' attribute.
	 * @see #getMinPts()
	 * @generated
	 */
	void setMinPts(int value);

	/**
	 * Returns the value of the '<em><b>Pca Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the variance, above 0 and up to 1, kept by principal components before the clustering; unset: not reduced.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pca Share</em>' attribute.
	 * @see #setPcaShare(Double)
	 * @see org.cairnfield.model.ModelPackage#getSplit_PcaShare()
	 * @model annotation="urn:org.cairnfield:words label='Variance kept (share)'"
	 * @generated
	 */
	Double getPcaShare();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getPcaShare <em>Pca Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pca Share</em>' attribute.
	 * @see #getPcaShare()
	 * @generated
	 */
	void setPcaShare(Double value);

	/**
	 * Returns the value of the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it was made where not by DBSCAN: the method and its setting, for a person; ε and minPts say nothing then. Unset: by DBSCAN.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Method</em>' attribute.
	 * @see #setMethod(String)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Method()
	 * @model annotation="urn:org.cairnfield:words label='Method'"
	 * @generated
	 */
	String getMethod();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getMethod <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Method</em>' attribute.
	 * @see #getMethod()
	 * @generated
	 */
	void setMethod(String value);

	/**
	 * Returns the value of the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For whatever was drawn.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Seed</em>' attribute.
	 * @see #setSeed(long)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Seed()
	 * @model annotation="urn:org.cairnfield:words label='Seed'"
	 * @generated
	 */
	long getSeed();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getSeed <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seed</em>' attribute.
	 * @see #getSeed()
	 * @generated
	 */
	void setSeed(long value);

	/**
	 * Returns the value of the '<em><b>Gate</b></em>' attribute.
	 * The default value is <code>"0.1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of noise, 0 … 1, from which proposals are made at all.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gate</em>' attribute.
	 * @see #setGate(double)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Gate()
	 * @model default="0.1"
	 *        annotation="urn:org.cairnfield:words label='Gate'"
	 * @generated
	 */
	double getGate();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getGate <em>Gate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gate</em>' attribute.
	 * @see #getGate()
	 * @generated
	 */
	void setGate(double value);

	/**
	 * Returns the value of the '<em><b>Threshold</b></em>' attribute.
	 * The default value is <code>"0.1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The smallest strength r, −1 … 1, for which a proposal is made; a sample whose best r is smaller stays unplaced.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Threshold</em>' attribute.
	 * @see #setThreshold(double)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Threshold()
	 * @model default="0.1"
	 *        annotation="urn:org.cairnfield:words label='Threshold r'"
	 * @generated
	 */
	double getThreshold();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getThreshold <em>Threshold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Threshold</em>' attribute.
	 * @see #getThreshold()
	 * @generated
	 */
	void setThreshold(double value);

	/**
	 * Returns the value of the '<em><b>Search</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How devices search the split; unset where nobody has chosen, as in archives made before there was a choice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Search</em>' attribute.
	 * @see #setSearch(Search)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Search()
	 * @model dataType="org.cairnfield.model.Search"
	 *        annotation="urn:org.cairnfield:words label='Search'"
	 * @generated
	 */
	Search getSearch();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getSearch <em>Search</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Search</em>' attribute.
	 * @see #getSearch()
	 * @generated
	 */
	void setSearch(Search value);

	/**
	 * Returns the value of the '<em><b>Search Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why it is searched that way, for a person; unset likewise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Search Reason</em>' attribute.
	 * @see #setSearchReason(String)
	 * @see org.cairnfield.model.ModelPackage#getSplit_SearchReason()
	 * @model annotation="urn:org.cairnfield:words label='Search chosen'"
	 * @generated
	 */
	String getSearchReason();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getSearchReason <em>Search Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Search Reason</em>' attribute.
	 * @see #getSearchReason()
	 * @generated
	 */
	void setSearchReason(String value);

	/**
	 * Returns the value of the '<em><b>In Release</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the next release takes this split.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>In Release</em>' attribute.
	 * @see #setInRelease(boolean)
	 * @see org.cairnfield.model.ModelPackage#getSplit_InRelease()
	 * @model annotation="urn:org.cairnfield:words label='In the next release'"
	 * @generated
	 */
	boolean isInRelease();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#isInRelease <em>In Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Release</em>' attribute.
	 * @see #isInRelease()
	 * @generated
	 */
	void setInRelease(boolean value);

	/**
	 * Returns the value of the '<em><b>Clusters</b></em>' containment reference list.
	 * The list contents are of type {@link org.cairnfield.model.Cluster}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The clusters, by number.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Clusters</em>' containment reference list.
	 * @see org.cairnfield.model.ModelPackage#getSplit_Clusters()
	 * @model containment="true"
	 *        annotation="urn:org.cairnfield:words label='Clusters'"
	 * @generated
	 */
	EList<Cluster> getClusters();

	/**
	 * Returns the value of the '<em><b>Labels</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cluster and role of each sample.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Labels</em>' attribute.
	 * @see #setLabels(Labels)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Labels()
	 * @model dataType="org.cairnfield.model.Labels"
	 *        annotation="urn:org.cairnfield:words label='Labels'"
	 * @generated
	 */
	Labels getLabels();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getLabels <em>Labels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Labels</em>' attribute.
	 * @see #getLabels()
	 * @generated
	 */
	void setLabels(Labels value);

	/**
	 * Returns the value of the '<em><b>Proposals</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where samples that are noise could go.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Proposals</em>' attribute.
	 * @see #setProposals(Proposals)
	 * @see org.cairnfield.model.ModelPackage#getSplit_Proposals()
	 * @model dataType="org.cairnfield.model.Proposals"
	 *        annotation="urn:org.cairnfield:words label='Proposals'"
	 * @generated
	 */
	Proposals getProposals();

	/**
	 * Sets the value of the '{@link org.cairnfield.model.Split#getProposals <em>Proposals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Proposals</em>' attribute.
	 * @see #getProposals()
	 * @generated
	 */
	void setProposals(Proposals value);

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
	 * ε, minPts and the share of variance are ones that DBSCAN and PCA can take.
	 * <!-- end-model-doc -->
	 * @model
	 * @generated
	 */
	boolean parametersAreInRange(DiagnosticChain diagnostics, Map<Object, Object> context);

} // Split
