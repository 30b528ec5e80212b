package org.cairnfield.curation.maps;

import org.cairnfield.model.Archive;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * An archive as it is now, for work on another thread while people go on changing it. Tables of samples are immutable and
 * shared, so it costs by the number of surveys and access points, not of samples.
 */
public final class ArchiveCopy {

	private ArchiveCopy() {
	}

	/** A copy that nothing else refers to. */
	public static Archive of(Archive archive) {
		return EcoreUtil.copy(archive);
	}
}
