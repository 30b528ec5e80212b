package org.cairnfield.ui.internal.start;

import java.util.List;

/** What somebody new does in the first ten minutes; the guide's page of that name has the same in more words. */
record FirstSteps(String title, String text, String button, String command) {

	private static final String SHOW = "org.eclipse.ui.views.showView(org.eclipse.ui.views.showView.viewId=";

	static final List<FirstSteps> ALL = List.of(
			new FirstSteps("Open the demo", "The invented Marrow Quay Museums, with faults to find. What is selected in the Archive view is the scope of all other views.",
					"Open the demo", "org.cairnfield.ui.openDemo"),
			new FirstSteps("Look at a finding",
					"Select \"262 samples of 262 in th-spring-again agree …\". On the right stand the figures, the remedy, and its effect on samples that are held out.",
					"Show the findings", SHOW + "org.cairnfield.ui.findings)"),
			new FirstSteps("Apply its remedy", "The survey that was taken in twice is set aside, and the finding is gone. Nothing is ever deleted: Undo brings it back.",
					"Apply the remedy", "org.cairnfield.ui.remedy"),
			new FirstSteps("See where something is wrong", "Select \"x and y exchanged\": the plan shows the samples that were noted the wrong way round. Its remedy puts them right.",
					"Show the place", "org.cairnfield.ui.place"),
			new FirstSteps("Waive a finding", "The moved access point may be right. Give a reason below the finding; a waiver holds until what it is about changes.", "Waive",
					"org.cairnfield.ui.waive"),
			new FirstSteps("Look at samples",
					"Click a sample to see its fingerprint, Ctrl+click another to compare. Choose \"sample density\" as the surface to see where the floor was hardly surveyed.",
					"Show the plan", SHOW + "org.cairnfield.ui.plan.view)"),
			new FirstSteps("Make a save point", "Write in History what you did. From there you can compare states, view one, revert its changes or restore it.",
					"Make a save point", "org.cairnfield.ui.savePoint"),
			new FirstSteps("Take in a survey", "Half a year has passed: take in sh-next-spring.csv, which lies beside the demo. You see what was guessed of the file and why.",
					"Take in survey files …", "org.cairnfield.ui.takeIn"),
			new FirstSteps("See what the winter changed",
					"Compare the surveys of the Sailmakers' Hall: what changed and when, how far off the map is by now, and what helps, measured beforehand.",
					"Compare surveys", "org.cairnfield.ui.compareSurveys"));
}
