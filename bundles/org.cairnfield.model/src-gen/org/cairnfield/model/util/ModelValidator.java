/**
 */
package org.cairnfield.model.util;

import java.time.Instant;
import java.time.LocalDate;

import java.util.Map;

import org.cairnfield.core.match.Search;

import org.cairnfield.core.radio.WifiBand;

import org.cairnfield.model.*;

import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;

import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.common.util.ResourceLocator;

import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.EObjectValidator;

/**
 * <!-- begin-user-doc -->
 * The <b>Validator</b> for the model.
 * <!-- end-user-doc -->
 * @see org.cairnfield.model.ModelPackage
 * @generated
 */
public class ModelValidator extends EObjectValidator {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final ModelValidator INSTANCE = new ModelValidator();

	/**
	 * A constant for the {@link org.eclipse.emf.common.util.Diagnostic#getSource() source} of diagnostic {@link org.eclipse.emf.common.util.Diagnostic#getCode() codes} from this package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.common.util.Diagnostic#getSource()
	 * @see org.eclipse.emf.common.util.Diagnostic#getCode()
	 * @generated
	 */
	public static final String DIAGNOSTIC_SOURCE = "org.cairnfield.model";

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Ids Are Unique' of 'Archive'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int ARCHIVE__IDS_ARE_UNIQUE = 1;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Addresses Are Unique' of 'Archive'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int ARCHIVE__ADDRESSES_ARE_UNIQUE = 2;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Id Is Usable' of 'Site'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SITE__ID_IS_USABLE = 3;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Levels Are Unique' of 'Site'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SITE__LEVELS_ARE_UNIQUE = 4;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Level Is In Range' of 'Floor'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int FLOOR__LEVEL_IS_IN_RANGE = 5;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Outline Is An Area' of 'Floor'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int FLOOR__OUTLINE_IS_AN_AREA = 6;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Height Is Plausible' of 'Floor'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int FLOOR__HEIGHT_IS_PLAUSIBLE = 7;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Plan Image Stays Inside' of 'Floor'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int FLOOR__PLAN_IMAGE_STAYS_INSIDE = 8;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Id Is Usable' of 'Access Point'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int ACCESS_POINT__ID_IS_USABLE = 9;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Address Is Of One Radio' of 'Access Point'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int ACCESS_POINT__ADDRESS_IS_OF_ONE_RADIO = 10;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Channel Is In Band' of 'Access Point'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int ACCESS_POINT__CHANNEL_IS_IN_BAND = 11;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Heard In Order' of 'Access Point'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int ACCESS_POINT__HEARD_IN_ORDER = 12;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Place Is On AFloor' of 'Access Point'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int ACCESS_POINT__PLACE_IS_ON_AFLOOR = 13;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Id Is Usable' of 'Device'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int DEVICE__ID_IS_USABLE = 14;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Offset Is Plausible' of 'Device'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int DEVICE__OFFSET_IS_PLAUSIBLE = 15;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Id Is Usable' of 'Survey'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SURVEY__ID_IS_USABLE = 16;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Surveyor Is Initials' of 'Survey'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SURVEY__SURVEYOR_IS_INITIALS = 17;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Digest Is Sha256' of 'Survey'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SURVEY__DIGEST_IS_SHA256 = 18;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Levels Are Known' of 'Survey'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SURVEY__LEVELS_ARE_KNOWN = 19;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Access Points Are Known' of 'Survey'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SURVEY__ACCESS_POINTS_ARE_KNOWN = 20;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Id Is Usable' of 'Split'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SPLIT__ID_IS_USABLE = 21;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Parameters Are In Range' of 'Split'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int SPLIT__PARAMETERS_ARE_IN_RANGE = 22;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Id Is Usable' of 'Ledger'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int LEDGER__ID_IS_USABLE = 23;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Superseded' of 'Ledger'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int LEDGER__SUPERSEDED = 24;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Is Accounted For' of 'Verdict'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int VERDICT__IS_ACCOUNTED_FOR = 25;

	/**
	 * The {@link org.eclipse.emf.common.util.Diagnostic#getCode() code} for constraint 'Is Accounted For' of 'Waiver'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final int WAIVER__IS_ACCOUNTED_FOR = 26;

	/**
	 * A constant with a fixed name that can be used as the base value for additional hand written constants.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final int GENERATED_DIAGNOSTIC_CODE_COUNT = 26;

	/**
	 * A constant with a fixed name that can be used as the base value for additional hand written constants in a derived class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static final int DIAGNOSTIC_CODE_COUNT = GENERATED_DIAGNOSTIC_CODE_COUNT;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelValidator() {
		super();
	}

	/**
	 * Returns the package of this validator switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EPackage getEPackage() {
	  return ModelPackage.eINSTANCE;
	}

	/**
	 * Calls <code>validateXXX</code> for the corresponding classifier of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected boolean validate(int classifierID, Object value, DiagnosticChain diagnostics, Map<Object, Object> context) {
		switch (classifierID) {
			case ModelPackage.ARCHIVE:
				return validateArchive((Archive)value, diagnostics, context);
			case ModelPackage.SITE:
				return validateSite((Site)value, diagnostics, context);
			case ModelPackage.FLOOR:
				return validateFloor((Floor)value, diagnostics, context);
			case ModelPackage.ACCESS_POINT:
				return validateAccessPoint((AccessPoint)value, diagnostics, context);
			case ModelPackage.DEVICE:
				return validateDevice((Device)value, diagnostics, context);
			case ModelPackage.SURVEY:
				return validateSurvey((Survey)value, diagnostics, context);
			case ModelPackage.SAMPLES:
				return validateSamples((Samples)value, diagnostics, context);
			case ModelPackage.SPLIT:
				return validateSplit((Split)value, diagnostics, context);
			case ModelPackage.CLUSTER:
				return validateCluster((Cluster)value, diagnostics, context);
			case ModelPackage.LEDGER:
				return validateLedger((Ledger)value, diagnostics, context);
			case ModelPackage.VERDICT:
				return validateVerdict((Verdict)value, diagnostics, context);
			case ModelPackage.WAIVER:
				return validateWaiver((Waiver)value, diagnostics, context);
			case ModelPackage.CONFLICT:
				return validateConflict((Conflict)value, diagnostics, context);
			case ModelPackage.CLAIM:
				return validateClaim((Claim)value, diagnostics, context);
			case ModelPackage.COMMENT:
				return validateComment((Comment)value, diagnostics, context);
			case ModelPackage.ASSIGNMENT:
				return validateAssignment((Assignment)value, diagnostics, context);
			case ModelPackage.RULE_SETTING:
				return validateRuleSetting((RuleSetting)value, diagnostics, context);
			case ModelPackage.SURVEY_KIND:
				return validateSurveyKind((SurveyKind)value, diagnostics, context);
			case ModelPackage.DECISION:
				return validateDecision((Decision)value, diagnostics, context);
			case ModelPackage.ROUND:
				return validateRound((Round)value, diagnostics, context);
			case ModelPackage.SAMPLE_TABLE:
				return validateSampleTable((SampleTable)value, diagnostics, context);
			case ModelPackage.LABELS:
				return validateLabels((Labels)value, diagnostics, context);
			case ModelPackage.PROPOSALS:
				return validateProposals((Proposals)value, diagnostics, context);
			case ModelPackage.OUTLINE:
				return validateOutline((Outline)value, diagnostics, context);
			case ModelPackage.PLACEMENT:
				return validatePlacement((Placement)value, diagnostics, context);
			case ModelPackage.KNOWN_PLACE:
				return validateKnownPlace((KnownPlace)value, diagnostics, context);
			case ModelPackage.GEOREFERENCE:
				return validateGeoreference((Georeference)value, diagnostics, context);
			case ModelPackage.SCOPE:
				return validateScope((Scope)value, diagnostics, context);
			case ModelPackage.SEARCH:
				return validateSearch((Search)value, diagnostics, context);
			case ModelPackage.SAMPLE_KEY:
				return validateSampleKey((SampleKey)value, diagnostics, context);
			case ModelPackage.WIFI_BAND:
				return validateWifiBand((WifiBand)value, diagnostics, context);
			case ModelPackage.DATE:
				return validateDate((LocalDate)value, diagnostics, context);
			case ModelPackage.TIME:
				return validateTime((Instant)value, diagnostics, context);
			default:
				return true;
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateArchive(Archive archive, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(archive, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validateArchive_idsAreUnique(archive, diagnostics, context);
		if (result || diagnostics != null) result &= validateArchive_addressesAreUnique(archive, diagnostics, context);
		return result;
	}

	/**
	 * Validates the idsAreUnique constraint of '<em>Archive</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateArchive_idsAreUnique(Archive archive, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return archive.idsAreUnique(diagnostics, context);
	}

	/**
	 * Validates the addressesAreUnique constraint of '<em>Archive</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateArchive_addressesAreUnique(Archive archive, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return archive.addressesAreUnique(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSite(Site site, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(site, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(site, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(site, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(site, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(site, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(site, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(site, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(site, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(site, diagnostics, context);
		if (result || diagnostics != null) result &= validateSite_idIsUsable(site, diagnostics, context);
		if (result || diagnostics != null) result &= validateSite_levelsAreUnique(site, diagnostics, context);
		return result;
	}

	/**
	 * Validates the idIsUsable constraint of '<em>Site</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSite_idIsUsable(Site site, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return site.idIsUsable(diagnostics, context);
	}

	/**
	 * Validates the levelsAreUnique constraint of '<em>Site</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSite_levelsAreUnique(Site site, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return site.levelsAreUnique(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateFloor(Floor floor, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(floor, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validateFloor_levelIsInRange(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validateFloor_outlineIsAnArea(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validateFloor_heightIsPlausible(floor, diagnostics, context);
		if (result || diagnostics != null) result &= validateFloor_planImageStaysInside(floor, diagnostics, context);
		return result;
	}

	/**
	 * Validates the levelIsInRange constraint of '<em>Floor</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateFloor_levelIsInRange(Floor floor, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return floor.levelIsInRange(diagnostics, context);
	}

	/**
	 * Validates the outlineIsAnArea constraint of '<em>Floor</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateFloor_outlineIsAnArea(Floor floor, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return floor.outlineIsAnArea(diagnostics, context);
	}

	/**
	 * Validates the heightIsPlausible constraint of '<em>Floor</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateFloor_heightIsPlausible(Floor floor, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return floor.heightIsPlausible(diagnostics, context);
	}

	/**
	 * Validates the planImageStaysInside constraint of '<em>Floor</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateFloor_planImageStaysInside(Floor floor, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return floor.planImageStaysInside(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateAccessPoint(AccessPoint accessPoint, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(accessPoint, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validateAccessPoint_idIsUsable(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validateAccessPoint_addressIsOfOneRadio(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validateAccessPoint_channelIsInBand(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validateAccessPoint_heardInOrder(accessPoint, diagnostics, context);
		if (result || diagnostics != null) result &= validateAccessPoint_placeIsOnAFloor(accessPoint, diagnostics, context);
		return result;
	}

	/**
	 * Validates the idIsUsable constraint of '<em>Access Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateAccessPoint_idIsUsable(AccessPoint accessPoint, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return accessPoint.idIsUsable(diagnostics, context);
	}

	/**
	 * Validates the addressIsOfOneRadio constraint of '<em>Access Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateAccessPoint_addressIsOfOneRadio(AccessPoint accessPoint, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return accessPoint.addressIsOfOneRadio(diagnostics, context);
	}

	/**
	 * Validates the channelIsInBand constraint of '<em>Access Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateAccessPoint_channelIsInBand(AccessPoint accessPoint, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return accessPoint.channelIsInBand(diagnostics, context);
	}

	/**
	 * Validates the heardInOrder constraint of '<em>Access Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateAccessPoint_heardInOrder(AccessPoint accessPoint, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return accessPoint.heardInOrder(diagnostics, context);
	}

	/**
	 * Validates the placeIsOnAFloor constraint of '<em>Access Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateAccessPoint_placeIsOnAFloor(AccessPoint accessPoint, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return accessPoint.placeIsOnAFloor(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateDevice(Device device, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(device, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(device, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(device, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(device, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(device, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(device, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(device, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(device, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(device, diagnostics, context);
		if (result || diagnostics != null) result &= validateDevice_idIsUsable(device, diagnostics, context);
		if (result || diagnostics != null) result &= validateDevice_offsetIsPlausible(device, diagnostics, context);
		return result;
	}

	/**
	 * Validates the idIsUsable constraint of '<em>Device</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateDevice_idIsUsable(Device device, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return device.idIsUsable(diagnostics, context);
	}

	/**
	 * Validates the offsetIsPlausible constraint of '<em>Device</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateDevice_offsetIsPlausible(Device device, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return device.offsetIsPlausible(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSurvey(Survey survey, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(survey, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validateSurvey_idIsUsable(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validateSurvey_surveyorIsInitials(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validateSurvey_digestIsSha256(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validateSurvey_levelsAreKnown(survey, diagnostics, context);
		if (result || diagnostics != null) result &= validateSurvey_accessPointsAreKnown(survey, diagnostics, context);
		return result;
	}

	/**
	 * Validates the idIsUsable constraint of '<em>Survey</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSurvey_idIsUsable(Survey survey, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return survey.idIsUsable(diagnostics, context);
	}

	/**
	 * Validates the surveyorIsInitials constraint of '<em>Survey</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSurvey_surveyorIsInitials(Survey survey, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return survey.surveyorIsInitials(diagnostics, context);
	}

	/**
	 * Validates the digestIsSha256 constraint of '<em>Survey</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSurvey_digestIsSha256(Survey survey, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return survey.digestIsSha256(diagnostics, context);
	}

	/**
	 * Validates the levelsAreKnown constraint of '<em>Survey</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSurvey_levelsAreKnown(Survey survey, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return survey.levelsAreKnown(diagnostics, context);
	}

	/**
	 * Validates the accessPointsAreKnown constraint of '<em>Survey</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSurvey_accessPointsAreKnown(Survey survey, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return survey.accessPointsAreKnown(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSamples(Samples samples, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return validate_EveryDefaultConstraint(samples, diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSplit(Split split, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(split, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(split, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(split, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(split, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(split, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(split, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(split, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(split, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(split, diagnostics, context);
		if (result || diagnostics != null) result &= validateSplit_idIsUsable(split, diagnostics, context);
		if (result || diagnostics != null) result &= validateSplit_parametersAreInRange(split, diagnostics, context);
		return result;
	}

	/**
	 * Validates the idIsUsable constraint of '<em>Split</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSplit_idIsUsable(Split split, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return split.idIsUsable(diagnostics, context);
	}

	/**
	 * Validates the parametersAreInRange constraint of '<em>Split</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSplit_parametersAreInRange(Split split, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return split.parametersAreInRange(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateCluster(Cluster cluster, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return validate_EveryDefaultConstraint(cluster, diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateLedger(Ledger ledger, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(ledger, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validateLedger_idIsUsable(ledger, diagnostics, context);
		if (result || diagnostics != null) result &= validateLedger_superseded(ledger, diagnostics, context);
		return result;
	}

	/**
	 * Validates the idIsUsable constraint of '<em>Ledger</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateLedger_idIsUsable(Ledger ledger, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return ledger.idIsUsable(diagnostics, context);
	}

	/**
	 * Validates the superseded constraint of '<em>Ledger</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateLedger_superseded(Ledger ledger, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return ledger.superseded(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateVerdict(Verdict verdict, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(verdict, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(verdict, diagnostics, context);
		if (result || diagnostics != null) result &= validateVerdict_isAccountedFor(verdict, diagnostics, context);
		return result;
	}

	/**
	 * Validates the isAccountedFor constraint of '<em>Verdict</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateVerdict_isAccountedFor(Verdict verdict, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return verdict.isAccountedFor(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateWaiver(Waiver waiver, DiagnosticChain diagnostics, Map<Object, Object> context) {
		if (!validate_NoCircularContainment(waiver, diagnostics, context)) return false;
		boolean result = validate_EveryMultiplicityConforms(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryDataValueConforms(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryReferenceIsContained(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryBidirectionalReferenceIsPaired(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryProxyResolves(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validate_UniqueID(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryKeyUnique(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validate_EveryMapEntryUnique(waiver, diagnostics, context);
		if (result || diagnostics != null) result &= validateWaiver_isAccountedFor(waiver, diagnostics, context);
		return result;
	}

	/**
	 * Validates the isAccountedFor constraint of '<em>Waiver</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateWaiver_isAccountedFor(Waiver waiver, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return waiver.isAccountedFor(diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateConflict(Conflict conflict, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return validate_EveryDefaultConstraint(conflict, diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateClaim(Claim claim, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return validate_EveryDefaultConstraint(claim, diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateComment(Comment comment, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return validate_EveryDefaultConstraint(comment, diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateAssignment(Assignment assignment, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return validate_EveryDefaultConstraint(assignment, diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateRuleSetting(RuleSetting ruleSetting, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return validate_EveryDefaultConstraint(ruleSetting, diagnostics, context);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSurveyKind(SurveyKind surveyKind, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateDecision(Decision decision, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateRound(Round round, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSampleTable(SampleTable sampleTable, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateLabels(Labels labels, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateProposals(Proposals proposals, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateOutline(Outline outline, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validatePlacement(Placement placement, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateKnownPlace(KnownPlace knownPlace, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateGeoreference(Georeference georeference, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateScope(Scope scope, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSearch(Search search, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateSampleKey(SampleKey sampleKey, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateWifiBand(WifiBand wifiBand, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateDate(LocalDate date, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public boolean validateTime(Instant time, DiagnosticChain diagnostics, Map<Object, Object> context) {
		return true;
	}

	/**
	 * Returns the resource locator that will be used to fetch messages for this validator's diagnostics.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ResourceLocator getResourceLocator() {
		// TODO
		// Specialize this to return a resource locator for messages specific to this validator.
		// Ensure that you remove @generated or mark it @generated NOT
		return super.getResourceLocator();
	}

} //ModelValidator
