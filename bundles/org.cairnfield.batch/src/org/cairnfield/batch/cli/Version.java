package org.cairnfield.batch.cli;

import picocli.CommandLine.IVersionProvider;

/** The version as built; unknown when run from class files. */
final class Version implements IVersionProvider {

	@Override
	public String[] getVersion() {
		String version = Main.class.getPackage().getImplementationVersion();
		return new String[] { "Cairnfield " + (version == null ? "(not built as a product)" : version) };
	}
}
