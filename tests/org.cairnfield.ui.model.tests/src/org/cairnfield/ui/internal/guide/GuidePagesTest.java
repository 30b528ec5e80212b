package org.cairnfield.ui.internal.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;

class GuidePagesTest {

	private static final Pattern REFERENCE = Pattern.compile("(?:href|src)=\"([^\"#]+)\"");

	@TempDir
	Path folder;

	@Test
	void leadToEachOtherAndShowTheirPictures() throws IOException {
		GuidePages.write(FrameworkUtil.getBundle(GuidePages.class), folder);
		List<Path> pages;
		try (Stream<Path> files = Files.list(folder.resolve("guide"))) {
			pages = files.sorted().toList();
		}
		assertEquals(
				List.of("first-ten-minutes.html", "glossary.html", "index.html", "keys.html", "lead.html",
						"reviewer.html", "steward.html"),
				pages.stream().map(page -> page.getFileName().toString()).toList());
		int pictures = 0;
		for (Path page : pages) {
			Matcher reference = REFERENCE.matcher(Files.readString(page));
			while (reference.find()) {
				String to = reference.group(1);
				assertTrue(Files.exists(page.resolveSibling(to)), page + " refers to " + to);
				pictures += to.endsWith(".png") ? 1 : 0;
			}
		}
		assertTrue(pictures >= 5, pictures + " pictures");
	}

	@Test
	void showTablesAndNoForeignMarkup() {
		String page = GuidePages.html(
				"# Keys\n\n| key | does |\n|---|---|\n| A | approve |\n\n<script>x</script>\n\n[more](lead.md)\n");
		assertTrue(page.contains("<td>approve</td>") && page.contains("<title>Keys</title>")
				&& page.contains("href=\"lead.html\""), page);
		assertFalse(page.contains("<script>"), page);
	}

	@Test
	void areChosenByTheView() {
		assertEquals("reviewer", UserGuide.page("org.cairnfield.ui.review.queue"));
		assertEquals("lead", UserGuide.page("org.cairnfield.ui.release.gates"));
		assertEquals("steward", UserGuide.page("org.cairnfield.ui.findings"));
		assertEquals("first-ten-minutes", UserGuide.page("org.cairnfield.ui.start"));
		assertEquals("index", UserGuide.page("org.eclipse.ui.views.ProgressView"));
	}
}
