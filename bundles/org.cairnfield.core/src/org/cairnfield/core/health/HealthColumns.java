package org.cairnfield.core.health;

import java.io.Serializable;

/** The figures of {@link SampleHealth}, filled from several threads at different samples. */
final class HealthColumns implements Serializable {

	private static final long serialVersionUID = 1;

	final double[] nearestErrorMetres;
	final double[] medianErrorMetres;
	final double[] floorDisagreement;
	final double[] siteDisagreement;
	final double[] overlap;
	final double[] levelDeficitDb;
	final double[] levelScatterDb;
	final double[] nearestDistance;
	final double[] aroundWithinMetres;

	HealthColumns(int samples) {
		nearestErrorMetres = new double[samples];
		medianErrorMetres = new double[samples];
		floorDisagreement = new double[samples];
		siteDisagreement = new double[samples];
		overlap = new double[samples];
		levelDeficitDb = new double[samples];
		levelScatterDb = new double[samples];
		nearestDistance = new double[samples];
		aroundWithinMetres = new double[samples];
	}
}
