package org.cairnfield.ui.plan.internal.surface;

/** What can be shown below the samples. */
public enum SurfaceKind {

	NONE("none"), DENSITY(Messages.SurfaceKind_sampleDensity), LEVEL(Messages.SurfaceKind_rssiOfTheAccessPoint);

	private final String title;

	SurfaceKind(String title) {
		this.title = title;
	}

	/** As the choice offers it. */
	public String title() {
		return title;
	}
}
