/**
 */
package org.cairnfield.model.impl;

import java.util.Map;

import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage;

import org.cairnfield.model.check.FloorCheck;

import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.DiagnosticChain;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Floor</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.cairnfield.model.impl.FloorImpl#getLevel <em>Level</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.FloorImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.FloorImpl#getOutline <em>Outline</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.FloorImpl#getHeightMetres <em>Height Metres</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.FloorImpl#getPlanImage <em>Plan Image</em>}</li>
 *   <li>{@link org.cairnfield.model.impl.FloorImpl#getPlanPlacement <em>Plan Placement</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FloorImpl extends MinimalEObjectImpl.Container implements Floor {
	/**
	 * The default value of the '{@link #getLevel() <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevel()
	 * @generated
	 * @ordered
	 */
	protected static final int LEVEL_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getLevel() <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevel()
	 * @generated
	 * @ordered
	 */
	protected int level = LEVEL_EDEFAULT;

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
	 * The default value of the '{@link #getOutline() <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected static final Outline OUTLINE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutline() <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected Outline outline = OUTLINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeightMetres() <em>Height Metres</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMetres()
	 * @generated
	 * @ordered
	 */
	protected static final Double HEIGHT_METRES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeightMetres() <em>Height Metres</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMetres()
	 * @generated
	 * @ordered
	 */
	protected Double heightMetres = HEIGHT_METRES_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlanImage() <em>Plan Image</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanImage()
	 * @generated
	 * @ordered
	 */
	protected static final String PLAN_IMAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlanImage() <em>Plan Image</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanImage()
	 * @generated
	 * @ordered
	 */
	protected String planImage = PLAN_IMAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlanPlacement() <em>Plan Placement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanPlacement()
	 * @generated
	 * @ordered
	 */
	protected static final Placement PLAN_PLACEMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlanPlacement() <em>Plan Placement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanPlacement()
	 * @generated
	 * @ordered
	 */
	protected Placement planPlacement = PLAN_PLACEMENT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FloorImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.FLOOR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getLevel() {
		return level;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevel(int newLevel) {
		int oldLevel = level;
		level = newLevel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FLOOR__LEVEL, oldLevel, level));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FLOOR__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Outline getOutline() {
		return outline;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutline(Outline newOutline) {
		Outline oldOutline = outline;
		outline = newOutline;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FLOOR__OUTLINE, oldOutline, outline));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHeightMetres() {
		return heightMetres;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightMetres(Double newHeightMetres) {
		Double oldHeightMetres = heightMetres;
		heightMetres = newHeightMetres;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FLOOR__HEIGHT_METRES, oldHeightMetres, heightMetres));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlanImage() {
		return planImage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlanImage(String newPlanImage) {
		String oldPlanImage = planImage;
		planImage = newPlanImage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FLOOR__PLAN_IMAGE, oldPlanImage, planImage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Placement getPlanPlacement() {
		return planPlacement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlanPlacement(Placement newPlanPlacement) {
		Placement oldPlanPlacement = planPlacement;
		planPlacement = newPlanPlacement;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FLOOR__PLAN_PLACEMENT, oldPlanPlacement, planPlacement));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean levelIsInRange(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return FloorCheck.levelIsInRange(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean outlineIsAnArea(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return FloorCheck.outlineIsAnArea(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean heightIsPlausible(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return FloorCheck.heightIsPlausible(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean planImageStaysInside(final DiagnosticChain diagnostics, final Map<Object, Object> context) {
		return FloorCheck.planImageStaysInside(this, diagnostics);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.FLOOR__LEVEL:
				return getLevel();
			case ModelPackage.FLOOR__NAME:
				return getName();
			case ModelPackage.FLOOR__OUTLINE:
				return getOutline();
			case ModelPackage.FLOOR__HEIGHT_METRES:
				return getHeightMetres();
			case ModelPackage.FLOOR__PLAN_IMAGE:
				return getPlanImage();
			case ModelPackage.FLOOR__PLAN_PLACEMENT:
				return getPlanPlacement();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.FLOOR__LEVEL:
				setLevel((Integer)newValue);
				return;
			case ModelPackage.FLOOR__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.FLOOR__OUTLINE:
				setOutline((Outline)newValue);
				return;
			case ModelPackage.FLOOR__HEIGHT_METRES:
				setHeightMetres((Double)newValue);
				return;
			case ModelPackage.FLOOR__PLAN_IMAGE:
				setPlanImage((String)newValue);
				return;
			case ModelPackage.FLOOR__PLAN_PLACEMENT:
				setPlanPlacement((Placement)newValue);
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
			case ModelPackage.FLOOR__LEVEL:
				setLevel(LEVEL_EDEFAULT);
				return;
			case ModelPackage.FLOOR__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.FLOOR__OUTLINE:
				setOutline(OUTLINE_EDEFAULT);
				return;
			case ModelPackage.FLOOR__HEIGHT_METRES:
				setHeightMetres(HEIGHT_METRES_EDEFAULT);
				return;
			case ModelPackage.FLOOR__PLAN_IMAGE:
				setPlanImage(PLAN_IMAGE_EDEFAULT);
				return;
			case ModelPackage.FLOOR__PLAN_PLACEMENT:
				setPlanPlacement(PLAN_PLACEMENT_EDEFAULT);
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
			case ModelPackage.FLOOR__LEVEL:
				return level != LEVEL_EDEFAULT;
			case ModelPackage.FLOOR__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.FLOOR__OUTLINE:
				return OUTLINE_EDEFAULT == null ? outline != null : !OUTLINE_EDEFAULT.equals(outline);
			case ModelPackage.FLOOR__HEIGHT_METRES:
				return HEIGHT_METRES_EDEFAULT == null ? heightMetres != null : !HEIGHT_METRES_EDEFAULT.equals(heightMetres);
			case ModelPackage.FLOOR__PLAN_IMAGE:
				return PLAN_IMAGE_EDEFAULT == null ? planImage != null : !PLAN_IMAGE_EDEFAULT.equals(planImage);
			case ModelPackage.FLOOR__PLAN_PLACEMENT:
				return PLAN_PLACEMENT_EDEFAULT == null ? planPlacement != null : !PLAN_PLACEMENT_EDEFAULT.equals(planPlacement);
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
		result.append(" (level: ");
		result.append(level);
		result.append(", name: ");
		result.append(name);
		result.append(", outline: ");
		result.append(outline);
		result.append(", heightMetres: ");
		result.append(heightMetres);
		result.append(", planImage: ");
		result.append(planImage);
		result.append(", planPlacement: ");
		result.append(planPlacement);
		result.append(')');
		return result.toString();
	}

} //FloorImpl
