package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class ShadowFieldTest {

	private static final int FIELDS = 1500;

	private final Site site = new Site("Shed", "SD", 0, 0, 4,
			List.of(new Floor(0, FloorOutline.rectangle(40, 18), List.of(), List.of()),
					new Floor(1, FloorOutline.rectangle(40, 18), List.of(), List.of())));

	/** Mean product of the fields' values at two places: the covariance, as the mean is 0. */
	private double covariance(int floorA, double ax, double ay, int floorB, double bx, double by) {
		double sum = 0;
		for (int f = 0; f < FIELDS; f++) {
			ShadowField field = new ShadowField(site, Streams.key(11, f), 6, 0.5);
			sum += field.at(floorA, ax, ay) * field.at(floorB, bx, by);
		}
		return sum / FIELDS;
	}

	// Gudmundson's law, exp(-d / 6 m), between nodes of the lattice; 4 standard errors of the fields.
	@Test
	void correlationFallsExponentially() {
		double allowed = 4 * Math.sqrt(2.0 / FIELDS);
		assertEquals(1, covariance(0, 10, 10, 0, 10, 10), allowed);
		assertEquals(Math.exp(-1), covariance(0, 10, 10, 0, 16, 10), allowed);
		assertEquals(Math.exp(-1), covariance(0, 10, 10, 0, 10, 16), allowed);
		assertEquals(Math.exp(-4), covariance(0, 4, 10, 0, 28, 10), allowed);
	}

	@Test
	void varianceIsOneBetweenNodesToo() {
		double allowed = 4 * Math.sqrt(2.0 / FIELDS);
		assertEquals(1, covariance(0, 11, 10.6, 0, 11, 10.6), allowed);
		assertEquals(1, covariance(1, 39.9, 0.1, 1, 39.9, 0.1), allowed);
	}

	@Test
	void floorsAreCorrelatedAsAsked() {
		assertEquals(0.5, covariance(0, 10, 10, 1, 10, 10), 4 * Math.sqrt(2.0 / FIELDS));
	}
}
