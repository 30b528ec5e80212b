package org.cairnfield.report;

import java.util.List;
import java.util.Locale;

/** Pieces of an HTML page that needs nothing from elsewhere: no script, no style sheet, no font, no picture. */
final class ReportPage {

	private static final String STYLE = """
			:root { color-scheme: light; }
			body { font: 15px/1.5 system-ui, sans-serif; color: #1a1a1a; background: #fff; max-width: 60rem; margin: 2rem auto; padding: 0 1rem; }
			h1 { font-size: 1.7rem; margin-bottom: 0; } h2 { font-size: 1.2rem; margin-top: 2rem; border-bottom: 1px solid #bbb; }
			.sub { color: #555; margin-top: .2rem; } code { font-size: .85em; overflow-wrap: anywhere; }
			table { border-collapse: collapse; width: 100%; margin: .7rem 0; } caption { text-align: left; color: #555; }
			th, td { text-align: left; vertical-align: top; padding: .25rem .6rem .25rem 0; border-bottom: 1px solid #ddd; }
			.n { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
			.bad { font-weight: 700; } .caution { border: 2px solid #1a1a1a; padding: .3rem 1rem; }
			figure { margin: 1rem 0; } figcaption { color: #555; font-size: .9em; } svg { max-width: 100%; height: auto; }
			@media print { body { margin: 0; max-width: none; font-size: 10pt; } table { font-size: 9pt; } h2, caption { break-after: avoid; } tr, figure, .caution { break-inside: avoid; } }
			""";

	private final StringBuilder html = new StringBuilder();

	/** Room for tables of many columns. */
	private static final String WIDE = "body { max-width: 76rem; } table { font-size: .92em; } @media print { @page { size: landscape; } }\n";

	ReportPage(String title) {
		this(title, false);
	}

	/** @param wide whether its tables have many columns */
	ReportPage(String title, boolean wide) {
		html.append("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n")
				.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
				.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n<title>")
				.append(text(title)).append("</title>\n<style>\n").append(STYLE).append(wide ? WIDE : "")
				.append("</style>\n</head>\n<body>\n");
	}

	/** A text so that no character of it is taken for markup. */
	static String text(String plain) {
		StringBuilder out = new StringBuilder();
		plain.codePoints().forEach(c -> {
			switch (c) {
			case '&' -> out.append("&amp;");
			case '<' -> out.append("&lt;");
			case '>' -> out.append("&gt;");
			case '"' -> out.append("&quot;");
			default ->
				out.appendCodePoint(c < ' ' && c != '\n' && c != '\t' || c >= 0xD800 && c <= 0xDFFF ? 0xFFFD : c);
			}
		});
		return out.toString();
	}

	ReportPage element(String name, String attributes, String plain) {
		html.append('<').append(name).append(attributes.isEmpty() ? "" : ' ' + attributes).append('>')
				.append(text(plain)).append("</")
				.append(name).append(">\n");
		return this;
	}

	ReportPage heading(String plain) {
		return element("h2", "", plain);
	}

	ReportPage paragraph(String plain) {
		return element("p", "", plain);
	}

	ReportPage list(List<String> lines) {
		html.append("<ul>\n");
		lines.forEach(line -> element("li", "", line));
		html.append("</ul>\n");
		return this;
	}

	/**
	 * @param header a trailing # makes a column of numbers
	 */
	ReportPage table(String caption, List<String> header, List<List<String>> rows) {
		html.append("<table>\n<caption>").append(text(caption)).append("</caption>\n<thead><tr>");
		for (String cell : header) {
			boolean number = cell.endsWith("#");
			html.append(number ? "<th scope=\"col\" class=\"n\">" : "<th scope=\"col\">")
					.append(text(number ? cell.substring(0, cell.length() - 1) : cell)).append("</th>");
		}
		html.append("</tr></thead>\n<tbody>\n");
		for (List<String> row : rows) {
			html.append("<tr>");
			for (int c = 0; c < row.size(); c++) {
				String kind = header.get(c).endsWith("#") ? " class=\"n\""
						: row.get(c).startsWith("NOT MET") ? " class=\"bad\"" : "";
				html.append("<td").append(kind).append('>').append(text(row.get(c))).append("</td>");
			}
			html.append("</tr>\n");
		}
		html.append("</tbody>\n</table>\n");
		return this;
	}

	/**
	 * A picture within the page. Ids of several pictures would clash, so each gets its own beginning.
	 *
	 * @param number of the picture, from 1
	 */
	ReportPage picture(String svg, int number, String caption) {
		html.append("<figure>\n").append(inlined(svg, "p" + number + "-")).append("\n<figcaption>")
				.append(text(caption))
				.append("</figcaption>\n</figure>\n");
		return this;
	}

	/** Without prologue, ids and all that refers to them with a prefix. */
	static String inlined(String svg, String prefix) {
		String body = svg.substring(svg.indexOf("<svg"));
		return body.replaceAll("(?<=[\\s\"'])id=([\"'])", "id=$1" + prefix).replaceAll("url\\(#", "url(#" + prefix)
				.replaceAll("(xlink:href|href)=([\"'])#", "$1=$2#" + prefix)
				.replaceAll("(aria-labelledby|aria-describedby)=([\"'])([^\"' ]+)", "$1=$2" + prefix + "$3");
	}

	ReportPage raw(String markup) {
		html.append(markup);
		return this;
	}

	static String metres(double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%.2f", value);
	}

	static String percent(double share) {
		return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f", 100 * share);
	}

	@Override
	public String toString() {
		return html + "</body>\n</html>\n";
	}
}
