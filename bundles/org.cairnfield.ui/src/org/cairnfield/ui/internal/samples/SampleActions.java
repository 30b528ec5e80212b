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
	private static final List<String> USUAL_REASONS = List.of("position doubtful", "measured twice", "device at fault",
			"not part of the building");

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
			bar.ask("Why set " + samples(refs.size()) + " aside?", "Set aside", proposals,
					text -> text.isEmpty() ? "A reason is missing. Write why, so that others can tell later." : null, reason -> {
						remember(reason);
						run(SetSampleStateCommand.setAside(refs, reason), "They are all set aside for that reason already.");
					});
		}
	}

	/** Brings the samples back into the map. */
	public void bringBack() {
		List<SampleRef> refs = changeable();
		if (!refs.isEmpty()) {
			run(SetSampleStateCommand.keep(refs), "None of " + samples(refs.size()) + " is set aside.");
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
			bar.say("The sites of " + samples(refs.size()) + " have no floor in common. Select samples of one site.");
			return;
		}
		SampleRef first = refs.get(0);
		int now = Math.max(0, levels.indexOf(first.survey().table().floorLevel(first.row())));
		bar.choose("Floor of " + samples(refs.size()) + ':', "Set floor", List.copyOf(floors.values()), now,
				chosen -> run(new SetFloorCommand(refs, levels.get(chosen)), "They are all on that floor already."));
	}

	/** Lets the person edit floor, x and y in the row. */
	public void editPosition() {
		panel.edit(SampleColumn.X);
	}

	/** Exchanges x and y. */
	public void swapAxes() {
		List<SampleRef> refs = changeable();
		if (!refs.isEmpty()) {
			run(new SwapAxesCommand(refs), "Their x and y are the same.");
		}
	}

	/** Writes the rows selected as a file, after a word of caution. */
	public void export() {
		int[] indices = picked();
		if (indices.length > 0 && Damaged.isSound(panel.getShell(), Sessions.workbench().current().orElseThrow(), "Export")) {
			bar.confirm("Export " + samples(indices.length) + " as CSV. Addresses of access points and names of devices may be "
					+ "personal data: mind who gets the file.", "Choose the file …", () -> export(indices));
		}
	}

	private void export(int[] indices) {
		FileDialog dialog = new FileDialog(panel.getShell(), SWT.SAVE);
		dialog.setText("Export samples");
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
		Work.start("Exporting samples", workers -> {
			SampleExport.write(file, content, indices, workers);
			return file;
		}, done -> bar.say(samples(indices.length) + " written to " + done + "."),
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
			Work.start("Copying samples", workers -> SampleExport.text(content, columns, indices, workers), this::toClipboard);
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
			bar.say("Select samples first.");
		}
		return indices;
	}

	private List<SampleRef> changeable() {
		ArchiveSession session = panel.session();
		if (session == null || session.selection().samples().isEmpty()) {
			bar.say("Select samples first.");
			return List.of();
		} else if (session.readOnlyReason().isPresent()) {
			bar.say("Nothing can be changed: " + session.readOnlyReason().get() + ".");
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
