package org.cairnfield.ui.tests.wander;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.cairnfield.ui.tests.story.Stage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;

/** What the data steward does: looks at samples, moves them, sets them aside, applies remedies, takes surveys in. */
final class StewardActs {

	private static final String[] REASONS = { "painted wall", "through an open window", "crate in the way",
			"tide gate open", "ü ≠ 'x' \"y\"" };
	private static final String[] FILTERS = { "heard < 8", "floor = 1", "heard < 8 and floor = 2", "x > ", "nonsense",
			"", "state = kept", "-" };

	private final Path folder;
	private int surveys;

	/** @param folder for survey files to take in */
	StewardActs(Path folder) {
		this.folder = folder;
	}

	List<Act> all() {
		return List.of(
				new Act("select in the archive's tree", 8, dice -> Hand.click(Sight.branch("explorer.tree", dice))),
				new Act("expand in the archive's tree", 3, dice -> {
					Hand.click(Sight.branch("explorer.tree", dice));
					Hand.press(dice.oneOf("Right", "Left"));
				}),
				new Act("select a sample in the table", 6, dice -> Hand.click(Sight.row("samples.table", dice))),
				new Act("select rows of the table", 3, dice -> {
					Hand.click(Sight.row("samples.table", dice));
					for (int i = dice.between(1, 5); i > 0; i--) {
						Hand.press("shift+Down");
					}
				}),
				new Act("click a sample on the plan", 6, StewardActs::clickOnThePlan),
				new Act("drag a sample on the plan", 6, StewardActs::drag),
				new Act("drag over the plan", 4, StewardActs::lasso),
				new Act("set samples aside", 7, dice -> {
					EveryonesActs.chord("ctrl+d");
					answerTheBar(dice, dice.oneOf(REASONS));
				}),
				new Act("bring samples back", 4, dice -> EveryonesActs.chord("ctrl+b")),
				new Act("exchange x and y", 2, dice -> Sight.command("org.cairnfield.ui.swapAxes")),
				new Act("put samples on another floor", 2, dice -> {
					Sight.command("org.cairnfield.ui.setFloor");
					answerTheBar(dice, dice.oneOf("0", "1", "2", "77", "upstairs"));
				}),
				new Act("edit a position", 3, StewardActs::editPosition),
				new Act("filter the samples", 4, dice -> Sight.enter("samples.filter", dice.oneOf(FILTERS))),
				new Act("select a finding", 6, dice -> Hand.click(Sight.branch("findings.tree", dice))),
				new Act("show the place of a finding", 2, dice -> Sight.push("findings.place")),
				new Act("apply a remedy", 5, dice -> Sight.push("findings.remedy")),
				new Act("waive a finding", 3, dice -> {
					Hand.fill(Sight.control(Control.class, "findings.reason"), dice.oneOf(REASONS));
					Sight.push("findings.waive");
				}),
				new Act("compare surveys", 3, StewardActs::compareSurveys),
				new Act("select an access point of the timeline", 2, dice -> {
					Hand.click(Sight.control(Control.class, "timeline.courses"));
					Hand.press(dice.oneOf("Home", "Down", "End"));
				}),
				new Act("select a remedy of age", 2, dice -> Hand.click(Sight.row("timeline.remedies", dice))),
				new Act("apply a remedy of age", 2, dice -> Sight.push("timeline.apply")),
				new Act("plan the next walk", 1, dice -> Sight.push("timeline.walk")),
				new Act("make a save point", 3, dice -> {
					Hand.fill(Sight.control(Control.class, "history.note"), dice.oneOf(REASONS));
					Sight.push("history.make");
				}),
				new Act("select a save point", 3, dice -> Hand.click(Sight.row("history.points", dice))),
				new Act("use a save point", 3,
						dice -> Sight.push(
								dice.oneOf("history.compare", "history.open", "history.undo", "history.restore"))),
				new Act("change a property", 3, StewardActs::changeAProperty),
				new Act("choose what the plan shows", 3, dice -> {
					Combo choice = Sight.control(Combo.class, dice.oneOf("plan.surface", "plan.colourBy"));
					Ui.run(choice::setFocus);
					Hand.press(dice.oneOf("Down", "Up", "End"));
				}),
				new Act("edit the outline of a floor", 2, StewardActs::editOutline),
				new Act("make an outline from samples", 1,
						dice -> Sight.command("org.cairnfield.ui.plan.outlineFromSamples")),
				new Act("say where an access point is", 2, dice -> {
					Sight.command("org.cairnfield.ui.plan.setPlace");
					clickOnThePlan(dice);
				}),
				new Act("forget where an access point is", 1,
						dice -> Sight.command("org.cairnfield.ui.plan.forgetPlace")),
				new Act("move a site", 1,
						dice -> Sight.command("org.cairnfield.ui." + dice.oneOf("moveUp", "moveDown"))),
				new Act("take a first step", 1,
						dice -> Hand.click(Sight.control(Link.class, "steps." + dice.between(2, 8)))),
				new Act("take in a survey", 2, this::takeIn));
	}

	private static void changeAProperty(Dice dice) {
		Hand.click(Sight.branch("properties.tree", dice));
		if (!Ui.ask(() -> Display.getCurrent().getFocusControl() instanceof Text field && field.getEditable())) {
			throw new NotNow("it is only to be read");
		}
		Hand.press("ctrl+a");
		Hand.type(dice.oneOf("Lamp room", "3.5", "2031-10-05", "0,0 60,0 60,30 0,30", "nonsense"));
		Hand.press(dice.onceIn(4) ? "Escape" : "Return");
	}

	private static void answerTheBar(Dice dice, String text) {
		Control field = Sight.control(Control.class, "samples.bar.field");
		if (Ui.ask(() -> field instanceof Combo && (field.getStyle() & SWT.READ_ONLY) != 0)) {
			Ui.run(field::setFocus);
			Hand.press(dice.oneOf("Down", "Up"));
		} else {
			Hand.fill(field, text);
		}
		Hand.press(dice.onceIn(5) ? "Escape" : "Return");
	}

	/** Where a sample of the floor on show is, wherever the plan goes meanwhile; one that is selected as often as not. */
	private static Callable<Point> somewhereOnThePlan(Dice dice) {
		PlanGeometry plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		Canvas canvas = Sight.control(Canvas.class, "plan.canvas");
		ArchiveSession session = Stage.session();
		SampleRef found = Ui.ask(() -> {
			for (int tries = 0; tries < 50; tries++) {
				List<SampleRef> selected = session.selection().samples();
				SampleRef sample = !selected.isEmpty() && dice.onceIn(2) ? dice.oneOf(selected)
						: aSample(session, dice);
				if (inSight(plan, canvas, sample).isPresent()) {
					return sample;
				}
			}
			throw new NotNow("no sample in sight");
		});
		return () -> inSight(plan, canvas, found).orElseThrow(() -> new NotNow("the sample has gone out of sight"));
	}

	private static Optional<Point> inSight(PlanGeometry plan, Canvas canvas, SampleRef sample) {
		return plan.toDisplay(sample).filter(at -> canvas.getClientArea().contains(canvas.toControl(at)));
	}

	private static void clickOnThePlan(Dice dice) {
		Hand.click(somewhereOnThePlan(dice));
	}

	private static SampleRef aSample(ArchiveSession session, Dice dice) {
		Site site = dice.oneOf(session.archive().getSites());
		Survey survey = dice.oneOf(site.getSurveys());
		return new SampleRef(survey, dice.below(survey.table().size()));
	}

	private static void drag(Dice dice) {
		Stage.mode("SELECT");
		Callable<Point> sample = somewhereOnThePlan(dice);
		Hand.click(sample);
		Hand.drag(sample, dice.between(-60, 60), dice.between(-60, 60));
	}

	private static void lasso(Dice dice) {
		Canvas canvas = Sight.control(Canvas.class, "plan.canvas");
		Stage.mode(dice.oneOf("LASSO", "SELECT", "PAN"));
		Rectangle area = Ui.ask(canvas::getClientArea);
		List<Point> way = new ArrayList<>();
		for (int i = dice.between(2, 4); i > 0; i--) {
			way.add(new Point(dice.below(Math.max(1, area.width)), dice.below(Math.max(1, area.height))));
		}
		Hand.drag(() -> way.stream().map(canvas::toDisplay).toList());
		Stage.mode("SELECT");
	}

	/** Adds corners, moves one by the keys, and keeps it or gives it up. */
	private static void editOutline(Dice dice) {
		Sight.command("org.cairnfield.ui.plan.editOutline");
		for (int i = dice.between(0, 4); i > 0; i--) {
			clickOnThePlan(dice);
		}
		for (int i = dice.between(0, 3); i > 0; i--) {
			Hand.press(dice.oneOf("Tab", "Right", "shift+Down", "Delete"));
		}
		Hand.press(dice.onceIn(3) ? "Escape" : "Return");
	}

	private static void editPosition(Dice dice) {
		Sight.command("org.cairnfield.ui.editPosition");
		List<Control> fields = Sight.all(Control.class,
				control -> control.getData("org.cairnfield.id") instanceof String id && id.startsWith("samples.edit."));
		Hand.fill(dice.oneOf(fields), dice.oneOf("12.5", "-3", "1e9", "x", "7,25"));
		Hand.press(dice.oneOf("Return", "Return", "Tab", "Escape"));
	}

	/** As often as not it is still at it when the next thing is done. */
	private static void compareSurveys(Dice dice) {
		Combo site = Sight.control(Combo.class, "timeline.site");
		Ui.run(site::setFocus);
		Hand.press(dice.oneOf("Down", "Up"));
		Sight.push("timeline.compare");
	}

	private void takeIn(Dice dice) throws Exception {
		Path file = folder
				.resolve(String.format(Locale.ROOT, "quay-%d-%d.csv", ProcessHandle.current().pid(), ++surveys));
		StringBuilder text = new StringBuilder(
				"x,y,floor,building,00:00:5E:00:53:60,00:00:5E:00:53:61,00:00:5E:00:53:62,00:00:5E:00:53:63\n");
		for (int row = dice.between(2, 12); row > 0; row--) {
			text.append(dice.below(30)).append(',').append(dice.onceIn(20) ? "five" : dice.below(30)).append(',')
					.append(dice.below(2))
					.append(dice.oneOf(",Tide House", ",Tide House", ",Net Loft"));
			for (int ap = 0; ap < 4; ap++) {
				text.append(',').append(dice.onceIn(4) ? "" : -dice.between(40, 90));
			}
			text.append('\n');
		}
		Files.writeString(file, text);
		Stage.takeIn(List.of(file));
		Widgets.shell("Take in survey files");
		for (int page = 0; page < 3 && !dice.onceIn(6); page++) {
			List<org.eclipse.swt.widgets.Button> next = Sight.all(org.eclipse.swt.widgets.Button.class,
					button -> button.getText().replace("&", "").matches("Next >|Finish"));
			if (next.isEmpty()) {
				break;
			}
			Hand.click(next.get(0));
		}
	}
}
