package org.cairnfield.curation.review;

import java.util.Optional;

import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.eclipse.emf.common.command.Command;

/** The archive under review, as lent by whoever has it open. */
public interface ReviewedArchive {

	Archive archive();

	/** Why nothing can be changed; empty if it can. */
	Optional<String> readOnlyReason();

	/** Makes a change. @return false where there was nothing to change, or nothing may be changed */
	boolean run(Command command);

	/** An archive that is changed at once, without an undo stack. */
	static ReviewedArchive direct(Archive archive) {
		return new ReviewedArchive() {
			@Override
			public Archive archive() {
				return archive;
			}

			@Override
			public Optional<String> readOnlyReason() {
				return Optional.empty();
			}

			@Override
			public boolean run(Command command) {
				boolean can = command.canExecute();
				if (can) {
					command.execute();
				}
				return can;
			}
		};
	}

	/** No archive: one without splits, which stays as it is. */
	static ReviewedArchive none() {
		Archive empty = ModelFactory.eINSTANCE.createArchive();
		return new ReviewedArchive() {
			@Override
			public Archive archive() {
				return empty;
			}

			@Override
			public Optional<String> readOnlyReason() {
				return Optional.of(Messages.ReviewedArchive_noArchiveIsOpen);
			}

			@Override
			public boolean run(Command command) {
				return false;
			}
		};
	}
}
