package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;

import org.cairnfield.model.Release;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a release. */
public final class ReleaseCheck {

	private ReleaseCheck() {
	}

	/** @see Release#versionIsUsable */
	public static boolean versionIsUsable(Release release, DiagnosticChain diagnostics) {
		return Report.usableId(release.getVersion(), diagnostics, release, "A release");
	}

	/** @see Release#signatureIsComplete */
	public static boolean signatureIsComplete(Release release, DiagnosticChain diagnostics) {
		boolean draft = release.getSignedBy() == null && release.getSignedAt() == null;
		boolean complete = isSet(release.getSignedBy()) && release.getSignedAt() != null && isSet(release.getTag())
				&& release.getDigest() != null && Report.isSha256(release.getDigest());
		return Report.require(draft || complete, diagnostics, release, "Release " + release.getVersion()
				+ " is signed, but lacks its digest, tag, person or time: sign it anew");
	}
}
