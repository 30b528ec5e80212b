package org.cairnfield.ui.release.internal.study;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.study.FewerAccessPoints;
import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.model.Archive;
import org.cairnfield.report.files.StudyFiles;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.show.Chooser;
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
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

/** Which maps are studied, how far the study is, and what it has found. */
final class StudyPane implements SessionListener {

	private static final String ALL = Messages.StudyPane_allMapsMeans;
	private static final int MOST_MINUTES = 120;
	private static final int USUAL_MINUTES = 10;

	private final Composite page;
	private final Text others;
	private final Button add;
	private final Spinner minutes;
	private final Button start;
	private final Button cancel;
	private final Button save;
	private final Button keep;
	private final Label says;
	private final Combo mapChoice;
	private final MethodTable methods;
	private final StudyCharts charts;
	private final LatestWork work = new LatestWork(this::show);
	private ArchiveSession session;
	private StudyTable study;
	private boolean whole;
	private String doing = "";
	private String told = "";
	private String problem = "";

	StudyPane(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		Composite top = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(8).margins(6, 4).spacing(6, 4).applyTo(top);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
		new Label(top, SWT.NONE).setText(Messages.StudyPane_otherArchives);
		others = Marked.id(new Text(top, SWT.BORDER), "study.others");
		others.setMessage(Messages.StudyPane_foldersWithSemicolonsBetweenThem);
		others.setToolTipText(Messages.StudyPane_studiedBesideTheArchiveOn);
		others.addListener(SWT.Modify, event -> show());
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).span(6, 1).applyTo(others);
		add = Marked.button(top, Messages.StudyPane_add, "study.add", this::addArchive);
		new Label(top, SWT.NONE).setText(Messages.StudyPane_minutesForEachMethod);
		minutes = Marked.named(Marked.id(new Spinner(top, SWT.BORDER), "study.minutes"),
				Messages.StudyPane_minutesForEachMethodOn);
		minutes.setValues(USUAL_MINUTES, 1, MOST_MINUTES, 0, 1, 10);
		minutes.setToolTipText(Messages.StudyPane_aMethodThatTakesLonger);
		start = Marked.button(top, Messages.StudyPane_study, "study.start", this::start);
		cancel = Marked.button(top, Messages.StudyPane_cancel, "study.cancel", work::cancel);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(cancel);
		mapChoice = Marked.choice(top, Messages.StudyPane_show, "study.map", this::show);
		GridDataFactory.fillDefaults().hint(200, SWT.DEFAULT).applyTo(mapChoice);
		save = Marked.button(top, Messages.StudyPane_saveTheReport, "study.save", this::save);
		keep = Marked.button(top, Messages.StudyPane_keepAsASplit, "study.keep", this::keep);
		says = Marked.line(top, "study.message", 8);
		SashForm sash = new SashForm(page, SWT.HORIZONTAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		methods = new MethodTable(sash);
		charts = new StudyCharts(sash);
		sash.setWeights(64, 36);
		methods.onSelected(this::enableKeeping);
		show();
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		work.cancel();
		study = null;
		whole = false;
		problem = "";
		told = "";
		show();
	}

	private void addArchive() {
		DirectoryDialog dialog = new DirectoryDialog(page.getShell(), SWT.OPEN);
		dialog.setText(Messages.StudyPane_studyAnotherArchiveToo);
		dialog.setMessage(Messages.StudyPane_chooseTheFolderOfAn);
		String chosen = Chooser.open(dialog, "archive");
		if (chosen != null) {
			others.setText(others.getText().isBlank() ? chosen : others.getText() + "; " + chosen);
		}
	}

	/** Each once, and not the one on show. */
	private List<Path> folders() {
		return Arrays.stream(others.getText().split(";")).map(String::trim).filter(text -> !text.isEmpty())
				.map(Path::of).distinct()
				.filter(folder -> session == null || !folder.equals(session.folder())).toList();
	}

	private void start() {
		StudyWork next = new StudyWork(session == null ? "" : session.folder().getFileName().toString(),
				session == null ? null : ArchiveCopy.of(session.archive()),
				folders(), Duration.ofMinutes(minutes.getSelection()));
		problem = "";
		doing = "";
		told = "";
		whole = false;
		work.start(Messages.StudyPane_studyingWaysOfSplitting, workers -> next.run(this::begun, this::found, workers),
				table -> {
					whole = true;
					found(table);
				}, why -> {
					problem = Problems.text(why);
					show();
				});
	}

	private void begun(String step) {
		doing = step;
		show();
	}

	private void found(StudyTable table) {
		if (work.isBusy() || whole) { // what comes late after a change of archive is dropped
			study = table;
			show();
		}
	}

	private void save() {
		DirectoryDialog dialog = new DirectoryDialog(page.getShell(), SWT.SAVE);
		dialog.setText(Messages.StudyPane_saveTheReportOfThe);
		dialog.setMessage(Messages.StudyPane_chooseAFolderForStudy);
		Optional.ofNullable(Chooser.open(dialog, "study")).map(Path::of).ifPresent(this::saveTo);
	}

	void saveTo(Path folder) {
		try {
			StudyFiles.write(folder, study);
			told = NLS.bind(Messages.StudyPane_savedStudyHtmlStudyCsv, folder);
			show();
		} catch (Exception e) {
			Problems.show(Messages.StudyPane_theReportWasNotSaved, e);
		}
	}

	/** Of the archive on show, by the selected method; can be undone. */
	private void keep() {
		ArchiveSession of = session;
		StudyMethod method = methods.selected().orElseThrow();
		Archive still = ArchiveCopy.of(of.archive());
		if (method == StudyMethod.ORTHOGONAL_SEARCH) {
			setOthersAside(of, still);
			return;
		}
		doing = NLS.bind(Messages.StudyPane_makingASplitBy, method.code());
		work.start(NLS.bind(Messages.StudyPane_keepingASplitBy, method.code()),
				workers -> SplitKeeping.make(still, method, workers), made -> {
					AddSplitsCommand add = new AddSplitsCommand(of.archive(), made.splits());
					of.run(add);
					told = NLS.bind(Messages.StudyPane_kept, made.splits().get(0).getId(),
							String.join(" ", made.notes()));
					show();
				}, why -> {
					problem = Problems.text(why);
					show();
				});
	}

	/** As few access points as make positions no worse; can be undone. */
	private void setOthersAside(ArchiveSession of, Archive still) {
		doing = Messages.StudyPane_measuringHowFewAccessPoints;
		work.start(doing, workers -> FewerAccessPoints.of(still, StudyWork.SEED, workers), fewer -> {
			Optional<FewerAccessPoints.Step> proposed = fewer.proposed();
			proposed.ifPresent(step -> of.run(new RemedyCommands(of.archive()).command(step.remedy())));
			told = proposed
					.map(step -> NLS.bind(Messages.StudyPane_setAccessPointsAsideBefore,
							new Object[] { step.others().size(), fewer.steps().get(0), step }))
					.orElse(Messages.StudyPane_measuredNoGainAllAccess);
			show();
		}, why -> {
			problem = Problems.text(why);
			show();
		});
	}

	private void enableKeeping() {
		Optional<StudyMethod> method = methods.selected();
		boolean fewer = method.filter(StudyMethod.ORTHOGONAL_SEARCH::equals).isPresent();
		IfChanged.text(keep, fewer ? Messages.StudyPane_setTheOthersAside : Messages.StudyPane_keepAsASplit);
		if (fewer) {
			keep.setEnabled(session != null && session.readOnlyReason().isEmpty() && !work.isBusy());
			keep.setToolTipText(Messages.StudyPane_setsAccessPointsOfThe);
			return;
		}
		Optional<String> whyNot = method.flatMap(SplitKeeping::whyNot);
		keep.setEnabled(session != null && session.readOnlyReason().isEmpty() && !work.isBusy() && method.isPresent()
				&& whyNot.isEmpty());
		keep.setToolTipText(whyNot.map(why -> NLS.bind(Messages.StudyPane_notKept, why))
				.orElse(Messages.StudyPane_splitsTheArchiveOnShow));
	}

	private void show() {
		if (page.isDisposed()) {
			return;
		}
		listMaps();
		boolean busy = work.isBusy();
		add.setEnabled(!busy);
		others.setEnabled(!busy);
		minutes.setEnabled(!busy);
		start.setEnabled(!busy && (session != null || !others.getText().isBlank()));
		IfChanged.shown(cancel, busy);
		mapChoice.setEnabled(study != null);
		save.setEnabled(study != null && !busy);
		String map = mapChoice.getSelectionIndex() <= 0 ? null : mapChoice.getText();
		methods.show(study, map);
		charts.show(study, map);
		enableKeeping();
		Marked.say(says, text(busy));
	}

	private void listMaps() {
		List<String> items = new ArrayList<>(List.of(ALL));
		if (study != null) {
			items.addAll(study.maps());
		}
		if (!items.equals(List.of(mapChoice.getItems()))) {
			String chosen = mapChoice.getText();
			mapChoice.setItems(items.toArray(String[]::new));
			mapChoice.select(Math.max(0, items.indexOf(chosen)));
		}
	}

	private String text(boolean busy) {
		if (busy) {
			return doing.isEmpty() ? Messages.StudyPane_readingTheMaps : doing + " …";
		}
		if (!problem.isEmpty()) {
			return "✖ " + problem;
		}
		if (study == null) {
			return Messages.StudyPane_setsAllWaysOfSplitting;
		}
		if (!whole) {
			return Messages.StudyPane_cancelledWhatIsDoneIs;
		}
		long skipped = study.skipped().size();
		String best = study.best().map(method -> NLS.bind(Messages.StudyPane_ofTheMethodsThatSplit, method))
				.orElse(Messages.StudyPane_nothingCouldBeMeasured);
		return (told.isEmpty() ? "" : told + " ") + best
				+ (skipped == 0 ? "" : NLS.bind(Messages.StudyPane_skippedSeeHow, skipped));
	}

	void setFocus() {
		Marked.focus(start);
	}

	void dispose() {
		work.cancel();
	}
}
