package org.cairnfield.ui.internal.guide;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;

import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.osgi.framework.Bundle;

/** The guide as pages for a browser, made of the texts that the repository has in docs/guide. */
final class GuidePages {

	private static final List<Extension> TABLES = List.of(TablesExtension.create());
	private static final String STYLE = "body{font:16px/1.5 sans-serif;max-width:46em;margin:2em auto;padding:0 1em;color:#222;background:#fff}"
			+ "img{max-width:100%;border:1px solid #bbb}table{border-collapse:collapse}td,th{border:1px solid #bbb;padding:.3em .6em;text-align:left;vertical-align:top}"
			+ "a{color:#00569d}code{background:#f2f2f2}@media(prefers-color-scheme:dark){body{color:#ddd;background:#222}a{color:#8cc4ff}code{background:#333}}";

	private GuidePages() {
	}

	/**
	 * Writes all pages, and the pictures that they show.
	 *
	 * @param bundle has the texts in its folder guide, and pictures beside it
	 * @param folder that exists
	 */
	static void write(Bundle bundle, Path folder) throws IOException {
		Path pages = Files.createDirectories(folder.resolve("guide"));
		for (URL url : Collections.list(bundle.findEntries("guide", "*.md", false))) {
			String name = url.getPath().substring(url.getPath().lastIndexOf('/') + 1);
			try (InputStream in = url.openStream()) {
				Files.writeString(pages.resolve(page(name)),
						html(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
			}
		}
		for (URL url : Collections.list(bundle.findEntries("guide-pictures", "*.png", false))) {
			try (InputStream in = url.openStream()) {
				Files.write(folder.resolve(url.getPath().substring(url.getPath().lastIndexOf('/') + 1)),
						in.readAllBytes());
			}
		}
	}

	/** Name of the page that is made of a text. */
	static String page(String text) {
		return text.replaceAll("\\.md$", ".html");
	}

	static String html(String markdown) {
		Node document = Parser.builder().extensions(TABLES).build().parse(markdown);
		document.accept(new AbstractVisitor() {
			@Override
			public void visit(Link link) {
				if (link.getDestination().contains("/")) { // other texts are in the repository only
					while (link.getFirstChild() != null) {
						link.insertBefore(link.getFirstChild());
					}
					link.unlink();
				} else {
					link.setDestination(page(link.getDestination()));
				}
			}
		});
		String title = markdown.lines().findFirst().orElse("").replaceFirst("^#+ *", "");
		return "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>" + title + "</title><style>"
				+ STYLE + "</style></head><body>"
				+ (title.equals("Guide") ? "" : "<p><a href=\"index.html\">Guide</a></p>")
				+ HtmlRenderer.builder().extensions(TABLES).escapeHtml(true).build().render(document)
				+ "</body></html>\n";
	}
}
