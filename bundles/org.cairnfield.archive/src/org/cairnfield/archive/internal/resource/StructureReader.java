package org.cairnfield.archive.internal.resource;

import java.io.IOException;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;

import org.cairnfield.archive.internal.text.PartReport;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.internal.text.XmlSeal;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.Ids;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;
import org.xml.sax.SAXParseException;

/** Reads the structure file, and makes sure that it is one archive that refers to nothing outside. */
final class StructureReader {

	private final PartReport report;

	StructureReader(PartReport report) {
		this.report = report;
	}

	/**
	 * @return the root in a resource of the set, whose parts are proxies; null where the file can not be read
	 */
	Archive read(byte[] file, Migrations migrations, ResourceSet set) throws IOException {
		byte[] document = XmlSeal.open(file, migrations, report);
		if (document == null) {
			return null;
		}
		StructureXml xml = new StructureXml(Uris.of(ArchiveLayout.STRUCTURE));
		set.getResources().add(xml);
		try {
			xml.read(document);
		} catch (IOException | RuntimeException e) {
			// the parser passes on what the model refuses, in whatever form
			if (xml.getErrors().isEmpty()) {
				report.damage(line(e), Words.bind(Messages.StructureReader_canNotBeRead, reason(e)));
			}
		}
		for (Resource.Diagnostic error : xml.getErrors()) {
			report.damage(Math.max(0, error.getLine()),
					Words.bind(Messages.StructureReader_canNotBeRead, reason(error)));
		}
		if (report.isDamaged()) {
			return null;
		}
		if (xml.getContents().size() == 1 && xml.getContents().get(0) instanceof Archive archive) {
			checkIds(archive);
			checkReferences(archive);
			return report.isDamaged() ? null : archive;
		}
		report.damage(0, Messages.StructureReader_doesNotHoldOneArchive);
		return null;
	}

	private static Throwable root(Throwable e) {
		Throwable cause = e;
		while (cause.getCause() != null && cause.getCause() != cause) {
			cause = cause.getCause();
		}
		return cause;
	}

	private static long line(Exception e) {
		Throwable cause = root(e);
		return cause instanceof SAXParseException parse ? Math.max(0, parse.getLineNumber()) : 0;
	}

	private static String reason(Object problem) {
		// what the libraries wrap around it begins with names of their classes
		String message = problem instanceof Throwable e ? root(e).getMessage()
				: ((Resource.Diagnostic) problem).getMessage();
		String text = message == null ? Messages.StructureReader_itIsNotWellFormed : message;
		return (text.length() > 300 ? text.substring(0, 300) + " …" : text).replaceAll("\\s+", " ");
	}

	/** Ids name files and are referred to, so two of a kind would become one. */
	private void checkIds(Archive archive) {
		Map<String, String> seen = new HashMap<>();
		for (Iterator<EObject> all = EcoreUtil.getAllProperContents(archive, false); all.hasNext();) {
			EObject object = all.next();
			EAttribute attribute = object.eClass().getEIDAttribute();
			if (object.eIsProxy() || attribute == null) {
				continue;
			}
			String id = (String) object.eGet(attribute);
			String what = object.eClass().getName().toLowerCase(Locale.ROOT);
			if (!Ids.isUsable(id)) {
				report.damage(0, Words.bind(Messages.StructureReader_hasAWithoutAUsable, what, id));
			} else if (seen.putIfAbsent(id.toLowerCase(Locale.ROOT), what) != null) {
				report.damage(0, Words.bind(Messages.StructureReader_hasTheIdTwice, id));
			}
		}
	}

	/** What an object refers to must be in this file, except for the roots of other files, which are looked at later. */
	private void checkReferences(Archive archive) {
		for (Iterator<EObject> all = EcoreUtil.getAllProperContents(archive, false); all.hasNext();) {
			for (EObject other : ((InternalEList<EObject>) all.next().eCrossReferences()).basicList()) {
				if (other.eIsProxy()) {
					report.damage(0, Words.bind(Messages.StructureReader_refersToWhichIsNot,
							((InternalEObject) other).eProxyURI()));
				}
			}
		}
	}
}
