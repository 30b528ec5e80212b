package org.cairnfield.ui.plan.internal.raster;

/** What is true of a sample beside its look, as bits. The higher the sum, the later it is drawn. */
public final class Mark {

	/** Part of the map, not set aside. */
	public static final int KEPT = 1;
	/** An open finding is about it. */
	public static final int FOUND = 2;
	/** Selected. */
	public static final int SELECTED = 4;

	private Mark() {
	}
}
