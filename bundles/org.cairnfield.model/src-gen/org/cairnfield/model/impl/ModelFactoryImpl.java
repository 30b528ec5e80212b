/**
 */
package org.cairnfield.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import org.cairnfield.core.match.Search;

import org.cairnfield.core.radio.WifiBand;

import org.cairnfield.model.*;

import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class ModelFactoryImpl extends EFactoryImpl implements ModelFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static ModelFactory init() {
		try {
			ModelFactory theModelFactory = (ModelFactory)EPackage.Registry.INSTANCE.getEFactory(ModelPackage.eNS_URI);
			if (theModelFactory != null) {
				return theModelFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new ModelFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case ModelPackage.ARCHIVE: return createArchive();
			case ModelPackage.SITE: return createSite();
			case ModelPackage.FLOOR: return createFloor();
			case ModelPackage.ACCESS_POINT: return createAccessPoint();
			case ModelPackage.DEVICE: return createDevice();
			case ModelPackage.SURVEY: return createSurvey();
			case ModelPackage.SAMPLES: return createSamples();
			case ModelPackage.SPLIT: return createSplit();
			case ModelPackage.CLUSTER: return createCluster();
			case ModelPackage.LEDGER: return createLedger();
			case ModelPackage.VERDICT: return createVerdict();
			case ModelPackage.WAIVER: return createWaiver();
			case ModelPackage.CONFLICT: return createConflict();
			case ModelPackage.CLAIM: return createClaim();
			case ModelPackage.COMMENT: return createComment();
			case ModelPackage.ASSIGNMENT: return createAssignment();
			case ModelPackage.RULE_SETTING: return createRuleSetting();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case ModelPackage.SURVEY_KIND:
				return createSurveyKindFromString(eDataType, initialValue);
			case ModelPackage.DECISION:
				return createDecisionFromString(eDataType, initialValue);
			case ModelPackage.ROUND:
				return createRoundFromString(eDataType, initialValue);
			case ModelPackage.OUTLINE:
				return createOutlineFromString(eDataType, initialValue);
			case ModelPackage.PLACEMENT:
				return createPlacementFromString(eDataType, initialValue);
			case ModelPackage.KNOWN_PLACE:
				return createKnownPlaceFromString(eDataType, initialValue);
			case ModelPackage.GEOREFERENCE:
				return createGeoreferenceFromString(eDataType, initialValue);
			case ModelPackage.SCOPE:
				return createScopeFromString(eDataType, initialValue);
			case ModelPackage.SEARCH:
				return createSearchFromString(eDataType, initialValue);
			case ModelPackage.SAMPLE_KEY:
				return createSampleKeyFromString(eDataType, initialValue);
			case ModelPackage.WIFI_BAND:
				return createWifiBandFromString(eDataType, initialValue);
			case ModelPackage.DATE:
				return createDateFromString(eDataType, initialValue);
			case ModelPackage.TIME:
				return createTimeFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case ModelPackage.SURVEY_KIND:
				return convertSurveyKindToString(eDataType, instanceValue);
			case ModelPackage.DECISION:
				return convertDecisionToString(eDataType, instanceValue);
			case ModelPackage.ROUND:
				return convertRoundToString(eDataType, instanceValue);
			case ModelPackage.OUTLINE:
				return convertOutlineToString(eDataType, instanceValue);
			case ModelPackage.PLACEMENT:
				return convertPlacementToString(eDataType, instanceValue);
			case ModelPackage.KNOWN_PLACE:
				return convertKnownPlaceToString(eDataType, instanceValue);
			case ModelPackage.GEOREFERENCE:
				return convertGeoreferenceToString(eDataType, instanceValue);
			case ModelPackage.SCOPE:
				return convertScopeToString(eDataType, instanceValue);
			case ModelPackage.SEARCH:
				return convertSearchToString(eDataType, instanceValue);
			case ModelPackage.SAMPLE_KEY:
				return convertSampleKeyToString(eDataType, instanceValue);
			case ModelPackage.WIFI_BAND:
				return convertWifiBandToString(eDataType, instanceValue);
			case ModelPackage.DATE:
				return convertDateToString(eDataType, instanceValue);
			case ModelPackage.TIME:
				return convertTimeToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Archive createArchive() {
		ArchiveImpl archive = new ArchiveImpl();
		return archive;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Site createSite() {
		SiteImpl site = new SiteImpl();
		return site;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Floor createFloor() {
		FloorImpl floor = new FloorImpl();
		return floor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AccessPoint createAccessPoint() {
		AccessPointImpl accessPoint = new AccessPointImpl();
		return accessPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Device createDevice() {
		DeviceImpl device = new DeviceImpl();
		return device;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Survey createSurvey() {
		SurveyImpl survey = new SurveyImpl();
		return survey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Samples createSamples() {
		SamplesImpl samples = new SamplesImpl();
		return samples;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Split createSplit() {
		SplitImpl split = new SplitImpl();
		return split;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Cluster createCluster() {
		ClusterImpl cluster = new ClusterImpl();
		return cluster;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ledger createLedger() {
		LedgerImpl ledger = new LedgerImpl();
		return ledger;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Verdict createVerdict() {
		VerdictImpl verdict = new VerdictImpl();
		return verdict;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Waiver createWaiver() {
		WaiverImpl waiver = new WaiverImpl();
		return waiver;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Conflict createConflict() {
		ConflictImpl conflict = new ConflictImpl();
		return conflict;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Claim createClaim() {
		ClaimImpl claim = new ClaimImpl();
		return claim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Comment createComment() {
		CommentImpl comment = new CommentImpl();
		return comment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Assignment createAssignment() {
		AssignmentImpl assignment = new AssignmentImpl();
		return assignment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RuleSetting createRuleSetting() {
		RuleSettingImpl ruleSetting = new RuleSettingImpl();
		return ruleSetting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SurveyKind createSurveyKindFromString(EDataType eDataType, String initialValue) {
		SurveyKind result = SurveyKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSurveyKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Decision createDecisionFromString(EDataType eDataType, String initialValue) {
		Decision result = Decision.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDecisionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Round createRoundFromString(EDataType eDataType, String initialValue) {
		Round result = Round.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRoundToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Outline createOutline(final String it) {
		return it == null ? null : Outline.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Outline createOutlineFromString(EDataType eDataType, String initialValue) {
		return createOutline(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOutline(final Outline it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOutlineToString(EDataType eDataType, Object instanceValue) {
		return convertOutline((Outline)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Placement createPlacement(final String it) {
		return it == null ? null : Placement.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Placement createPlacementFromString(EDataType eDataType, String initialValue) {
		return createPlacement(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPlacement(final Placement it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPlacementToString(EDataType eDataType, Object instanceValue) {
		return convertPlacement((Placement)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public KnownPlace createKnownPlace(final String it) {
		return it == null ? null : KnownPlace.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public KnownPlace createKnownPlaceFromString(EDataType eDataType, String initialValue) {
		return createKnownPlace(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertKnownPlace(final KnownPlace it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertKnownPlaceToString(EDataType eDataType, Object instanceValue) {
		return convertKnownPlace((KnownPlace)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Georeference createGeoreference(final String it) {
		return it == null ? null : Georeference.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Georeference createGeoreferenceFromString(EDataType eDataType, String initialValue) {
		return createGeoreference(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGeoreference(final Georeference it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGeoreferenceToString(EDataType eDataType, Object instanceValue) {
		return convertGeoreference((Georeference)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Scope createScope(final String it) {
		return it == null ? null : Scope.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Scope createScopeFromString(EDataType eDataType, String initialValue) {
		return createScope(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertScope(final Scope it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertScopeToString(EDataType eDataType, Object instanceValue) {
		return convertScope((Scope)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Search createSearch(final String it) {
		return it == null ? null : Search.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Search createSearchFromString(EDataType eDataType, String initialValue) {
		return createSearch(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSearch(final Search it) {
		return it == null ? null : it.code();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSearchToString(EDataType eDataType, Object instanceValue) {
		return convertSearch((Search)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SampleKey createSampleKey(final String it) {
		return it == null ? null : SampleKey.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SampleKey createSampleKeyFromString(EDataType eDataType, String initialValue) {
		return createSampleKey(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSampleKey(final SampleKey it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSampleKeyToString(EDataType eDataType, Object instanceValue) {
		return convertSampleKey((SampleKey)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WifiBand createWifiBand(final String it) {
		return it == null ? null : WifiBand.valueOf(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WifiBand createWifiBandFromString(EDataType eDataType, String initialValue) {
		return createWifiBand(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWifiBand(final WifiBand it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWifiBandToString(EDataType eDataType, Object instanceValue) {
		return convertWifiBand((WifiBand)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDate(final String it) {
		return it == null ? null : LocalDate.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDateFromString(EDataType eDataType, String initialValue) {
		return createDate(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDate(final LocalDate it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDateToString(EDataType eDataType, Object instanceValue) {
		return convertDate((LocalDate)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createTime(final String it) {
		return it == null ? null : Instant.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createTimeFromString(EDataType eDataType, String initialValue) {
		return createTime(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTime(final Instant it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTimeToString(EDataType eDataType, Object instanceValue) {
		return convertTime((Instant)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ModelPackage getModelPackage() {
		return (ModelPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static ModelPackage getPackage() {
		return ModelPackage.eINSTANCE;
	}

} //ModelFactoryImpl
