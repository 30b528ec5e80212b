package org.cairnfield.ui.internal.explorer;

import java.util.List;

import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

/** A heading of the tree, such as the access points of an archive. Equal headings of the same owner are one. */
record Group(EObject owner, Kind kind) implements IAdaptable {

	enum Kind {
		SURVEYS(Messages.Group_surveys, ModelPackage.Literals.SURVEY),
		ACCESS_POINTS(Messages.Group_accessPoints, ModelPackage.Literals.ACCESS_POINT),
		DEVICES(Messages.Group_devices, ModelPackage.Literals.DEVICE),
		SPLITS(Messages.Group_splits, ModelPackage.Literals.SPLIT);

		final String title;
		final EClass type;

		Kind(String title, EClass type) {
			this.title = title;
			this.type = type;
		}
	}

	List<? extends EObject> members() {
		return switch (kind) {
		case SURVEYS -> ((Site) owner).getSurveys();
		case ACCESS_POINTS -> ((Archive) owner).getAccessPoints();
		case DEVICES -> ((Archive) owner).getDevices();
		case SPLITS -> ((Archive) owner).getSplits();
		};
	}

	/** The owner is what is selected with it, so its properties are shown. */
	@Override
	public <T> T getAdapter(Class<T> type) {
		return Platform.getAdapterManager().getAdapter(owner, type);
	}
}
