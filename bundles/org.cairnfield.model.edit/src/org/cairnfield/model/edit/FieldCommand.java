package org.cairnfield.model.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EObject;

/** Gives one feature of some objects a value. It can be executed where at least one of them has another. */
public abstract class FieldCommand extends AbstractCommand {

	private final List<EObject> objects;
	private final EStructuralFeature feature;
	private final Object value;
	/** Of the objects that change. */
	private final Map<EObject, Object> before = new LinkedHashMap<>();

	/** @param value null unsets it */
	protected FieldCommand(Collection<? extends EObject> objects, EStructuralFeature feature, Object value) {
		this.objects = new ArrayList<>(objects);
		this.feature = feature;
		this.value = value;
	}

	/** The label for so many objects. */
	protected abstract String label(int changing);

	@Override
	protected boolean prepare() {
		find();
		return !before.isEmpty();
	}

	private void find() {
		before.clear();
		for (EObject object : objects) {
			if (!Objects.equals(object.eGet(feature), value)) {
				before.put(object, object.eGet(feature));
			}
		}
	}

	@Override
	public void execute() {
		find();
		redo();
	}

	@Override
	public void undo() {
		before.forEach((object, old) -> object.eSet(feature, old));
	}

	@Override
	public void redo() {
		before.keySet().forEach(object -> object.eSet(feature, value));
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return objects;
	}

	/** Says what changes, with the number of objects that do. */
	@Override
	public String getLabel() {
		return label(isPrepared ? before.size() : objects.size());
	}
}
