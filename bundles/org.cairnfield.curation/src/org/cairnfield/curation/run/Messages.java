package org.cairnfield.curation.run;

import org.cairnfield.core.text.Words;

/** The words of this package, from messages.properties. */
final class Messages extends Words {

	public static String FileRun_aMapNeedsTwoSamples;
	public static String FileRun_heldOutForTestingUnless;
	public static String FileRun_ofSamplesSetAsideFewer;

	static {
		load(Messages.class);
	}

	private Messages() {
	}
}
