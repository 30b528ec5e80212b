package org.cairnfield.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

public class ModelTest {

	@Test
	public void writesAndReadsItsValuesThroughTheFactory() {
		Map<EDataType, Object> values = Map.of(
				ModelPackage.Literals.OUTLINE, Outline.parse("0,0 1,0 1,1"),
				ModelPackage.Literals.PLACEMENT, new Placement(0.1, 0, 0, 0),
				ModelPackage.Literals.GEOREFERENCE, new Georeference(1, 2, 3),
				ModelPackage.Literals.SCOPE, Scope.floor("tide-house", 1),
				ModelPackage.Literals.SAMPLE_KEY, new SampleKey("th-spring", "S-1"),
				ModelPackage.Literals.WIFI_BAND, WifiBand.GHZ_5,
				ModelPackage.Literals.DATE, LocalDate.of(2025, 3, 14),
				ModelPackage.Literals.TIME, Instant.parse("2025-03-14T09:26:53Z"),
				ModelPackage.Literals.DECISION, Decision.REJECT);
		values.forEach((type, value) -> {
			assertTrue(type.isSerializable(), type::getName);
			String text = EcoreUtil.convertToString(type, value);
			assertEquals(value, EcoreUtil.createFromString(type, text), type::getName);
			if (!(type instanceof EEnum)) {
				assertNull(EcoreUtil.createFromString(type, null), type::getName);
			}
		});
	}

	/** What is in columns is written by the archive, never as an attribute of XMI. */
	@Test
	public void keepsColumnsOutOfXmi() {
		for (EDataType type : List.of(ModelPackage.Literals.SAMPLE_TABLE, ModelPackage.Literals.LABELS,
				ModelPackage.Literals.PROPOSALS)) {
			assertFalse(type.isSerializable(), type::getName);
		}
	}

	@Test
	public void knowsTheSiteOfASurvey() {
		Fixture fixture = new Fixture();
		assertSame(fixture.site, fixture.survey.getSite());
		assertSame(fixture.site, fixture.survey.eContainer());
	}

	@Test
	public void hasAnEmptyTableWithoutSamples() {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		assertSame(SampleTable.EMPTY, survey.table());
		survey.setSamples(ModelFactory.eINSTANCE.createSamples());
		assertSame(SampleTable.EMPTY, survey.table());
	}

	@Test
	public void keepsAnAccessPointUnlessThereIsAReason() {
		AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
		assertTrue(accessPoint.isKept());
		accessPoint.setReason("a visitor's hotspot");
		assertFalse(accessPoint.isKept());
	}

	@Test
	public void defersUnlessSomebodyDecided() {
		assertEquals(Decision.DEFER, ModelFactory.eINSTANCE.createVerdict().getDecision());
	}

	@Test
	public void givesEachClassAFactoryMethod() {
		ModelPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance)
				.forEach(type -> assertSame(type, ModelFactory.eINSTANCE.create((EClass) type).eClass()));
	}
}
