package org.cairnfield.ui.internal.timeline;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.timeline.NextPlace;
import org.cairnfield.curation.timeline.NextWalk;
import org.cairnfield.curation.timeline.WalkFiles;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.MarkedPlace;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.work.Work;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** The walk of the next survey: numbered on the plan, and as a file that a surveyor takes along. */
final class WalkPlanning {

	private WalkPlanning() {
	}

	/** Plans it, marks it on the plan, and hands it over. */
	static void plan(ArchiveSession session, String siteId, Consumer<NextWalk> planned) {
		Archive still = ArchiveCopy.of(session.archive());
		Site site = ArchiveIndex.of(still).site(siteId).orElseThrow();
		Work.start(NLS.bind(Messages.WalkPlanning_planningTheNextWalkOf, ArchiveMap.nameOf(site)),
				workers -> NextWalk.of(still, site, NextWalk.USUAL_PLACES, workers), walk -> {
					mark(session, walk);
					planned.accept(walk);
				});
	}

	private static void mark(ArchiveSession session, NextWalk walk) {
		ArchiveIndex index = ArchiveIndex.of(session.archive());
		List<MarkedPlace> marked = new ArrayList<>();
		int order = 0;
		for (NextPlace place : walk.places()) {
			order++;
			Optional<Floor> floor = index.floor(walk.site(), place.floor());
			if (floor.isPresent()) {
				marked.add(new MarkedPlace(floor.get(), place.x(), place.y(), Integer.toString(order)));
			}
		}
		ArchiveSelection now = session.selection().withMarked(marked);
		session.select(marked.isEmpty() || marked.stream().anyMatch(place -> place.floor() == now.floor()) ? now
				: now.withFloor(marked.get(0).floor()));
	}

	/** Writes it where the person wants it: as points that a phone can show where the place of the site on Earth is known, or as a table. */
	static void save(Shell shell, ArchiveSession session, NextWalk walk) {
		Site site = ArchiveIndex.of(session.archive()).site(walk.site()).orElseThrow();
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(Messages.WalkPlanning_saveTheWalkOfThe);
		boolean onEarth = site.getGeoreference() != null;
		dialog.setFilterExtensions(onEarth ? new String[] { "*.geojson", "*.csv" } : new String[] { "*.csv" });
		dialog.setFilterNames(
				onEarth ? new String[] { Messages.WalkPlanning_pointsThatAPhoneCan, Messages.WalkPlanning_tableCsv }
						: new String[] { Messages.WalkPlanning_tableCsv });
		dialog.setFileName(site.getId() + "-walk" + (onEarth ? ".geojson" : ".csv"));
		dialog.setOverwrite(true);
		String chosen = Chooser.open(dialog, "walk");
		if (chosen != null) {
			Archive still = ArchiveCopy.of(session.archive());
			Work.start(NLS.bind(Messages.WalkPlanning_savingTheWalkOf, ArchiveMap.nameOf(site)), workers -> {
				if (chosen.endsWith(".geojson")) {
					WalkFiles.geoJson(Path.of(chosen), still, List.of(walk));
				} else {
					WalkFiles.csv(Path.of(chosen), still, List.of(walk));
				}
				return walk;
			}, written -> {
			});
		}
	}
}
