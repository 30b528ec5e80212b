package org.cairnfield.archive.internal.resource;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.Map;

import org.cairnfield.archive.internal.text.Escapes;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.XmlSeal;
import org.cairnfield.model.Archive;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EFactory;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIHelperImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

/**
 * The structure of an archive as XMI. Reads no document type, so that no entity is followed or expanded. Texts are escaped
 * as in the other files, since XML has no way to write some characters.
 */
final class StructureXml extends XMIResourceImpl {

	private static final String FEATURES = "http://apache.org/xml/features/";
	private static final Map<String, Boolean> HARDENED = Map.of(FEATURES + "disallow-doctype-decl", true,
			"http://xml.org/sax/features/external-general-entities", false,
			"http://xml.org/sax/features/external-parameter-entities", false,
			FEATURES + "nonvalidating/load-external-dtd", false,
			"http://javax.xml.XMLConstants/feature/secure-processing", true);

	StructureXml(URI uri) {
		super(uri);
		setIntrinsicIDToEObjectMap(new HashMap<>());
	}

	/** Writes an archive that is in order, with all that it contains. */
	static void write(Archive ordered, OutputStream out) throws IOException {
		ResourceSet set = Uris.closedSet();
		StructureXml xml = new StructureXml(Uris.of(ArchiveLayout.STRUCTURE));
		set.getResources().add(xml);
		xml.getContents().add(ordered);
		Map<Object, Object> options = new HashMap<>();
		options.put(XMLResource.OPTION_ENCODING, "UTF-8");
		options.put(Resource.OPTION_LINE_DELIMITER, "\n");
		ByteArrayOutputStream document = new ByteArrayOutputStream();
		xml.save(document, options);
		byte[] bytes = document.toByteArray();
		out.write(bytes);
		out.write(XmlSeal.of(bytes));
	}

	/** Reads the roots of a document into this resource. */
	void read(byte[] document) throws IOException {
		Map<Object, Object> options = new HashMap<>();
		options.put(XMLResource.OPTION_PARSER_FEATURES, HARDENED);
		options.put(XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true);
		options.put(XMLResource.OPTION_USE_PACKAGE_NS_URI_AS_LOCATION, false);
		load(new ByteArrayInputStream(document), options);
	}

	@Override
	protected XMLHelper createXMLHelper() {
		return new XMIHelperImpl(this) {
			@Override
			public String convertToString(EFactory factory, EDataType type, Object value) {
				String text = super.convertToString(factory, type, value);
				return text == null ? null : Escapes.escape(text);
			}

			@Override
			protected Object createFromString(EFactory factory, EDataType type, String value) {
				return super.createFromString(factory, type, value == null ? null : Escapes.unescape(value));
			}
		};
	}
}
