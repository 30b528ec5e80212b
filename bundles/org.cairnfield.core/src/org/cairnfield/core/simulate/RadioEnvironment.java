package org.cairnfield.core.simulate;

/**
 * How waves travel in a simulated campus: loss by the classic form of ITU-R P.1238 (see {@link ItuIndoor}),
 * walls one by one, shadowing about that mean and noise in time.
 *
 * @param loss               distance coefficient and floor loss
 * @param mostWallsDb        what all walls of a way together take at most, as waves find ways round (common
 *                           practice)
 * @param shadowingSdDb      standard deviation of the shadowing
 * @param correlationMetres  distance at which the shadowing's correlation has fallen to 1/e (Gudmundson,
 *                           Electronics Letters 27, 1991)
 * @param floorCorrelation   correlation of the shadowing from one floor to the next, 0 … 1
 * @param scanNoiseSdDb      noise of each reading
 * @param sampleNoiseSdDb    noise that all readings of a sample share: how the surveyor stood
 * @param seasonSdDb         how far access points drift from one season to another
 */
public record RadioEnvironment(ItuIndoor loss, double mostWallsDb, double shadowingSdDb, double correlationMetres,
		double floorCorrelation, double scanNoiseSdDb, double sampleNoiseSdDb, double seasonSdDb) {

	/** Galleries and stores: heavy walls counted one by one on top of the office coefficient. */
	public static RadioEnvironment museum() {
		return new RadioEnvironment(ItuIndoor.OFFICE_2_4_GHZ, 30, 4, 5, 0.5, 3, 1.5, 2);
	}
}
