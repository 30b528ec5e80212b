package org.cairnfield.model.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.core.cluster.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

public class TextFormsTest {

	@Test
	public void readsWhatItWrites() {
		for (Scope scope : List.of(Scope.ARCHIVE, Scope.site("tide-house"), Scope.floor("tide-house", -1))) {
			assertEquals(scope, Scope.parse(scope.toString()));
		}
		SampleKey key = new SampleKey("sh-spring", "S/1 north");
		assertEquals(key, SampleKey.parse(key.toString()));
		Georeference georeference = new Georeference(54.5, -3.25, 12);
		assertEquals(georeference, Georeference.parse(georeference.toString()));
		Placement placement = new Placement(0.02, 90, 1, 2);
		assertEquals(placement, Placement.parse(placement.toString()));
		Outline outline = Outline.of(new double[] { 0, 40, 40 }, new double[] { 0, 0, 25.5 });
		assertEquals(outline, Outline.parse(outline.toString()));
		assertEquals("0.0,0.0 40.0,0.0 40.0,25.5", outline.toString());
		KnownPlace place = new KnownPlace("lantern-store", -1, 12.5, -3);
		assertEquals("lantern-store/-1 12.5,-3.0", place.toString());
		assertEquals(place, KnownPlace.parse(" lantern-store/-1  12.5,-3 "));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "site", "site/", "site/a/b", "site/a/1/2", "floor/a", "site/../1" })
	public void refusesWhatIsNoScope(String text) {
		assertThrows(IllegalArgumentException.class, () -> Scope.parse(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "1 2", "91 0 0", "0 181 0", "0 0 361", "NaN 0 0", "a b c" })
	public void refusesWhatIsNowhere(String text) {
		assertThrows(IllegalArgumentException.class, () -> Georeference.parse(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "th", "th/1", "th/1 2", "th/1 2,x", "th/1 2,3,4", "th/1 2 3", "th/low 2,3", "th 2,3",
			"../1 2,3", "th//1 2,3", "th/1 NaN,3" })
	public void refusesWhatIsNoKnownPlace(String text) {
		assertThrows(IllegalArgumentException.class, () -> KnownPlace.parse(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "1", "1,2,3", "1,x", "1,2 Infinity,0", "," })
	public void refusesWhatIsNoOutline(String text) {
		assertThrows(IllegalArgumentException.class, () -> Outline.parse(text));
	}

	@Test
	public void placesPixels() {
		// turned by 90°: the image's right is the floor's up, its down is the floor's right
		Placement placement = new Placement(0.5, 90, 10, 20);
		assertEquals(10, placement.xMetres(4, 0), 1e-12);
		assertEquals(22, placement.yMetres(4, 0), 1e-12);
		assertEquals(13, placement.xMetres(0, 6), 1e-12);
		assertEquals(20, placement.yMetres(0, 6), 1e-12);
	}

	@Test
	public void enclosesAnArea() {
		// an L: 4 m × 4 m without its upper right quarter
		Outline outline = Outline.parse("0,0 4,0 4,2 2,2 2,4 0,4");
		assertEquals(12, outline.areaSquareMetres(), 1e-12);
		assertTrue(outline.polygon().contains(3, 1));
		assertFalse(outline.polygon().contains(3, 3));
		assertEquals(0, Outline.parse("0,0 1,1").areaSquareMetres());
		assertThrows(IllegalArgumentException.class, () -> Outline.parse("0,0 1,1").polygon());
	}

	@Test
	public void sortsLabelsAndCountsClusters() {
		Labels labels = Labels.builder().add(new SampleKey("b", "1"), 1, Role.CORE)
				.add(new SampleKey("a", "2"), Labels.NOISE, Role.NOISE).add(new SampleKey("a", "1"), 1, Role.BORDER)
				.build();
		assertEquals("a/1", labels.key(0).toString());
		assertEquals(2, labels.row(new SampleKey("b", "1")));
		assertEquals(Role.CORE, labels.role(2));
		assertEquals(-1, labels.row(new SampleKey("b", "2")));
		assertEquals(2, labels.clusterSizes()[1]);
		assertEquals(1, Labels.builder().add(new SampleKey("a", "1"), 0, Role.CORE).build().clusterSizes()[0]);
		assertEquals(1, labels.noise());
	}

	@Test
	public void refusesLabelsThatContradict() {
		SampleKey key = new SampleKey("a", "1");
		assertThrows(IllegalArgumentException.class, () -> Labels.builder().add(key, 0, Role.NOISE));
		assertThrows(IllegalArgumentException.class, () -> Labels.builder().add(key, Labels.NOISE, Role.CORE));
		LabelsBuilder twice = Labels.builder().add(key, 0, Role.CORE).add(key, 1, Role.CORE);
		assertThrows(IllegalArgumentException.class, twice::build);
	}

	@Test
	public void findsAProposalBySample() {
		Proposal one = new Proposal(new SampleKey("b", "1"), 3, 0.9, Double.NaN, new SampleKey("a", "7"), 3);
		Proposal other = new Proposal(new SampleKey("a", "1"), 2, 0.4, 0.1, new SampleKey("a", "7"), Labels.NOISE);
		Proposals proposals = Proposals.of(List.of(one, other));
		assertEquals(List.of(other, one), proposals.all());
		assertEquals(one, proposals.of(one.sample()).orElseThrow());
		assertTrue(proposals.of(new SampleKey("a", "2")).isEmpty());
		assertThrows(IllegalArgumentException.class, () -> Proposals.of(List.of(one, one)));
		assertThrows(IllegalArgumentException.class,
				() -> new Proposal(one.sample(), 1, 1.1, 0, one.carrier(), Labels.NOISE));
	}
}
