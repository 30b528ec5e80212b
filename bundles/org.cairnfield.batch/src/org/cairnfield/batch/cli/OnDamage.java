package org.cairnfield.batch.cli;

/** What a command does with an archive that is damaged. In each case the damage is listed. */
enum OnDamage {

	/** It ends there. */
	REFUSE,
	/** It works with what can still be read, and ends with {@link ExitCode#DAMAGED}. */
	GO_ON,
	/** It is the remedy: the damage may be gone when it ends. */
	MEND
}
