package org.cairnfield.ui.internal.timeline;

import java.util.List;
import java.util.Set;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.timeline.TimelineStudy;
import org.cairnfield.curation.timeline.TimelineWords;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SiteOrder;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.LatestWork;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A site's surveys side by side: access points over time, the error over time, and the remedies. */
final class TimelinePane implements SessionListener {

	private final Composite page;
	private final Combo siteChoice;
	private final Button compare;
	private final Button cancel;
	private final Label says;
	private final CourseTable courses;
	private final AgeingChart ageing;
	private final RemedyPane remedies;
	private final LatestWork work = new LatestWork(this::show);
	private ArchiveSession session;
	private List<Site> sites = List.of();
	private TimelineStudy study;
	private String problem = "";
	private boolean outdated;

	TimelinePane(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		Composite top = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(5).margins(6, 4).spacing(6, 4).applyTo(top);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
		siteChoice = Marked.choice(top, Messages.TimelinePane_site, "timeline.site", this::siteChosen);
		compare = Marked.button(top, Messages.TimelinePane_compareSurveys, "timeline.compare", this::start);
		cancel = Marked.button(top, Messages.TimelinePane_cancel, "timeline.cancel", work::cancel);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(cancel);
		says = Marked.line(top, "timeline.message", 1);
		SashForm sash = new SashForm(page, SWT.HORIZONTAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		courses = new CourseTable(sash);
		SashForm right = new SashForm(sash, SWT.VERTICAL | SWT.SMOOTH);
		ageing = new AgeingChart(right);
		remedies = new RemedyPane(right);
		sash.setWeights(52, 48);
		right.setWeights(55, 45);
		show();
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		forget();
	}

	@Override
	public void structureChanged() {
		List<Site> before = sites;
		outdated = study != null;
		if (!before.equals(found())) {
			forget();
		} else {
			show();
		}
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		outdated = study != null;
		show();
	}

	@Override
	public void stateChanged() {
		remedies.show(session, study, outdated);
	}

	private List<Site> found() {
		return session == null ? List.of() : SiteOrder.of(session.archive());
	}

	/** The sites are others. */
	private void forget() {
		Site before = chosen();
		sites = found();
		siteChoice.setItems(sites.stream().map(ArchiveMap::nameOf).toArray(String[]::new));
		siteChoice.select(sites.isEmpty() ? -1 : Math.max(0, before == null ? mostSurveyed() : sites.indexOf(before)));
		siteChosen();
	}

	/** The site whose timeline tells most. */
	private int mostSurveyed() {
		int most = 0;
		for (int s = 1; s < sites.size(); s++) {
			most = days(sites.get(s)) > days(sites.get(most)) ? s : most;
		}
		return most;
	}

	private static long days(Site site) {
		return site.getSurveys().stream()
				.filter(survey -> survey.getKind() == SurveyKind.TRAINING && survey.getDate() != null)
				.map(Survey::getDate)
				.distinct().count();
	}

	private Site chosen() {
		int at = siteChoice.getSelectionIndex();
		return at < 0 || at >= sites.size() ? null : sites.get(at);
	}

	private void siteChosen() {
		work.cancel();
		study = null;
		problem = "";
		outdated = false;
		show();
	}

	private void start() {
		ArchiveSession of = session;
		Archive still = ArchiveCopy.of(of.archive());
		String id = chosen().getId();
		problem = "";
		work.start(NLS.bind(Messages.TimelinePane_comparingTheSurveysOf, ArchiveMap.nameOf(chosen())),
				workers -> TimelineStudy.of(still, ArchiveIndex.of(still).site(id).orElseThrow(),
						ReleasedArchives.of(of.open()), workers),
				found -> {
					study = found;
					outdated = false;
					show();
				}, why -> {
					problem = Problems.text(why);
					show();
				});
	}

	private void show() {
		if (page.isDisposed()) {
			return;
		}
		compare.setEnabled(chosen() != null && !work.isBusy());
		siteChoice.setEnabled(!sites.isEmpty());
		IfChanged.shown(cancel, work.isBusy());
		courses.show(session, study);
		ageing.show(study);
		remedies.show(session, study, outdated);
		Marked.say(says, text());
	}

	private String text() {
		if (work.isBusy()) {
			return Messages.TimelinePane_comparing;
		}
		if (!problem.isEmpty()) {
			return "✖ " + problem;
		}
		if (study == null) {
			return chosen() == null ? Messages.TimelinePane_openAnArchiveToSee
					: Messages.TimelinePane_comparesTheTrainingSurveysOf;
		}
		return TimelineWords.summary(study.timeline())
				+ (outdated ? Messages.TimelinePane_theArchiveHasChangedSince : "");
	}

	void setFocus() {
		Marked.focus(compare);
	}

	void dispose() {
		work.cancel();
	}
}
