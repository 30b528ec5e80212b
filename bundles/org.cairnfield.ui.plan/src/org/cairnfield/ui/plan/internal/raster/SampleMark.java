package org.cairnfield.ui.plan.internal.raster;

/** What is true of a sample beside its look, as bits. The higher the sum, the later it is drawn. */
public final class SampleMark {

	/** Of a test survey. */
	public static final int TEST = 1;
	/** Part of the map, not set aside. */
	public static final int KEPT = 2;
	/** An open finding is about it. */
	public static final int FOUND = 4;
	/** The nearest member of the cluster that is proposed for what is selected. */
	public static final int MEMBER = 8;
	/** The carrier of what is selected. */
	public static final int CARRIER = 16;
	/** Selected. */
	public static final int SELECTED = 32;
	/** More than the sum of all. */
	static final int END = 64;

	private SampleMark() {
	}
}
