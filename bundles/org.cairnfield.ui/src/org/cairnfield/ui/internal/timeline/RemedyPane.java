package org.cairnfield.ui.internal.timeline;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.timeline.AgePlan;
import org.cairnfield.curation.timeline.AgeRemedy;
import org.cairnfield.curation.timeline.NextWalk;
import org.cairnfield.curation.timeline.TimelineStudy;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Marked;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What can be done about a map that has aged, each with what was measured of it. */
final class RemedyPane {

	private final Composite page;
	private final Label says;
	private final TableViewer table;
	private final Button apply;
	private final Button planWalk;
	private final Button saveWalk;
	private final Label walkSays;
	private NextWalk walk;
	private ArchiveSession session;
	private AgePlan plan;
	private boolean outdated;

	RemedyPane(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(6, 4).applyTo(page);
		says = Marked.line(page, "timeline.advice", 3);
		table = new TableViewer(page, SWT.FULL_SELECTION | SWT.BORDER);
		Marked.named(Marked.id(table.getTable(), "timeline.remedies"), Messages.RemedyPane_whatCanBeDoneAbout)
				.setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(SWT.DEFAULT, 60).applyTo(table.getTable());
		column(Messages.RemedyPane_measured, 76, SWT.LEFT, each -> each.isGain() ? Messages.RemedyPane_better
				: each.change().low() > 0 ? Messages.RemedyPane_worse : Messages.RemedyPane_noGain);
		column(Messages.RemedyPane_remedy, 200, SWT.LEFT, each -> each.kind().title());
		column(Messages.RemedyPane_before, 62, SWT.RIGHT, each -> metres(each.before().metres()));
		column(Messages.RemedyPane_after, 62, SWT.RIGHT, each -> metres(each.after().metres()));
		column(Messages.RemedyPane_95OfTheChange, 130, SWT.RIGHT,
				each -> String.format(Locale.ROOT, Messages.RemedyPane_toM, each.change().low(), each.change().high()));
		column(Messages.RemedyPane_whatItDoes, 480, SWT.LEFT, AgeRemedy::preview);
		table.setContentProvider(ArrayContentProvider.getInstance());
		table.addSelectionChangedListener(event -> enable());
		apply = Marked.button(page, Messages.RemedyPane_applyTheRemedy, "timeline.apply", this::apply);
		planWalk = Marked.button(page, Messages.RemedyPane_planTheNextWalk, "timeline.walk", this::planWalk);
		saveWalk = Marked.button(page, Messages.RemedyPane_saveTheWalk, "timeline.saveWalk",
				() -> WalkPlanning.save(page.getShell(), session, walk));
		walkSays = Marked.line(page, "timeline.walkMessage", 3);
	}

	private void column(String title, int width, int alignment, Function<AgeRemedy, String> text) {
		TableViewerColumn column = new TableViewerColumn(table, alignment);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text.apply((AgeRemedy) element)));
	}

	private static String metres(double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%.2f m", value);
	}

	void show(ArchiveSession now, TimelineStudy study, boolean isOutdated) {
		if (page.isDisposed()) {
			return;
		}
		session = now;
		outdated = isOutdated;
		AgePlan next = study == null ? null : study.plan().orElse(null);
		if (next != plan) {
			plan = next;
			walk = null;
			Marked.say(walkSays, "");
			table.setInput(plan == null ? List.of() : plan.remedies());
			if (plan != null) {
				plan.best().ifPresent(best -> table.setSelection(new StructuredSelection(best), true));
			}
			Marked.say(says, text());
		}
		enable();
	}

	private String text() {
		if (plan == null) {
			return "";
		}
		return plan.best()
				.map(best -> NLS.bind(Messages.RemedyPane_helpsMostHalfOfThe,
						best.kind().title().toLowerCase(Locale.ROOT), plan.day()))
				.orElse(NLS.bind(Messages.RemedyPane_nothingHelpsLeaveTheMap, plan.day()));
	}

	private Optional<AgeRemedy> selected() {
		return Optional.ofNullable((AgeRemedy) table.getStructuredSelection().getFirstElement());
	}

	private void enable() {
		apply.setEnabled(plan != null && !outdated && selected().isPresent() && session.readOnlyReason().isEmpty());
		planWalk.setEnabled(plan != null);
		saveWalk.setEnabled(walk != null);
	}

	private void planWalk() {
		AgePlan of = plan;
		WalkPlanning.plan(session, plan.site(), planned -> {
			if (plan == of && !page.isDisposed()) {
				walk = planned;
				Marked.say(walkSays, String.format(Locale.ROOT, Messages.RemedyPane_placesMNumberedOnThe,
						walk.places().size(), walk.metres()));
				enable();
			}
		});
	}

	/** One step that can be undone. */
	private void apply() {
		AgeRemedy remedy = selected().orElseThrow();
		RemedyCommands commands = new RemedyCommands(session.archive());
		CompoundCommand all = new CompoundCommand(0, remedy.kind().title());
		remedy.remedies().forEach(each -> all.appendIfCanExecute(commands.command(each)));
		session.run(all);
	}
}
