/**
 */
package org.cairnfield.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import org.cairnfield.core.match.Search;

import org.cairnfield.core.radio.WifiBand;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Round;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.Waiver;

import org.cairnfield.model.util.ModelValidator;

import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EGenericType;
import org.eclipse.emf.ecore.EOperation;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EValidator;

import org.eclipse.emf.ecore.impl.EPackageImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class ModelPackageImpl extends EPackageImpl implements ModelPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass archiveEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass siteEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass floorEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass accessPointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass deviceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass surveyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass samplesEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass splitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass clusterEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ledgerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass verdictEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass waiverEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass conflictEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass claimEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass commentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass assignmentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ruleSettingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum surveyKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum decisionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum roundEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType sampleTableEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType labelsEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType proposalsEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType outlineEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType placementEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType knownPlaceEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType georeferenceEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType scopeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType searchEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType sampleKeyEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType wifiBandEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dateEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType timeEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see org.cairnfield.model.ModelPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private ModelPackageImpl() {
		super(eNS_URI, ModelFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link ModelPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static ModelPackage init() {
		if (isInited) return (ModelPackage)EPackage.Registry.INSTANCE.getEPackage(ModelPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredModelPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		ModelPackageImpl theModelPackage = registeredModelPackage instanceof ModelPackageImpl ? (ModelPackageImpl)registeredModelPackage : new ModelPackageImpl();

		isInited = true;

		// Create package meta-data objects
		theModelPackage.createPackageContents();

		// Initialize created meta-data
		theModelPackage.initializePackageContents();

		// Register package validator
		EValidator.Registry.INSTANCE.put
			(theModelPackage,
			 new EValidator.Descriptor() {
				 @Override
				 public EValidator getEValidator() {
					 return ModelValidator.INSTANCE;
				 }
			 });

		// Mark meta-data to indicate it can't be changed
		theModelPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(ModelPackage.eNS_URI, theModelPackage);
		return theModelPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getArchive() {
		return archiveEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArchive_Name() {
		return (EAttribute)archiveEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArchive_FormatVersion() {
		return (EAttribute)archiveEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArchive_ReviewPolicy() {
		return (EAttribute)archiveEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArchive_SiteOrder() {
		return (EAttribute)archiveEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Sites() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_AccessPoints() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Devices() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Waivers() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Splits() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Ledgers() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Conflicts() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Comments() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_Assignments() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArchive_RuleSettings() {
		return (EReference)archiveEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSite() {
		return siteEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Id() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Name() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Georeference() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_MapFrom() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_MapUntil() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Floors() {
		return (EReference)siteEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Surveys() {
		return (EReference)siteEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFloor() {
		return floorEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFloor_Level() {
		return (EAttribute)floorEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFloor_Name() {
		return (EAttribute)floorEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFloor_Outline() {
		return (EAttribute)floorEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFloor_HeightMetres() {
		return (EAttribute)floorEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFloor_PlanImage() {
		return (EAttribute)floorEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFloor_PlanPlacement() {
		return (EAttribute)floorEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAccessPoint() {
		return accessPointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_Id() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_Address() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_Band() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_Channel() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_FirstHeard() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_LastHeard() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_Group() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_Place() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_CountsAs() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccessPoint_Reason() {
		return (EAttribute)accessPointEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDevice() {
		return deviceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDevice_Id() {
		return (EAttribute)deviceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDevice_Name() {
		return (EAttribute)deviceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDevice_OffsetDb() {
		return (EAttribute)deviceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDevice_MapSlope() {
		return (EAttribute)deviceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDevice_MapShiftDb() {
		return (EAttribute)deviceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSurvey() {
		return surveyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_Id() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSurvey_Site() {
		return (EReference)surveyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_Name() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_Date() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_Surveyor() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSurvey_Device() {
		return (EReference)surveyEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_Protocol() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_Kind() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_SourceFile() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurvey_SourceDigest() {
		return (EAttribute)surveyEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSurvey_Samples() {
		return (EReference)surveyEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSamples() {
		return samplesEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSamples_Table() {
		return (EAttribute)samplesEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSplit() {
		return splitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Id() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Scope() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Representation() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Distance() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Epsilon() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_MinPts() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_PcaShare() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Method() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Seed() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Gate() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Threshold() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Search() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_SearchReason() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_InRelease() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSplit_Clusters() {
		return (EReference)splitEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Labels() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSplit_Proposals() {
		return (EAttribute)splitEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCluster() {
		return clusterEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCluster_Number() {
		return (EAttribute)clusterEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCluster_Size() {
		return (EAttribute)clusterEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLedger() {
		return ledgerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLedger_Id() {
		return (EAttribute)ledgerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLedger_Verdicts() {
		return (EReference)ledgerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getVerdict() {
		return verdictEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Id() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Split() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Sample() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Cluster() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Decision() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_ReasonCode() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Text() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Person() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Time() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Supersedes() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Round() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_SampleContent() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Evidence() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_Batch() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVerdict_EnteredBy() {
		return (EAttribute)verdictEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWaiver() {
		return waiverEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaiver_Rule() {
		return (EAttribute)waiverEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaiver_ContentKey() {
		return (EAttribute)waiverEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaiver_Reason() {
		return (EAttribute)waiverEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaiver_Person() {
		return (EAttribute)waiverEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaiver_Time() {
		return (EAttribute)waiverEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getConflict() {
		return conflictEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConflict_Place() {
		return (EAttribute)conflictEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConflict_Unit() {
		return (EAttribute)conflictEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConflict_Base() {
		return (EAttribute)conflictEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getConflict_Claims() {
		return (EReference)conflictEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClaim() {
		return claimEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Value() {
		return (EAttribute)claimEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Person() {
		return (EAttribute)claimEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Time() {
		return (EAttribute)claimEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getComment() {
		return commentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComment_Id() {
		return (EAttribute)commentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComment_Subject() {
		return (EAttribute)commentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComment_Text() {
		return (EAttribute)commentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComment_Person() {
		return (EAttribute)commentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComment_Time() {
		return (EAttribute)commentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAssignment() {
		return assignmentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAssignment_Id() {
		return (EAttribute)assignmentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAssignment_Split() {
		return (EAttribute)assignmentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAssignment_Reviewer() {
		return (EAttribute)assignmentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAssignment_Share() {
		return (EAttribute)assignmentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAssignment_Person() {
		return (EAttribute)assignmentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAssignment_Time() {
		return (EAttribute)assignmentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRuleSetting() {
		return ruleSettingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRuleSetting_Rule() {
		return (EAttribute)ruleSettingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRuleSetting_Parameter() {
		return (EAttribute)ruleSettingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRuleSetting_Value() {
		return (EAttribute)ruleSettingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRuleSetting_Reason() {
		return (EAttribute)ruleSettingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSurveyKind() {
		return surveyKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDecision() {
		return decisionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRound() {
		return roundEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSampleTable() {
		return sampleTableEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLabels() {
		return labelsEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getProposals() {
		return proposalsEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getOutline() {
		return outlineEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPlacement() {
		return placementEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getKnownPlace() {
		return knownPlaceEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getGeoreference() {
		return georeferenceEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getScope() {
		return scopeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSearch() {
		return searchEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSampleKey() {
		return sampleKeyEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getWifiBand() {
		return wifiBandEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDate() {
		return dateEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTime() {
		return timeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ModelFactory getModelFactory() {
		return (ModelFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		archiveEClass = createEClass(ARCHIVE);
		createEAttribute(archiveEClass, ARCHIVE__NAME);
		createEAttribute(archiveEClass, ARCHIVE__FORMAT_VERSION);
		createEAttribute(archiveEClass, ARCHIVE__REVIEW_POLICY);
		createEAttribute(archiveEClass, ARCHIVE__SITE_ORDER);
		createEReference(archiveEClass, ARCHIVE__SITES);
		createEReference(archiveEClass, ARCHIVE__ACCESS_POINTS);
		createEReference(archiveEClass, ARCHIVE__DEVICES);
		createEReference(archiveEClass, ARCHIVE__WAIVERS);
		createEReference(archiveEClass, ARCHIVE__SPLITS);
		createEReference(archiveEClass, ARCHIVE__LEDGERS);
		createEReference(archiveEClass, ARCHIVE__CONFLICTS);
		createEReference(archiveEClass, ARCHIVE__COMMENTS);
		createEReference(archiveEClass, ARCHIVE__ASSIGNMENTS);
		createEReference(archiveEClass, ARCHIVE__RULE_SETTINGS);

		siteEClass = createEClass(SITE);
		createEAttribute(siteEClass, SITE__ID);
		createEAttribute(siteEClass, SITE__NAME);
		createEAttribute(siteEClass, SITE__GEOREFERENCE);
		createEAttribute(siteEClass, SITE__MAP_FROM);
		createEAttribute(siteEClass, SITE__MAP_UNTIL);
		createEReference(siteEClass, SITE__FLOORS);
		createEReference(siteEClass, SITE__SURVEYS);

		floorEClass = createEClass(FLOOR);
		createEAttribute(floorEClass, FLOOR__LEVEL);
		createEAttribute(floorEClass, FLOOR__NAME);
		createEAttribute(floorEClass, FLOOR__OUTLINE);
		createEAttribute(floorEClass, FLOOR__HEIGHT_METRES);
		createEAttribute(floorEClass, FLOOR__PLAN_IMAGE);
		createEAttribute(floorEClass, FLOOR__PLAN_PLACEMENT);

		accessPointEClass = createEClass(ACCESS_POINT);
		createEAttribute(accessPointEClass, ACCESS_POINT__ID);
		createEAttribute(accessPointEClass, ACCESS_POINT__ADDRESS);
		createEAttribute(accessPointEClass, ACCESS_POINT__BAND);
		createEAttribute(accessPointEClass, ACCESS_POINT__CHANNEL);
		createEAttribute(accessPointEClass, ACCESS_POINT__FIRST_HEARD);
		createEAttribute(accessPointEClass, ACCESS_POINT__LAST_HEARD);
		createEAttribute(accessPointEClass, ACCESS_POINT__GROUP);
		createEAttribute(accessPointEClass, ACCESS_POINT__PLACE);
		createEAttribute(accessPointEClass, ACCESS_POINT__COUNTS_AS);
		createEAttribute(accessPointEClass, ACCESS_POINT__REASON);

		deviceEClass = createEClass(DEVICE);
		createEAttribute(deviceEClass, DEVICE__ID);
		createEAttribute(deviceEClass, DEVICE__NAME);
		createEAttribute(deviceEClass, DEVICE__OFFSET_DB);
		createEAttribute(deviceEClass, DEVICE__MAP_SLOPE);
		createEAttribute(deviceEClass, DEVICE__MAP_SHIFT_DB);

		surveyEClass = createEClass(SURVEY);
		createEAttribute(surveyEClass, SURVEY__ID);
		createEReference(surveyEClass, SURVEY__SITE);
		createEAttribute(surveyEClass, SURVEY__NAME);
		createEAttribute(surveyEClass, SURVEY__DATE);
		createEAttribute(surveyEClass, SURVEY__SURVEYOR);
		createEReference(surveyEClass, SURVEY__DEVICE);
		createEAttribute(surveyEClass, SURVEY__PROTOCOL);
		createEAttribute(surveyEClass, SURVEY__KIND);
		createEAttribute(surveyEClass, SURVEY__SOURCE_FILE);
		createEAttribute(surveyEClass, SURVEY__SOURCE_DIGEST);
		createEReference(surveyEClass, SURVEY__SAMPLES);

		samplesEClass = createEClass(SAMPLES);
		createEAttribute(samplesEClass, SAMPLES__TABLE);

		splitEClass = createEClass(SPLIT);
		createEAttribute(splitEClass, SPLIT__ID);
		createEAttribute(splitEClass, SPLIT__SCOPE);
		createEAttribute(splitEClass, SPLIT__REPRESENTATION);
		createEAttribute(splitEClass, SPLIT__DISTANCE);
		createEAttribute(splitEClass, SPLIT__EPSILON);
		createEAttribute(splitEClass, SPLIT__MIN_PTS);
		createEAttribute(splitEClass, SPLIT__PCA_SHARE);
		createEAttribute(splitEClass, SPLIT__METHOD);
		createEAttribute(splitEClass, SPLIT__SEED);
		createEAttribute(splitEClass, SPLIT__GATE);
		createEAttribute(splitEClass, SPLIT__THRESHOLD);
		createEAttribute(splitEClass, SPLIT__SEARCH);
		createEAttribute(splitEClass, SPLIT__SEARCH_REASON);
		createEAttribute(splitEClass, SPLIT__IN_RELEASE);
		createEReference(splitEClass, SPLIT__CLUSTERS);
		createEAttribute(splitEClass, SPLIT__LABELS);
		createEAttribute(splitEClass, SPLIT__PROPOSALS);

		clusterEClass = createEClass(CLUSTER);
		createEAttribute(clusterEClass, CLUSTER__NUMBER);
		createEAttribute(clusterEClass, CLUSTER__SIZE);

		ledgerEClass = createEClass(LEDGER);
		createEAttribute(ledgerEClass, LEDGER__ID);
		createEReference(ledgerEClass, LEDGER__VERDICTS);

		verdictEClass = createEClass(VERDICT);
		createEAttribute(verdictEClass, VERDICT__ID);
		createEAttribute(verdictEClass, VERDICT__SPLIT);
		createEAttribute(verdictEClass, VERDICT__SAMPLE);
		createEAttribute(verdictEClass, VERDICT__CLUSTER);
		createEAttribute(verdictEClass, VERDICT__DECISION);
		createEAttribute(verdictEClass, VERDICT__REASON_CODE);
		createEAttribute(verdictEClass, VERDICT__TEXT);
		createEAttribute(verdictEClass, VERDICT__PERSON);
		createEAttribute(verdictEClass, VERDICT__TIME);
		createEAttribute(verdictEClass, VERDICT__SUPERSEDES);
		createEAttribute(verdictEClass, VERDICT__ROUND);
		createEAttribute(verdictEClass, VERDICT__SAMPLE_CONTENT);
		createEAttribute(verdictEClass, VERDICT__EVIDENCE);
		createEAttribute(verdictEClass, VERDICT__BATCH);
		createEAttribute(verdictEClass, VERDICT__ENTERED_BY);

		waiverEClass = createEClass(WAIVER);
		createEAttribute(waiverEClass, WAIVER__RULE);
		createEAttribute(waiverEClass, WAIVER__CONTENT_KEY);
		createEAttribute(waiverEClass, WAIVER__REASON);
		createEAttribute(waiverEClass, WAIVER__PERSON);
		createEAttribute(waiverEClass, WAIVER__TIME);

		conflictEClass = createEClass(CONFLICT);
		createEAttribute(conflictEClass, CONFLICT__PLACE);
		createEAttribute(conflictEClass, CONFLICT__UNIT);
		createEAttribute(conflictEClass, CONFLICT__BASE);
		createEReference(conflictEClass, CONFLICT__CLAIMS);

		claimEClass = createEClass(CLAIM);
		createEAttribute(claimEClass, CLAIM__VALUE);
		createEAttribute(claimEClass, CLAIM__PERSON);
		createEAttribute(claimEClass, CLAIM__TIME);

		commentEClass = createEClass(COMMENT);
		createEAttribute(commentEClass, COMMENT__ID);
		createEAttribute(commentEClass, COMMENT__SUBJECT);
		createEAttribute(commentEClass, COMMENT__TEXT);
		createEAttribute(commentEClass, COMMENT__PERSON);
		createEAttribute(commentEClass, COMMENT__TIME);

		assignmentEClass = createEClass(ASSIGNMENT);
		createEAttribute(assignmentEClass, ASSIGNMENT__ID);
		createEAttribute(assignmentEClass, ASSIGNMENT__SPLIT);
		createEAttribute(assignmentEClass, ASSIGNMENT__REVIEWER);
		createEAttribute(assignmentEClass, ASSIGNMENT__SHARE);
		createEAttribute(assignmentEClass, ASSIGNMENT__PERSON);
		createEAttribute(assignmentEClass, ASSIGNMENT__TIME);

		ruleSettingEClass = createEClass(RULE_SETTING);
		createEAttribute(ruleSettingEClass, RULE_SETTING__RULE);
		createEAttribute(ruleSettingEClass, RULE_SETTING__PARAMETER);
		createEAttribute(ruleSettingEClass, RULE_SETTING__VALUE);
		createEAttribute(ruleSettingEClass, RULE_SETTING__REASON);

		// Create enums
		surveyKindEEnum = createEEnum(SURVEY_KIND);
		decisionEEnum = createEEnum(DECISION);
		roundEEnum = createEEnum(ROUND);

		// Create data types
		sampleTableEDataType = createEDataType(SAMPLE_TABLE);
		labelsEDataType = createEDataType(LABELS);
		proposalsEDataType = createEDataType(PROPOSALS);
		outlineEDataType = createEDataType(OUTLINE);
		placementEDataType = createEDataType(PLACEMENT);
		knownPlaceEDataType = createEDataType(KNOWN_PLACE);
		georeferenceEDataType = createEDataType(GEOREFERENCE);
		scopeEDataType = createEDataType(SCOPE);
		searchEDataType = createEDataType(SEARCH);
		sampleKeyEDataType = createEDataType(SAMPLE_KEY);
		wifiBandEDataType = createEDataType(WIFI_BAND);
		dateEDataType = createEDataType(DATE);
		timeEDataType = createEDataType(TIME);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes

		// Initialize classes and features; add operations and parameters
		initEClass(archiveEClass, Archive.class, "Archive", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getArchive_Name(), ecorePackage.getEString(), "name", null, 0, 1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArchive_FormatVersion(), ecorePackage.getEInt(), "formatVersion", "1", 0, 1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArchive_ReviewPolicy(), ecorePackage.getEString(), "reviewPolicy", null, 0, 1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArchive_SiteOrder(), ecorePackage.getEString(), "siteOrder", null, 0, 1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Sites(), this.getSite(), null, "sites", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_AccessPoints(), this.getAccessPoint(), null, "accessPoints", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Devices(), this.getDevice(), null, "devices", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Waivers(), this.getWaiver(), null, "waivers", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Splits(), this.getSplit(), null, "splits", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Ledgers(), this.getLedger(), null, "ledgers", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Conflicts(), this.getConflict(), null, "conflicts", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Comments(), this.getComment(), null, "comments", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_Assignments(), this.getAssignment(), null, "assignments", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArchive_RuleSettings(), this.getRuleSetting(), null, "ruleSettings", null, 0, -1, Archive.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		EOperation op = addEOperation(archiveEClass, ecorePackage.getEBoolean(), "idsAreUnique", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		EGenericType g1 = createEGenericType(ecorePackage.getEMap());
		EGenericType g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(archiveEClass, ecorePackage.getEBoolean(), "addressesAreUnique", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(siteEClass, Site.class, "Site", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSite_Id(), ecorePackage.getEString(), "id", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Name(), ecorePackage.getEString(), "name", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Georeference(), this.getGeoreference(), "georeference", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_MapFrom(), this.getDate(), "mapFrom", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_MapUntil(), this.getDate(), "mapUntil", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Floors(), this.getFloor(), null, "floors", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Surveys(), this.getSurvey(), this.getSurvey_Site(), "surveys", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		op = addEOperation(siteEClass, ecorePackage.getEBoolean(), "idIsUsable", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(siteEClass, ecorePackage.getEBoolean(), "levelsAreUnique", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(floorEClass, Floor.class, "Floor", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFloor_Level(), ecorePackage.getEInt(), "level", "0", 0, 1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFloor_Name(), ecorePackage.getEString(), "name", null, 0, 1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFloor_Outline(), this.getOutline(), "outline", null, 0, 1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFloor_HeightMetres(), ecorePackage.getEDoubleObject(), "heightMetres", null, 0, 1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFloor_PlanImage(), ecorePackage.getEString(), "planImage", null, 0, 1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFloor_PlanPlacement(), this.getPlacement(), "planPlacement", null, 0, 1, Floor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		op = addEOperation(floorEClass, ecorePackage.getEBoolean(), "levelIsInRange", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(floorEClass, ecorePackage.getEBoolean(), "outlineIsAnArea", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(floorEClass, ecorePackage.getEBoolean(), "heightIsPlausible", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(floorEClass, ecorePackage.getEBoolean(), "planImageStaysInside", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(accessPointEClass, AccessPoint.class, "AccessPoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAccessPoint_Id(), ecorePackage.getEString(), "id", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_Address(), ecorePackage.getEString(), "address", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_Band(), this.getWifiBand(), "band", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_Channel(), ecorePackage.getEInt(), "channel", "0", 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_FirstHeard(), this.getDate(), "firstHeard", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_LastHeard(), this.getDate(), "lastHeard", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_Group(), ecorePackage.getEString(), "group", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_Place(), this.getKnownPlace(), "place", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_CountsAs(), ecorePackage.getEString(), "countsAs", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccessPoint_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, AccessPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		addEOperation(accessPointEClass, ecorePackage.getEBoolean(), "isKept", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(accessPointEClass, ecorePackage.getEBoolean(), "idIsUsable", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(accessPointEClass, ecorePackage.getEBoolean(), "addressIsOfOneRadio", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(accessPointEClass, ecorePackage.getEBoolean(), "channelIsInBand", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(accessPointEClass, ecorePackage.getEBoolean(), "heardInOrder", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(accessPointEClass, ecorePackage.getEBoolean(), "placeIsOnAFloor", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(deviceEClass, Device.class, "Device", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDevice_Id(), ecorePackage.getEString(), "id", null, 0, 1, Device.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDevice_Name(), ecorePackage.getEString(), "name", null, 0, 1, Device.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDevice_OffsetDb(), ecorePackage.getEDoubleObject(), "offsetDb", null, 0, 1, Device.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDevice_MapSlope(), ecorePackage.getEDoubleObject(), "mapSlope", null, 0, 1, Device.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDevice_MapShiftDb(), ecorePackage.getEDoubleObject(), "mapShiftDb", null, 0, 1, Device.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		addEOperation(deviceEClass, ecorePackage.getEBoolean(), "isCalibrated", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(deviceEClass, ecorePackage.getEBoolean(), "idIsUsable", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(deviceEClass, ecorePackage.getEBoolean(), "offsetIsPlausible", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(surveyEClass, Survey.class, "Survey", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSurvey_Id(), ecorePackage.getEString(), "id", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSurvey_Site(), this.getSite(), this.getSite_Surveys(), "site", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurvey_Name(), ecorePackage.getEString(), "name", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurvey_Date(), this.getDate(), "date", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurvey_Surveyor(), ecorePackage.getEString(), "surveyor", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSurvey_Device(), this.getDevice(), null, "device", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurvey_Protocol(), ecorePackage.getEString(), "protocol", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurvey_Kind(), this.getSurveyKind(), "kind", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurvey_SourceFile(), ecorePackage.getEString(), "sourceFile", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurvey_SourceDigest(), ecorePackage.getEString(), "sourceDigest", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSurvey_Samples(), this.getSamples(), null, "samples", null, 0, 1, Survey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		addEOperation(surveyEClass, this.getSampleTable(), "table", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(surveyEClass, ecorePackage.getEBoolean(), "idIsUsable", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(surveyEClass, ecorePackage.getEBoolean(), "surveyorIsInitials", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(surveyEClass, ecorePackage.getEBoolean(), "digestIsSha256", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(surveyEClass, ecorePackage.getEBoolean(), "levelsAreKnown", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(surveyEClass, ecorePackage.getEBoolean(), "accessPointsAreKnown", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(samplesEClass, Samples.class, "Samples", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSamples_Table(), this.getSampleTable(), "table", null, 0, 1, Samples.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(splitEClass, Split.class, "Split", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSplit_Id(), ecorePackage.getEString(), "id", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Scope(), this.getScope(), "scope", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Representation(), ecorePackage.getEString(), "representation", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Distance(), ecorePackage.getEString(), "distance", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Epsilon(), ecorePackage.getEDouble(), "epsilon", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_MinPts(), ecorePackage.getEInt(), "minPts", "1", 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_PcaShare(), ecorePackage.getEDoubleObject(), "pcaShare", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Method(), ecorePackage.getEString(), "method", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Seed(), ecorePackage.getELong(), "seed", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Gate(), ecorePackage.getEDouble(), "gate", "0.1", 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Threshold(), ecorePackage.getEDouble(), "threshold", "0.1", 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Search(), this.getSearch(), "search", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_SearchReason(), ecorePackage.getEString(), "searchReason", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_InRelease(), ecorePackage.getEBoolean(), "inRelease", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSplit_Clusters(), this.getCluster(), null, "clusters", null, 0, -1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Labels(), this.getLabels(), "labels", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSplit_Proposals(), this.getProposals(), "proposals", null, 0, 1, Split.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		op = addEOperation(splitEClass, ecorePackage.getEBoolean(), "idIsUsable", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(splitEClass, ecorePackage.getEBoolean(), "parametersAreInRange", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(clusterEClass, Cluster.class, "Cluster", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCluster_Number(), ecorePackage.getEInt(), "number", null, 0, 1, Cluster.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCluster_Size(), ecorePackage.getEInt(), "size", null, 0, 1, Cluster.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ledgerEClass, Ledger.class, "Ledger", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLedger_Id(), ecorePackage.getEString(), "id", null, 0, 1, Ledger.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLedger_Verdicts(), this.getVerdict(), null, "verdicts", null, 0, -1, Ledger.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		op = addEOperation(ledgerEClass, ecorePackage.getEBoolean(), "idIsUsable", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		op = addEOperation(ledgerEClass, ecorePackage.getEBoolean(), "superseded", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(verdictEClass, Verdict.class, "Verdict", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getVerdict_Id(), ecorePackage.getEString(), "id", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Split(), ecorePackage.getEString(), "split", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Sample(), this.getSampleKey(), "sample", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Cluster(), ecorePackage.getEInt(), "cluster", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Decision(), this.getDecision(), "decision", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_ReasonCode(), ecorePackage.getEString(), "reasonCode", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Text(), ecorePackage.getEString(), "text", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Person(), ecorePackage.getEString(), "person", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Time(), this.getTime(), "time", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Supersedes(), ecorePackage.getEString(), "supersedes", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Round(), this.getRound(), "round", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_SampleContent(), ecorePackage.getEString(), "sampleContent", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Evidence(), ecorePackage.getEString(), "evidence", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_Batch(), ecorePackage.getEString(), "batch", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVerdict_EnteredBy(), ecorePackage.getEString(), "enteredBy", null, 0, 1, Verdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		op = addEOperation(verdictEClass, ecorePackage.getEBoolean(), "isAccountedFor", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(waiverEClass, Waiver.class, "Waiver", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWaiver_Rule(), ecorePackage.getEString(), "rule", null, 0, 1, Waiver.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaiver_ContentKey(), ecorePackage.getEString(), "contentKey", null, 0, 1, Waiver.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaiver_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, Waiver.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaiver_Person(), ecorePackage.getEString(), "person", null, 0, 1, Waiver.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaiver_Time(), this.getTime(), "time", null, 0, 1, Waiver.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		op = addEOperation(waiverEClass, ecorePackage.getEBoolean(), "isAccountedFor", 0, 1, IS_UNIQUE, IS_ORDERED);
		addEParameter(op, ecorePackage.getEDiagnosticChain(), "diagnostics", 0, 1, IS_UNIQUE, IS_ORDERED);
		g1 = createEGenericType(ecorePackage.getEMap());
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		g2 = createEGenericType(ecorePackage.getEJavaObject());
		g1.getETypeArguments().add(g2);
		addEParameter(op, g1, "context", 0, 1, IS_UNIQUE, IS_ORDERED);

		initEClass(conflictEClass, Conflict.class, "Conflict", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getConflict_Place(), ecorePackage.getEString(), "place", null, 0, 1, Conflict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getConflict_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, Conflict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getConflict_Base(), ecorePackage.getEString(), "base", null, 0, 1, Conflict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getConflict_Claims(), this.getClaim(), null, "claims", null, 0, -1, Conflict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(claimEClass, Claim.class, "Claim", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getClaim_Value(), ecorePackage.getEString(), "value", null, 0, 1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Person(), ecorePackage.getEString(), "person", null, 0, 1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Time(), this.getTime(), "time", null, 0, 1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(commentEClass, Comment.class, "Comment", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getComment_Id(), ecorePackage.getEString(), "id", null, 0, 1, Comment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getComment_Subject(), ecorePackage.getEString(), "subject", null, 0, 1, Comment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getComment_Text(), ecorePackage.getEString(), "text", null, 0, 1, Comment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getComment_Person(), ecorePackage.getEString(), "person", null, 0, 1, Comment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getComment_Time(), this.getTime(), "time", null, 0, 1, Comment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(assignmentEClass, Assignment.class, "Assignment", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAssignment_Id(), ecorePackage.getEString(), "id", null, 0, 1, Assignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAssignment_Split(), ecorePackage.getEString(), "split", null, 0, 1, Assignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAssignment_Reviewer(), ecorePackage.getEString(), "reviewer", null, 0, 1, Assignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAssignment_Share(), ecorePackage.getEString(), "share", null, 0, 1, Assignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAssignment_Person(), ecorePackage.getEString(), "person", null, 0, 1, Assignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAssignment_Time(), this.getTime(), "time", null, 0, 1, Assignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ruleSettingEClass, RuleSetting.class, "RuleSetting", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRuleSetting_Rule(), ecorePackage.getEString(), "rule", null, 0, 1, RuleSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRuleSetting_Parameter(), ecorePackage.getEString(), "parameter", null, 0, 1, RuleSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRuleSetting_Value(), ecorePackage.getEString(), "value", null, 0, 1, RuleSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRuleSetting_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, RuleSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(surveyKindEEnum, SurveyKind.class, "SurveyKind");
		addEEnumLiteral(surveyKindEEnum, SurveyKind.TRAINING);
		addEEnumLiteral(surveyKindEEnum, SurveyKind.TEST);

		initEEnum(decisionEEnum, Decision.class, "Decision");
		addEEnumLiteral(decisionEEnum, Decision.DEFER);
		addEEnumLiteral(decisionEEnum, Decision.APPROVE);
		addEEnumLiteral(decisionEEnum, Decision.REJECT);
		addEEnumLiteral(decisionEEnum, Decision.MOVE);
		addEEnumLiteral(decisionEEnum, Decision.POOL);
		addEEnumLiteral(decisionEEnum, Decision.FAULTY);

		initEEnum(roundEEnum, Round.class, "Round");
		addEEnumLiteral(roundEEnum, Round.FIRST);
		addEEnumLiteral(roundEEnum, Round.SECOND);
		addEEnumLiteral(roundEEnum, Round.RESOLUTION);

		// Initialize data types
		initEDataType(sampleTableEDataType, SampleTable.class, "SampleTable", !IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(labelsEDataType, Labels.class, "Labels", !IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(proposalsEDataType, Proposals.class, "Proposals", !IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(outlineEDataType, Outline.class, "Outline", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(placementEDataType, Placement.class, "Placement", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(knownPlaceEDataType, KnownPlace.class, "KnownPlace", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(georeferenceEDataType, Georeference.class, "Georeference", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(scopeEDataType, Scope.class, "Scope", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(searchEDataType, Search.class, "Search", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(sampleKeyEDataType, SampleKey.class, "SampleKey", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(wifiBandEDataType, WifiBand.class, "WifiBand", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dateEDataType, LocalDate.class, "Date", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(timeEDataType, Instant.class, "Time", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// urn:org.cairnfield:words
		createUrnorgAnnotations();
	}

	/**
	 * Initializes the annotations for <b>urn:org.cairnfield:words</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createUrnorgAnnotations() {
		String source = "urn:org.cairnfield:words";
		addAnnotation
		  (archiveEClass,
		   source,
		   new String[] {
			   "label", "Archive"
		   });
		addAnnotation
		  (getArchive_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getArchive_FormatVersion(),
		   source,
		   new String[] {
			   "label", "Format version"
		   });
		addAnnotation
		  (getArchive_ReviewPolicy(),
		   source,
		   new String[] {
			   "label", "Review policy"
		   });
		addAnnotation
		  (getArchive_SiteOrder(),
		   source,
		   new String[] {
			   "label", "Order of sites"
		   });
		addAnnotation
		  (getArchive_Sites(),
		   source,
		   new String[] {
			   "label", "Sites"
		   });
		addAnnotation
		  (getArchive_AccessPoints(),
		   source,
		   new String[] {
			   "label", "Access points"
		   });
		addAnnotation
		  (getArchive_Devices(),
		   source,
		   new String[] {
			   "label", "Devices"
		   });
		addAnnotation
		  (getArchive_Waivers(),
		   source,
		   new String[] {
			   "label", "Waivers"
		   });
		addAnnotation
		  (getArchive_Splits(),
		   source,
		   new String[] {
			   "label", "Splits"
		   });
		addAnnotation
		  (getArchive_Ledgers(),
		   source,
		   new String[] {
			   "label", "Ledgers"
		   });
		addAnnotation
		  (getArchive_Conflicts(),
		   source,
		   new String[] {
			   "label", "Conflicts"
		   });
		addAnnotation
		  (getArchive_Comments(),
		   source,
		   new String[] {
			   "label", "Comments"
		   });
		addAnnotation
		  (getArchive_Assignments(),
		   source,
		   new String[] {
			   "label", "Assignments"
		   });
		addAnnotation
		  (getArchive_RuleSettings(),
		   source,
		   new String[] {
			   "label", "Rule settings"
		   });
		addAnnotation
		  (siteEClass,
		   source,
		   new String[] {
			   "label", "Site"
		   });
		addAnnotation
		  (getSite_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getSite_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getSite_Georeference(),
		   source,
		   new String[] {
			   "label", "Georeference"
		   });
		addAnnotation
		  (getSite_MapFrom(),
		   source,
		   new String[] {
			   "label", "Map from"
		   });
		addAnnotation
		  (getSite_MapUntil(),
		   source,
		   new String[] {
			   "label", "Map until"
		   });
		addAnnotation
		  (getSite_Floors(),
		   source,
		   new String[] {
			   "label", "Floors"
		   });
		addAnnotation
		  (getSite_Surveys(),
		   source,
		   new String[] {
			   "label", "Surveys"
		   });
		addAnnotation
		  (floorEClass,
		   source,
		   new String[] {
			   "label", "Floor"
		   });
		addAnnotation
		  (getFloor_Level(),
		   source,
		   new String[] {
			   "label", "Level"
		   });
		addAnnotation
		  (getFloor_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getFloor_Outline(),
		   source,
		   new String[] {
			   "label", "Outline (x,y in m)"
		   });
		addAnnotation
		  (getFloor_HeightMetres(),
		   source,
		   new String[] {
			   "label", "Storey height (m)"
		   });
		addAnnotation
		  (getFloor_PlanImage(),
		   source,
		   new String[] {
			   "label", "Plan image"
		   });
		addAnnotation
		  (getFloor_PlanPlacement(),
		   source,
		   new String[] {
			   "label", "Plan placement"
		   });
		addAnnotation
		  (accessPointEClass,
		   source,
		   new String[] {
			   "label", "Access point"
		   });
		addAnnotation
		  (getAccessPoint_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getAccessPoint_Address(),
		   source,
		   new String[] {
			   "label", "Address"
		   });
		addAnnotation
		  (getAccessPoint_Band(),
		   source,
		   new String[] {
			   "label", "Band"
		   });
		addAnnotation
		  (getAccessPoint_Channel(),
		   source,
		   new String[] {
			   "label", "Channel"
		   });
		addAnnotation
		  (getAccessPoint_FirstHeard(),
		   source,
		   new String[] {
			   "label", "First heard"
		   });
		addAnnotation
		  (getAccessPoint_LastHeard(),
		   source,
		   new String[] {
			   "label", "Last heard"
		   });
		addAnnotation
		  (getAccessPoint_Group(),
		   source,
		   new String[] {
			   "label", "Radio"
		   });
		addAnnotation
		  (getAccessPoint_Place(),
		   source,
		   new String[] {
			   "label", "Known place"
		   });
		addAnnotation
		  (getAccessPoint_CountsAs(),
		   source,
		   new String[] {
			   "label", "Counts as"
		   });
		addAnnotation
		  (getAccessPoint_Reason(),
		   source,
		   new String[] {
			   "label", "Set aside because"
		   });
		addAnnotation
		  (deviceEClass,
		   source,
		   new String[] {
			   "label", "Device"
		   });
		addAnnotation
		  (getDevice_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getDevice_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getDevice_OffsetDb(),
		   source,
		   new String[] {
			   "label", "RSSI offset (dB)"
		   });
		addAnnotation
		  (getDevice_MapSlope(),
		   source,
		   new String[] {
			   "label", "Slope in the map"
		   });
		addAnnotation
		  (getDevice_MapShiftDb(),
		   source,
		   new String[] {
			   "label", "Shift in the map (dB)"
		   });
		addAnnotation
		  (surveyEClass,
		   source,
		   new String[] {
			   "label", "Survey"
		   });
		addAnnotation
		  (getSurvey_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getSurvey_Site(),
		   source,
		   new String[] {
			   "label", "Site"
		   });
		addAnnotation
		  (getSurvey_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getSurvey_Date(),
		   source,
		   new String[] {
			   "label", "Date"
		   });
		addAnnotation
		  (getSurvey_Surveyor(),
		   source,
		   new String[] {
			   "label", "Surveyor (initials)"
		   });
		addAnnotation
		  (getSurvey_Device(),
		   source,
		   new String[] {
			   "label", "Device"
		   });
		addAnnotation
		  (getSurvey_Protocol(),
		   source,
		   new String[] {
			   "label", "Protocol"
		   });
		addAnnotation
		  (getSurvey_Kind(),
		   source,
		   new String[] {
			   "label", "Kind"
		   });
		addAnnotation
		  (getSurvey_SourceFile(),
		   source,
		   new String[] {
			   "label", "Source file"
		   });
		addAnnotation
		  (getSurvey_SourceDigest(),
		   source,
		   new String[] {
			   "label", "Source digest (SHA-256)"
		   });
		addAnnotation
		  (getSurvey_Samples(),
		   source,
		   new String[] {
			   "label", "Samples"
		   });
		addAnnotation
		  (samplesEClass,
		   source,
		   new String[] {
			   "label", "Samples"
		   });
		addAnnotation
		  (getSamples_Table(),
		   source,
		   new String[] {
			   "label", "Table"
		   });
		addAnnotation
		  (splitEClass,
		   source,
		   new String[] {
			   "label", "Split"
		   });
		addAnnotation
		  (getSplit_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getSplit_Scope(),
		   source,
		   new String[] {
			   "label", "Scope"
		   });
		addAnnotation
		  (getSplit_Representation(),
		   source,
		   new String[] {
			   "label", "Representation"
		   });
		addAnnotation
		  (getSplit_Distance(),
		   source,
		   new String[] {
			   "label", "Distance"
		   });
		addAnnotation
		  (getSplit_Epsilon(),
		   source,
		   new String[] {
			   "label", "\u03b5 (units of the distance)"
		   });
		addAnnotation
		  (getSplit_MinPts(),
		   source,
		   new String[] {
			   "label", "minPts (samples)"
		   });
		addAnnotation
		  (getSplit_PcaShare(),
		   source,
		   new String[] {
			   "label", "Variance kept (share)"
		   });
		addAnnotation
		  (getSplit_Method(),
		   source,
		   new String[] {
			   "label", "Method"
		   });
		addAnnotation
		  (getSplit_Seed(),
		   source,
		   new String[] {
			   "label", "Seed"
		   });
		addAnnotation
		  (getSplit_Gate(),
		   source,
		   new String[] {
			   "label", "Gate"
		   });
		addAnnotation
		  (getSplit_Threshold(),
		   source,
		   new String[] {
			   "label", "Threshold r"
		   });
		addAnnotation
		  (getSplit_Search(),
		   source,
		   new String[] {
			   "label", "Search"
		   });
		addAnnotation
		  (getSplit_SearchReason(),
		   source,
		   new String[] {
			   "label", "Search chosen"
		   });
		addAnnotation
		  (getSplit_InRelease(),
		   source,
		   new String[] {
			   "label", "In the next release"
		   });
		addAnnotation
		  (getSplit_Clusters(),
		   source,
		   new String[] {
			   "label", "Clusters"
		   });
		addAnnotation
		  (getSplit_Labels(),
		   source,
		   new String[] {
			   "label", "Labels"
		   });
		addAnnotation
		  (getSplit_Proposals(),
		   source,
		   new String[] {
			   "label", "Proposals"
		   });
		addAnnotation
		  (clusterEClass,
		   source,
		   new String[] {
			   "label", "Cluster"
		   });
		addAnnotation
		  (getCluster_Number(),
		   source,
		   new String[] {
			   "label", "Number"
		   });
		addAnnotation
		  (getCluster_Size(),
		   source,
		   new String[] {
			   "label", "Size (samples)"
		   });
		addAnnotation
		  (ledgerEClass,
		   source,
		   new String[] {
			   "label", "Ledger"
		   });
		addAnnotation
		  (getLedger_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getLedger_Verdicts(),
		   source,
		   new String[] {
			   "label", "Verdicts"
		   });
		addAnnotation
		  (verdictEClass,
		   source,
		   new String[] {
			   "label", "Verdict"
		   });
		addAnnotation
		  (getVerdict_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getVerdict_Split(),
		   source,
		   new String[] {
			   "label", "Split"
		   });
		addAnnotation
		  (getVerdict_Sample(),
		   source,
		   new String[] {
			   "label", "Sample"
		   });
		addAnnotation
		  (getVerdict_Cluster(),
		   source,
		   new String[] {
			   "label", "Cluster"
		   });
		addAnnotation
		  (getVerdict_Decision(),
		   source,
		   new String[] {
			   "label", "Decision"
		   });
		addAnnotation
		  (getVerdict_ReasonCode(),
		   source,
		   new String[] {
			   "label", "Reason"
		   });
		addAnnotation
		  (getVerdict_Text(),
		   source,
		   new String[] {
			   "label", "Remark"
		   });
		addAnnotation
		  (getVerdict_Person(),
		   source,
		   new String[] {
			   "label", "Person"
		   });
		addAnnotation
		  (getVerdict_Time(),
		   source,
		   new String[] {
			   "label", "Time (UTC)"
		   });
		addAnnotation
		  (getVerdict_Supersedes(),
		   source,
		   new String[] {
			   "label", "Supersedes"
		   });
		addAnnotation
		  (getVerdict_Round(),
		   source,
		   new String[] {
			   "label", "Round"
		   });
		addAnnotation
		  (getVerdict_SampleContent(),
		   source,
		   new String[] {
			   "label", "Sample content"
		   });
		addAnnotation
		  (getVerdict_Evidence(),
		   source,
		   new String[] {
			   "label", "Evidence"
		   });
		addAnnotation
		  (getVerdict_Batch(),
		   source,
		   new String[] {
			   "label", "Batch"
		   });
		addAnnotation
		  (getVerdict_EnteredBy(),
		   source,
		   new String[] {
			   "label", "Entered by"
		   });
		addAnnotation
		  (waiverEClass,
		   source,
		   new String[] {
			   "label", "Waiver"
		   });
		addAnnotation
		  (getWaiver_Rule(),
		   source,
		   new String[] {
			   "label", "Rule"
		   });
		addAnnotation
		  (getWaiver_ContentKey(),
		   source,
		   new String[] {
			   "label", "Content key"
		   });
		addAnnotation
		  (getWaiver_Reason(),
		   source,
		   new String[] {
			   "label", "Reason"
		   });
		addAnnotation
		  (getWaiver_Person(),
		   source,
		   new String[] {
			   "label", "Person"
		   });
		addAnnotation
		  (getWaiver_Time(),
		   source,
		   new String[] {
			   "label", "Time (UTC)"
		   });
		addAnnotation
		  (conflictEClass,
		   source,
		   new String[] {
			   "label", "Conflict"
		   });
		addAnnotation
		  (getConflict_Place(),
		   source,
		   new String[] {
			   "label", "Place"
		   });
		addAnnotation
		  (getConflict_Unit(),
		   source,
		   new String[] {
			   "label", "Unit"
		   });
		addAnnotation
		  (getConflict_Base(),
		   source,
		   new String[] {
			   "label", "Before"
		   });
		addAnnotation
		  (getConflict_Claims(),
		   source,
		   new String[] {
			   "label", "Claims"
		   });
		addAnnotation
		  (claimEClass,
		   source,
		   new String[] {
			   "label", "Claim"
		   });
		addAnnotation
		  (getClaim_Value(),
		   source,
		   new String[] {
			   "label", "Value"
		   });
		addAnnotation
		  (getClaim_Person(),
		   source,
		   new String[] {
			   "label", "Person"
		   });
		addAnnotation
		  (getClaim_Time(),
		   source,
		   new String[] {
			   "label", "Time (UTC)"
		   });
		addAnnotation
		  (commentEClass,
		   source,
		   new String[] {
			   "label", "Comment"
		   });
		addAnnotation
		  (getComment_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getComment_Subject(),
		   source,
		   new String[] {
			   "label", "Subject"
		   });
		addAnnotation
		  (getComment_Text(),
		   source,
		   new String[] {
			   "label", "Text"
		   });
		addAnnotation
		  (getComment_Person(),
		   source,
		   new String[] {
			   "label", "Person"
		   });
		addAnnotation
		  (getComment_Time(),
		   source,
		   new String[] {
			   "label", "Time (UTC)"
		   });
		addAnnotation
		  (assignmentEClass,
		   source,
		   new String[] {
			   "label", "Assignment"
		   });
		addAnnotation
		  (getAssignment_Id(),
		   source,
		   new String[] {
			   "label", "Id"
		   });
		addAnnotation
		  (getAssignment_Split(),
		   source,
		   new String[] {
			   "label", "Split"
		   });
		addAnnotation
		  (getAssignment_Reviewer(),
		   source,
		   new String[] {
			   "label", "Reviewer"
		   });
		addAnnotation
		  (getAssignment_Share(),
		   source,
		   new String[] {
			   "label", "Share"
		   });
		addAnnotation
		  (getAssignment_Person(),
		   source,
		   new String[] {
			   "label", "Person"
		   });
		addAnnotation
		  (getAssignment_Time(),
		   source,
		   new String[] {
			   "label", "Time (UTC)"
		   });
		addAnnotation
		  (ruleSettingEClass,
		   source,
		   new String[] {
			   "label", "Rule setting"
		   });
		addAnnotation
		  (getRuleSetting_Rule(),
		   source,
		   new String[] {
			   "label", "Rule"
		   });
		addAnnotation
		  (getRuleSetting_Parameter(),
		   source,
		   new String[] {
			   "label", "Parameter"
		   });
		addAnnotation
		  (getRuleSetting_Value(),
		   source,
		   new String[] {
			   "label", "Value"
		   });
		addAnnotation
		  (getRuleSetting_Reason(),
		   source,
		   new String[] {
			   "label", "Reason"
		   });
	}

} //ModelPackageImpl
