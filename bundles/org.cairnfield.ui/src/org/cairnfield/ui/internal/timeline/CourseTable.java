package org.cairnfield.ui.internal.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

import org.cairnfield.curation.timeline.AccessPointCourse;
import org.cairnfield.curation.timeline.TimelineStep;
import org.cairnfield.curation.timeline.TimelineStudy;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.ui.charts.HeatTable;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Marked;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Access points over surveys; choosing one shows it on the plan. */
final class CourseTable {

	private final HeatTable chart;
	private ArchiveSession session;
	private TimelineStudy shown;

	CourseTable(Composite parent) {
		chart = Marked.id(new HeatTable(parent, SWT.BORDER), "timeline.courses");
		chart.setName(Messages.CourseTable_accessPointsOverTime);
		chart.setEmptyText(Messages.CourseTable_whichAccessPointsEachSurvey);
		chart.onChosen(this::chosen);
	}

	void show(ArchiveSession now, TimelineStudy study) {
		session = now;
		if (study == shown) {
			return;
		}
		shown = study;
		List<TimelineStep> steps = study == null ? List.of() : study.timeline().steps();
		List<AccessPointCourse> courses = study == null ? List.of() : study.table().rows();
		int marked = -1;
		for (int s = 0; s < steps.size(); s++) {
			marked = steps.get(s).isChanged() ? s : marked;
		}
		chart.setTable(Axis.share(Messages.CourseTable_shareOfPlacesWhereIt),
				steps.stream().map(step -> step.date().toString()).toList(),
				courses.stream().map(course -> row(course, steps, courses)).toList());
		chart.setMarkedColumn(marked);
	}

	private static HeatTable.Row row(AccessPointCourse course, List<TimelineStep> steps, List<AccessPointCourse> all) {
		long alike = all.stream().filter(other -> other.course() == course.course()).count();
		return new HeatTable.Row(course.address(), course.course().word() + " (" + alike + ")",
				course.shares().stream().mapToDouble(Double::doubleValue).toArray(),
				text(course, steps));
	}

	private static String text(AccessPointCourse course, List<TimelineStep> steps) {
		StringJoiner heard = new StringJoiner("; ");
		for (int s = 0; s < steps.size(); s++) {
			if (!Double.isNaN(course.levels().get(s))) {
				heard.add(String.format(Locale.ROOT, Messages.CourseTable_ofPlacesMedianDbm, steps.get(s).date(),
						100 * course.shares().get(s),
						course.levels().get(s)));
			}
		}
		List<String> parts = new ArrayList<>(List.of(course.address() + ", " + course.course().word()));
		if (!course.remark().isEmpty()) {
			parts.add(course.remark());
		}
		return String.join(", ", parts) + ". " + heard;
	}

	private void chosen(int item) {
		if (item >= 0 && session != null) {
			ArchiveIndex.of(session.archive()).address(shown.table().rows().get(item).address())
					.ifPresent(accessPoint -> session.select(session.selection().withAccessPoint(accessPoint)));
		}
	}
}
