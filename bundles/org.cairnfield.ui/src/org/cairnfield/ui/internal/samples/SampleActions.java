package org.cairnfield.ui.internal.samples;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetFloorCommand;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.edit.SwapAxesCommand;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.internal.samples.model.Placing;
import org.cairnfield.ui.internal.samples.model.SampleColumn;
import org.cairnfield.ui.internal.samples.model.SampleExport;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.work.Work;
import org.eclipse.emf.common.command.Command;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.FileDialog;

/** What a person does with the samples selected, whichever part they were selected in. */
public final class SampleActions {

	private static final int MOST_REASONS = 12;
	/** So many rows are copied at once; more of them beside the user interface. */
	private static final int FEW = 300;
	private static final List<String> USUAL_REASONS = List.of(Messages.SampleActions_positionDoubtful,
			Messages.SampleActions_measuredTwice, Messages.SampleActions_deviceAtFault,
			Messages.SampleActions_notPartOfTheBuilding);

	private final SamplesPanel panel;
	private final InlineBar bar;
	private final Set<String> reasons = new LinkedHashSet<>();

	SampleActions(SamplesPanel panel, InlineBar bar) {
		this.panel = panel;
		this.bar = bar;
	}

	/** Asks for a reason and sets the samples aside. */
	public void setAside() {
		List<SampleRef> refs = changeable();
		if (!refs.isEmpty()) {
			List<String> proposals = new ArrayList<>(reasons);
			USUAL_REASONS.stream().filter(reason -> !reasons.contains(reason)).forEach(proposals::add);
			bar.ask(NLS.bind(Messages.SampleActions_whySetAside, samples(refs.size())), Messages.SampleActions_setAside,
					proposals,
					text -> text.isEmpty() ? Messages.SampleActions_aReasonIsMissingWrite : null, reason -> {
						remember(reason);
						run(SetSampleStateCommand.setAside(refs, reason), Messages.SampleActions_theyAreAllSetAside);
					});
		}
	}

	/** Brings the samples back into the map. */
	public void bringBack() {
		List<SampleRef> refs = changeable();
		if (!refs.isEmpty()) {
			run(SetSampleStateCommand.keep(refs),
					NLS.bind(Messages.SampleActions_noneOfIsSetAside, samples(refs.size())));
		}
	}

	/** Asks for a floor of their site and puts the samples there. */
	public void setFloor() {
		List<SampleRef> refs = changeable();
		if (refs.isEmpty()) {
			return;
		}
		SortedMap<Integer, String> floors = Placing.floorsFor(refs);
		List<Integer> levels = List.copyOf(floors.keySet());
		if (levels.isEmpty()) {
			bar.say(NLS.bind(Messages.SampleActions_theSitesOfHaveNo, samples(refs.size())));
			return;
		}
		SampleRef first = refs.get(0);
		int now = Math.max(0, levels.indexOf(first.survey().table().floorLevel(first.row())));
		bar.choose(NLS.bind(Messages.SampleActions_floorOf, samples(refs.size())), Messages.SampleActions_setFloor,
				List.copyOf(floors.values()), now,
				chosen -> run(new SetFloorCommand(refs, levels.get(chosen)), Messages.SampleActions_theyAreAllOnThat));
	}

	/** Lets the person edit floor, x and y in the row. */
	public void editPosition() {
		panel.edit(SampleColumn.X);
	}

	/** Exchanges x and y. */
	public void swapAxes() {
		List<SampleRef> refs = changeable();
		if (!refs.isEmpty()) {
			run(new SwapAxesCommand(refs), Messages.SampleActions_theirXAndYAre);
		}
	}

	/** Writes the rows selected as a file, after a word of caution. */
	public void export() {
		int[] indices = picked();
		if (indices.length > 0 && Damaged.isSound(panel.getShell(), Sessions.workbench().current().orElseThrow(),
				Messages.SampleActions_export)) {
			bar.confirm(NLS.bind(Messages.SampleActions_exportAsCsvAddressesOf, samples(indices.length)),
					Messages.SampleActions_chooseTheFile, () -> export(indices));
		}
	}

	private void export(int[] indices) {
		FileDialog dialog = new FileDialog(panel.getShell(), SWT.SAVE);
		dialog.setText(Messages.SampleActions_exportSamples);
		dialog.setFilterExtensions(new String[] { "*.csv" });
		dialog.setFileName("samples.csv");
		dialog.setOverwrite(true);
		String chosen = Chooser.open(dialog, "table");
		if (chosen != null) {
			export(indices, Path.of(chosen));
		}
	}

	/** Writes rows to a file. */
	void export(int[] indices, Path file) {
		SampleContent content = panel.arrangement().content();
		Work.start(Messages.SampleActions_exportingSamples, workers -> {
			SampleExport.write(file, content, indices, workers);
			return file;
		}, done -> bar.say(NLS.bind(Messages.SampleActions_writtenTo, samples(indices.length), done)),
				problem -> bar.say("✖ " + Problems.text(problem)));
	}

	/** Copies the rows selected, with the columns as they stand, for a spreadsheet. */
	public void copy() {
		int[] indices = picked();
		SampleContent content = panel.arrangement().content();
		List<SampleColumn> columns = panel.columns();
		if (indices.length > 0 && indices.length <= FEW) {
			toClipboard(SampleExport.text(content, columns, indices, Workers.inline()));
		} else if (indices.length > 0) {
			Work.start(Messages.SampleActions_copyingSamples,
					workers -> SampleExport.text(content, columns, indices, workers), this::toClipboard);
		}
	}

	private void toClipboard(String text) {
		if (!panel.isDisposed()) {
			Clipboard clipboard = new Clipboard(panel.getDisplay());
			clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
			clipboard.dispose();
		}
	}

	/** Selects all rows that the filter shows. */
	public void selectAll() {
		panel.grid().pickAll();
	}

	/** Goes to the filter. */
	public void find() {
		panel.filter().setFocus();
	}

	private int[] picked() {
		int[] indices = panel.pickedIndices();
		if (indices.length == 0) {
			bar.say(Messages.SampleActions_selectSamplesFirst);
		}
		return indices;
	}

	private List<SampleRef> changeable() {
		ArchiveSession session = panel.session();
		if (session == null || session.selection().samples().isEmpty()) {
			bar.say(Messages.SampleActions_selectSamplesFirst);
			return List.of();
		} else if (session.readOnlyReason().isPresent()) {
			bar.say(NLS.bind(Messages.SampleActions_nothingCanBeChanged, session.readOnlyReason().get()));
			return List.of();
		}
		return session.selection().samples();
	}

	private void run(Command command, String nothingToDo) {
		if (panel.session().run(command)) {
			bar.close();
		} else {
			bar.say(nothingToDo);
		}
	}

	private static String samples(int count) {
		return Count.of(count, "sample");
	}

	private void remember(String reason) {
		List<String> before = reasons();
		reasons.clear();
		reasons.add(reason);
		before.stream().limit(MOST_REASONS - 1).forEach(reasons::add);
	}

	/** Reasons given lately, the newest first. */
	List<String> reasons() {
		return List.copyOf(reasons);
	}

	/** Reasons given in earlier days, the newest first. */
	void setReasons(List<String> earlier) {
		reasons.clear();
		reasons.addAll(earlier);
	}
}
