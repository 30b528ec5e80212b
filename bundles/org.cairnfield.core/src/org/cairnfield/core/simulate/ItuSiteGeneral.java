package org.cairnfield.core.simulate;

/**
 * Loss on one floor by the newer, site-general form of ITU-R P.1238 (Table 2 of edition -11):
 * L = 10 α log₁₀ d + β + 10 γ log₁₀ f, f in GHz, d in metres, with a spread that is normal in dB. Whether
 * later editions keep the coefficients was not checked.
 */
public enum ItuSiteGeneral {

	OFFICE_IN_SIGHT(1.46, 34.62, 2.03, 3.76, 2, 27),
	OFFICE_OUT_OF_SIGHT(2.46, 29.53, 2.38, 5.04, 4, 30),
	CORRIDOR_IN_SIGHT(1.63, 28.12, 2.25, 4.07, 2, 160),
	CORRIDOR_OUT_OF_SIGHT(2.77, 29.27, 2.48, 7.63, 4, 94),
	INDUSTRIAL_IN_SIGHT(2.31, 24.52, 2.06, 2.69, 2, 101),
	INDUSTRIAL_OUT_OF_SIGHT(3.79, 21.01, 1.34, 9.05, 5, 108);

	private final double alpha;
	private final double beta;
	private final double gamma;
	private final double spreadDb;
	private final double nearestMetres;
	private final double farthestMetres;

	ItuSiteGeneral(double alpha, double beta, double gamma, double spreadDb, double nearestMetres,
			double farthestMetres) {
		this.alpha = alpha;
		this.beta = beta;
		this.gamma = gamma;
		this.spreadDb = spreadDb;
		this.nearestMetres = nearestMetres;
		this.farthestMetres = farthestMetres;
	}

	/** The median loss in dB; outside {@link #covers} it extrapolates. */
	public double medianLossDb(double metres, double frequencyMhz) {
		return 10 * alpha * Math.log10(metres) + beta + 10 * gamma * Math.log10(frequencyMhz / 1000);
	}

	/** Standard deviation about the median, in dB. */
	public double spreadDb() {
		return spreadDb;
	}

	/** Whether the coefficients were measured at that distance. */
	public boolean covers(double metres) {
		return metres >= nearestMetres && metres <= farthestMetres;
	}
}
