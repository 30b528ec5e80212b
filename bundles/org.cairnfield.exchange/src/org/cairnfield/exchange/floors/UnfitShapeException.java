package org.cairnfield.exchange.floors;

/** A geometry that cannot be drawn; whoever reads it says which feature it belongs to. */
final class UnfitShapeException extends Exception {

	private static final long serialVersionUID = 1;

	private final String remedy;

	UnfitShapeException(String what, String remedy) {
		super(what);
		this.remedy = remedy;
	}

	String remedy() {
		return remedy;
	}
}
