package org.cairnfield.ui.scope;

/** Why a sample is shown beside those that are selected. */
public enum CompanionRole {
	/** The labelled sample that correlates best with the one under review. */
	CARRIER,
	/** The sample of the proposed cluster that lies nearest on the floor. */
	MEMBER
}
