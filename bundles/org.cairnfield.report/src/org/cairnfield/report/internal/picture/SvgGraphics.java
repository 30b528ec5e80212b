package org.cairnfield.report.internal.picture;

import java.awt.RenderingHints;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.DefaultErrorHandler;
import org.apache.batik.svggen.DefaultExtensionHandler;
import org.apache.batik.svggen.DefaultStyleHandler;
import org.apache.batik.svggen.ImageHandlerBase64Encoder;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSSerializer;

/** Turns what is drawn into SVG that is short and the same each time. */
final class SvgGraphics extends SVGGraphics2D {

	private static final String SVG = "http://www.w3.org/2000/svg";

	SvgGraphics() {
		super(new Context(newDocument()), false);
		// Text is as wide as viewers make it, not rounded to pixels at each letter.
		fmg.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
	}

	/** Grid lines come with the wish to be fitted to pixels, which Batik knows only as lines without soft edges. */
	@Override
	public void setRenderingHint(RenderingHints.Key key, Object value) {
		super.setRenderingHint(key, value);
		if (key == RenderingHints.KEY_STROKE_CONTROL) {
			super.setRenderingHint(RenderingHints.KEY_ANTIALIASING, value == RenderingHints.VALUE_STROKE_NORMALIZE
					? RenderingHints.VALUE_ANTIALIAS_OFF
					: RenderingHints.VALUE_ANTIALIAS_ON);
		}
	}

	/** The document of what was drawn, to be asked for once. */
	String svg(int width, int height, String title, String description) {
		Element root = element("svg");
		root.setAttribute("xmlns", SVG);
		root.setAttribute("width", Integer.toString(width));
		root.setAttribute("height", Integer.toString(height));
		root.setAttribute("viewBox", "0 0 " + width + " " + height);
		root.setAttribute("role", "img");
		root.appendChild(element("title")).setTextContent(title);
		root.appendChild(element("desc")).setTextContent(description);
		getRoot(root);
		LSSerializer serializer = ((DOMImplementationLS) getDOMFactory().getImplementation().getFeature("LS", "3.0"))
				.createLSSerializer();
		serializer.getDomConfig().setParameter("xml-declaration", false);
		// Would declare the prefix of xml:space at every text.
		serializer.getDomConfig().setParameter("namespaces", false);
		return serializer.writeToString(root) + "\n";
	}

	private Element element(String name) {
		return getDOMFactory().createElementNS(SVG, name);
	}

	/** The JDK's, which needs no further libraries. */
	private static Document newDocument() {
		try {
			return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
		} catch (ParserConfigurationException e) {
			throw new IllegalStateException(e); // nothing special is asked for
		}
	}

	/** As Batik's default, but without its comment and with nothing that pictures share. */
	private static final class Context extends SVGGeneratorContext {

		Context(Document document) {
			super(document);
			setIDGenerator(new SVGIDGenerator());
			setExtensionHandler(new DefaultExtensionHandler());
			setImageHandler(new ImageHandlerBase64Encoder());
			setErrorHandler(new DefaultErrorHandler());
			setStyleHandler(new Style());
			GraphicContextDefaults defaults = new GraphicContextDefaults();
			defaults.setFont(PictureLook.SMALL);
			setGraphicContextDefaults(defaults);
			// A hundredth of a pixel is plenty. Not by setPrecision: its formats are shared by all threads, unsafely.
			decimalFormat = PictureLook.format("0.##");
		}
	}

	/** Leaves out hints that would stand at most elements and change nothing to see. */
	private static final class Style extends DefaultStyleHandler {

		private static final List<String> HINTS = List.of("color-interpolation", "color-rendering", "image-rendering",
				"text-rendering");

		@Override
		protected boolean appliesTo(String style, String element) {
			return !HINTS.contains(style) && super.appliesTo(style, element);
		}
	}
}
