package org.cairnfield.report.internal.picture;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a picture back, as any viewer would. */
final class Svg {

	private final Document document;

	Svg(String text) throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
		document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
	}

	List<Element> elements(String name) {
		NodeList found = document.getElementsByTagName(name);
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < found.getLength(); i++) {
			elements.add((Element) found.item(i));
		}
		return elements;
	}

	/** The value of a style property, which elements take over from those around them. */
	static String style(Node node, String property) {
		return !(node instanceof Element element) ? ""
				: element.hasAttribute(property) ? element.getAttribute(property)
						: style(node.getParentNode(), property);
	}

	/** Everything written in the picture, in order of drawing. */
	List<String> texts() {
		return elements("text").stream().map(Element::getTextContent).toList();
	}

	String description() {
		return elements("desc").get(0).getTextContent();
	}

	/** The size of the page and its left edge hold all texts; widths of glyphs are not known here. */
	boolean holdsItsTexts() {
		Element root = document.getDocumentElement();
		double width = Double.parseDouble(root.getAttribute("width"));
		double height = Double.parseDouble(root.getAttribute("height"));
		return elements("text").stream().filter(text -> text.getAttribute("transform").isEmpty()).allMatch(text -> {
			double x = Double.parseDouble(text.getAttribute("x"));
			double y = Double.parseDouble(text.getAttribute("y"));
			return x >= 0 && x < width && y > 0 && y < height;
		});
	}

	/** What is drawn where commas are the decimal mark. */
	static String inGermany(Supplier<String> picture) {
		Locale before = Locale.getDefault();
		Locale.setDefault(Locale.GERMANY);
		try {
			return picture.get();
		} finally {
			Locale.setDefault(before);
		}
	}
}
