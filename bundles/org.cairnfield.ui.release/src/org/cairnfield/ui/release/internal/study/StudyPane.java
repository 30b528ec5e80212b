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

	private static final String ALL = "all maps, means";
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
		new Label(top, SWT.NONE).setText("O&ther archives");
		others = Marked.id(new Text(top, SWT.BORDER), "study.others");
		others.setMessage("folders, with semicolons between them");
		others.setToolTipText("Studied beside the archive on show; they are only read");
		others.addListener(SWT.Modify, event -> show());
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).span(6, 1).applyTo(others);
		add = Marked.button(top, "A&dd …", "study.add", this::addArchive);
		new Label(top, SWT.NONE).setText("Minutes for each method");
		minutes = Marked.named(Marked.id(new Spinner(top, SWT.BORDER), "study.minutes"), "Minutes for each method on a map");
		minutes.setValues(USUAL_MINUTES, 1, MOST_MINUTES, 0, 1, 10);
		minutes.setToolTipText("A method that takes longer on a map is skipped, and said to be");
		start = Marked.button(top, "St&udy", "study.start", this::start);
		cancel = Marked.button(top, "Cancel", "study.cancel", work::cancel);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(cancel);
		mapChoice = Marked.choice(top, "Sho&w", "study.map", this::show);
		GridDataFactory.fillDefaults().hint(200, SWT.DEFAULT).applyTo(mapChoice);
		save = Marked.button(top, "Save the &report …", "study.save", this::save);
		keep = Marked.button(top, "&Keep as a split", "study.keep", this::keep);
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
		dialog.setText("Study another archive too");
		dialog.setMessage("Choose the folder of an archive. It is only read.");
		String chosen = Chooser.open(dialog, "archive");
		if (chosen != null) {
			others.setText(others.getText().isBlank() ? chosen : others.getText() + "; " + chosen);
		}
	}

	/** Each once, and not the one on show. */
	private List<Path> folders() {
		return Arrays.stream(others.getText().split(";")).map(String::trim).filter(text -> !text.isEmpty()).map(Path::of).distinct()
				.filter(folder -> session == null || !folder.equals(session.folder())).toList();
	}

	private void start() {
		StudyWork next = new StudyWork(session == null ? "" : session.folder().getFileName().toString(), session == null ? null : ArchiveCopy.of(session.archive()),
				folders(), Duration.ofMinutes(minutes.getSelection()));
		problem = "";
		doing = "";
		told = "";
		whole = false;
		work.start("Studying ways of splitting", workers -> next.run(this::begun, this::found, workers), table -> {
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
		dialog.setText("Save the report of the study");
		dialog.setMessage("Choose a folder for study.html, study.csv and study.json.");
		Optional.ofNullable(Chooser.open(dialog, "study")).map(Path::of).ifPresent(this::saveTo);
	}

	void saveTo(Path folder) {
		try {
			StudyFiles.write(folder, study);
			told = "Saved study.html, study.csv and study.json in " + folder + ".";
			show();
		} catch (Exception e) {
			Problems.show("The report was not saved", e);
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
		doing = "Making a split by " + method.code();
		work.start("Keeping a split by " + method.code(), workers -> SplitKeeping.make(still, method, workers), made -> {
			AddSplitsCommand add = new AddSplitsCommand(of.archive(), made.splits());
			of.run(add);
			told = "Kept " + made.splits().get(0).getId() + ". " + String.join(" ", made.notes());
			show();
		}, why -> {
			problem = Problems.text(why);
			show();
		});
	}

	/** As few access points as make positions no worse; can be undone. */
	private void setOthersAside(ArchiveSession of, Archive still) {
		doing = "Measuring how few access points will do";
		work.start(doing, workers -> FewerAccessPoints.of(still, StudyWork.SEED, workers), fewer -> {
			Optional<FewerAccessPoints.Step> proposed = fewer.proposed();
			proposed.ifPresent(step -> of.run(new RemedyCommands(of.archive()).command(step.remedy())));
			told = proposed.map(step -> "Set " + step.others().size() + " access points aside. Before: " + fewer.steps().get(0) + ". Now: " + step + '.')
					.orElse("Measured: no gain, all access points are needed.");
			show();
		}, why -> {
			problem = Problems.text(why);
			show();
		});
	}

	private void enableKeeping() {
		Optional<StudyMethod> method = methods.selected();
		boolean fewer = method.filter(StudyMethod.ORTHOGONAL_SEARCH::equals).isPresent();
		IfChanged.text(keep, fewer ? "Set the others &aside" : "&Keep as a split");
		if (fewer) {
			keep.setEnabled(session != null && session.readOnlyReason().isEmpty() && !work.isBusy());
			keep.setToolTipText("Sets access points of the archive on show aside as far as held-out positions get no worse; nothing is done where they do");
			return;
		}
		Optional<String> whyNot = method.flatMap(SplitKeeping::whyNot);
		keep.setEnabled(session != null && session.readOnlyReason().isEmpty() && !work.isBusy() && method.isPresent() && whyNot.isEmpty());
		keep.setToolTipText(whyNot.map(why -> "Not kept: " + why).orElse("Splits the archive on show by the selected method, in the setting that wins on held-out positions"));
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
			return doing.isEmpty() ? "Reading the maps …" : doing + " …";
		}
		if (!problem.isEmpty()) {
			return "✖ " + problem;
		}
		if (study == null) {
			return "Sets all ways of splitting side by side. Settings are chosen on held-out training positions; test surveys give the figures.";
		}
		if (!whole) {
			return "Cancelled. What is done is kept: Study goes on where it was.";
		}
		long skipped = study.skipped().size();
		String best = study.best().map(method -> "Of the methods that split, searched as published, " + method + " comes first.").orElse("Nothing could be measured.");
		return (told.isEmpty() ? "" : told + " ") + best + (skipped == 0 ? "" : " " + skipped + " skipped: see How.");
	}

	void setFocus() {
		Marked.focus(start);
	}

	void dispose() {
		work.cancel();
	}
}
