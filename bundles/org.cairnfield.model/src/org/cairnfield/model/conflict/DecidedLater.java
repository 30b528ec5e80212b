package org.cairnfield.model.conflict;

import java.util.List;
import java.util.Optional;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.ModelFactory;

/**
 * Conflicts over what a file says that is no part of the model. One that is decided stays in the archive, with what was
 * decided as its only claim, until the archive is saved, which changes the file.
 */
public final class DecidedLater {

	private DecidedLater() {
	}

	/** Conflicts of an archive that somebody is still to decide. */
	public static List<Conflict> open(Archive archive) {
		return archive.getConflicts().stream().filter(conflict -> !isDecided(conflict)).toList();
	}

	/** Whether a conflict is over what a file says. */
	public static boolean isOverFile(Conflict conflict) {
		return conflict.getPlace().startsWith(Place.FILE);
	}

	/** Whether somebody has decided already, and the archive was not saved yet. */
	public static boolean isDecided(Conflict conflict) {
		return decision(conflict).isPresent();
	}

	/** What was decided and is not saved yet. */
	public static Optional<Claim> decision(Conflict conflict) {
		return isOverFile(conflict) && conflict.getClaims().size() == 1 ? Optional.of(conflict.getClaims().get(0))
				: Optional.empty();
	}

	/**
	 * Decides.
	 *
	 * @param value null for none
	 * @return what takes it back
	 */
	public static Runnable decide(Conflict conflict, String value) {
		List<Claim> claims = List.copyOf(conflict.getClaims());
		Claim decision = ModelFactory.eINSTANCE.createClaim();
		decision.setValue(value);
		conflict.getClaims().clear();
		conflict.getClaims().add(decision);
		return () -> {
			conflict.getClaims().clear();
			conflict.getClaims().addAll(claims);
		};
	}
}
