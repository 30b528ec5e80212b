package org.cairnfield.ui.plan.internal.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.values.Placement;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.junit.jupiter.api.Test;

class PlanImageCommandTest {

	private static final Placement FIRST = new Placement(0.05, 0, 0, 20);
	private static final Placement SECOND = new Placement(0.05, 1.5, 0, 20);

	private final Floor floor = ModelFactory.eINSTANCE.createFloor();
	private final BasicCommandStack stack = new BasicCommandStack();

	@Test
	void givesImageAndPlaceInOneChange() {
		stack.execute(PlanImageCommand.of(floor, "plans/th-0.png", FIRST));
		assertEquals("plans/th-0.png", floor.getPlanImage());
		assertEquals(FIRST, floor.getPlanPlacement());
		stack.undo();
		assertNull(floor.getPlanImage());
		assertNull(floor.getPlanPlacement());
		assertFalse(stack.canUndo());
	}

	@Test
	void laysTheSameImageElsewhere() {
		stack.execute(PlanImageCommand.of(floor, "plans/th-0.png", FIRST));
		Command again = PlanImageCommand.of(floor, "plans/th-0.png", SECOND);
		assertEquals("Place a plan image on Floor 0", again.getLabel());
		stack.execute(again);
		assertEquals(SECOND, floor.getPlanPlacement());
		stack.undo();
		assertEquals(FIRST, floor.getPlanPlacement());
		assertEquals("plans/th-0.png", floor.getPlanImage());
	}

	@Test
	void hasNothingToDoWhereNothingChanges() {
		stack.execute(PlanImageCommand.of(floor, "plans/th-0.png", FIRST));
		assertFalse(PlanImageCommand.of(floor, "plans/th-0.png", FIRST).canExecute());
	}
}
