package org.cairnfield.ui.internal.timeline;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.timeline.NextWalk;
import org.cairnfield.curation.timeline.WalkFiles;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.Work;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Writes the walk of the next survey where a person wants it. */
final class WalkSaving {

	private WalkSaving() {
	}

	static void ask(Shell shell, ArchiveSession session, String siteId) {
		Site site = ArchiveIndex.of(session.archive()).site(siteId).orElseThrow();
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText("Save the walk of the next survey");
		boolean onEarth = site.getGeoreference() != null;
		dialog.setFilterExtensions(onEarth ? new String[] { "*.geojson", "*.csv" } : new String[] { "*.csv" });
		dialog.setFilterNames(onEarth ? new String[] { "Points that a phone can show (GeoJSON)", "Table (CSV)" } : new String[] { "Table (CSV)" });
		dialog.setFileName(site.getId() + "-walk" + (onEarth ? ".geojson" : ".csv"));
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen != null) {
			Archive still = ArchiveCopy.of(session.archive());
			Work.start("Planning the next walk of " + ArchiveMap.nameOf(site), workers -> {
				NextWalk walk = NextWalk.of(still, ArchiveIndex.of(still).site(siteId).orElseThrow(), NextWalk.USUAL_PLACES, workers);
				if (chosen.endsWith(".geojson")) {
					WalkFiles.geoJson(Path.of(chosen), still, List.of(walk));
				} else {
					WalkFiles.csv(Path.of(chosen), still, List.of(walk));
				}
				return walk;
			}, walk -> MessageDialog.openInformation(shell, "Walk of the next survey", String.format("%d places, %.0f m. Places that are old, that rested on access "
					+ "points which are gone, that contradict their neighbours or have no sample come first. The file names no access points.", walk.places().size(), walk.metres())));
		}
	}
}
