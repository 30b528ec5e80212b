package org.cairnfield.ui.review.internal.team;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String AssignHandler_thereIsNoSplitWhose;
	public static String AssignmentsDialog_2ndDue;
	public static String AssignmentsDialog_afterYourSecondReviews;
	public static String AssignmentsDialog_agreement;
	public static String AssignmentsDialog_anEqualPartEach;
	public static String AssignmentsDialog_assign;
	public static String AssignmentsDialog_assignments;
	public static String AssignmentsDialog_byOthers;
	public static String AssignmentsDialog_disputed;
	public static String AssignmentsDialog_eachOfTheProposalsIs;
	public static String AssignmentsDialog_given;
	public static String AssignmentsDialog_namesWithCommasBetweenThem;
	public static String AssignmentsDialog_nameTheReviewersFirstAt;
	public static String AssignmentsDialog_of;
	public static String AssignmentsDialog_ofProposalsAreAssignedTo;
	public static String AssignmentsDialog_proposals;
	public static String AssignmentsDialog_remove;
	public static String AssignmentsDialog_reviewer;
	public static String AssignmentsDialog_reviewers;
	public static String AssignmentsDialog_share;
	public static String AssignmentsDialog_takesTheSelectedAssignmentAway;
	public static String AssignmentsDialog_theArchiveIsReadOnly;
	public static String AssignmentsDialog_toDo;
	public static String AssignmentsDialog_whoReviewsWhichProposalsOf;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
