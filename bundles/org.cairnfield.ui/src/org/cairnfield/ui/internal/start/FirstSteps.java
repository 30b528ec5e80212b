package org.cairnfield.ui.internal.start;

import java.util.List;

/** What somebody new does in the first ten minutes; the guide's page of that name has the same in more words. */
record FirstSteps(String title, String text, String button, String command) {

	private static final String SHOW = "org.eclipse.ui.views.showView(org.eclipse.ui.views.showView.viewId=";

	static final List<FirstSteps> ALL = List.of(
			new FirstSteps(Messages.FirstSteps_openTheDemo, Messages.FirstSteps_theInventedMarrowQuayMuseums,
					Messages.FirstSteps_openTheDemo, "org.cairnfield.ui.openDemo"),
			new FirstSteps(Messages.FirstSteps_lookAtAFinding,
					Messages.FirstSteps_select262SamplesOf262,
					Messages.FirstSteps_showTheFindings, SHOW + "org.cairnfield.ui.findings)"),
			new FirstSteps(Messages.FirstSteps_applyItsRemedy, Messages.FirstSteps_theSurveyThatWasTaken,
					Messages.FirstSteps_applyTheRemedy, "org.cairnfield.ui.remedy"),
			new FirstSteps(Messages.FirstSteps_seeWhereSomethingIsWrong, Messages.FirstSteps_selectXAndYExchanged,
					Messages.FirstSteps_showThePlace, "org.cairnfield.ui.place"),
			new FirstSteps(Messages.FirstSteps_waiveAFinding, Messages.FirstSteps_theMovedAccessPointMay,
					Messages.FirstSteps_waive,
					"org.cairnfield.ui.waive"),
			new FirstSteps(Messages.FirstSteps_lookAtSamples,
					Messages.FirstSteps_clickASampleToSee,
					Messages.FirstSteps_showThePlan, SHOW + "org.cairnfield.ui.plan.view)"),
			new FirstSteps(Messages.FirstSteps_makeASavePoint, Messages.FirstSteps_writeInHistoryWhatYou,
					Messages.FirstSteps_makeASavePoint, "org.cairnfield.ui.savePoint"),
			new FirstSteps(Messages.FirstSteps_takeInASurvey, Messages.FirstSteps_halfAYearHasPassed,
					Messages.FirstSteps_takeInSurveyFiles, "org.cairnfield.ui.takeIn"),
			new FirstSteps(Messages.FirstSteps_seeWhatTheWinterChanged,
					Messages.FirstSteps_compareTheSurveysOfThe,
					Messages.FirstSteps_compareSurveys, "org.cairnfield.ui.compareSurveys"));
}
