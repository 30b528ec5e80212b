package org.cairnfield.ui.tests.wander;

import java.util.List;

import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;

/** What the team lead does: measures, checks gates, releases, looks at releases, restores one. */
final class LeadActs {

	private LeadActs() {
	}

	static List<Act> all() {
		return List.of(
				new Act("measure the map", 2, dice -> Sight.push("measures.measure")),
				new Act("look at measures", 2,
						dice -> Hand.click(Sight.row(dice.oneOf("measures.table", "measures.worst"), dice))),
				new Act("check the gates", 3, dice -> Sight.push("gates.ask")),
				new Act("select a gate", 3, dice -> Hand.click(Sight.row("gates.table", dice))),
				new Act("overrule a gate", 3, dice -> {
					Hand.fill(Sight.control(Control.class, "gates.reason"), "for a trial only");
					Sight.push("gates.overrule");
				}),
				new Act("prepare a release", 2, dice -> Sight.push("gates.prepare")),
				new Act("discard what was prepared", 1, dice -> Sight.push("gates.discard")),
				new Act("sign a release", 2, dice -> Sight.push("gates.sign")),
				new Act("select a release", 2, dice -> Hand.click(Sight.row("releases.table", dice))),
				new Act("use a release", 2,
						dice -> Sight.push(dice.oneOf("releases.compare", "releases.open", "releases.verify",
								"releases.restore"))),
				new Act("study and cancel it", 1, dice -> study()));
	}

	/** A whole study takes minutes. */
	private static void study() {
		Hand.clickWhileBusy(Sight.control(Button.class, "study.start"));
		Button cancel = Widgets.byId(Button.class, "study.cancel");
		Ui.waitUntil("the study runs", cancel::isVisible);
		Hand.clickWhileBusy(cancel);
	}
}
