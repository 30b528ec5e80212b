package org.cairnfield.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;

import org.cairnfield.curation.floors.PlanFiles;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Sha256;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;

/** From the wish for a plan image to the floor that has one. */
public final class ImagePlacing {

	private ImagePlacing() {
	}

	/** Asks for image and points; the image is copied into the archive, and the floor gets it by a change that can be undone. */
	public static void open(Shell shell, ArchiveSession session, Floor floor) {
		PlaceImageDialog dialog = new PlaceImageDialog(shell, session, floor);
		if (dialog.open() != Window.OK) {
			return;
		}
		Placement placement = dialog.placement();
		Path file = dialog.file();
		if (file == null) { // the image that it has already
			session.run(PlanImageCommand.of(floor, floor.getPlanImage(), placement));
			return;
		}
		Site site = (Site) floor.eContainer();
		String id = site.getId();
		int level = floor.getLevel();
		Work.start(Messages.ImagePlacing_copyingThePlanImage, workers -> copy(file, id, level, session),
				image -> session.run(PlanImageCommand.of(floor, image, placement)));
	}

	private static String copy(Path file, String siteId, int level, ArchiveSession session) throws IOException {
		String plain = file.getFileName().toString();
		String ending = plain.substring(plain.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
		String image = PlanFiles.name(siteId, level, Sha256.of(file), ending);
		Path target = session.open().resolve(image);
		Files.createDirectories(target.getParent());
		Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
		return image;
	}
}
