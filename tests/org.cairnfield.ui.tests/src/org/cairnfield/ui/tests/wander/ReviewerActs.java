package org.cairnfield.ui.tests.wander;

import java.util.List;

import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;

/** What the reviewer does: splits, looks at proposals, decides by keys. */
final class ReviewerActs {

	private int splits;

	List<Act> all() {
		return List.of(
				new Act("choose what to split", 2, ReviewerActs::scope),
				new Act("enter minPts", 2, dice -> Sight.enter("split.minPts", Integer.toString(dice.between(2, 8)))),
				new Act("enter ε", 4,
						dice -> Sight.enter("split.epsilon", dice.oneOf("163", "120", "204", "90", "0", "much"))),
				new Act("keep a split", 3, this::keep),
				new Act("sweep", 1, dice -> Sight.push("split.sweep")),
				new Act("select a kept split", 2, dice -> Hand.click(Sight.row("split.kept", dice))),
				new Act("use a kept split", 1, dice -> Sight.push(dice.oneOf("split.remove", "split.propose"))),
				new Act("select a proposal", 5, dice -> Hand.click(Sight.row("review.queue", dice))),
				new Act("decide", 12, ReviewerActs::decide),
				new Act("filter the queue", 2,
						dice -> Sight.enter("review.filter", dice.oneOf("floor 1", "floor = 2", "", "C3", "lantern"))),
				new Act("audit a band", 1, dice -> Sight.push(dice.oneOf("review.audit.look", "review.audit.approve"))),
				new Act("measure the split", 1, dice -> Sight.push(dice.oneOf("measure.start", "measure.cancel"))));
	}

	private static void scope(Dice dice) {
		Combo scope = Sight.control(Combo.class, "split.scope");
		Ui.run(scope::setFocus);
		Hand.press(dice.oneOf("Down", "Down", "Up"));
	}

	private void keep(Dice dice) {
		Hand.fill(Sight.control(Control.class, "split.name"),
				dice.onceIn(5) ? "again" : "try-" + ProcessHandle.current().pid() + "-" + ++splits);
		Sight.push("split.keep");
	}

	private static void decide(Dice dice) {
		Table queue = Sight.control(Table.class, "review.queue");
		if (Ui.ask(queue::getItemCount) == 0) {
			throw new NotNow("nothing to decide");
		}
		if (dice.onceIn(2)) { // without a reason nobody approves against a warning
			Ui.run(Sight.control(Combo.class, "review.reason")::setFocus);
			Hand.press(dice.oneOf("Down", "Down", "Up"));
		}
		Ui.run(queue::setFocus);
		Hand.activate(Sight.front());
		for (int i = dice.between(1, 5); i > 0; i--) {
			Hand.press(dice.oneOf("a", "a", "a", "p", "p", "m", "d", "f", "n", "b", "Delete"));
		}
	}
}
