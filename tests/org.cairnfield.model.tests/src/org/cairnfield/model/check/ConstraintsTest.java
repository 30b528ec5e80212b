package org.cairnfield.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Device;
import org.cairnfield.model.Fixture;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EOperation;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each constraint is broken once in an archive that is sound otherwise, and found through EMF's own validator. */
public class ConstraintsTest {

	@Test
	public void findNothingInASoundArchive() {
		Diagnostic diagnostic = Diagnostician.INSTANCE.validate(new Fixture().archive);
		assertEquals(Diagnostic.OK, diagnostic.getSeverity(), diagnostic::toString);
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("breaches")
	public void areFoundWhereTheyAreBroken(String constraint, String message, Consumer<Fixture> breach) {
		Fixture fixture = new Fixture();
		breach.accept(fixture);
		Diagnostic diagnostic = Diagnostician.INSTANCE.validate(fixture.archive);
		List<String> messages = diagnostic.getChildren().stream().map(Diagnostic::getMessage).toList();
		assertEquals(1, messages.size(), messages::toString);
		assertTrue(messages.get(0).contains(message), messages::toString);
		assertTrue(messages.get(0).contains(": "), "tells a remedy");
	}

	/** A constraint without a breach here would not be tested. */
	@Test
	public void areAllBrokenOnce() {
		Set<String> declared = new HashSet<>();
		for (EClassifier classifier : ModelPackage.eINSTANCE.getEClassifiers()) {
			if (classifier instanceof EClass type) {
				for (EOperation operation : type.getEOperations()) {
					if (!operation.getEParameters().isEmpty()) {
						declared.add(type.getName() + '.' + operation.getName());
					}
				}
			}
		}
		Set<String> broken = new HashSet<>();
		breaches().forEach(breach -> broken.add((String) breach.get()[0]));
		assertEquals(declared, broken);
	}

	static Stream<Arguments> breaches() {
		return Stream.of(
				breach("Archive.idsAreUnique", "taken by site tide-house", f -> f.device.setId("Tide-House")),
				breach("Archive.addressesAreUnique", "00-00-5e-00-53-01",
						f -> f.archive.getAccessPoints().add(Fixture.accessPoint("other", "00-00-5e-00-53-01"))),
				breach("Site.idIsUsable", "'../up'", f -> f.site.setId("../up")),
				breach("Site.levelsAreUnique", "two floors of level 1", f -> f.site.getFloors().add(Fixture.floor(1))),
				breach("Floor.levelIsInRange", "40000", f -> f.site.getFloors().add(Fixture.floor(40_000))),
				breach("Floor.outlineIsAnArea", "2 corners", f -> f.ground.setOutline(Outline.parse("0,0 1,1"))),
				breach("Floor.outlineIsAnArea", "no area", f -> f.ground.setOutline(Outline.parse("0,0 1,1 2,2"))),
				breach("Floor.outlineIsAnArea", "crosses or touches itself",
						f -> f.ground.setOutline(Outline.parse("0,0 9,7 9,0 0,4"))),
				breach("Floor.heightIsPlausible", "0.0 m", f -> f.ground.setHeightMetres(0.0)),
				breach("Floor.heightIsPlausible", "NaN m", f -> f.ground.setHeightMetres(Double.NaN)),
				breach("Floor.planImageStaysInside", "../../etc", f -> f.ground.setPlanImage("plans/../../etc/x.png")),
				breach("Floor.planImageStaysInside", "/etc", f -> f.ground.setPlanImage("/etc/x.png")),
				breach("Floor.planImageStaysInside", "file:", f -> f.ground.setPlanImage("file:x.png")),
				breach("AccessPoint.idIsUsable", "no id",
						f -> f.archive.getAccessPoints().add(Fixture.accessPoint(null, "MAC125"))),
				// the first octet of an address of a group is odd: IEEE 802
				breach("AccessPoint.addressIsOfOneRadio", "of a group",
						f -> f.accessPoint.setAddress("01:00:5E:00:53:01")),
				breach("AccessPoint.addressIsOfOneRadio", "no address", f -> f.accessPoint.setAddress(" ")),
				breach("AccessPoint.channelIsInBand", "Channel 15", f -> {
					f.accessPoint.setBand(WifiBand.GHZ_2_4);
					f.accessPoint.setChannel(15);
				}),
				breach("AccessPoint.channelIsInBand", "Channel -1", f -> f.accessPoint.setChannel(-1)),
				breach("AccessPoint.heardInOrder", "before 2025-03-14", f -> {
					f.accessPoint.setFirstHeard(f.survey.getDate());
					f.accessPoint.setLastHeard(f.survey.getDate().minusDays(1));
				}),
				breach("AccessPoint.placeIsOnAFloor", "tide-house/2",
						f -> f.accessPoint.setPlace(new KnownPlace("tide-house", 2, 1, 1))),
				breach("AccessPoint.placeIsOnAFloor", "nowhere/0",
						f -> f.accessPoint.setPlace(new KnownPlace("nowhere", 0, 1, 1))),
				breach("Device.idIsUsable", "no id", f -> {
					Device device = ModelFactory.eINSTANCE.createDevice();
					f.archive.getDevices().add(device);
				}),
				breach("Device.offsetIsPlausible", "-40.1 dB", f -> f.device.setOffsetDb(-40.1)),
				breach("Survey.idIsUsable", "'a/b'", f -> f.survey.setId("a/b")),
				breach("Survey.surveyorIsInitials", "more than initials", f -> f.survey.setSurveyor("A name")),
				breach("Survey.digestIsSha256", "64 hexadecimal", f -> f.survey.setSourceDigest("0".repeat(63) + "G")),
				breach("Survey.levelsAreKnown", "1 samples are on floor 2", f -> edit(f.survey, 0, 2)),
				breach("Survey.accessPointsAreKnown", "access point stranger", f -> f.survey.getSamples().setTable(
						SampleTable.builder().sample("S-1", 0, 0, 0).reading("stranger", -50).build())),
				breach("Split.idIsUsable", "no id", f -> f.split.setId(null)),
				breach("Split.parametersAreInRange", "ε -1.0", f -> f.split.setEpsilon(-1)),
				breach("Split.parametersAreInRange", "variance 1.5", f -> f.split.setPcaShare(1.5)),
				breach("Split.parametersAreInRange", "gate of 1.5", f -> f.split.setGate(1.5)),
				breach("Split.parametersAreInRange", "threshold of -2.0", f -> f.split.setThreshold(-2)),
				breach("Ledger.idIsUsable", "no id", f -> f.ledger.setId("")),
				breach("Ledger.superseded", "supersedes v0", f -> f.verdict.setSupersedes("v0")),
				breach("Verdict.isAccountedFor", "lacks", f -> f.verdict.setTime(null)),
				breach("Verdict.isAccountedFor", "without a reason", f -> f.verdict.setDecision(Decision.REJECT)),
				breach("Verdict.isAccountedFor", "without a reason", f -> f.verdict.setDecision(Decision.FAULTY)),
				breach("Verdict.isAccountedFor", "names no cluster", f -> {
					f.verdict.setDecision(Decision.MOVE);
					f.verdict.setCluster(-1);
				}),
				breach("Waiver.isAccountedFor", "lacks", f -> f.waiver.setReason("")));
	}

	private static void edit(Survey survey, int row, int level) {
		survey.getSamples().setTable(survey.table().edit().floorLevel(row, level).done());
	}

	private static Arguments breach(String constraint, String message, Consumer<Fixture> breach) {
		return arguments(constraint, message, breach);
	}
}
