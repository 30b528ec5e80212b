package org.cairnfield.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.cairnfield.model.Device;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class CommandsTest {

	private final Surveys surveys = new Surveys();
	private final BasicCommandStack stack = new BasicCommandStack();
	private final List<SampleRef> all = Surveys.all(surveys.spring, surveys.autumn);

	static Stream<Function<Surveys, Command>> commands() {
		return Stream.of(s -> SetSampleStateCommand.setAside(Surveys.all(s.spring, s.autumn), "in a lift"),
				s -> new MoveSampleCommand(new SampleRef(s.spring, 1), 9, 8),
				s -> new SetFloorCommand(Surveys.all(s.spring), 1),
				s -> new SwapAxesCommand(Surveys.all(s.spring)),
				s -> SetAccessPointStateCommand.setAside(s.archive.getAccessPoints(), "a visitor's hotspot"),
				s -> new GroupAccessPointsCommand(s.archive.getAccessPoints(), "radio 1"),
				s -> new AddWaiversCommand(s.archive, List.of(waiver("empty", "S-1"))));
	}

	@ParameterizedTest
	@MethodSource("commands")
	public void areUndoneAndRedoneExactly(Function<Surveys, Command> make) {
		Surveys before = new Surveys();
		Command command = make.apply(surveys);
		assertTrue(command.canExecute());
		stack.execute(command);
		assertFalse(same(before, surveys));
		assertEquals(command instanceof SwapAxesCommand, make.apply(surveys).canExecute(),
				"a second time nothing would change");
		stack.undo();
		assertTrue(same(before, surveys));
		stack.redo();
		assertFalse(same(before, surveys));
		stack.undo();
		assertTrue(same(before, surveys));
	}

	private static boolean same(Surveys a, Surveys b) {
		return EcoreUtil.equals(a.archive, b.archive);
	}

	@Test
	public void setAsideForAReasonAndKeepAgain() {
		stack.execute(SetSampleStateCommand.setAside(all.subList(0, 2), " in a lift "));
		assertEquals("in a lift", surveys.spring.table().reason(0));
		assertEquals(1, surveys.spring.table().keptCount());
		SetSampleStateCommand keep = SetSampleStateCommand.keep(all);
		stack.execute(keep);
		assertEquals(3, surveys.spring.table().keptCount());
		assertEquals("Keep 2 samples", keep.getLabel(), "only those that were not kept");
		assertThrows(IllegalArgumentException.class, () -> SetSampleStateCommand.setAside(all, " "));
	}

	@Test
	public void moveAndSwapAndLift() {
		stack.execute(new MoveSampleCommand(all.get(0), 7, 9));
		stack.execute(new SwapAxesCommand(all.subList(0, 2)));
		assertEquals(9, surveys.spring.table().xMetres(0));
		assertEquals(7, surveys.spring.table().yMetres(0));
		assertEquals("Swap x and y of 1 sample", stack.getUndoCommand().getLabel(), "S-2 has x = y");
		stack.execute(new SetFloorCommand(all, 1));
		assertEquals("Put 4 samples on floor 1", stack.getUndoCommand().getLabel());
		assertEquals(1, surveys.autumn.table().floorLevel(1));
	}

	@Test
	public void refuseAFloorThatDoesNotExist() {
		assertFalse(new SetFloorCommand(all, 77).canExecute());
		assertTrue(new SetFloorCommand(all, 5).canExecute());
		Surveys other = new Surveys();
		other.site.getFloors().removeIf(floor -> floor.getLevel() == 5);
		List<SampleRef> both = List.of(all.get(0), Surveys.all(other.spring).get(0));
		assertFalse(new SetFloorCommand(both, 5).canExecute(), "each site must have it");
		assertTrue(new SetFloorCommand(both, 4).canExecute());
	}

	@Test
	public void countSamplesOnNoFloor() {
		SampleCounts counts = new SampleCounts();
		assertEquals(0, counts.onNoFloor(surveys.site));
		surveys.site.getFloors().removeIf(floor -> floor.getLevel() == 1);
		assertEquals(2, counts.onNoFloor(surveys.site), "S-3 of either survey");
	}

	@Test
	public void notifyOnceForEachSurveyTouched() {
		List<Notification> heard = new ArrayList<>();
		for (var survey : List.of(surveys.spring, surveys.autumn)) {
			survey.getSamples().eAdapters().add(new AdapterImpl() {
				@Override
				public void notifyChanged(Notification notification) {
					heard.add(notification);
				}
			});
		}
		SampleTable before = surveys.spring.table();
		heard.clear();
		stack.execute(new SetFloorCommand(Surveys.all(surveys.spring), 4));
		assertEquals(1, heard.size());
		assertSame(before, heard.get(0).getOldValue());
		assertSame(surveys.spring.table(), heard.get(0).getNewValue());
	}

	@Test
	public void followEachOtherInACompound() {
		Surveys before = new Surveys();
		CompoundCommand compound = new CompoundCommand();
		compound.append(new SetFloorCommand(all, 2));
		compound.append(SetSampleStateCommand.setAside(all, "flooded"));
		compound.append(new SwapAxesCommand(all));
		stack.execute(compound);
		SampleTable table = surveys.autumn.table();
		assertEquals(2, table.floorLevel(0));
		assertEquals("flooded", table.reason(0));
		assertEquals(2, table.xMetres(0));
		stack.undo();
		assertTrue(same(before, surveys));
	}

	@Test
	public void cannotBeExecutedOnNothing() {
		assertFalse(new SwapAxesCommand(List.of()).canExecute());
		assertFalse(SetSampleStateCommand.keep(all).canExecute());
		assertFalse(new AddWaiversCommand(surveys.archive, List.of()).canExecute());
	}

	@Test
	public void tellWhatTheyTouch() {
		assertEquals(Set.of(surveys.spring), new SetFloorCommand(all.subList(0, 3), 5).getAffectedObjects());
	}

	@Test
	public void calibrateADevice() {
		Device device = ModelFactory.eINSTANCE.createDevice();
		device.setName("Wrist guide A");
		stack.execute(new CalibrateDeviceCommand(device, -3.25));
		assertEquals(-3.25, device.getOffsetDb());
		assertEquals("Calibrate Wrist guide A by -3.3 dB", stack.getUndoCommand().getLabel());
		stack.undo();
		assertNull(device.getOffsetDb());
		assertThrows(IllegalArgumentException.class, () -> new CalibrateDeviceCommand(device, Double.NaN));
	}

	@Test
	public void placeASiteOnEarth() {
		Site site = surveys.archive.getSites().get(0);
		Georeference before = site.getGeoreference();
		stack.execute(new LocateSiteCommand(site, new Georeference(12.5, -30.25, 7)));
		assertEquals(new Georeference(12.5, -30.25, 7), site.getGeoreference());
		assertFalse(new LocateSiteCommand(site, new Georeference(12.5, -30.25, 7)).canExecute());
		stack.undo();
		assertEquals(before, site.getGeoreference());
	}

	@Test
	public void waiveAFindingOnce() {
		stack.execute(new AddWaiversCommand(surveys.archive, List.of(waiver("empty", "S-1"), waiver("empty", "S-1"))));
		assertEquals(1, surveys.archive.getWaivers().size());
		stack.execute(new AddWaiversCommand(surveys.archive, List.of(waiver("empty", "S-1"), waiver("empty", "S-2"))));
		assertEquals("Waive 1 finding", stack.getUndoCommand().getLabel());
		assertEquals(2, surveys.archive.getWaivers().size());
	}

	@Test
	public void nameASampleAcrossFiles() {
		SampleRef sample = SampleRef.of(surveys.spring, "S-3");
		assertEquals("th-spring/S-3", sample.key().toString());
		assertEquals(6, sample.sample().yMetres());
		assertNull(SampleRef.of(surveys.spring, "S-9"));
		assertNotEquals(sample, SampleRef.of(surveys.autumn, "S-3"));
	}

	private static Waiver waiver(String rule, String contentKey) {
		Waiver waiver = ModelFactory.eINSTANCE.createWaiver();
		waiver.setRule(rule);
		waiver.setContentKey(contentKey);
		return waiver;
	}
}
