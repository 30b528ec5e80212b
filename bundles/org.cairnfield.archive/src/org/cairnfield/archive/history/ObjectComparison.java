package org.cairnfield.archive.history;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.Site;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Compares the objects of two models by their ids, property by property. Long values (tables) are for others to compare. */
final class ObjectComparison {

	private static final String WORDS = "urn:org.cairnfield:words";

	private ObjectComparison() {
	}

	/** Each may be null: nothing there. Roots of other files, which are proxies, are left out. */
	static List<ObjectChange> of(EObject before, EObject after) {
		Map<String, EObject> old = index(before);
		Map<String, EObject> now = index(after);
		List<ObjectChange> changes = new ArrayList<>();
		Map<String, EObject> all = new TreeMap<>(old);
		all.putAll(now);
		all.forEach((key, object) -> {
			EObject one = old.get(key);
			EObject other = now.get(key);
			List<FieldChange> fields = one == null || other == null ? List.of() : fields(one, other);
			boolean begins = (one == null || other == null) && object instanceof Archive; // goes without saying
			if (!begins && (one == null || other == null || !fields.isEmpty())) {
				ObjectChange.Way way = one == null ? ObjectChange.Way.ADDED
						: other == null ? ObjectChange.Way.REMOVED : ObjectChange.Way.CHANGED;
				changes.add(new ObjectChange(word(object), shown(object), way, fields));
			}
		});
		return changes;
	}

	private static Map<String, EObject> index(EObject root) {
		Map<String, EObject> objects = new TreeMap<>();
		if (root != null) {
			put(objects, root);
			for (Iterator<EObject> all = EcoreUtil.getAllProperContents(root, false); all.hasNext();) {
				EObject object = all.next();
				if (!object.eIsProxy()) {
					put(objects, object);
				}
			}
		}
		return objects;
	}

	private static void put(Map<String, EObject> objects, EObject object) {
		String key = object.eClass().getName() + '\n' + id(object);
		if (object instanceof Waiver) {
			// one finding may have been waived more than once
			int n = 1;
			while (objects.containsKey(key + '\n' + n)) {
				n++;
			}
			key += "\n" + n;
		}
		objects.put(key, object);
	}

	private static String word(EObject object) {
		String label = EcoreUtil.getAnnotation(object.eClass(), WORDS, "label");
		return (label == null ? object.eClass().getName() : label).toLowerCase(Locale.ROOT);
	}

	private static String id(EObject object) {
		if (object instanceof Archive) {
			return "";
		}
		if (object instanceof Floor floor) {
			return (floor.eContainer() instanceof Site site ? site.getId() + "/" : "") + floor.getLevel();
		}
		if (object instanceof Waiver waiver) {
			return waiver.getRule() + " " + waiver.getContentKey();
		}
		if (object instanceof RuleSetting) {
			return Place.key(object);
		}
		if (object instanceof Conflict conflict) {
			return Unit.of(conflict).toString();
		}
		if (object instanceof Claim claim) {
			return Words.bind(Messages.ObjectComparison_by, id(claim.eContainer()),
					claim.getValue() == null ? "none" : claim.getValue(), claim.getPerson());
		}
		return object instanceof Cluster cluster ? Integer.toString(cluster.getNumber()) : EcoreUtil.getID(object);
	}

	/** The id, with what it stands for where nobody would know it by that. */
	private static String shown(EObject object) {
		if (object instanceof Comment comment) {
			return Words.bind(Messages.ObjectComparison_byOn, id(object), comment.getPerson(), comment.getSubject(),
					comment.getText());
		}
		if (object instanceof RuleSetting setting) {
			return id(object) + " = " + setting.getValue()
					+ (setting.getReason() == null ? "" : ": " + setting.getReason());
		}
		if (object instanceof Assignment assignment) {
			return Words.bind(Messages.ObjectComparison_ofSplitTo, id(object), assignment.getShare(),
					assignment.getSplit(), assignment.getReviewer());
		}
		return id(object);
	}

	private static List<FieldChange> fields(EObject before, EObject after) {
		List<FieldChange> changes = new ArrayList<>();
		for (EStructuralFeature feature : before.eClass().getEAllStructuralFeatures()) {
			if (!isCompared(feature)) {
				continue;
			}
			String old = text(before, feature);
			String now = text(after, feature);
			if (!Objects.equals(old, now)) {
				changes.add(new FieldChange(feature.getName(), old, now));
			}
		}
		return changes;
	}

	private static boolean isCompared(EStructuralFeature feature) {
		if (feature instanceof EAttribute attribute) {
			return attribute.getEAttributeType() != ModelPackage.Literals.SAMPLE_TABLE
					&& attribute.getEAttributeType() != ModelPackage.Literals.LABELS
					&& attribute.getEAttributeType() != ModelPackage.Literals.PROPOSALS;
		}
		return feature instanceof EReference reference && !reference.isContainment() && !reference.isMany();
	}

	private static String text(EObject object, EStructuralFeature feature) {
		Object value = object.eGet(feature, false);
		if (value == null) {
			return null;
		}
		return value instanceof EObject other
				? other.eIsProxy() ? EcoreUtil.getURI(other).toString() : EcoreUtil.getID(other)
				: value.toString();
	}
}
