package org.cairnfield.ui.plan.internal.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.plan.internal.gef.PlanCanvas;
import org.cairnfield.ui.plan.internal.image.PictureFile;
import org.cairnfield.ui.plan.internal.model.AccessPointPlaces;
import org.cairnfield.ui.plan.internal.model.EstimatedPlace;
import org.cairnfield.ui.plan.internal.raster.PlanPicture;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/** What is read or computed beside the user interface for a floor: its image, and where access points seem to be. */
final class FloorBackdrop {

	private final PlanCanvas plan;
	private Job imageJob;
	private Job placesJob;
	private Floor imageOf;
	private String imagePath;

	FloorBackdrop(PlanCanvas plan) {
		this.plan = plan;
	}

	/** Starts over. @param other whether it is another floor than before */
	void read(ArchiveSession session, boolean other) {
		Floor floor = plan.scene().floor();
		if (other) {
			imageOf = null;
		}
		if (session == null || floor == null) {
			cancel();
			return;
		}
		readImage(session, floor);
		readPlaces(floor);
	}

	/** Stops what is under way. */
	void cancel() {
		cancel(imageJob);
		cancel(placesJob);
	}

	private static void cancel(Job job) {
		if (job != null) {
			job.cancel();
		}
	}

	private void readImage(ArchiveSession session, Floor floor) {
		Placement placement = floor.getPlanPlacement();
		if (floor.getPlanImage() == null || placement == null) {
			cancel(imageJob);
			imageOf = null;
			if (plan.scene().picture() != null) {
				plan.scene().picture(null);
				plan.drawAgain();
			}
			return;
		}
		if (imageOf == floor && Objects.equals(imagePath, floor.getPlanImage())) {
			PlanPicture shown = plan.scene().picture();
			if (shown != null && !shown.placement().equals(placement)) {
				plan.scene().picture(shown.placed(placement));
				plan.drawAgain();
			}
			return;
		}
		cancel(imageJob);
		imageOf = floor;
		imagePath = floor.getPlanImage();
		try {
			Path file = session.open().resolve(floor.getPlanImage());
			imageJob = Work.start(Messages.FloorBackdrop_readingThePlanImage,
					workers -> PictureFile.read(file, placement), picture -> {
						if (plan.scene().floor() == floor && imageOf == floor && !plan.canvas().isDisposed()) {
							plan.scene().picture(floor.getPlanPlacement() == null ? picture
									: picture.placed(floor.getPlanPlacement()));
							plan.drawAgain();
						}
					}, problem -> Problems
							.log(NLS.bind(Messages.FloorBackdrop_thePlanImageCannotBe, floor.getPlanImage()), problem));
		} catch (IOException e) {
			Problems.log(NLS.bind(Messages.FloorBackdrop_thePlanImageCannotBe, floor.getPlanImage()), e);
		}
	}

	private void readPlaces(Floor floor) {
		cancel(placesJob);
		List<SampleTable> tables = plan.scene().site().getSurveys().stream().map(Survey::table).toList();
		placesJob = Work.start(Messages.FloorBackdrop_estimatingWhereAccessPointsAre,
				workers -> AccessPointPlaces.of(tables, workers),
				(List<EstimatedPlace> places) -> {
					if (plan.scene().floor() == floor && !plan.canvas().isDisposed()) {
						plan.scene().places(places);
						plan.placesChanged();
					}
				}, problem -> Problems.log(Messages.FloorBackdrop_placesOfAccessPoints, problem));
	}
}
