package org.cairnfield.ui.plan.internal.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;

import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.junit.jupiter.api.Test;

class AccessPointPlacesTest {

	private static List<EstimatedPlace> places(SampleTableBuilder... tables) {
		return AccessPointPlaces.of(List.of(tables).stream().map(SampleTableBuilder::build).toList(), Workers.inline());
	}

	@Test
	void weighsPlacesByAmplitude() {
		// 20 dB less is a tenth of the amplitude: x = (1·0 + 0.1·10 + 0.1·10) / 1.2, y = (0.1·6) / 1.2
		EstimatedPlace place = places(
				SampleTable.builder().sample("a", 1, 0, 0).reading("ap", -50).sample("b", 1, 10, 0)
						.reading("ap", -70).sample("c", 1, 10, 6).reading("ap", -70))
				.get(0);
		assertEquals(new EstimatedPlace("ap", 1, place.xMetres(), place.yMetres(), 3, -50), place);
		assertEquals(2 / 1.2, place.xMetres(), 1e-9);
		assertEquals(0.6 / 1.2, place.yMetres(), 1e-9);
	}

	@Test
	void liesWhereALogDistanceModelHasItsSource() {
		SampleTableBuilder table = SampleTable.builder();
		for (int i = 0; i < 400; i++) {
			double x = i % 20 * 2;
			double y = i / 20 * 2;
			// level of ITU-R P.1238 form: L = L(1 m) + 30 log10(d)
			double distance = Math.max(1, Math.hypot(x - 13, y - 21));
			table.sample(String.format("s%03d", i), 0, x, y).reading("ap",
					(int) Math.round(-40 - 30 * Math.log10(distance)));
		}
		EstimatedPlace place = places(table).get(0);
		assertEquals(AccessPointPlaces.STRONGEST, place.readings());
		assertTrue(Math.hypot(place.xMetres() - 13, place.yMetres() - 21) < 1, place::toString);
	}

	@Test
	void isOnTheFloorWhereItIsStrongest() {
		SampleTableBuilder table = SampleTable.builder();
		for (int i = 0; i < 20; i++) {
			table.sample("low" + i, 0, i, 0).reading("ap", -80);
		}
		for (int i = 0; i < 4; i++) {
			table.sample("up" + i, 1, i, 0).reading("ap", -60);
		}
		assertEquals(List.of(1), places(table).stream().map(EstimatedPlace::floorLevel).toList());
	}

	@Test
	void joinsSurveysAndLeavesOutWhatIsSetAsideOrHeardTooRarely() {
		SampleTableBuilder spring = SampleTable.builder().sample("a", 0, 0, 0).reading("ap", -50).reading("rare", -50);
		SampleTableBuilder autumn = SampleTable.builder().sample("b", 0, 2, 0).reading("ap", -50).sample("c", 0, 4, 0)
				.reading("ap", -50).sample("d", 0, 400, 0).reason("wrong place").reading("ap", -30)
				.reading("rare", -30);
		List<EstimatedPlace> places = places(spring, autumn);
		assertEquals(List.of("ap"), places.stream().map(EstimatedPlace::accessPoint).toList());
		assertEquals(2, places.get(0).xMetres(), 1e-9);
	}

	@Test
	void stopsWhenCancelled() {
		Workers cancelled = Workers.inline().reportingTo(new Progress() {
			@Override
			public boolean isCancelled() {
				return true;
			}
		});
		List<SampleTable> one = List.of(SampleTable.builder().sample("a", 0, 0, 0).reading("ap", -50).build());
		assertThrows(CancellationException.class, () -> AccessPointPlaces.of(one, cancelled));
	}
}
