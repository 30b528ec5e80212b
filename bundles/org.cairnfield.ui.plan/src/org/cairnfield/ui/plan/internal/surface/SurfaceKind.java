package org.cairnfield.ui.plan.internal.surface;

/** What can be shown below the samples. */
public enum SurfaceKind {

	NONE("none"), DENSITY("sample density"), LEVEL("RSSI of the access point");

	private final String title;

	SurfaceKind(String title) {
		this.title = title;
	}

	/** As the choice offers it. */
	public String title() {
		return title;
	}
}
