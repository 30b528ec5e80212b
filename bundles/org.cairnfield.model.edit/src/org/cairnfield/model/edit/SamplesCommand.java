package org.cairnfield.model.edit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.command.AbstractCommand;

/**
 * A change to samples of any surveys. Each survey touched gets one new table, hence one notification; undo puts the old
 * table back. It can be executed where at least one sample would change, and changes all or nothing.
 */
public abstract class SamplesCommand extends AbstractCommand {

	private final Map<Survey, Set<Integer>> rows = new LinkedHashMap<>();
	private final Map<Survey, SampleTable> before = new LinkedHashMap<>();
	private final Map<Survey, SampleTable> after = new LinkedHashMap<>();
	private int changing;

	/** @param samples of one archive; one that comes twice counts once */
	protected SamplesCommand(Collection<SampleRef> samples) {
		for (SampleRef sample : samples) {
			rows.computeIfAbsent(sample.survey(), survey -> new TreeSet<>()).add(sample.row());
		}
	}

	/** Whether the sample is not yet as this command would make it. */
	protected abstract boolean changes(SampleTable table, int row);

	/** Makes the change to one sample. */
	protected abstract void change(SampleEdit edit, SampleTable table, int row);

	/** The label for so many samples. */
	protected abstract String label(int samples);

	@Override
	protected boolean prepare() {
		changing = 0;
		rows.forEach((survey, of) -> of.forEach(row -> changing += changes(survey.table(), row) ? 1 : 0));
		return changing > 0;
	}

	@Override
	public void execute() {
		changing = 0;
		rows.forEach((survey, of) -> {
			SampleTable table = survey.table();
			SampleEdit edit = table.edit();
			for (int row : of) {
				if (changes(table, row)) {
					change(edit, table, row);
					changing++;
				}
			}
			SampleTable changed = edit.done();
			if (changed != table) {
				before.put(survey, table);
				after.put(survey, changed);
			}
		});
		redo();
	}

	@Override
	public void undo() {
		before.forEach((survey, table) -> survey.getSamples().setTable(table));
	}

	@Override
	public void redo() {
		after.forEach((survey, table) -> survey.getSamples().setTable(table));
	}

	/** The surveys whose samples change. */
	@Override
	public Collection<?> getAffectedObjects() {
		return new LinkedHashSet<>(rows.keySet());
	}

	/** How many samples change, known once it can be executed. */
	public int changing() {
		return changing;
	}

	/** Says what changes, with the number of samples that do. */
	@Override
	public String getLabel() {
		return label(isPrepared ? changing : rows.values().stream().mapToInt(Set::size).sum());
	}
}
