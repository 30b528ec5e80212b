package org.cairnfield.curation.team;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String Assigning_assignEqualPartsTo;
	public static String Assigning_assignTo;
	public static String Assigning_equalPartsAreForTwo;
	public static String Assigning_hasNoneOfTheProposals;
	public static String Assigning_hasOfSplitAlready;
	public static String Assigning_isNamedTwice;
	public static String Assigning_nameWhoIsToReview;
	public static String Assigning_remove;
	public static String Assigning_splitHasNoProposalsTo;
	public static String Assigning_thereIsNoBandThe;
	public static String Assigning_thereIsNoFloorThe;
	public static String Assigning_thereIsNoSiteWith;
	public static String CommentBook_aCommentHasAtMost;
	public static String CommentBook_aCommentNeedsAText;
	public static String CommentBook_commentOn;
	public static String CommentBook_whichIsSavedAndStays;
	public static String WorkShares_are;
	public static String WorkShares_is;
	public static String WorkShares_ofTheProposalsOfAlso;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
