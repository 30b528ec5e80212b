/**
 */
package org.cairnfield.model.impl;

import java.util.Collection;
import java.util.Map;

import org.cairnfield.core.match.Search;

import org.cairnfield.model.Cluster;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Split;

import org.cairnfield.model.check.SplitCheck;

import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.Scope;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Split</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getScope <em>Scope</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getRepresentation <em>Representation</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getEpsilon <em>Epsilon</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getMinPts <em>Min Pts</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getPcaShare <em>Pca Share</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getMethod <em>Method</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getSeed <em>Seed</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getGate <em>Gate</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getThreshold <em>Threshold</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getSearch <em>Search</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getSearchReason <em>Search Reason</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#isInRelease <em>In Release</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getClusters <em>Clusters</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getLabels <em>Labels</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.SplitImpl#getProposals <em>Proposals</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SplitImpl extends MinimalEObjectImpl.Container implements Split {
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
	 * The default value of the '{@link #getScope() <em>Scope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScope()
	 * @generated
	 * @ordered
	 */
	protected static final Scope SCOPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScope() <em>Scope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScope()
	 * @generated
	 * @ordered
	 */
	protected Scope scope = SCOPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRepresentation() <em>Representation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepresentation()
	 * @generated
	 * @ordered
	 */
	protected static final String REPRESENTATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRepresentation() <em>Representation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepresentation()
	 * @generated
	 * @ordered
	 */
	protected String representation = REPRESENTATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getDistance() <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistance()
	 * @generated
	 * @ordered
	 */
	protected static final String DISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDistance() <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistance()
	 * @generated
	 * @ordered
	 */
	protected String distance = DISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getEpsilon() <em>Epsilon</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEpsilon()
	 * @generated
	 * @ordered
	 */
	protected static final double EPSILON_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getEpsilon() <em>Epsilon</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEpsilon()
	 * @generated
	 * @ordered
	 */
	protected double epsilon = EPSILON_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinPts() <em>Min Pts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinPts()
	 * @generated
	 * @ordered
	 */
	protected static final int MIN_PTS_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getMinPts() <em>Min Pts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinPts()
	 * @generated
	 * @ordered
	 */
	protected int minPts = MIN_PTS_EDEFAULT;

	/**
	 * The default value of the '{@link #getPcaShare() <em>Pca Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPcaShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double PCA_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPcaShare() <em>Pca Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPcaShare()
	 * @generated
	 * @ordered
	 */
	protected Double pcaShare = PCA_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected static final String METHOD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected String method = METHOD_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected static final long SEED_EDEFAULT = 0L;

	/**
	 * The cached value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected long seed = SEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getGate() <em>Gate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGate()
	 * @generated
	 * @ordered
	 */
	protected static final double GATE_EDEFAULT = 0.1;

	/**
	 * The cached value of the '{@link #getGate() <em>Gate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGate()
	 * @generated
	 * @ordered
	 */
	protected double gate = GATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getThreshold() <em>Threshold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreshold()
	 * @generated
	 * @ordered
	 */
	protected static final double THRESHOLD_EDEFAULT = 0.1;

	/**
	 * The cached value of the '{@link #getThreshold() <em>Threshold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreshold()
	 * @generated
	 * @ordered
	 */
	protected double threshold = THRESHOLD_EDEFAULT;

	/**
	 * The default value of the '{@link #getSearch() <em>Search</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSearch()
	 * @generated
	 * @ordered
	 */
	protected static final Search SEARCH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSearch() <em>Search</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSearch()
	 * @generated
	 * @ordered
	 */
	protected Search search = SEARCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getSearchReason() <em>Search Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSearchReason()
	 * @generated
	 * @ordered
	 */
	protected static final String SEARCH_REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSearchReason() <em>Search Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSearchReason()
	 * @generated
	 * @ordered
	 */
	protected String searchReason = SEARCH_REASON_EDEFAULT;

	/**
	 * The default value of the '{@link #isInRelease() <em>In Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInRelease()
	 * @generated
	 * @ordered
	 */
	protected static final boolean IN_RELEASE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isInRelease() <em>In Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInRelease()
	 * @generated
	 * @ordered
	 */
	protected boolean inRelease = IN_RELEASE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getClusters() <em>Clusters</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClusters()
	 * @generated
	 * @ordered
	 */
	protected EList<Cluster> clusters;

	/**
	 * The default value of the '{@link #getLabels() <em>Labels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabels()
	 * @generated
	 * @ordered
	 */
	protected static final Labels LABELS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLabels() <em>Labels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabels()
	 * @generated
	 * @ordered
	 */
	protected Labels labels = LABELS_EDEFAULT;

	/**
	 * The default value of the '{@link #getProposals() <em>Proposals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProposals()
	 * @generated
	 * @ordered
	 */
	protected static final Proposals PROPOSALS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProposals() <em>Proposals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProposals()
	 * @generated
	 * @ordered
	 */
	protected Proposals proposals = PROPOSALS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SplitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SPLIT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Scope getScope() {
		return scope;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScope(Scope newScope) {
		Scope oldScope = scope;
		scope = newScope;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__SCOPE, oldScope, scope));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRepresentation() {
		return representation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRepresentation(String newRepresentation) {
		String oldRepresentation = representation;
		representation = newRepresentation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__REPRESENTATION, oldRepresentation, representation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDistance() {
		return distance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistance(String newDistance) {
		String oldDistance = distance;
		distance = newDistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__DISTANCE, oldDistance, distance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getEpsilon() {
		return epsilon;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEpsilon(double newEpsilon) {
		double oldEpsilon = epsilon;
		epsilon = newEpsilon;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__EPSILON, oldEpsilon, epsilon));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getMinPts() {
		return minPts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinPts(int newMinPts) {
		int oldMinPts = minPts;
		minPts = newMinPts;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__MIN_PTS, oldMinPts, minPts));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPcaShare() {
		return pcaShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPcaShare(Double newPcaShare) {
		Double oldPcaShare = pcaShare;
		pcaShare = newPcaShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__PCA_SHARE, oldPcaShare, pcaShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMethod() {
		return method;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMethod(String newMethod) {
		String oldMethod = method;
		method = newMethod;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__METHOD, oldMethod, method));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public long getSeed() {
		return seed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeed(long newSeed) {
		long oldSeed = seed;
		seed = newSeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__SEED, oldSeed, seed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getGate() {
		return gate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGate(double newGate) {
		double oldGate = gate;
		gate = newGate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__GATE, oldGate, gate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getThreshold() {
		return threshold;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThreshold(double newThreshold) {
		double oldThreshold = threshold;
		threshold = newThreshold;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__THRESHOLD, oldThreshold, threshold));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Search getSearch() {
		return search;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSearch(Search newSearch) {
		Search oldSearch = search;
		search = newSearch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__SEARCH, oldSearch, search));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSearchReason() {
		return searchReason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSearchReason(String newSearchReason) {
		String oldSearchReason = searchReason;
		searchReason = newSearchReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__SEARCH_REASON, oldSearchReason, searchReason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isInRelease() {
		return inRelease;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInRelease(boolean newInRelease) {
		boolean oldInRelease = inRelease;
		inRelease = newInRelease;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__IN_RELEASE, oldInRelease, inRelease));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Cluster> getClusters() {
		if (clusters == null) {
			clusters = new EObjectContainmentEList<Cluster>(Cluster.class, this, ModelPackage.SPLIT__CLUSTERS);
		}
		return clusters;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Labels getLabels() {
		return labels;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabels(Labels newLabels) {
		Labels oldLabels = labels;
		labels = newLabels;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__LABELS, oldLabels, labels));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Proposals getProposals() {
		return proposals;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProposals(Proposals newProposals) {
		Proposals oldProposals = proposals;
		proposals = newProposals;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPLIT__PROPOSALS, oldProposals, proposals));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean idIsUsable(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SplitCheck.idIsUsable(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean parametersAreInRange(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return SplitCheck.parametersAreInRange(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SPLIT__CLUSTERS:
				return ((InternalEList<?>)getClusters()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SPLIT__ID:
				return getId();
			case ModelPackage.SPLIT__SCOPE:
				return getScope();
			case ModelPackage.SPLIT__REPRESENTATION:
				return getRepresentation();
			case ModelPackage.SPLIT__DISTANCE:
				return getDistance();
			case ModelPackage.SPLIT__EPSILON:
				return getEpsilon();
			case ModelPackage.SPLIT__MIN_PTS:
				return getMinPts();
			case ModelPackage.SPLIT__PCA_SHARE:
				return getPcaShare();
			case ModelPackage.SPLIT__METHOD:
				return getMethod();
			case ModelPackage.SPLIT__SEED:
				return getSeed();
			case ModelPackage.SPLIT__GATE:
				return getGate();
			case ModelPackage.SPLIT__THRESHOLD:
				return getThreshold();
			case ModelPackage.SPLIT__SEARCH:
				return getSearch();
			case ModelPackage.SPLIT__SEARCH_REASON:
				return getSearchReason();
			case ModelPackage.SPLIT__IN_RELEASE:
				return isInRelease();
			case ModelPackage.SPLIT__CLUSTERS:
				return getClusters();
			case ModelPackage.SPLIT__LABELS:
				return getLabels();
			case ModelPackage.SPLIT__PROPOSALS:
				return getProposals();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.SPLIT__ID:
				setId((String)newValue);
				return;
			case ModelPackage.SPLIT__SCOPE:
				setScope((Scope)newValue);
				return;
			case ModelPackage.SPLIT__REPRESENTATION:
				setRepresentation((String)newValue);
				return;
			case ModelPackage.SPLIT__DISTANCE:
				setDistance((String)newValue);
				return;
			case ModelPackage.SPLIT__EPSILON:
				setEpsilon((Double)newValue);
				return;
			case ModelPackage.SPLIT__MIN_PTS:
				setMinPts((Integer)newValue);
				return;
			case ModelPackage.SPLIT__PCA_SHARE:
				setPcaShare((Double)newValue);
				return;
			case ModelPackage.SPLIT__METHOD:
				setMethod((String)newValue);
				return;
			case ModelPackage.SPLIT__SEED:
				setSeed((Long)newValue);
				return;
			case ModelPackage.SPLIT__GATE:
				setGate((Double)newValue);
				return;
			case ModelPackage.SPLIT__THRESHOLD:
				setThreshold((Double)newValue);
				return;
			case ModelPackage.SPLIT__SEARCH:
				setSearch((Search)newValue);
				return;
			case ModelPackage.SPLIT__SEARCH_REASON:
				setSearchReason((String)newValue);
				return;
			case ModelPackage.SPLIT__IN_RELEASE:
				setInRelease((Boolean)newValue);
				return;
			case ModelPackage.SPLIT__CLUSTERS:
				getClusters().clear();
				getClusters().addAll((Collection<? extends Cluster>)newValue);
				return;
			case ModelPackage.SPLIT__LABELS:
				setLabels((Labels)newValue);
				return;
			case ModelPackage.SPLIT__PROPOSALS:
				setProposals((Proposals)newValue);
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
			case ModelPackage.SPLIT__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.SPLIT__SCOPE:
				setScope(SCOPE_EDEFAULT);
				return;
			case ModelPackage.SPLIT__REPRESENTATION:
				setRepresentation(REPRESENTATION_EDEFAULT);
				return;
			case ModelPackage.SPLIT__DISTANCE:
				setDistance(DISTANCE_EDEFAULT);
				return;
			case ModelPackage.SPLIT__EPSILON:
				setEpsilon(EPSILON_EDEFAULT);
				return;
			case ModelPackage.SPLIT__MIN_PTS:
				setMinPts(MIN_PTS_EDEFAULT);
				return;
			case ModelPackage.SPLIT__PCA_SHARE:
				setPcaShare(PCA_SHARE_EDEFAULT);
				return;
			case ModelPackage.SPLIT__METHOD:
				setMethod(METHOD_EDEFAULT);
				return;
			case ModelPackage.SPLIT__SEED:
				setSeed(SEED_EDEFAULT);
				return;
			case ModelPackage.SPLIT__GATE:
				setGate(GATE_EDEFAULT);
				return;
			case ModelPackage.SPLIT__THRESHOLD:
				setThreshold(THRESHOLD_EDEFAULT);
				return;
			case ModelPackage.SPLIT__SEARCH:
				setSearch(SEARCH_EDEFAULT);
				return;
			case ModelPackage.SPLIT__SEARCH_REASON:
				setSearchReason(SEARCH_REASON_EDEFAULT);
				return;
			case ModelPackage.SPLIT__IN_RELEASE:
				setInRelease(IN_RELEASE_EDEFAULT);
				return;
			case ModelPackage.SPLIT__CLUSTERS:
				getClusters().clear();
				return;
			case ModelPackage.SPLIT__LABELS:
				setLabels(LABELS_EDEFAULT);
				return;
			case ModelPackage.SPLIT__PROPOSALS:
				setProposals(PROPOSALS_EDEFAULT);
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
			case ModelPackage.SPLIT__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.SPLIT__SCOPE:
				return SCOPE_EDEFAULT == null ? scope != null : !SCOPE_EDEFAULT.equals(scope);
			case ModelPackage.SPLIT__REPRESENTATION:
				return REPRESENTATION_EDEFAULT == null ? representation != null : !REPRESENTATION_EDEFAULT.equals(representation);
			case ModelPackage.SPLIT__DISTANCE:
				return DISTANCE_EDEFAULT == null ? distance != null : !DISTANCE_EDEFAULT.equals(distance);
			case ModelPackage.SPLIT__EPSILON:
				return epsilon != EPSILON_EDEFAULT;
			case ModelPackage.SPLIT__MIN_PTS:
				return minPts != MIN_PTS_EDEFAULT;
			case ModelPackage.SPLIT__PCA_SHARE:
				return PCA_SHARE_EDEFAULT == null ? pcaShare != null : !PCA_SHARE_EDEFAULT.equals(pcaShare);
			case ModelPackage.SPLIT__METHOD:
				return METHOD_EDEFAULT == null ? method != null : !METHOD_EDEFAULT.equals(method);
			case ModelPackage.SPLIT__SEED:
				return seed != SEED_EDEFAULT;
			case ModelPackage.SPLIT__GATE:
				return gate != GATE_EDEFAULT;
			case ModelPackage.SPLIT__THRESHOLD:
				return threshold != THRESHOLD_EDEFAULT;
			case ModelPackage.SPLIT__SEARCH:
				return SEARCH_EDEFAULT == null ? search != null : !SEARCH_EDEFAULT.equals(search);
			case ModelPackage.SPLIT__SEARCH_REASON:
				return SEARCH_REASON_EDEFAULT == null ? searchReason != null : !SEARCH_REASON_EDEFAULT.equals(searchReason);
			case ModelPackage.SPLIT__IN_RELEASE:
				return inRelease != IN_RELEASE_EDEFAULT;
			case ModelPackage.SPLIT__CLUSTERS:
				return clusters != null && !clusters.isEmpty();
			case ModelPackage.SPLIT__LABELS:
				return LABELS_EDEFAULT == null ? labels != null : !LABELS_EDEFAULT.equals(labels);
			case ModelPackage.SPLIT__PROPOSALS:
				return PROPOSALS_EDEFAULT == null ? proposals != null : !PROPOSALS_EDEFAULT.equals(proposals);
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
		result.append(", scope: ");
		result.append(scope);
		result.append(", representation: ");
		result.append(representation);
		result.append(", distance: ");
		result.append(distance);
		result.append(", epsilon: ");
		result.append(epsilon);
		result.append(", minPts: ");
		result.append(minPts);
		result.append(", pcaShare: ");
		result.append(pcaShare);
		result.append(", method: ");
		result.append(method);
		result.append(", seed: ");
		result.append(seed);
		result.append(", gate: ");
		result.append(gate);
		result.append(", threshold: ");
		result.append(threshold);
		result.append(", search: ");
		result.append(search);
		result.append(", searchReason: ");
		result.append(searchReason);
		result.append(", inRelease: ");
		result.append(inRelease);
		result.append(", labels: ");
		result.append(labels);
		result.append(", proposals: ");
		result.append(proposals);
		result.append(')');
		return result.toString();
	}

} //SplitImpl
