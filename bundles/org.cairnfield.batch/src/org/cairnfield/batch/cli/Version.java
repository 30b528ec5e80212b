package org.cairnfield.batch.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

import picocli.CommandLine.IVersionProvider;

/** The version as built; unknown when run from class files. */
final class Version implements IVersionProvider {

	@Override
	public String[] getVersion() {
		String version = Main.class.getPackage().getImplementationVersion();
		return new String[] { "Cairnfield " + (version != null ? version : ofBundle()) };
	}

	/** OSGi gives packages no version; there the manifest that is found is the bundle's own. */
	private static String ofBundle() {
		try (InputStream in = Main.class.getResourceAsStream("/META-INF/MANIFEST.MF")) {
			Attributes own = in == null ? new Attributes() : new Manifest(in).getMainAttributes();
			String name = own.getValue("Bundle-SymbolicName");
			if (name != null && name.startsWith("org.cairnfield.batch")) {
				return own.getValue("Bundle-Version");
			}
		} catch (IOException e) {
			// as if there were none
		}
		return Messages.Version_notBuilt;
	}
}
