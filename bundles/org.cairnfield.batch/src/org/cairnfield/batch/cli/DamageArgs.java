package org.cairnfield.batch.cli;

import org.cairnfield.archive.Mode;
import picocli.CommandLine.Option;

/** Whether a damaged archive is worked with. */
final class DamageArgs {

	@Option(names = "--despite-damage", description = "Read a damaged archive as far as possible. The damage is named in all that is written, and the exit code is 8. An archive that is damaged is never changed.")
	boolean despite;

	OnDamage on(Mode mode) {
		return despite && mode == Mode.READ ? OnDamage.GO_ON : OnDamage.REFUSE;
	}
}
