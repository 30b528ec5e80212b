package org.cairnfield.model.edit;

import java.util.OptionalInt;

import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Survey;
import org.cairnfield.model.provider.ModelItemProviderAdapterFactory;
import org.cairnfield.model.values.Count;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.DecoratorAdapterFactory;
import org.eclipse.emf.edit.provider.IEditingDomainItemProvider;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.eclipse.emf.edit.provider.IItemProviderDecorator;
import org.eclipse.emf.edit.provider.IStructuredItemContentProvider;
import org.eclipse.emf.edit.provider.ITreeItemContentProvider;
import org.eclipse.emf.edit.provider.ItemProviderDecorator;
import org.eclipse.emf.edit.provider.ViewerNotification;

/**
 * The adapter factory to use in views, batch and tests: the generated item providers, with names, counts of samples and
 * icons of our own. Dispose of it when done. Use it from one thread.
 */
public final class ModelLabels extends DecoratorAdapterFactory {

	private final SampleCounts counts = new SampleCounts();

	public ModelLabels() {
		super(new ModelItemProviderAdapterFactory());
	}

	/** Name, and the number of samples where there can be any: "Tide House (611 samples)". */
	public String text(EObject object) {
		OptionalInt samples = counts.of(object);
		return ModelText.name(object) + (samples.isEmpty() ? "" : " (" + Count.of(samples.getAsInt(), "sample") + ')');
	}

	@Override
	protected IItemProviderDecorator createItemProviderDecorator(Object target, Object type) {
		return new Label();
	}

	/** What shows a number of samples has a new label when samples change. */
	@Override
	public void fireNotifyChanged(Notification notification) {
		super.fireNotifyChanged(notification);
		if (notification.getNotifier() instanceof Samples samples && samples.eContainer() instanceof Survey survey
				&& notification.getFeature() == ModelPackage.Literals.SAMPLES__TABLE) {
			super.fireNotifyChanged(new ViewerNotification(notification, survey, false, true));
			if (survey.getSite() != null) {
				super.fireNotifyChanged(new ViewerNotification(notification, survey.getSite(), false, true));
				survey.getSite().getFloors()
						.forEach(floor -> super.fireNotifyChanged(new ViewerNotification(notification, floor, false, true)));
			}
		}
	}

	/** Stands before a generated provider; whatever is not a label comes from that. */
	private final class Label extends ItemProviderDecorator implements IEditingDomainItemProvider,
			IStructuredItemContentProvider, ITreeItemContentProvider, IItemLabelProvider, IItemPropertySource {

		Label() {
			super(ModelLabels.this);
		}

		@Override
		public String getText(Object object) {
			return text((EObject) object);
		}

		@Override
		public Object getImage(Object object) {
			return ModelIcons.url(((EObject) object).eClass());
		}
	}
}
