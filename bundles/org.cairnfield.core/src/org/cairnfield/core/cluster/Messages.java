package org.cairnfield.core.cluster;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String AffinityPropagation_nearestExemplars;
	public static String KMeans_firstCentres;
	public static String MessagePassing_affinityPropagation;
	public static String NearestLabelled_nearestLabelled;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
