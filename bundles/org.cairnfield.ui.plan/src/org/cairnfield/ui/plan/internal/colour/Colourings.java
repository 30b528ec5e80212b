package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.problem.Problems;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.osgi.util.NLS;

/** The ways to colour samples: those of the plan, then those that other bundles add. */
public final class Colourings {

	/** Id of the extension point. */
	public static final String POINT = "org.cairnfield.ui.plan.colourings";

	private Colourings() {
	}

	/** All of them, each made anew. One that cannot be made is left out and logged. */
	public static List<SampleColouring> all() {
		List<SampleColouring> all = new ArrayList<>(
				List.of(new ByNumberHeard(), new ByRssi(), new BySurvey(), new ByDevice(), new ByCluster(),
						new ByHealth(), new ByState()));
		IExtensionRegistry registry = RegistryFactory.getRegistry();
		if (registry != null) {
			for (IConfigurationElement element : registry.getConfigurationElementsFor(POINT)) {
				try {
					all.add((SampleColouring) element.createExecutableExtension("class"));
				} catch (CoreException | ClassCastException e) {
					Problems.log(NLS.bind(Messages.Colourings_colouringOf, element.getContributor().getName()), e);
				}
			}
		}
		return all;
	}
}
