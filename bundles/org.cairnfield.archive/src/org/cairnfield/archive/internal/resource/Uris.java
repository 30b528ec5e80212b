package org.cairnfield.archive.internal.resource;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.ModelPackage;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.URIHandler;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.resource.impl.URIHandlerImpl;

/**
 * Resources are named by their paths in the archive, wherever its folder is: {@code cairnfield:/surveys/th/spring.samples}.
 * Nothing else can be reached from them.
 */
public final class Uris {

	private static final String SCHEME = "cairnfield:/";

	private Uris() {
	}

	/** The name of a file's resource. */
	public static URI of(String path) {
		return URI.createURI(SCHEME + path);
	}

	/** The path that a name stands for; null for a name of anything else. */
	public static String path(URI uri) {
		String text = uri == null ? "" : uri.trimFragment().toString();
		return text.startsWith(SCHEME) ? text.substring(SCHEME.length()) : null;
	}

	/** A set that knows our model only and opens nothing by itself, on disk or elsewhere. */
	static ResourceSet closedSet() {
		ResourceSet set = new ResourceSetImpl();
		EPackageRegistryImpl packages = new EPackageRegistryImpl();
		packages.put(ModelPackage.eNS_URI, ModelPackage.eINSTANCE);
		set.setPackageRegistry(packages);
		URIHandler refusing = new URIHandlerImpl() {
			@Override
			public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
				throw new IOException(Words.bind(Messages.Uris_notOpened, uri));
			}

			@Override
			public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
				throw new IOException(Words.bind(Messages.Uris_notWritten, uri));
			}

			@Override
			public void delete(URI uri, Map<?, ?> options) throws IOException {
				throw new IOException(Words.bind(Messages.Uris_notDeleted, uri));
			}

			@Override
			public boolean exists(URI uri, Map<?, ?> options) {
				return false;
			}
		};
		set.setURIConverter(new ExtensibleURIConverterImpl(List.of(refusing), List.of()));
		return set;
	}
}
