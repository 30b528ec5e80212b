package org.cairnfield.model.edit;

import java.util.Collection;
import java.util.Objects;

import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;

/** Sets samples aside for a reason, or takes them back into the map. */
public final class SetSampleStateCommand extends SamplesCommand {

	private final String reason;

	private SetSampleStateCommand(Collection<SampleRef> samples, String reason) {
		super(samples);
		this.reason = reason;
	}

	/**
	 * @param reason one line, not blank
	 * @throws IllegalArgumentException where it is blank
	 */
	public static SetSampleStateCommand setAside(Collection<SampleRef> samples, String reason) {
		if (reason == null || reason.isBlank()) {
			throw new IllegalArgumentException("a sample is set aside for a reason");
		}
		return new SetSampleStateCommand(samples, reason.strip());
	}

	/** Back into the map. */
	public static SetSampleStateCommand keep(Collection<SampleRef> samples) {
		return new SetSampleStateCommand(samples, null);
	}

	@Override
	protected boolean changes(SampleTable table, int row) {
		return !Objects.equals(table.reason(row), reason);
	}

	@Override
	protected void change(SampleEdit edit, SampleTable table, int row) {
		edit.reason(row, reason);
	}

	@Override
	protected String label(int samples) {
		return (reason == null ? Messages.SetSampleStateCommand_keep : Messages.SetSampleStateCommand_setAside)
				+ Count.of(samples, "sample");
	}
}
