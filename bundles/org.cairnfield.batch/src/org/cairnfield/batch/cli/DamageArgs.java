package org.cairnfield.batch.cli;

import org.cairnfield.archive.Mode;
import picocli.CommandLine.Option;

/** Whether a damaged archive is worked with. */
final class DamageArgs {

	@Option(names = "--despite-damage", descriptionKey = "DamageArgs_despiteDamage")
	boolean despite;

	OnDamage on(Mode mode) {
		return despite && mode == Mode.READ ? OnDamage.GO_ON : OnDamage.REFUSE;
	}
}
