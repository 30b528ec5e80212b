package org.cairnfield.core.reduce;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String GaussianProcess_gaussianProcess;
	public static String KernelReduction_kernelReduction;
	public static String OrthogonalSearch_orthogonalSearch;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
