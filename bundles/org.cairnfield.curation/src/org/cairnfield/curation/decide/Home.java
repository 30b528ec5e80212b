package org.cairnfield.curation.decide;

/**
 * Where a noise sample is searched.
 *
 * @param cluster number of the cluster; −1 where the kind is another
 */
public record Home(Kind kind, int cluster) {

	/** The ways in which a sample can be found. */
	public enum Kind {
		/** Where the cluster is searched. */
		CLUSTER,
		/** By every query. */
		POOL,
		/** Not at all. */
		OUT
	}

	/** Searched by every query. */
	public static final Home POOL = new Home(Kind.POOL, -1);
	/** Not in the map. */
	public static final Home OUT = new Home(Kind.OUT, -1);

	/** In a cluster, by its number. */
	public static Home cluster(int number) {
		return new Home(Kind.CLUSTER, number);
	}
}
