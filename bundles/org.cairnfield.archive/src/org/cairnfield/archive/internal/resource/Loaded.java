package org.cairnfield.archive.internal.resource;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.model.Archive;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;

/**
 * An archive as read.
 *
 * @param archive  in a resource of a set, with its parts in resources of their own
 * @param damages  what is wrong with its files
 * @param notices  what a person may want to know although nothing is wrong
 * @param parts    resources of what belongs in files of lines, by path; the parts of a large survey make one
 * @param outdated those of these paths, and that of the structure, whose files are sound, but would be written differently
 */
public record Loaded(Archive archive, List<Damage> damages, List<String> notices, Map<String, Resource> parts,
		Set<String> outdated) {

	/** The files are now as the model: each part is in the resource of its file, and nothing is modified. */
	public void saved(Map<String, EObject> now) {
		ResourceSet set = archive.eResource().getResourceSet();
		for (Map.Entry<String, Resource> part : Map.copyOf(parts).entrySet()) {
			EObject root = now.get(part.getKey());
			if (root == null || part.getValue().getContents().isEmpty()
					|| part.getValue().getContents().get(0) != root) {
				part.getValue().getContents().clear();
				set.getResources().remove(part.getValue());
				parts.remove(part.getKey());
			}
		}
		now.forEach((path, root) -> parts.computeIfAbsent(path, p -> {
			Resource resource = PartResource.of(Uris.of(path), root);
			set.getResources().add(resource);
			resource.setTrackingModification(true);
			return resource;
		}));
		set.getResources().forEach(resource -> resource.setModified(false));
		outdated.clear();
	}
}
