package org.cairnfield.core.cluster;

import java.util.Locale;

/** What a sample is to DBSCAN, after Ester, Kriegel, Sander, Xu, KDD-96, pp. 226–231. */
public enum Role {
	/** At least minPts samples, itself counted, lie within ε. */
	CORE,
	/** Not core, yet within ε of a core sample. */
	BORDER,
	/** Neither. */
	NOISE;

	@Override
	public String toString() {
		return name().toLowerCase(Locale.ROOT);
	}
}
