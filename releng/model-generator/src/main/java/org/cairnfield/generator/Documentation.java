package org.cairnfield.generator;

import java.util.Iterator;

import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What the model says of itself: it becomes Javadoc, and the properties view shows it. */
final class Documentation {

	private Documentation() {
	}

	/** @throws IllegalStateException naming what has none */
	static void require(EPackage root) {
		for (Iterator<EObject> all = root.eAllContents(); all.hasNext();) {
			EObject element = all.next();
			if (element instanceof EClassifier || element instanceof EStructuralFeature) {
				String documentation = EcoreUtil.getDocumentation((ENamedElement) element);
				if (documentation == null || documentation.isBlank()) {
					throw new IllegalStateException(((ENamedElement) element).getName() + " has no documentation");
				}
			}
		}
	}
}
