/**
 */
package org.cairnfield.model.impl;

import java.util.Collection;
import java.util.Map;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Device;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Waiver;

import org.cairnfield.model.check.ArchiveCheck;

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
 * An implementation of the model object '<em><b>Archive</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getReviewPolicy <em>Review Policy</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getSiteOrder <em>Site Order</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getSites <em>Sites</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getAccessPoints <em>Access Points</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getWaivers <em>Waivers</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getSplits <em>Splits</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getLedgers <em>Ledgers</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getConflicts <em>Conflicts</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getComments <em>Comments</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getAssignments <em>Assignments</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.ArchiveImpl#getRuleSettings <em>Rule Settings</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ArchiveImpl extends MinimalEObjectImpl.Container implements Archive {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected static final int FORMAT_VERSION_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected int formatVersion = FORMAT_VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getReviewPolicy() <em>Review Policy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReviewPolicy()
	 * @generated
	 * @ordered
	 */
	protected static final String REVIEW_POLICY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReviewPolicy() <em>Review Policy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReviewPolicy()
	 * @generated
	 * @ordered
	 */
	protected String reviewPolicy = REVIEW_POLICY_EDEFAULT;

	/**
	 * The default value of the '{@link #getSiteOrder() <em>Site Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteOrder()
	 * @generated
	 * @ordered
	 */
	protected static final String SITE_ORDER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSiteOrder() <em>Site Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteOrder()
	 * @generated
	 * @ordered
	 */
	protected String siteOrder = SITE_ORDER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSites() <em>Sites</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSites()
	 * @generated
	 * @ordered
	 */
	protected EList<Site> sites;

	/**
	 * The cached value of the '{@link #getAccessPoints() <em>Access Points</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccessPoints()
	 * @generated
	 * @ordered
	 */
	protected EList<AccessPoint> accessPoints;

	/**
	 * The cached value of the '{@link #getDevices() <em>Devices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevices()
	 * @generated
	 * @ordered
	 */
	protected EList<Device> devices;

	/**
	 * The cached value of the '{@link #getWaivers() <em>Waivers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaivers()
	 * @generated
	 * @ordered
	 */
	protected EList<Waiver> waivers;

	/**
	 * The cached value of the '{@link #getSplits() <em>Splits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSplits()
	 * @generated
	 * @ordered
	 */
	protected EList<Split> splits;

	/**
	 * The cached value of the '{@link #getLedgers() <em>Ledgers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLedgers()
	 * @generated
	 * @ordered
	 */
	protected EList<Ledger> ledgers;

	/**
	 * The cached value of the '{@link #getConflicts() <em>Conflicts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConflicts()
	 * @generated
	 * @ordered
	 */
	protected EList<Conflict> conflicts;

	/**
	 * The cached value of the '{@link #getComments() <em>Comments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getComments()
	 * @generated
	 * @ordered
	 */
	protected EList<Comment> comments;

	/**
	 * The cached value of the '{@link #getAssignments() <em>Assignments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAssignments()
	 * @generated
	 * @ordered
	 */
	protected EList<Assignment> assignments;

	/**
	 * The cached value of the '{@link #getRuleSettings() <em>Rule Settings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSettings()
	 * @generated
	 * @ordered
	 */
	protected EList<RuleSetting> ruleSettings;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ArchiveImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.ARCHIVE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ARCHIVE__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFormatVersion() {
		return formatVersion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormatVersion(int newFormatVersion) {
		int oldFormatVersion = formatVersion;
		formatVersion = newFormatVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ARCHIVE__FORMAT_VERSION, oldFormatVersion, formatVersion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReviewPolicy() {
		return reviewPolicy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReviewPolicy(String newReviewPolicy) {
		String oldReviewPolicy = reviewPolicy;
		reviewPolicy = newReviewPolicy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ARCHIVE__REVIEW_POLICY, oldReviewPolicy, reviewPolicy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSiteOrder() {
		return siteOrder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSiteOrder(String newSiteOrder) {
		String oldSiteOrder = siteOrder;
		siteOrder = newSiteOrder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ARCHIVE__SITE_ORDER, oldSiteOrder, siteOrder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Site> getSites() {
		if (sites == null) {
			sites = new EObjectContainmentEList<Site>(Site.class, this, ModelPackage.ARCHIVE__SITES);
		}
		return sites;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AccessPoint> getAccessPoints() {
		if (accessPoints == null) {
			accessPoints = new EObjectContainmentEList<AccessPoint>(AccessPoint.class, this, ModelPackage.ARCHIVE__ACCESS_POINTS);
		}
		return accessPoints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Device> getDevices() {
		if (devices == null) {
			devices = new EObjectContainmentEList<Device>(Device.class, this, ModelPackage.ARCHIVE__DEVICES);
		}
		return devices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Waiver> getWaivers() {
		if (waivers == null) {
			waivers = new EObjectContainmentEList<Waiver>(Waiver.class, this, ModelPackage.ARCHIVE__WAIVERS);
		}
		return waivers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Split> getSplits() {
		if (splits == null) {
			splits = new EObjectContainmentEList.Resolving<Split>(Split.class, this, ModelPackage.ARCHIVE__SPLITS);
		}
		return splits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Ledger> getLedgers() {
		if (ledgers == null) {
			ledgers = new EObjectContainmentEList.Resolving<Ledger>(Ledger.class, this, ModelPackage.ARCHIVE__LEDGERS);
		}
		return ledgers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Conflict> getConflicts() {
		if (conflicts == null) {
			conflicts = new EObjectContainmentEList<Conflict>(Conflict.class, this, ModelPackage.ARCHIVE__CONFLICTS);
		}
		return conflicts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Comment> getComments() {
		if (comments == null) {
			comments = new EObjectContainmentEList<Comment>(Comment.class, this, ModelPackage.ARCHIVE__COMMENTS);
		}
		return comments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Assignment> getAssignments() {
		if (assignments == null) {
			assignments = new EObjectContainmentEList<Assignment>(Assignment.class, this, ModelPackage.ARCHIVE__ASSIGNMENTS);
		}
		return assignments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RuleSetting> getRuleSettings() {
		if (ruleSettings == null) {
			ruleSettings = new EObjectContainmentEList<RuleSetting>(RuleSetting.class, this, ModelPackage.ARCHIVE__RULE_SETTINGS);
		}
		return ruleSettings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean idsAreUnique(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return ArchiveCheck.idsAreUnique(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean addressesAreUnique(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return ArchiveCheck.addressesAreUnique(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.ARCHIVE__SITES:
				return ((InternalEList<?>)getSites()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__ACCESS_POINTS:
				return ((InternalEList<?>)getAccessPoints()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__DEVICES:
				return ((InternalEList<?>)getDevices()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__WAIVERS:
				return ((InternalEList<?>)getWaivers()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__SPLITS:
				return ((InternalEList<?>)getSplits()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__LEDGERS:
				return ((InternalEList<?>)getLedgers()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__CONFLICTS:
				return ((InternalEList<?>)getConflicts()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__COMMENTS:
				return ((InternalEList<?>)getComments()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__ASSIGNMENTS:
				return ((InternalEList<?>)getAssignments()).basicRemove(otherEnd, msgs);
			case ModelPackage.ARCHIVE__RULE_SETTINGS:
				return ((InternalEList<?>)getRuleSettings()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.ARCHIVE__NAME:
				return getName();
			case ModelPackage.ARCHIVE__FORMAT_VERSION:
				return getFormatVersion();
			case ModelPackage.ARCHIVE__REVIEW_POLICY:
				return getReviewPolicy();
			case ModelPackage.ARCHIVE__SITE_ORDER:
				return getSiteOrder();
			case ModelPackage.ARCHIVE__SITES:
				return getSites();
			case ModelPackage.ARCHIVE__ACCESS_POINTS:
				return getAccessPoints();
			case ModelPackage.ARCHIVE__DEVICES:
				return getDevices();
			case ModelPackage.ARCHIVE__WAIVERS:
				return getWaivers();
			case ModelPackage.ARCHIVE__SPLITS:
				return getSplits();
			case ModelPackage.ARCHIVE__LEDGERS:
				return getLedgers();
			case ModelPackage.ARCHIVE__CONFLICTS:
				return getConflicts();
			case ModelPackage.ARCHIVE__COMMENTS:
				return getComments();
			case ModelPackage.ARCHIVE__ASSIGNMENTS:
				return getAssignments();
			case ModelPackage.ARCHIVE__RULE_SETTINGS:
				return getRuleSettings();
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
			case ModelPackage.ARCHIVE__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.ARCHIVE__FORMAT_VERSION:
				setFormatVersion((Integer)newValue);
				return;
			case ModelPackage.ARCHIVE__REVIEW_POLICY:
				setReviewPolicy((String)newValue);
				return;
			case ModelPackage.ARCHIVE__SITE_ORDER:
				setSiteOrder((String)newValue);
				return;
			case ModelPackage.ARCHIVE__SITES:
				getSites().clear();
				getSites().addAll((Collection<? extends Site>)newValue);
				return;
			case ModelPackage.ARCHIVE__ACCESS_POINTS:
				getAccessPoints().clear();
				getAccessPoints().addAll((Collection<? extends AccessPoint>)newValue);
				return;
			case ModelPackage.ARCHIVE__DEVICES:
				getDevices().clear();
				getDevices().addAll((Collection<? extends Device>)newValue);
				return;
			case ModelPackage.ARCHIVE__WAIVERS:
				getWaivers().clear();
				getWaivers().addAll((Collection<? extends Waiver>)newValue);
				return;
			case ModelPackage.ARCHIVE__SPLITS:
				getSplits().clear();
				getSplits().addAll((Collection<? extends Split>)newValue);
				return;
			case ModelPackage.ARCHIVE__LEDGERS:
				getLedgers().clear();
				getLedgers().addAll((Collection<? extends Ledger>)newValue);
				return;
			case ModelPackage.ARCHIVE__CONFLICTS:
				getConflicts().clear();
				getConflicts().addAll((Collection<? extends Conflict>)newValue);
				return;
			case ModelPackage.ARCHIVE__COMMENTS:
				getComments().clear();
				getComments().addAll((Collection<? extends Comment>)newValue);
				return;
			case ModelPackage.ARCHIVE__ASSIGNMENTS:
				getAssignments().clear();
				getAssignments().addAll((Collection<? extends Assignment>)newValue);
				return;
			case ModelPackage.ARCHIVE__RULE_SETTINGS:
				getRuleSettings().clear();
				getRuleSettings().addAll((Collection<? extends RuleSetting>)newValue);
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
			case ModelPackage.ARCHIVE__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.ARCHIVE__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case ModelPackage.ARCHIVE__REVIEW_POLICY:
				setReviewPolicy(REVIEW_POLICY_EDEFAULT);
				return;
			case ModelPackage.ARCHIVE__SITE_ORDER:
				setSiteOrder(SITE_ORDER_EDEFAULT);
				return;
			case ModelPackage.ARCHIVE__SITES:
				getSites().clear();
				return;
			case ModelPackage.ARCHIVE__ACCESS_POINTS:
				getAccessPoints().clear();
				return;
			case ModelPackage.ARCHIVE__DEVICES:
				getDevices().clear();
				return;
			case ModelPackage.ARCHIVE__WAIVERS:
				getWaivers().clear();
				return;
			case ModelPackage.ARCHIVE__SPLITS:
				getSplits().clear();
				return;
			case ModelPackage.ARCHIVE__LEDGERS:
				getLedgers().clear();
				return;
			case ModelPackage.ARCHIVE__CONFLICTS:
				getConflicts().clear();
				return;
			case ModelPackage.ARCHIVE__COMMENTS:
				getComments().clear();
				return;
			case ModelPackage.ARCHIVE__ASSIGNMENTS:
				getAssignments().clear();
				return;
			case ModelPackage.ARCHIVE__RULE_SETTINGS:
				getRuleSettings().clear();
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
			case ModelPackage.ARCHIVE__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.ARCHIVE__FORMAT_VERSION:
				return formatVersion != FORMAT_VERSION_EDEFAULT;
			case ModelPackage.ARCHIVE__REVIEW_POLICY:
				return REVIEW_POLICY_EDEFAULT == null ? reviewPolicy != null : !REVIEW_POLICY_EDEFAULT.equals(reviewPolicy);
			case ModelPackage.ARCHIVE__SITE_ORDER:
				return SITE_ORDER_EDEFAULT == null ? siteOrder != null : !SITE_ORDER_EDEFAULT.equals(siteOrder);
			case ModelPackage.ARCHIVE__SITES:
				return sites != null && !sites.isEmpty();
			case ModelPackage.ARCHIVE__ACCESS_POINTS:
				return accessPoints != null && !accessPoints.isEmpty();
			case ModelPackage.ARCHIVE__DEVICES:
				return devices != null && !devices.isEmpty();
			case ModelPackage.ARCHIVE__WAIVERS:
				return waivers != null && !waivers.isEmpty();
			case ModelPackage.ARCHIVE__SPLITS:
				return splits != null && !splits.isEmpty();
			case ModelPackage.ARCHIVE__LEDGERS:
				return ledgers != null && !ledgers.isEmpty();
			case ModelPackage.ARCHIVE__CONFLICTS:
				return conflicts != null && !conflicts.isEmpty();
			case ModelPackage.ARCHIVE__COMMENTS:
				return comments != null && !comments.isEmpty();
			case ModelPackage.ARCHIVE__ASSIGNMENTS:
				return assignments != null && !assignments.isEmpty();
			case ModelPackage.ARCHIVE__RULE_SETTINGS:
				return ruleSettings != null && !ruleSettings.isEmpty();
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
		result.append(" (name: ");
		result.append(name);
		result.append(", formatVersion: ");
		result.append(formatVersion);
		result.append(", reviewPolicy: ");
		result.append(reviewPolicy);
		result.append(", siteOrder: ");
		result.append(siteOrder);
		result.append(')');
		return result.toString();
	}

} //ArchiveImpl
