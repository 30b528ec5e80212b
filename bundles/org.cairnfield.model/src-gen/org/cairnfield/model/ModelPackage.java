/**
 */
package org.cairnfield.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * An archive of radio maps. Lengths are in metres, levels in dBm, differences of levels in dB, angles in degrees. Ids are stable text, see org.cairnfield.model.values.Ids. What is many or long, samples and labels, is one immutable value in columns and not an object each.
 * <!-- end-model-doc -->
 * @see org.cairnfield.model.ModelFactory
 * @model kind="package"
 * @generated
 */
public interface ModelPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:org.cairnfield:model:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "cairnfield";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ModelPackage eINSTANCE = org.cairnfield.model.impl.ModelPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.ArchiveImpl <em>Archive</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.ArchiveImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getArchive()
	 * @generated
	 */
	int ARCHIVE = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__NAME = 0;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__FORMAT_VERSION = 1;

	/**
	 * The feature id for the '<em><b>Review Policy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__REVIEW_POLICY = 2;

	/**
	 * The feature id for the '<em><b>Site Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__SITE_ORDER = 3;

	/**
	 * The feature id for the '<em><b>Sites</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__SITES = 4;

	/**
	 * The feature id for the '<em><b>Access Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__ACCESS_POINTS = 5;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__DEVICES = 6;

	/**
	 * The feature id for the '<em><b>Waivers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__WAIVERS = 7;

	/**
	 * The feature id for the '<em><b>Splits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__SPLITS = 8;

	/**
	 * The feature id for the '<em><b>Ledgers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__LEDGERS = 9;

	/**
	 * The feature id for the '<em><b>Conflicts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__CONFLICTS = 10;

	/**
	 * The feature id for the '<em><b>Comments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__COMMENTS = 11;

	/**
	 * The feature id for the '<em><b>Assignments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__ASSIGNMENTS = 12;

	/**
	 * The feature id for the '<em><b>Rule Settings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE__RULE_SETTINGS = 13;

	/**
	 * The number of structural features of the '<em>Archive</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARCHIVE_FEATURE_COUNT = 14;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.SiteImpl <em>Site</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.SiteImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSite()
	 * @generated
	 */
	int SITE = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ID = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__NAME = 1;

	/**
	 * The feature id for the '<em><b>Georeference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__GEOREFERENCE = 2;

	/**
	 * The feature id for the '<em><b>Map From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__MAP_FROM = 3;

	/**
	 * The feature id for the '<em><b>Map Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__MAP_UNTIL = 4;

	/**
	 * The feature id for the '<em><b>Floors</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__FLOORS = 5;

	/**
	 * The feature id for the '<em><b>Surveys</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__SURVEYS = 6;

	/**
	 * The number of structural features of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_FEATURE_COUNT = 7;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.FloorImpl <em>Floor</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.FloorImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getFloor()
	 * @generated
	 */
	int FLOOR = 2;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__LEVEL = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__NAME = 1;

	/**
	 * The feature id for the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__OUTLINE = 2;

	/**
	 * The feature id for the '<em><b>Height Metres</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__HEIGHT_METRES = 3;

	/**
	 * The feature id for the '<em><b>Plan Image</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__PLAN_IMAGE = 4;

	/**
	 * The feature id for the '<em><b>Plan Placement</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR__PLAN_PLACEMENT = 5;

	/**
	 * The number of structural features of the '<em>Floor</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOOR_FEATURE_COUNT = 6;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.AccessPointImpl <em>Access Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.AccessPointImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getAccessPoint()
	 * @generated
	 */
	int ACCESS_POINT = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__ID = 0;

	/**
	 * The feature id for the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__ADDRESS = 1;

	/**
	 * The feature id for the '<em><b>Band</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__BAND = 2;

	/**
	 * The feature id for the '<em><b>Channel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__CHANNEL = 3;

	/**
	 * The feature id for the '<em><b>First Heard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__FIRST_HEARD = 4;

	/**
	 * The feature id for the '<em><b>Last Heard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__LAST_HEARD = 5;

	/**
	 * The feature id for the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__GROUP = 6;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__PLACE = 7;

	/**
	 * The feature id for the '<em><b>Counts As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__COUNTS_AS = 8;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT__REASON = 9;

	/**
	 * The number of structural features of the '<em>Access Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_POINT_FEATURE_COUNT = 10;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.DeviceImpl <em>Device</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.DeviceImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getDevice()
	 * @generated
	 */
	int DEVICE = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__ID = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__NAME = 1;

	/**
	 * The feature id for the '<em><b>Offset Db</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__OFFSET_DB = 2;

	/**
	 * The feature id for the '<em><b>Map Slope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MAP_SLOPE = 3;

	/**
	 * The feature id for the '<em><b>Map Shift Db</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MAP_SHIFT_DB = 4;

	/**
	 * The number of structural features of the '<em>Device</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.SurveyImpl <em>Survey</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.SurveyImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSurvey()
	 * @generated
	 */
	int SURVEY = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__ID = 0;

	/**
	 * The feature id for the '<em><b>Site</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__SITE = 1;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__NAME = 2;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__DATE = 3;

	/**
	 * The feature id for the '<em><b>Surveyor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__SURVEYOR = 4;

	/**
	 * The feature id for the '<em><b>Device</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__DEVICE = 5;

	/**
	 * The feature id for the '<em><b>Protocol</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__PROTOCOL = 6;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__KIND = 7;

	/**
	 * The feature id for the '<em><b>Source File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__SOURCE_FILE = 8;

	/**
	 * The feature id for the '<em><b>Source Digest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__SOURCE_DIGEST = 9;

	/**
	 * The feature id for the '<em><b>Samples</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY__SAMPLES = 10;

	/**
	 * The number of structural features of the '<em>Survey</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_FEATURE_COUNT = 11;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.SamplesImpl <em>Samples</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.SamplesImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSamples()
	 * @generated
	 */
	int SAMPLES = 6;

	/**
	 * The feature id for the '<em><b>Table</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLES__TABLE = 0;

	/**
	 * The number of structural features of the '<em>Samples</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLES_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.SplitImpl <em>Split</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.SplitImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSplit()
	 * @generated
	 */
	int SPLIT = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__ID = 0;

	/**
	 * The feature id for the '<em><b>Scope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__SCOPE = 1;

	/**
	 * The feature id for the '<em><b>Representation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__REPRESENTATION = 2;

	/**
	 * The feature id for the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__DISTANCE = 3;

	/**
	 * The feature id for the '<em><b>Epsilon</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__EPSILON = 4;

	/**
	 * The feature id for the '<em><b>Min Pts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__MIN_PTS = 5;

	/**
	 * The feature id for the '<em><b>Pca Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__PCA_SHARE = 6;

	/**
	 * The feature id for the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__METHOD = 7;

	/**
	 * The feature id for the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__SEED = 8;

	/**
	 * The feature id for the '<em><b>Gate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__GATE = 9;

	/**
	 * The feature id for the '<em><b>Threshold</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__THRESHOLD = 10;

	/**
	 * The feature id for the '<em><b>Search</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__SEARCH = 11;

	/**
	 * The feature id for the '<em><b>Search Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__SEARCH_REASON = 12;

	/**
	 * The feature id for the '<em><b>In Release</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__IN_RELEASE = 13;

	/**
	 * The feature id for the '<em><b>Clusters</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__CLUSTERS = 14;

	/**
	 * The feature id for the '<em><b>Labels</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__LABELS = 15;

	/**
	 * The feature id for the '<em><b>Proposals</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT__PROPOSALS = 16;

	/**
	 * The number of structural features of the '<em>Split</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPLIT_FEATURE_COUNT = 17;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.ClusterImpl <em>Cluster</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.ClusterImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getCluster()
	 * @generated
	 */
	int CLUSTER = 8;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLUSTER__NUMBER = 0;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLUSTER__SIZE = 1;

	/**
	 * The number of structural features of the '<em>Cluster</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLUSTER_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.LedgerImpl <em>Ledger</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.LedgerImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getLedger()
	 * @generated
	 */
	int LEDGER = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEDGER__ID = 0;

	/**
	 * The feature id for the '<em><b>Verdicts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEDGER__VERDICTS = 1;

	/**
	 * The number of structural features of the '<em>Ledger</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEDGER_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.VerdictImpl <em>Verdict</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.VerdictImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getVerdict()
	 * @generated
	 */
	int VERDICT = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__ID = 0;

	/**
	 * The feature id for the '<em><b>Split</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__SPLIT = 1;

	/**
	 * The feature id for the '<em><b>Sample</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__SAMPLE = 2;

	/**
	 * The feature id for the '<em><b>Cluster</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__CLUSTER = 3;

	/**
	 * The feature id for the '<em><b>Decision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__DECISION = 4;

	/**
	 * The feature id for the '<em><b>Reason Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__REASON_CODE = 5;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__TEXT = 6;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__PERSON = 7;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__TIME = 8;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__SUPERSEDES = 9;

	/**
	 * The feature id for the '<em><b>Round</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__ROUND = 10;

	/**
	 * The feature id for the '<em><b>Sample Content</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__SAMPLE_CONTENT = 11;

	/**
	 * The feature id for the '<em><b>Evidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__EVIDENCE = 12;

	/**
	 * The feature id for the '<em><b>Batch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__BATCH = 13;

	/**
	 * The feature id for the '<em><b>Entered By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT__ENTERED_BY = 14;

	/**
	 * The number of structural features of the '<em>Verdict</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VERDICT_FEATURE_COUNT = 15;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.WaiverImpl <em>Waiver</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.WaiverImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getWaiver()
	 * @generated
	 */
	int WAIVER = 11;

	/**
	 * The feature id for the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIVER__RULE = 0;

	/**
	 * The feature id for the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIVER__CONTENT_KEY = 1;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIVER__REASON = 2;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIVER__PERSON = 3;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIVER__TIME = 4;

	/**
	 * The number of structural features of the '<em>Waiver</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIVER_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.ConflictImpl <em>Conflict</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.ConflictImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getConflict()
	 * @generated
	 */
	int CONFLICT = 12;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONFLICT__PLACE = 0;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONFLICT__UNIT = 1;

	/**
	 * The feature id for the '<em><b>Base</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONFLICT__BASE = 2;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONFLICT__CLAIMS = 3;

	/**
	 * The number of structural features of the '<em>Conflict</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONFLICT_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.ClaimImpl <em>Claim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.ClaimImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getClaim()
	 * @generated
	 */
	int CLAIM = 13;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__VALUE = 0;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__PERSON = 1;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__TIME = 2;

	/**
	 * The number of structural features of the '<em>Claim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_FEATURE_COUNT = 3;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.CommentImpl <em>Comment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.CommentImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getComment()
	 * @generated
	 */
	int COMMENT = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMENT__ID = 0;

	/**
	 * The feature id for the '<em><b>Subject</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMENT__SUBJECT = 1;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMENT__TEXT = 2;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMENT__PERSON = 3;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMENT__TIME = 4;

	/**
	 * The number of structural features of the '<em>Comment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMENT_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.AssignmentImpl <em>Assignment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.AssignmentImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getAssignment()
	 * @generated
	 */
	int ASSIGNMENT = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASSIGNMENT__ID = 0;

	/**
	 * The feature id for the '<em><b>Split</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASSIGNMENT__SPLIT = 1;

	/**
	 * The feature id for the '<em><b>Reviewer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASSIGNMENT__REVIEWER = 2;

	/**
	 * The feature id for the '<em><b>Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASSIGNMENT__SHARE = 3;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASSIGNMENT__PERSON = 4;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASSIGNMENT__TIME = 5;

	/**
	 * The number of structural features of the '<em>Assignment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASSIGNMENT_FEATURE_COUNT = 6;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.impl.RuleSettingImpl <em>Rule Setting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.impl.RuleSettingImpl
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getRuleSetting()
	 * @generated
	 */
	int RULE_SETTING = 16;

	/**
	 * The feature id for the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SETTING__RULE = 0;

	/**
	 * The feature id for the '<em><b>Parameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SETTING__PARAMETER = 1;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SETTING__VALUE = 2;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SETTING__REASON = 3;

	/**
	 * The number of structural features of the '<em>Rule Setting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SETTING_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.SurveyKind <em>Survey Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.SurveyKind
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSurveyKind()
	 * @generated
	 */
	int SURVEY_KIND = 17;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.Decision <em>Decision</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.Decision
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getDecision()
	 * @generated
	 */
	int DECISION = 18;

	/**
	 * The meta object id for the '{@link org.cairnfield.model.Round <em>Round</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.Round
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getRound()
	 * @generated
	 */
	int ROUND = 19;

	/**
	 * The meta object id for the '<em>Sample Table</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.SampleTable
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSampleTable()
	 * @generated
	 */
	int SAMPLE_TABLE = 20;

	/**
	 * The meta object id for the '<em>Labels</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.Labels
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getLabels()
	 * @generated
	 */
	int LABELS = 21;

	/**
	 * The meta object id for the '<em>Proposals</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.Proposals
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getProposals()
	 * @generated
	 */
	int PROPOSALS = 22;

	/**
	 * The meta object id for the '<em>Outline</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.Outline
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getOutline()
	 * @generated
	 */
	int OUTLINE = 23;

	/**
	 * The meta object id for the '<em>Placement</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.Placement
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getPlacement()
	 * @generated
	 */
	int PLACEMENT = 24;

	/**
	 * The meta object id for the '<em>Known Place</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.KnownPlace
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getKnownPlace()
	 * @generated
	 */
	int KNOWN_PLACE = 25;

	/**
	 * The meta object id for the '<em>Georeference</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.Georeference
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getGeoreference()
	 * @generated
	 */
	int GEOREFERENCE = 26;

	/**
	 * The meta object id for the '<em>Scope</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.Scope
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getScope()
	 * @generated
	 */
	int SCOPE = 27;

	/**
	 * The meta object id for the '<em>Search</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.core.match.Search
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSearch()
	 * @generated
	 */
	int SEARCH = 28;

	/**
	 * The meta object id for the '<em>Sample Key</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.model.values.SampleKey
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getSampleKey()
	 * @generated
	 */
	int SAMPLE_KEY = 29;

	/**
	 * The meta object id for the '<em>Wifi Band</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.cairnfield.core.radio.WifiBand
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getWifiBand()
	 * @generated
	 */
	int WIFI_BAND = 30;

	/**
	 * The meta object id for the '<em>Date</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getDate()
	 * @generated
	 */
	int DATE = 31;

	/**
	 * The meta object id for the '<em>Time</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.Instant
	 * @see org.cairnfield.model.impl.ModelPackageImpl#getTime()
	 * @generated
	 */
	int TIME = 32;


	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Archive <em>Archive</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Archive</em>'.
	 * @see org.cairnfield.model.Archive
	 * @generated
	 */
	EClass getArchive();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Archive#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.cairnfield.model.Archive#getName()
	 * @see #getArchive()
	 * @generated
	 */
	EAttribute getArchive_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Archive#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see org.cairnfield.model.Archive#getFormatVersion()
	 * @see #getArchive()
	 * @generated
	 */
	EAttribute getArchive_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Archive#getReviewPolicy <em>Review Policy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Review Policy</em>'.
	 * @see org.cairnfield.model.Archive#getReviewPolicy()
	 * @see #getArchive()
	 * @generated
	 */
	EAttribute getArchive_ReviewPolicy();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Archive#getSiteOrder <em>Site Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Site Order</em>'.
	 * @see org.cairnfield.model.Archive#getSiteOrder()
	 * @see #getArchive()
	 * @generated
	 */
	EAttribute getArchive_SiteOrder();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getSites <em>Sites</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sites</em>'.
	 * @see org.cairnfield.model.Archive#getSites()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Sites();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getAccessPoints <em>Access Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Access Points</em>'.
	 * @see org.cairnfield.model.Archive#getAccessPoints()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_AccessPoints();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Devices</em>'.
	 * @see org.cairnfield.model.Archive#getDevices()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Devices();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getWaivers <em>Waivers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Waivers</em>'.
	 * @see org.cairnfield.model.Archive#getWaivers()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Waivers();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getSplits <em>Splits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Splits</em>'.
	 * @see org.cairnfield.model.Archive#getSplits()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Splits();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getLedgers <em>Ledgers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ledgers</em>'.
	 * @see org.cairnfield.model.Archive#getLedgers()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Ledgers();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getConflicts <em>Conflicts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Conflicts</em>'.
	 * @see org.cairnfield.model.Archive#getConflicts()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Conflicts();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getComments <em>Comments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Comments</em>'.
	 * @see org.cairnfield.model.Archive#getComments()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Comments();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getAssignments <em>Assignments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Assignments</em>'.
	 * @see org.cairnfield.model.Archive#getAssignments()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_Assignments();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Archive#getRuleSettings <em>Rule Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Rule Settings</em>'.
	 * @see org.cairnfield.model.Archive#getRuleSettings()
	 * @see #getArchive()
	 * @generated
	 */
	EReference getArchive_RuleSettings();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Site <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Site</em>'.
	 * @see org.cairnfield.model.Site
	 * @generated
	 */
	EClass getSite();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Site#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Site#getId()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Site#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.cairnfield.model.Site#getName()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Site#getGeoreference <em>Georeference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Georeference</em>'.
	 * @see org.cairnfield.model.Site#getGeoreference()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Georeference();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Site#getMapFrom <em>Map From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Map From</em>'.
	 * @see org.cairnfield.model.Site#getMapFrom()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_MapFrom();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Site#getMapUntil <em>Map Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Map Until</em>'.
	 * @see org.cairnfield.model.Site#getMapUntil()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_MapUntil();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Site#getFloors <em>Floors</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Floors</em>'.
	 * @see org.cairnfield.model.Site#getFloors()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Floors();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Site#getSurveys <em>Surveys</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Surveys</em>'.
	 * @see org.cairnfield.model.Site#getSurveys()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Surveys();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Floor <em>Floor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Floor</em>'.
	 * @see org.cairnfield.model.Floor
	 * @generated
	 */
	EClass getFloor();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Floor#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.cairnfield.model.Floor#getLevel()
	 * @see #getFloor()
	 * @generated
	 */
	EAttribute getFloor_Level();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Floor#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.cairnfield.model.Floor#getName()
	 * @see #getFloor()
	 * @generated
	 */
	EAttribute getFloor_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Floor#getOutline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outline</em>'.
	 * @see org.cairnfield.model.Floor#getOutline()
	 * @see #getFloor()
	 * @generated
	 */
	EAttribute getFloor_Outline();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Floor#getHeightMetres <em>Height Metres</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Metres</em>'.
	 * @see org.cairnfield.model.Floor#getHeightMetres()
	 * @see #getFloor()
	 * @generated
	 */
	EAttribute getFloor_HeightMetres();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Floor#getPlanImage <em>Plan Image</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plan Image</em>'.
	 * @see org.cairnfield.model.Floor#getPlanImage()
	 * @see #getFloor()
	 * @generated
	 */
	EAttribute getFloor_PlanImage();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Floor#getPlanPlacement <em>Plan Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plan Placement</em>'.
	 * @see org.cairnfield.model.Floor#getPlanPlacement()
	 * @see #getFloor()
	 * @generated
	 */
	EAttribute getFloor_PlanPlacement();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.AccessPoint <em>Access Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Access Point</em>'.
	 * @see org.cairnfield.model.AccessPoint
	 * @generated
	 */
	EClass getAccessPoint();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.AccessPoint#getId()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getAddress <em>Address</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Address</em>'.
	 * @see org.cairnfield.model.AccessPoint#getAddress()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_Address();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getBand <em>Band</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Band</em>'.
	 * @see org.cairnfield.model.AccessPoint#getBand()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_Band();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getChannel <em>Channel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Channel</em>'.
	 * @see org.cairnfield.model.AccessPoint#getChannel()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_Channel();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getFirstHeard <em>First Heard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>First Heard</em>'.
	 * @see org.cairnfield.model.AccessPoint#getFirstHeard()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_FirstHeard();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getLastHeard <em>Last Heard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Heard</em>'.
	 * @see org.cairnfield.model.AccessPoint#getLastHeard()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_LastHeard();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getGroup <em>Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group</em>'.
	 * @see org.cairnfield.model.AccessPoint#getGroup()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_Group();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see org.cairnfield.model.AccessPoint#getPlace()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_Place();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getCountsAs <em>Counts As</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Counts As</em>'.
	 * @see org.cairnfield.model.AccessPoint#getCountsAs()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_CountsAs();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.AccessPoint#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.cairnfield.model.AccessPoint#getReason()
	 * @see #getAccessPoint()
	 * @generated
	 */
	EAttribute getAccessPoint_Reason();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Device <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device</em>'.
	 * @see org.cairnfield.model.Device
	 * @generated
	 */
	EClass getDevice();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Device#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Device#getId()
	 * @see #getDevice()
	 * @generated
	 */
	EAttribute getDevice_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Device#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.cairnfield.model.Device#getName()
	 * @see #getDevice()
	 * @generated
	 */
	EAttribute getDevice_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Device#getOffsetDb <em>Offset Db</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offset Db</em>'.
	 * @see org.cairnfield.model.Device#getOffsetDb()
	 * @see #getDevice()
	 * @generated
	 */
	EAttribute getDevice_OffsetDb();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Device#getMapSlope <em>Map Slope</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Map Slope</em>'.
	 * @see org.cairnfield.model.Device#getMapSlope()
	 * @see #getDevice()
	 * @generated
	 */
	EAttribute getDevice_MapSlope();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Device#getMapShiftDb <em>Map Shift Db</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Map Shift Db</em>'.
	 * @see org.cairnfield.model.Device#getMapShiftDb()
	 * @see #getDevice()
	 * @generated
	 */
	EAttribute getDevice_MapShiftDb();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Survey <em>Survey</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Survey</em>'.
	 * @see org.cairnfield.model.Survey
	 * @generated
	 */
	EClass getSurvey();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Survey#getId()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_Id();

	/**
	 * Returns the meta object for the container reference '{@link org.cairnfield.model.Survey#getSite <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Site</em>'.
	 * @see org.cairnfield.model.Survey#getSite()
	 * @see #getSurvey()
	 * @generated
	 */
	EReference getSurvey_Site();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.cairnfield.model.Survey#getName()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.cairnfield.model.Survey#getDate()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getSurveyor <em>Surveyor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Surveyor</em>'.
	 * @see org.cairnfield.model.Survey#getSurveyor()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_Surveyor();

	/**
	 * Returns the meta object for the reference '{@link org.cairnfield.model.Survey#getDevice <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Device</em>'.
	 * @see org.cairnfield.model.Survey#getDevice()
	 * @see #getSurvey()
	 * @generated
	 */
	EReference getSurvey_Device();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getProtocol <em>Protocol</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protocol</em>'.
	 * @see org.cairnfield.model.Survey#getProtocol()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_Protocol();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.cairnfield.model.Survey#getKind()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getSourceFile <em>Source File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source File</em>'.
	 * @see org.cairnfield.model.Survey#getSourceFile()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_SourceFile();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Survey#getSourceDigest <em>Source Digest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source Digest</em>'.
	 * @see org.cairnfield.model.Survey#getSourceDigest()
	 * @see #getSurvey()
	 * @generated
	 */
	EAttribute getSurvey_SourceDigest();

	/**
	 * Returns the meta object for the containment reference '{@link org.cairnfield.model.Survey#getSamples <em>Samples</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Samples</em>'.
	 * @see org.cairnfield.model.Survey#getSamples()
	 * @see #getSurvey()
	 * @generated
	 */
	EReference getSurvey_Samples();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Samples <em>Samples</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Samples</em>'.
	 * @see org.cairnfield.model.Samples
	 * @generated
	 */
	EClass getSamples();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Samples#getTable <em>Table</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Table</em>'.
	 * @see org.cairnfield.model.Samples#getTable()
	 * @see #getSamples()
	 * @generated
	 */
	EAttribute getSamples_Table();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Split <em>Split</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Split</em>'.
	 * @see org.cairnfield.model.Split
	 * @generated
	 */
	EClass getSplit();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Split#getId()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getScope <em>Scope</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scope</em>'.
	 * @see org.cairnfield.model.Split#getScope()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Scope();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getRepresentation <em>Representation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Representation</em>'.
	 * @see org.cairnfield.model.Split#getRepresentation()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Representation();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getDistance <em>Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance</em>'.
	 * @see org.cairnfield.model.Split#getDistance()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Distance();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getEpsilon <em>Epsilon</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Epsilon</em>'.
	 * @see org.cairnfield.model.Split#getEpsilon()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Epsilon();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getMinPts <em>Min Pts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Min Pts</em>'.
	 * @see org.cairnfield.model.Split#getMinPts()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_MinPts();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getPcaShare <em>Pca Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pca Share</em>'.
	 * @see org.cairnfield.model.Split#getPcaShare()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_PcaShare();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getMethod <em>Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Method</em>'.
	 * @see org.cairnfield.model.Split#getMethod()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Method();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getSeed <em>Seed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seed</em>'.
	 * @see org.cairnfield.model.Split#getSeed()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Seed();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getGate <em>Gate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gate</em>'.
	 * @see org.cairnfield.model.Split#getGate()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Gate();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getThreshold <em>Threshold</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Threshold</em>'.
	 * @see org.cairnfield.model.Split#getThreshold()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Threshold();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getSearch <em>Search</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Search</em>'.
	 * @see org.cairnfield.model.Split#getSearch()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Search();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getSearchReason <em>Search Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Search Reason</em>'.
	 * @see org.cairnfield.model.Split#getSearchReason()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_SearchReason();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#isInRelease <em>In Release</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Release</em>'.
	 * @see org.cairnfield.model.Split#isInRelease()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_InRelease();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Split#getClusters <em>Clusters</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Clusters</em>'.
	 * @see org.cairnfield.model.Split#getClusters()
	 * @see #getSplit()
	 * @generated
	 */
	EReference getSplit_Clusters();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getLabels <em>Labels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Labels</em>'.
	 * @see org.cairnfield.model.Split#getLabels()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Labels();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Split#getProposals <em>Proposals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Proposals</em>'.
	 * @see org.cairnfield.model.Split#getProposals()
	 * @see #getSplit()
	 * @generated
	 */
	EAttribute getSplit_Proposals();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Cluster <em>Cluster</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cluster</em>'.
	 * @see org.cairnfield.model.Cluster
	 * @generated
	 */
	EClass getCluster();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Cluster#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see org.cairnfield.model.Cluster#getNumber()
	 * @see #getCluster()
	 * @generated
	 */
	EAttribute getCluster_Number();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Cluster#getSize <em>Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size</em>'.
	 * @see org.cairnfield.model.Cluster#getSize()
	 * @see #getCluster()
	 * @generated
	 */
	EAttribute getCluster_Size();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Ledger <em>Ledger</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ledger</em>'.
	 * @see org.cairnfield.model.Ledger
	 * @generated
	 */
	EClass getLedger();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Ledger#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Ledger#getId()
	 * @see #getLedger()
	 * @generated
	 */
	EAttribute getLedger_Id();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Ledger#getVerdicts <em>Verdicts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Verdicts</em>'.
	 * @see org.cairnfield.model.Ledger#getVerdicts()
	 * @see #getLedger()
	 * @generated
	 */
	EReference getLedger_Verdicts();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Verdict <em>Verdict</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Verdict</em>'.
	 * @see org.cairnfield.model.Verdict
	 * @generated
	 */
	EClass getVerdict();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Verdict#getId()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getSplit <em>Split</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Split</em>'.
	 * @see org.cairnfield.model.Verdict#getSplit()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Split();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getSample <em>Sample</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sample</em>'.
	 * @see org.cairnfield.model.Verdict#getSample()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Sample();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getCluster <em>Cluster</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cluster</em>'.
	 * @see org.cairnfield.model.Verdict#getCluster()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Cluster();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getDecision <em>Decision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Decision</em>'.
	 * @see org.cairnfield.model.Verdict#getDecision()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Decision();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getReasonCode <em>Reason Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason Code</em>'.
	 * @see org.cairnfield.model.Verdict#getReasonCode()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_ReasonCode();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.cairnfield.model.Verdict#getText()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Text();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see org.cairnfield.model.Verdict#getPerson()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Person();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time</em>'.
	 * @see org.cairnfield.model.Verdict#getTime()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Time();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getSupersedes <em>Supersedes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supersedes</em>'.
	 * @see org.cairnfield.model.Verdict#getSupersedes()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Supersedes();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getRound <em>Round</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Round</em>'.
	 * @see org.cairnfield.model.Verdict#getRound()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Round();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getSampleContent <em>Sample Content</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sample Content</em>'.
	 * @see org.cairnfield.model.Verdict#getSampleContent()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_SampleContent();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getEvidence <em>Evidence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Evidence</em>'.
	 * @see org.cairnfield.model.Verdict#getEvidence()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Evidence();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getBatch <em>Batch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Batch</em>'.
	 * @see org.cairnfield.model.Verdict#getBatch()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_Batch();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Verdict#getEnteredBy <em>Entered By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Entered By</em>'.
	 * @see org.cairnfield.model.Verdict#getEnteredBy()
	 * @see #getVerdict()
	 * @generated
	 */
	EAttribute getVerdict_EnteredBy();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Waiver <em>Waiver</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Waiver</em>'.
	 * @see org.cairnfield.model.Waiver
	 * @generated
	 */
	EClass getWaiver();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Waiver#getRule <em>Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule</em>'.
	 * @see org.cairnfield.model.Waiver#getRule()
	 * @see #getWaiver()
	 * @generated
	 */
	EAttribute getWaiver_Rule();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Waiver#getContentKey <em>Content Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Content Key</em>'.
	 * @see org.cairnfield.model.Waiver#getContentKey()
	 * @see #getWaiver()
	 * @generated
	 */
	EAttribute getWaiver_ContentKey();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Waiver#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.cairnfield.model.Waiver#getReason()
	 * @see #getWaiver()
	 * @generated
	 */
	EAttribute getWaiver_Reason();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Waiver#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see org.cairnfield.model.Waiver#getPerson()
	 * @see #getWaiver()
	 * @generated
	 */
	EAttribute getWaiver_Person();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Waiver#getTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time</em>'.
	 * @see org.cairnfield.model.Waiver#getTime()
	 * @see #getWaiver()
	 * @generated
	 */
	EAttribute getWaiver_Time();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Conflict <em>Conflict</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Conflict</em>'.
	 * @see org.cairnfield.model.Conflict
	 * @generated
	 */
	EClass getConflict();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Conflict#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see org.cairnfield.model.Conflict#getPlace()
	 * @see #getConflict()
	 * @generated
	 */
	EAttribute getConflict_Place();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Conflict#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.cairnfield.model.Conflict#getUnit()
	 * @see #getConflict()
	 * @generated
	 */
	EAttribute getConflict_Unit();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Conflict#getBase <em>Base</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base</em>'.
	 * @see org.cairnfield.model.Conflict#getBase()
	 * @see #getConflict()
	 * @generated
	 */
	EAttribute getConflict_Base();

	/**
	 * Returns the meta object for the containment reference list '{@link org.cairnfield.model.Conflict#getClaims <em>Claims</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Claims</em>'.
	 * @see org.cairnfield.model.Conflict#getClaims()
	 * @see #getConflict()
	 * @generated
	 */
	EReference getConflict_Claims();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Claim <em>Claim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Claim</em>'.
	 * @see org.cairnfield.model.Claim
	 * @generated
	 */
	EClass getClaim();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Claim#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.cairnfield.model.Claim#getValue()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Value();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Claim#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see org.cairnfield.model.Claim#getPerson()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Person();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Claim#getTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time</em>'.
	 * @see org.cairnfield.model.Claim#getTime()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Time();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Comment <em>Comment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Comment</em>'.
	 * @see org.cairnfield.model.Comment
	 * @generated
	 */
	EClass getComment();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Comment#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Comment#getId()
	 * @see #getComment()
	 * @generated
	 */
	EAttribute getComment_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Comment#getSubject <em>Subject</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Subject</em>'.
	 * @see org.cairnfield.model.Comment#getSubject()
	 * @see #getComment()
	 * @generated
	 */
	EAttribute getComment_Subject();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Comment#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.cairnfield.model.Comment#getText()
	 * @see #getComment()
	 * @generated
	 */
	EAttribute getComment_Text();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Comment#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see org.cairnfield.model.Comment#getPerson()
	 * @see #getComment()
	 * @generated
	 */
	EAttribute getComment_Person();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Comment#getTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time</em>'.
	 * @see org.cairnfield.model.Comment#getTime()
	 * @see #getComment()
	 * @generated
	 */
	EAttribute getComment_Time();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.Assignment <em>Assignment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Assignment</em>'.
	 * @see org.cairnfield.model.Assignment
	 * @generated
	 */
	EClass getAssignment();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Assignment#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.cairnfield.model.Assignment#getId()
	 * @see #getAssignment()
	 * @generated
	 */
	EAttribute getAssignment_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Assignment#getSplit <em>Split</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Split</em>'.
	 * @see org.cairnfield.model.Assignment#getSplit()
	 * @see #getAssignment()
	 * @generated
	 */
	EAttribute getAssignment_Split();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Assignment#getReviewer <em>Reviewer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reviewer</em>'.
	 * @see org.cairnfield.model.Assignment#getReviewer()
	 * @see #getAssignment()
	 * @generated
	 */
	EAttribute getAssignment_Reviewer();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Assignment#getShare <em>Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Share</em>'.
	 * @see org.cairnfield.model.Assignment#getShare()
	 * @see #getAssignment()
	 * @generated
	 */
	EAttribute getAssignment_Share();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Assignment#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see org.cairnfield.model.Assignment#getPerson()
	 * @see #getAssignment()
	 * @generated
	 */
	EAttribute getAssignment_Person();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.Assignment#getTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time</em>'.
	 * @see org.cairnfield.model.Assignment#getTime()
	 * @see #getAssignment()
	 * @generated
	 */
	EAttribute getAssignment_Time();

	/**
	 * Returns the meta object for class '{@link org.cairnfield.model.RuleSetting <em>Rule Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rule Setting</em>'.
	 * @see org.cairnfield.model.RuleSetting
	 * @generated
	 */
	EClass getRuleSetting();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.RuleSetting#getRule <em>Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule</em>'.
	 * @see org.cairnfield.model.RuleSetting#getRule()
	 * @see #getRuleSetting()
	 * @generated
	 */
	EAttribute getRuleSetting_Rule();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.RuleSetting#getParameter <em>Parameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parameter</em>'.
	 * @see org.cairnfield.model.RuleSetting#getParameter()
	 * @see #getRuleSetting()
	 * @generated
	 */
	EAttribute getRuleSetting_Parameter();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.RuleSetting#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.cairnfield.model.RuleSetting#getValue()
	 * @see #getRuleSetting()
	 * @generated
	 */
	EAttribute getRuleSetting_Value();

	/**
	 * Returns the meta object for the attribute '{@link org.cairnfield.model.RuleSetting#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.cairnfield.model.RuleSetting#getReason()
	 * @see #getRuleSetting()
	 * @generated
	 */
	EAttribute getRuleSetting_Reason();

	/**
	 * Returns the meta object for enum '{@link org.cairnfield.model.SurveyKind <em>Survey Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Survey Kind</em>'.
	 * @see org.cairnfield.model.SurveyKind
	 * @generated
	 */
	EEnum getSurveyKind();

	/**
	 * Returns the meta object for enum '{@link org.cairnfield.model.Decision <em>Decision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Decision</em>'.
	 * @see org.cairnfield.model.Decision
	 * @generated
	 */
	EEnum getDecision();

	/**
	 * Returns the meta object for enum '{@link org.cairnfield.model.Round <em>Round</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Round</em>'.
	 * @see org.cairnfield.model.Round
	 * @generated
	 */
	EEnum getRound();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.SampleTable <em>Sample Table</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * The samples of a survey in columns.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Sample Table</em>'.
	 * @see org.cairnfield.model.values.SampleTable
	 * @model instanceClass="org.cairnfield.model.values.SampleTable" serializeable="false"
	 * @generated
	 */
	EDataType getSampleTable();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.Labels <em>Labels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Cluster and role of each sample of a split, in columns.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Labels</em>'.
	 * @see org.cairnfield.model.values.Labels
	 * @model instanceClass="org.cairnfield.model.values.Labels" serializeable="false"
	 * @generated
	 */
	EDataType getLabels();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.Proposals <em>Proposals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Proposals of a split, sorted by sample.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Proposals</em>'.
	 * @see org.cairnfield.model.values.Proposals
	 * @model instanceClass="org.cairnfield.model.values.Proposals" serializeable="false"
	 * @generated
	 */
	EDataType getProposals();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.Outline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Corners in metres: x,y x,y …
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Outline</em>'.
	 * @see org.cairnfield.model.values.Outline
	 * @model instanceClass="org.cairnfield.model.values.Outline"
	 * @generated
	 */
	EDataType getOutline();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.Placement <em>Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Scale in metres a pixel, turn in degrees, offset in metres.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Placement</em>'.
	 * @see org.cairnfield.model.values.Placement
	 * @model instanceClass="org.cairnfield.model.values.Placement"
	 * @generated
	 */
	EDataType getPlacement();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.KnownPlace <em>Known Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A place on a floor: site/level x,y in metres.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Known Place</em>'.
	 * @see org.cairnfield.model.values.KnownPlace
	 * @model instanceClass="org.cairnfield.model.values.KnownPlace"
	 * @generated
	 */
	EDataType getKnownPlace();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.Georeference <em>Georeference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Latitude, longitude and bearing in degrees (WGS 84).
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Georeference</em>'.
	 * @see org.cairnfield.model.values.Georeference
	 * @model instanceClass="org.cairnfield.model.values.Georeference"
	 * @generated
	 */
	EDataType getGeoreference();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.Scope <em>Scope</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * The archive, a site or a floor.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Scope</em>'.
	 * @see org.cairnfield.model.values.Scope
	 * @model instanceClass="org.cairnfield.model.values.Scope"
	 * @generated
	 */
	EDataType getScope();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.core.match.Search <em>Search</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * How a split is searched for a position.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Search</em>'.
	 * @see org.cairnfield.core.match.Search
	 * @model instanceClass="org.cairnfield.core.match.Search"
	 * @generated
	 */
	EDataType getSearch();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.model.values.SampleKey <em>Sample Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Survey and sample: survey/sample.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Sample Key</em>'.
	 * @see org.cairnfield.model.values.SampleKey
	 * @model instanceClass="org.cairnfield.model.values.SampleKey"
	 * @generated
	 */
	EDataType getSampleKey();

	/**
	 * Returns the meta object for data type '{@link org.cairnfield.core.radio.WifiBand <em>Wifi Band</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A band of Wi-Fi channels.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Wifi Band</em>'.
	 * @see org.cairnfield.core.radio.WifiBand
	 * @model instanceClass="org.cairnfield.core.radio.WifiBand"
	 * @generated
	 */
	EDataType getWifiBand();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A day, as in ISO 8601: 2025-03-14.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Date</em>'.
	 * @see java.time.LocalDate
	 * @model instanceClass="java.time.LocalDate"
	 * @generated
	 */
	EDataType getDate();

	/**
	 * Returns the meta object for data type '{@link java.time.Instant <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A moment in UTC, as in ISO 8601: 2025-03-14T09:26:53Z.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Time</em>'.
	 * @see java.time.Instant
	 * @model instanceClass="java.time.Instant"
	 * @generated
	 */
	EDataType getTime();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ModelFactory getModelFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.ArchiveImpl <em>Archive</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.ArchiveImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getArchive()
		 * @generated
		 */
		EClass ARCHIVE = eINSTANCE.getArchive();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARCHIVE__NAME = eINSTANCE.getArchive_Name();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARCHIVE__FORMAT_VERSION = eINSTANCE.getArchive_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Review Policy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARCHIVE__REVIEW_POLICY = eINSTANCE.getArchive_ReviewPolicy();

		/**
		 * The meta object literal for the '<em><b>Site Order</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARCHIVE__SITE_ORDER = eINSTANCE.getArchive_SiteOrder();

		/**
		 * The meta object literal for the '<em><b>Sites</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__SITES = eINSTANCE.getArchive_Sites();

		/**
		 * The meta object literal for the '<em><b>Access Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__ACCESS_POINTS = eINSTANCE.getArchive_AccessPoints();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__DEVICES = eINSTANCE.getArchive_Devices();

		/**
		 * The meta object literal for the '<em><b>Waivers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__WAIVERS = eINSTANCE.getArchive_Waivers();

		/**
		 * The meta object literal for the '<em><b>Splits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__SPLITS = eINSTANCE.getArchive_Splits();

		/**
		 * The meta object literal for the '<em><b>Ledgers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__LEDGERS = eINSTANCE.getArchive_Ledgers();

		/**
		 * The meta object literal for the '<em><b>Conflicts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__CONFLICTS = eINSTANCE.getArchive_Conflicts();

		/**
		 * The meta object literal for the '<em><b>Comments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__COMMENTS = eINSTANCE.getArchive_Comments();

		/**
		 * The meta object literal for the '<em><b>Assignments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__ASSIGNMENTS = eINSTANCE.getArchive_Assignments();

		/**
		 * The meta object literal for the '<em><b>Rule Settings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARCHIVE__RULE_SETTINGS = eINSTANCE.getArchive_RuleSettings();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.SiteImpl <em>Site</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.SiteImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSite()
		 * @generated
		 */
		EClass SITE = eINSTANCE.getSite();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__ID = eINSTANCE.getSite_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__NAME = eINSTANCE.getSite_Name();

		/**
		 * The meta object literal for the '<em><b>Georeference</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__GEOREFERENCE = eINSTANCE.getSite_Georeference();

		/**
		 * The meta object literal for the '<em><b>Map From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__MAP_FROM = eINSTANCE.getSite_MapFrom();

		/**
		 * The meta object literal for the '<em><b>Map Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__MAP_UNTIL = eINSTANCE.getSite_MapUntil();

		/**
		 * The meta object literal for the '<em><b>Floors</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__FLOORS = eINSTANCE.getSite_Floors();

		/**
		 * The meta object literal for the '<em><b>Surveys</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__SURVEYS = eINSTANCE.getSite_Surveys();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.FloorImpl <em>Floor</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.FloorImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getFloor()
		 * @generated
		 */
		EClass FLOOR = eINSTANCE.getFloor();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOOR__LEVEL = eINSTANCE.getFloor_Level();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOOR__NAME = eINSTANCE.getFloor_Name();

		/**
		 * The meta object literal for the '<em><b>Outline</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOOR__OUTLINE = eINSTANCE.getFloor_Outline();

		/**
		 * The meta object literal for the '<em><b>Height Metres</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOOR__HEIGHT_METRES = eINSTANCE.getFloor_HeightMetres();

		/**
		 * The meta object literal for the '<em><b>Plan Image</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOOR__PLAN_IMAGE = eINSTANCE.getFloor_PlanImage();

		/**
		 * The meta object literal for the '<em><b>Plan Placement</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOOR__PLAN_PLACEMENT = eINSTANCE.getFloor_PlanPlacement();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.AccessPointImpl <em>Access Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.AccessPointImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getAccessPoint()
		 * @generated
		 */
		EClass ACCESS_POINT = eINSTANCE.getAccessPoint();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__ID = eINSTANCE.getAccessPoint_Id();

		/**
		 * The meta object literal for the '<em><b>Address</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__ADDRESS = eINSTANCE.getAccessPoint_Address();

		/**
		 * The meta object literal for the '<em><b>Band</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__BAND = eINSTANCE.getAccessPoint_Band();

		/**
		 * The meta object literal for the '<em><b>Channel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__CHANNEL = eINSTANCE.getAccessPoint_Channel();

		/**
		 * The meta object literal for the '<em><b>First Heard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__FIRST_HEARD = eINSTANCE.getAccessPoint_FirstHeard();

		/**
		 * The meta object literal for the '<em><b>Last Heard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__LAST_HEARD = eINSTANCE.getAccessPoint_LastHeard();

		/**
		 * The meta object literal for the '<em><b>Group</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__GROUP = eINSTANCE.getAccessPoint_Group();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__PLACE = eINSTANCE.getAccessPoint_Place();

		/**
		 * The meta object literal for the '<em><b>Counts As</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__COUNTS_AS = eINSTANCE.getAccessPoint_CountsAs();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS_POINT__REASON = eINSTANCE.getAccessPoint_Reason();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.DeviceImpl <em>Device</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.DeviceImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getDevice()
		 * @generated
		 */
		EClass DEVICE = eINSTANCE.getDevice();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE__ID = eINSTANCE.getDevice_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE__NAME = eINSTANCE.getDevice_Name();

		/**
		 * The meta object literal for the '<em><b>Offset Db</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE__OFFSET_DB = eINSTANCE.getDevice_OffsetDb();

		/**
		 * The meta object literal for the '<em><b>Map Slope</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE__MAP_SLOPE = eINSTANCE.getDevice_MapSlope();

		/**
		 * The meta object literal for the '<em><b>Map Shift Db</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE__MAP_SHIFT_DB = eINSTANCE.getDevice_MapShiftDb();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.SurveyImpl <em>Survey</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.SurveyImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSurvey()
		 * @generated
		 */
		EClass SURVEY = eINSTANCE.getSurvey();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__ID = eINSTANCE.getSurvey_Id();

		/**
		 * The meta object literal for the '<em><b>Site</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SURVEY__SITE = eINSTANCE.getSurvey_Site();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__NAME = eINSTANCE.getSurvey_Name();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__DATE = eINSTANCE.getSurvey_Date();

		/**
		 * The meta object literal for the '<em><b>Surveyor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__SURVEYOR = eINSTANCE.getSurvey_Surveyor();

		/**
		 * The meta object literal for the '<em><b>Device</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SURVEY__DEVICE = eINSTANCE.getSurvey_Device();

		/**
		 * The meta object literal for the '<em><b>Protocol</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__PROTOCOL = eINSTANCE.getSurvey_Protocol();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__KIND = eINSTANCE.getSurvey_Kind();

		/**
		 * The meta object literal for the '<em><b>Source File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__SOURCE_FILE = eINSTANCE.getSurvey_SourceFile();

		/**
		 * The meta object literal for the '<em><b>Source Digest</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY__SOURCE_DIGEST = eINSTANCE.getSurvey_SourceDigest();

		/**
		 * The meta object literal for the '<em><b>Samples</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SURVEY__SAMPLES = eINSTANCE.getSurvey_Samples();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.SamplesImpl <em>Samples</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.SamplesImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSamples()
		 * @generated
		 */
		EClass SAMPLES = eINSTANCE.getSamples();

		/**
		 * The meta object literal for the '<em><b>Table</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLES__TABLE = eINSTANCE.getSamples_Table();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.SplitImpl <em>Split</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.SplitImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSplit()
		 * @generated
		 */
		EClass SPLIT = eINSTANCE.getSplit();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__ID = eINSTANCE.getSplit_Id();

		/**
		 * The meta object literal for the '<em><b>Scope</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__SCOPE = eINSTANCE.getSplit_Scope();

		/**
		 * The meta object literal for the '<em><b>Representation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__REPRESENTATION = eINSTANCE.getSplit_Representation();

		/**
		 * The meta object literal for the '<em><b>Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__DISTANCE = eINSTANCE.getSplit_Distance();

		/**
		 * The meta object literal for the '<em><b>Epsilon</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__EPSILON = eINSTANCE.getSplit_Epsilon();

		/**
		 * The meta object literal for the '<em><b>Min Pts</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__MIN_PTS = eINSTANCE.getSplit_MinPts();

		/**
		 * The meta object literal for the '<em><b>Pca Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__PCA_SHARE = eINSTANCE.getSplit_PcaShare();

		/**
		 * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__METHOD = eINSTANCE.getSplit_Method();

		/**
		 * The meta object literal for the '<em><b>Seed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__SEED = eINSTANCE.getSplit_Seed();

		/**
		 * The meta object literal for the '<em><b>Gate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__GATE = eINSTANCE.getSplit_Gate();

		/**
		 * The meta object literal for the '<em><b>Threshold</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__THRESHOLD = eINSTANCE.getSplit_Threshold();

		/**
		 * The meta object literal for the '<em><b>Search</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__SEARCH = eINSTANCE.getSplit_Search();

		/**
		 * The meta object literal for the '<em><b>Search Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__SEARCH_REASON = eINSTANCE.getSplit_SearchReason();

		/**
		 * The meta object literal for the '<em><b>In Release</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__IN_RELEASE = eINSTANCE.getSplit_InRelease();

		/**
		 * The meta object literal for the '<em><b>Clusters</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPLIT__CLUSTERS = eINSTANCE.getSplit_Clusters();

		/**
		 * The meta object literal for the '<em><b>Labels</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__LABELS = eINSTANCE.getSplit_Labels();

		/**
		 * The meta object literal for the '<em><b>Proposals</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPLIT__PROPOSALS = eINSTANCE.getSplit_Proposals();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.ClusterImpl <em>Cluster</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.ClusterImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getCluster()
		 * @generated
		 */
		EClass CLUSTER = eINSTANCE.getCluster();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLUSTER__NUMBER = eINSTANCE.getCluster_Number();

		/**
		 * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLUSTER__SIZE = eINSTANCE.getCluster_Size();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.LedgerImpl <em>Ledger</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.LedgerImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getLedger()
		 * @generated
		 */
		EClass LEDGER = eINSTANCE.getLedger();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LEDGER__ID = eINSTANCE.getLedger_Id();

		/**
		 * The meta object literal for the '<em><b>Verdicts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LEDGER__VERDICTS = eINSTANCE.getLedger_Verdicts();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.VerdictImpl <em>Verdict</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.VerdictImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getVerdict()
		 * @generated
		 */
		EClass VERDICT = eINSTANCE.getVerdict();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__ID = eINSTANCE.getVerdict_Id();

		/**
		 * The meta object literal for the '<em><b>Split</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__SPLIT = eINSTANCE.getVerdict_Split();

		/**
		 * The meta object literal for the '<em><b>Sample</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__SAMPLE = eINSTANCE.getVerdict_Sample();

		/**
		 * The meta object literal for the '<em><b>Cluster</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__CLUSTER = eINSTANCE.getVerdict_Cluster();

		/**
		 * The meta object literal for the '<em><b>Decision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__DECISION = eINSTANCE.getVerdict_Decision();

		/**
		 * The meta object literal for the '<em><b>Reason Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__REASON_CODE = eINSTANCE.getVerdict_ReasonCode();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__TEXT = eINSTANCE.getVerdict_Text();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__PERSON = eINSTANCE.getVerdict_Person();

		/**
		 * The meta object literal for the '<em><b>Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__TIME = eINSTANCE.getVerdict_Time();

		/**
		 * The meta object literal for the '<em><b>Supersedes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__SUPERSEDES = eINSTANCE.getVerdict_Supersedes();

		/**
		 * The meta object literal for the '<em><b>Round</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__ROUND = eINSTANCE.getVerdict_Round();

		/**
		 * The meta object literal for the '<em><b>Sample Content</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__SAMPLE_CONTENT = eINSTANCE.getVerdict_SampleContent();

		/**
		 * The meta object literal for the '<em><b>Evidence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__EVIDENCE = eINSTANCE.getVerdict_Evidence();

		/**
		 * The meta object literal for the '<em><b>Batch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__BATCH = eINSTANCE.getVerdict_Batch();

		/**
		 * The meta object literal for the '<em><b>Entered By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VERDICT__ENTERED_BY = eINSTANCE.getVerdict_EnteredBy();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.WaiverImpl <em>Waiver</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.WaiverImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getWaiver()
		 * @generated
		 */
		EClass WAIVER = eINSTANCE.getWaiver();

		/**
		 * The meta object literal for the '<em><b>Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIVER__RULE = eINSTANCE.getWaiver_Rule();

		/**
		 * The meta object literal for the '<em><b>Content Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIVER__CONTENT_KEY = eINSTANCE.getWaiver_ContentKey();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIVER__REASON = eINSTANCE.getWaiver_Reason();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIVER__PERSON = eINSTANCE.getWaiver_Person();

		/**
		 * The meta object literal for the '<em><b>Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIVER__TIME = eINSTANCE.getWaiver_Time();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.ConflictImpl <em>Conflict</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.ConflictImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getConflict()
		 * @generated
		 */
		EClass CONFLICT = eINSTANCE.getConflict();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONFLICT__PLACE = eINSTANCE.getConflict_Place();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONFLICT__UNIT = eINSTANCE.getConflict_Unit();

		/**
		 * The meta object literal for the '<em><b>Base</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONFLICT__BASE = eINSTANCE.getConflict_Base();

		/**
		 * The meta object literal for the '<em><b>Claims</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONFLICT__CLAIMS = eINSTANCE.getConflict_Claims();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.ClaimImpl <em>Claim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.ClaimImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getClaim()
		 * @generated
		 */
		EClass CLAIM = eINSTANCE.getClaim();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__VALUE = eINSTANCE.getClaim_Value();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__PERSON = eINSTANCE.getClaim_Person();

		/**
		 * The meta object literal for the '<em><b>Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__TIME = eINSTANCE.getClaim_Time();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.CommentImpl <em>Comment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.CommentImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getComment()
		 * @generated
		 */
		EClass COMMENT = eINSTANCE.getComment();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMENT__ID = eINSTANCE.getComment_Id();

		/**
		 * The meta object literal for the '<em><b>Subject</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMENT__SUBJECT = eINSTANCE.getComment_Subject();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMENT__TEXT = eINSTANCE.getComment_Text();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMENT__PERSON = eINSTANCE.getComment_Person();

		/**
		 * The meta object literal for the '<em><b>Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMENT__TIME = eINSTANCE.getComment_Time();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.AssignmentImpl <em>Assignment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.AssignmentImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getAssignment()
		 * @generated
		 */
		EClass ASSIGNMENT = eINSTANCE.getAssignment();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASSIGNMENT__ID = eINSTANCE.getAssignment_Id();

		/**
		 * The meta object literal for the '<em><b>Split</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASSIGNMENT__SPLIT = eINSTANCE.getAssignment_Split();

		/**
		 * The meta object literal for the '<em><b>Reviewer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASSIGNMENT__REVIEWER = eINSTANCE.getAssignment_Reviewer();

		/**
		 * The meta object literal for the '<em><b>Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASSIGNMENT__SHARE = eINSTANCE.getAssignment_Share();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASSIGNMENT__PERSON = eINSTANCE.getAssignment_Person();

		/**
		 * The meta object literal for the '<em><b>Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASSIGNMENT__TIME = eINSTANCE.getAssignment_Time();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.impl.RuleSettingImpl <em>Rule Setting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.impl.RuleSettingImpl
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getRuleSetting()
		 * @generated
		 */
		EClass RULE_SETTING = eINSTANCE.getRuleSetting();

		/**
		 * The meta object literal for the '<em><b>Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SETTING__RULE = eINSTANCE.getRuleSetting_Rule();

		/**
		 * The meta object literal for the '<em><b>Parameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SETTING__PARAMETER = eINSTANCE.getRuleSetting_Parameter();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SETTING__VALUE = eINSTANCE.getRuleSetting_Value();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SETTING__REASON = eINSTANCE.getRuleSetting_Reason();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.SurveyKind <em>Survey Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.SurveyKind
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSurveyKind()
		 * @generated
		 */
		EEnum SURVEY_KIND = eINSTANCE.getSurveyKind();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.Decision <em>Decision</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.Decision
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getDecision()
		 * @generated
		 */
		EEnum DECISION = eINSTANCE.getDecision();

		/**
		 * The meta object literal for the '{@link org.cairnfield.model.Round <em>Round</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.Round
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getRound()
		 * @generated
		 */
		EEnum ROUND = eINSTANCE.getRound();

		/**
		 * The meta object literal for the '<em>Sample Table</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.SampleTable
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSampleTable()
		 * @generated
		 */
		EDataType SAMPLE_TABLE = eINSTANCE.getSampleTable();

		/**
		 * The meta object literal for the '<em>Labels</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.Labels
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getLabels()
		 * @generated
		 */
		EDataType LABELS = eINSTANCE.getLabels();

		/**
		 * The meta object literal for the '<em>Proposals</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.Proposals
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getProposals()
		 * @generated
		 */
		EDataType PROPOSALS = eINSTANCE.getProposals();

		/**
		 * The meta object literal for the '<em>Outline</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.Outline
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getOutline()
		 * @generated
		 */
		EDataType OUTLINE = eINSTANCE.getOutline();

		/**
		 * The meta object literal for the '<em>Placement</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.Placement
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getPlacement()
		 * @generated
		 */
		EDataType PLACEMENT = eINSTANCE.getPlacement();

		/**
		 * The meta object literal for the '<em>Known Place</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.KnownPlace
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getKnownPlace()
		 * @generated
		 */
		EDataType KNOWN_PLACE = eINSTANCE.getKnownPlace();

		/**
		 * The meta object literal for the '<em>Georeference</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.Georeference
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getGeoreference()
		 * @generated
		 */
		EDataType GEOREFERENCE = eINSTANCE.getGeoreference();

		/**
		 * The meta object literal for the '<em>Scope</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.Scope
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getScope()
		 * @generated
		 */
		EDataType SCOPE = eINSTANCE.getScope();

		/**
		 * The meta object literal for the '<em>Search</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.core.match.Search
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSearch()
		 * @generated
		 */
		EDataType SEARCH = eINSTANCE.getSearch();

		/**
		 * The meta object literal for the '<em>Sample Key</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.model.values.SampleKey
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getSampleKey()
		 * @generated
		 */
		EDataType SAMPLE_KEY = eINSTANCE.getSampleKey();

		/**
		 * The meta object literal for the '<em>Wifi Band</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.cairnfield.core.radio.WifiBand
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getWifiBand()
		 * @generated
		 */
		EDataType WIFI_BAND = eINSTANCE.getWifiBand();

		/**
		 * The meta object literal for the '<em>Date</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getDate()
		 * @generated
		 */
		EDataType DATE = eINSTANCE.getDate();

		/**
		 * The meta object literal for the '<em>Time</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.Instant
		 * @see org.cairnfield.model.impl.ModelPackageImpl#getTime()
		 * @generated
		 */
		EDataType TIME = eINSTANCE.getTime();

	}

} //ModelPackage
