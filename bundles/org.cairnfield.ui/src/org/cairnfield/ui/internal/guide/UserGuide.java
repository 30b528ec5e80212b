package org.cairnfield.ui.internal.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

import org.cairnfield.ui.problem.Problems;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Shell;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** The guide, opened in the browser of the desktop. */
public final class UserGuide {

	private static final String CONTENTS = "index";
	/** Pages by views; what is not named is the steward's. */
	private static final Map<String, String> PAGES = Map.of("org.cairnfield.ui.review", "reviewer",
			"org.cairnfield.ui.release", "lead",
			"org.cairnfield.ui.start", "first-ten-minutes", "org.cairnfield.ui", "steward");

	private static Path made;

	private UserGuide() {
	}

	/** Name of the page about a view; the contents where there is none. */
	public static String page(String view) {
		return PAGES.entrySet().stream().filter(entry -> view.startsWith(entry.getKey()))
				.max((one, other) -> one.getKey().length() - other.getKey().length())
				.map(Map.Entry::getValue).orElse(CONTENTS);
	}

	/** Opens the page about a view. */
	static void open(Shell parent, String view) {
		try {
			Path page = folder().resolve("guide").resolve(page(view) + ".html");
			if (!Program.launch(page.toString())) {
				MessageDialog.openInformation(parent, Messages.UserGuide_guide,
						NLS.bind(Messages.UserGuide_noBrowserWasFoundOn, page));
			}
		} catch (IOException e) {
			Problems.show(Messages.UserGuide_theGuideCouldNotBe, e);
		}
	}

	/** Where the pages are, written at the first call. */
	public static Path folder() throws IOException {
		if (made == null) {
			Bundle bundle = FrameworkUtil.getBundle(UserGuide.class);
			Path folder = Files.createDirectories(Platform.getStateLocation(bundle).append("guide").toPath());
			GuidePages.write(bundle, folder);
			made = folder;
		}
		return made;
	}
}
