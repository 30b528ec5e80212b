package org.cairnfield.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.junit.jupiter.api.Test;

class ChangeCommandTest {

	private final StringBuilder done = new StringBuilder();

	@Test
	void makesTheChangeAndTakesItBackOnAStack() {
		BasicCommandStack stack = new BasicCommandStack();
		ChangeCommand command = new ChangeCommand("Bring back", () -> done.append('+'), () -> done.append('-'),
				List.of(this));
		stack.execute(command);
		assertEquals("Bring back", stack.getUndoCommand().getLabel());
		assertTrue(stack.getMostRecentCommand().getAffectedObjects().contains(this));
		stack.undo();
		stack.redo();
		assertEquals("+-+", done.toString());
	}

	@Test
	void cannotBeExecutedWhereNothingChanges() {
		assertFalse(new ChangeCommand("Bring back", () -> done.append('+'), () -> done.append('-'), List.of())
				.canExecute());
	}
}
