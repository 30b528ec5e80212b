package org.cairnfield.ui.plan.internal.raster;

/** What is true of a sample beside its look, as bits. The higher the sum, the later it is drawn. */
public final class SampleMark {

	/** Part of the map, not set aside. */
	public static final int KEPT = 1;
	/** An open finding is about it. */
	public static final int FOUND = 2;
	/** The nearest member of the cluster that is proposed for what is selected. */
	public static final int MEMBER = 4;
	/** The carrier of what is selected. */
	public static final int CARRIER = 8;
	/** Selected. */
	public static final int SELECTED = 16;
	/** More than the sum of all. */
	static final int END = 32;

	private SampleMark() {
	}
}
