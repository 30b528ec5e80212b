package org.cairnfield.curation.study;

import org.cairnfield.exchange.IntakeException;

/** A row of a study cannot be kept. */
public final class StudyFolderException extends RuntimeException {

	private static final long serialVersionUID = 1;

	StudyFolderException(IntakeException cause) {
		super(cause.getMessage(), cause);
	}
}
