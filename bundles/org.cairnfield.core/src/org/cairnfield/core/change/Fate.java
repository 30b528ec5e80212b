package org.cairnfield.core.change;

/** What became of an access point between two surveys. */
public enum Fate {
	/** Both surveys heard it. */
	STAYED,
	/** Both heard it, but the later one as if it hung elsewhere. */
	MOVED,
	/** The later survey heard it nowhere, which would hardly be so were it still there. */
	VANISHED,
	/** The earlier survey heard it nowhere, which would hardly be so had it been there. */
	APPEARED,
	/** Vanished, and another one that appeared is heard at the same places at the same levels. */
	REPLACED,
	/** Only one of the surveys heard it, too rarely to tell what that means. */
	NOT_KNOWN
}
