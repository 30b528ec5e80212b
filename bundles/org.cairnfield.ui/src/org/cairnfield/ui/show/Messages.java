package org.cairnfield.ui.show;

import org.eclipse.osgi.util.NLS;

/** The words of this package, from messages.properties. */
final class Messages extends NLS {

	public static String ChangesOnPlan_wasHere;
	public static String ChangesOnPlan_wasHereAndIsGone;
	public static String CommentBox_1Comment;
	public static String CommentBox_add;
	public static String CommentBox_addsTheCommentForEverybody;
	public static String CommentBox_comment;
	public static String CommentBox_comments;
	public static String CommentBox_comments2;
	public static String CommentBox_ofOthersCanBeRead;
	public static String DiffNode_addedAt;
	public static String DiffNode_mMOnFloor;
	public static String DiffNode_movedFromTo;
	public static String DiffNode_nothingDiffers;
	public static String DiffNode_otherReason;
	public static String DiffNode_otherTime;
	public static String DiffNode_readingsBeforeAfterSomeOther;
	public static String DiffNode_removedWasAt;
	public static String DiffNode_setAside;
	public static String DiffNode_survey;
	public static String DiffNode_takenBackWasSetAside;
	public static String DiffTree_changes;
	public static String DiffTree_showOnThePlan;
	public static String DiffTree_whatIsCompared;
	public static String OnPlan_thePlanCannotBeShown;
	public static String PushHandler_cannotBeDoneNow;
	public static String PushHandler_theViewHasNoButton;
	public static String TableDialog_copyTheList;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class);
	}

	private Messages() {
	}
}
