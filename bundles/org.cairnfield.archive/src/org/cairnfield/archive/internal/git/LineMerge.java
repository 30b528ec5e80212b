package org.cairnfield.archive.internal.git;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;
import org.eclipse.jgit.merge.MergeAlgorithm;
import org.eclipse.jgit.merge.MergeChunk;
import org.eclipse.jgit.merge.MergeResult;

/** Git's merge of three versions of a text, line by line. */
public final class LineMerge {

	private LineMerge() {
	}

	/**
	 * Both changes of a text.
	 *
	 * @return null where they touch the same lines
	 */
	public static byte[] merge(byte[] base, byte[] one, byte[] other) throws IOException {
		MergeResult<RawText> result = new MergeAlgorithm().merge(RawTextComparator.DEFAULT, new RawText(base),
				new RawText(one),
				new RawText(other));
		if (result.containsConflicts()) {
			return null;
		}
		ByteArrayOutputStream merged = new ByteArrayOutputStream();
		for (MergeChunk chunk : result) {
			RawText text = result.getSequences().get(chunk.getSequenceIndex());
			for (int line = chunk.getBegin(); line < chunk.getEnd(); line++) {
				text.writeLine(merged, line);
				merged.write('\n');
			}
		}
		return merged.toByteArray();
	}
}
