package org.cairnfield.archive.internal.merge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.cairnfield.model.Archive;
import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Makes one archive what another is, by no more changes than it takes: objects that both have (by id, or by all they say
 * where they have none) stay the same objects, and what is not different is not touched. Undo is exact.
 */
public final class ModelPatch {

	private record Change(EObject object, EStructuralFeature feature, Object before, Object after) {

		@SuppressWarnings("unchecked")
		void set(Object value) {
			if (feature.isMany()) {
				ECollections.setEList((EList<Object>) object.eGet(feature), (List<Object>) value);
			} else {
				object.eSet(feature, value);
			}
		}
	}

	private final Map<EObject, EObject> mine = new IdentityHashMap<>();
	private final List<EObject> pairs = new ArrayList<>();
	private final List<Change> changes = new ArrayList<>();

	/** @param other is taken apart: nobody else may use it afterwards. None of its objects is the root of a resource */
	public ModelPatch(Archive archive, Archive other) {
		pair(archive, other);
		// what only the other has refers to what only the other has, or to what is its own here
		other.eAllContents().forEachRemaining(object -> {
			if (!mine.containsKey(object)) {
				redirect(object);
			}
		});
		pairs.forEach(object -> compare(mine.get(object), object));
	}

	private void pair(EObject own, EObject other) {
		mine.put(other, own);
		pairs.add(other);
		for (EReference reference : own.eClass().getEAllContainments()) {
			Map<Object, List<EObject>> found = new HashMap<>();
			contents(own, reference)
					.forEach(object -> found.computeIfAbsent(key(object), k -> new ArrayList<>()).add(object));
			for (EObject object : contents(other, reference)) {
				List<EObject> same = found.getOrDefault(key(object), List.of());
				if (!same.isEmpty()) {
					pair(same.remove(0), object);
				}
			}
		}
	}

	@SuppressWarnings("unchecked")
	private static List<EObject> contents(EObject object, EReference reference) {
		Object value = object.eGet(reference);
		return reference.isMany() ? (List<EObject>) value : value == null ? List.of() : List.of((EObject) value);
	}

	/** What makes two objects in the same place the same. */
	private static Object key(EObject object) {
		if (object.eClass().getEIDAttribute() != null) {
			return List.of(object.eClass(), String.valueOf(EcoreUtil.getID(object)));
		}
		if (!object.eContainmentFeature().isMany()) {
			return object.eClass();
		}
		return Arrays.asList(object.eClass().getEAllAttributes().stream().map(object::eGet).toArray());
	}

	private void redirect(EObject object) {
		for (EReference reference : object.eClass().getEAllReferences()) {
			if (isPlain(reference) && object.eGet(reference) instanceof EObject target) {
				object.eSet(reference, mine.getOrDefault(target, target));
			}
		}
	}

	/** One reference to an object elsewhere; the model has no lists of them. */
	private static boolean isPlain(EReference reference) {
		return !reference.isContainment() && !reference.isContainer() && !reference.isMany() && reference.isChangeable()
				&& !reference.isDerived();
	}

	private void compare(EObject own, EObject other) {
		for (EAttribute attribute : own.eClass().getEAllAttributes()) {
			add(own, attribute, own.eGet(attribute), other.eGet(attribute));
		}
		for (EReference reference : own.eClass().getEAllReferences()) {
			if (reference.isContainment()) {
				List<EObject> after = contents(other, reference).stream()
						.map(object -> mine.getOrDefault(object, object)).toList();
				if (reference.isMany()) {
					add(own, reference, List.copyOf(contents(own, reference)), after);
				} else {
					add(own, reference, own.eGet(reference), after.isEmpty() ? null : after.get(0));
				}
			} else if (isPlain(reference)) {
				EObject after = (EObject) other.eGet(reference);
				add(own, reference, own.eGet(reference), after == null ? null : mine.getOrDefault(after, after));
			}
		}
	}

	private void add(EObject object, EStructuralFeature feature, Object before, Object after) {
		if (!Objects.equals(before, after)) {
			changes.add(new Change(object, feature, before, after));
		}
	}

	/** Whether the two were the same. */
	public boolean isEmpty() {
		return changes.isEmpty();
	}

	/** Makes the changes, the first time or again. */
	public void apply() {
		changes.forEach(change -> change.set(change.after));
	}

	/** Takes them back. */
	public void undo() {
		for (int i = changes.size() - 1; i >= 0; i--) {
			changes.get(i).set(changes.get(i).before);
		}
	}

	/** The objects that change. */
	public Set<EObject> affected() {
		Set<EObject> affected = new LinkedHashSet<>();
		changes.forEach(change -> affected.add(change.object));
		return affected;
	}
}
