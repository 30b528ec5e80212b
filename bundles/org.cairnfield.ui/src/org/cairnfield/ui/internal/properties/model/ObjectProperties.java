package org.cairnfield.ui.internal.properties.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cairnfield.curation.edit.Editable;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

/** What there is to know about any object of the model: what it holds, and what its samples add up to. */
public final class ObjectProperties {

	private static final String WORDS = "urn:org.cairnfield:words";
	private static final String GEN_MODEL = "http://www.eclipse.org/emf/2002/GenModel";

	/** What a program needs more than a person does; it stands last. */
	private static final Set<String> RECORDED = Set.of("id", "formatVersion", "sourceFile", "sourceDigest",
			"contentKey",
			"sampleContent", "evidence", "batch", "supersedes", "seed");
	/** Tables of their own, counted instead. */
	private static final Set<EObject> COUNTED = Set.of(ModelPackage.Literals.SAMPLE_TABLE, ModelPackage.Literals.LABELS,
			ModelPackage.Literals.PROPOSALS);
	private static final Map<EStructuralFeature, String> NAMES = Map.of(
			ModelPackage.Literals.FLOOR__OUTLINE, Messages.ObjectProperties_outline,
			ModelPackage.Literals.ARCHIVE__FORMAT_VERSION, Messages.ObjectProperties_formatVersion,
			ModelPackage.Literals.SITE__GEOREFERENCE, Messages.ObjectProperties_placeOnEarth,
			ModelPackage.Literals.SPLIT__GATE, Messages.ObjectProperties_gateShareOfNoise);

	private final EObject object;
	private final Archive archive;
	private final List<Property> details = new ArrayList<>();
	private final List<Property> contents = new ArrayList<>();
	private final List<Property> record = new ArrayList<>();

	private ObjectProperties(EObject object) {
		this.object = object;
		archive = EcoreUtil.getRootContainer(object) instanceof Archive root ? root : null;
	}

	/** Details first, then what it contains, then what programs go by. */
	public static List<Property> of(EObject object) {
		ObjectProperties made = new ObjectProperties(object);
		made.features();
		made.contents();
		List<Property> all = new ArrayList<>(made.details);
		all.addAll(made.contents);
		all.addAll(made.record);
		return all;
	}

	private void features() {
		if (object instanceof Floor && object.eContainer() instanceof Site site) {
			details.add(new Property(Messages.ObjectProperties_site, PropertyValues.text(site, archive),
					Messages.ObjectProperties_theBuildingThatTheFloor));
		}
		for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
			if (isShown(feature)) {
				boolean last = RECORDED.contains(feature.getName());
				(last ? record : details).add(new Property(name(feature), value(feature), about(feature),
						Editable.of(object, feature).orElse(null)));
			}
		}
	}

	private static boolean isShown(EStructuralFeature feature) {
		return feature instanceof EAttribute attribute ? !COUNTED.contains(attribute.getEAttributeType())
				: feature instanceof EReference reference && !reference.isContainment() && !reference.isMany();
	}

	private static String name(EStructuralFeature feature) {
		String label = NAMES.getOrDefault(feature, EcoreUtil.getAnnotation(feature, WORDS, "label"));
		return label == null ? feature.getName() : label;
	}

	private static String about(EStructuralFeature feature) {
		String documentation = EcoreUtil.getAnnotation(feature, GEN_MODEL, "documentation");
		return documentation == null ? "" : documentation;
	}

	private String value(EStructuralFeature feature) {
		Object value = object.eGet(feature);
		if (feature == ModelPackage.Literals.ACCESS_POINT__CHANNEL && Integer.valueOf(0).equals(value)) {
			return "";
		} else if (feature == ModelPackage.Literals.SPLIT__GATE) {
			return PropertyValues.percent(((Split) object).getGate());
		}
		return PropertyValues.text(value, archive);
	}

	private void contents() {
		if (object instanceof Archive all) {
			count(Messages.ObjectProperties_sites, all.getSites().size());
			count(Messages.ObjectProperties_surveys, surveys(all).size());
			tally(Tally.of(surveys(all), level -> true));
			count(Messages.ObjectProperties_accessPoints, all.getAccessPoints().size());
			count(Messages.ObjectProperties_devices, all.getDevices().size());
			count(Messages.ObjectProperties_splits, all.getSplits().size());
		} else if (object instanceof Site site) {
			count(Messages.ObjectProperties_floors, site.getFloors().size());
			count(Messages.ObjectProperties_surveys, site.getSurveys().size());
			tally(Tally.of(site.getSurveys(), level -> true));
		} else if (object instanceof Floor floor && floor.eContainer() instanceof Site site) {
			tally(Tally.of(site.getSurveys(), level -> level == floor.getLevel()));
		} else if (object instanceof Survey survey) {
			survey(survey);
		} else if (object instanceof Device && archive != null) {
			List<Survey> own = surveys(archive).stream().filter(survey -> survey.getDevice() == object).toList();
			count(Messages.ObjectProperties_surveys, own.size());
			tally(Tally.of(own, level -> true));
		} else if (object instanceof AccessPoint accessPoint && archive != null) {
			heard(accessPoint);
		} else if (object instanceof Split split) {
			split(split);
		} else {
			children();
		}
	}

	private static List<Survey> surveys(Archive archive) {
		return archive.getSites().stream().flatMap(site -> site.getSurveys().stream()).toList();
	}

	private void survey(Survey survey) {
		Tally tally = Tally.of(List.of(survey), level -> true);
		tally(tally);
		add(Messages.ObjectProperties_floorsLevels, PropertyValues.text(tally.levels, archive));
		if (tally.samples > 0) {
			add(Messages.ObjectProperties_heardPerSample,
					NLS.bind(Messages.ObjectProperties_to, tally.fewest, tally.most));
		}
		if (tally.hasTimes()) {
			add(Messages.ObjectProperties_firstSampleUtc, PropertyValues.time(tally.first));
			add(Messages.ObjectProperties_lastSampleUtc, PropertyValues.time(tally.last));
		}
	}

	private void tally(Tally tally) {
		count(Messages.ObjectProperties_samples, tally.samples);
		count(Messages.ObjectProperties_samplesSetAside, tally.setAside);
		count(Messages.ObjectProperties_readings, tally.readings);
	}

	private void heard(AccessPoint accessPoint) {
		int samples = 0;
		int weakest = Integer.MAX_VALUE;
		int strongest = Integer.MIN_VALUE;
		for (Survey survey : surveys(archive)) {
			SampleTable table = survey.table();
			int wanted = table.accessPoints().indexOf(accessPoint.getId());
			for (int row = 0; wanted >= 0 && row < table.size(); row++) {
				for (int k = 0; k < table.heard(row); k++) {
					if (table.accessPoint(row, k) == wanted) {
						samples++;
						weakest = Math.min(weakest, table.rssiDbm(row, k));
						strongest = Math.max(strongest, table.rssiDbm(row, k));
					}
				}
			}
		}
		count(Messages.ObjectProperties_samplesThatHeardIt, samples);
		add(Messages.ObjectProperties_strongestLevelDbm, samples == 0 ? "" : PropertyValues.text(strongest, archive));
		add(Messages.ObjectProperties_weakestLevelDbm, samples == 0 ? "" : PropertyValues.text(weakest, archive));
	}

	private void split(Split split) {
		count(Messages.ObjectProperties_clusters, split.getClusters().size());
		if (split.getLabels() != null) {
			int size = split.getLabels().size();
			int noise = split.getLabels().noise();
			count(Messages.ObjectProperties_samples, size);
			add(Messages.ObjectProperties_noiseSamples, PropertyValues.number(noise, 0)
					+ (size == 0 ? "" : " (" + PropertyValues.percent((double) noise / size) + ")"));
		}
		count(Messages.ObjectProperties_proposals,
				split.getProposals() == null ? 0 : split.getProposals().all().size());
	}

	/** How many objects it holds of each kind, for what has no samples. */
	private void children() {
		for (EReference reference : object.eClass().getEAllContainments()) {
			if (reference.isMany()) {
				count(name(reference), ((Collection<?>) object.eGet(reference)).size());
			}
		}
	}

	private void count(String name, long count) {
		add(name, PropertyValues.number(count, 0));
	}

	private void add(String name, String value) {
		contents.add(new Property(name, value, ""));
	}
}
