package org.cairnfield.ui.review.internal.desk;

import org.eclipse.swt.widgets.Control;

/** Keeps the keys of the reviewer away from fields that people type into. */
@FunctionalInterface
public interface TypingGuard {

	/** Nothing to keep away. */
	TypingGuard NONE = field -> {
	};

	/** @param field takes letters as letters */
	void guard(Control field);
}
