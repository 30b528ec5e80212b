package org.cairnfield.ui.internal.explorer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.SiteOrder;
import org.cairnfield.model.edit.SampleCounts;
import org.cairnfield.ui.internal.tables.NaturalOrder;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** Sites with floors and surveys; then access points, devices, splits and releases. The input is an array with the archive. */
final class ArchiveTree implements ITreeContentProvider {

	private final SampleCounts counts;

	ArchiveTree(SampleCounts counts) {
		this.counts = counts;
	}

	@Override
	public Object[] getElements(Object input) {
		return (Object[]) input;
	}

	@Override
	public Object[] getChildren(Object parent) {
		List<Object> children = new ArrayList<>();
		if (parent instanceof Archive archive) {
			children.addAll(SiteOrder.of(archive));
			add(children, archive, Group.Kind.ACCESS_POINTS);
			add(children, archive, Group.Kind.DEVICES);
			add(children, archive, Group.Kind.SPLITS);
		} else if (parent instanceof Site site) {
			children.addAll(site.getFloors());
			if (counts.onNoFloor(site) > 0) {
				children.add(new Strays(site));
			}
			add(children, site, Group.Kind.SURVEYS);
		} else if (parent instanceof Group group) {
			children.addAll(group.members());
			if (group.kind() == Group.Kind.ACCESS_POINTS) { // by what is shown of them
				children.sort(Comparator.comparing(accessPoint -> ((AccessPoint) accessPoint).getAddress(),
						Comparator.nullsLast(new NaturalOrder())));
			}
		}
		return children.toArray();
	}

	private static void add(List<Object> children, EObject owner, Group.Kind kind) {
		Group group = new Group(owner, kind);
		if (!group.members().isEmpty()) {
			children.add(group);
		}
	}

	@Override
	public Object getParent(Object element) {
		if (element instanceof Group group) {
			return group.owner();
		} else if (element instanceof Strays strays) {
			return strays.site();
		}
		if (element instanceof EObject object && object.eContainer() != null) {
			for (Group.Kind kind : Group.Kind.values()) {
				if (kind.type.isInstance(object)) {
					return new Group(object.eContainer(), kind);
				}
			}
			return object.eContainer();
		}
		return null;
	}

	@Override
	public boolean hasChildren(Object element) {
		return element instanceof Group || element instanceof Archive || element instanceof Site;
	}
}
