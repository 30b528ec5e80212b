package org.cairnfield.model.check;

import org.cairnfield.core.text.Words;
import org.eclipse.emf.common.util.BasicDiagnostic;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.ecore.EObject;

import org.cairnfield.model.values.Ids;

/** Writes what a constraint has found. */
final class Report {

	/** The source that diagnostics name. */
	static final String SOURCE = "org.cairnfield.model";

	private Report() {
	}

	/** Reports an error unless it holds. The chain may be null, where only the answer is asked for. */
	static boolean require(boolean holds, DiagnosticChain diagnostics, EObject object, String message) {
		if (!holds && diagnostics != null) {
			diagnostics.add(new BasicDiagnostic(Diagnostic.ERROR, SOURCE, 0, message, new Object[] { object }));
		}
		return holds;
	}

	/** What an id must be, for any object that has one. */
	static boolean usableId(String id, DiagnosticChain diagnostics, EObject object, String what) {
		return require(Ids.isUsable(id), diagnostics, object,
				Words.bind(Messages.Report_hasGiveItOneOf, what,
						isSet(id) ? Words.bind(Messages.Report_theId, id) : Messages.Report_noId, Ids.LONGEST));
	}

	static boolean isSet(String text) {
		return text != null && !text.isBlank();
	}

	/** A name to be read, or the id where there is none. */
	static String named(String kind, String name, String id) {
		return kind + ' ' + (isSet(name) ? name : id);
	}

	static boolean isSha256(String digest) {
		return digest.matches("[0-9a-f]{64}");
	}
}
