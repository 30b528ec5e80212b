package org.cairnfield.model.edit;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleEdit;
import org.cairnfield.model.values.SampleTable;

/** Puts samples on another floor of their sites. It cannot be executed where a site does not have that floor. */
public final class SetFloorCommand extends SamplesCommand {

	private final Set<Site> sites = new LinkedHashSet<>();
	private final int level;

	/** @throws IllegalArgumentException for a level outside −32768 … 32767 */
	public SetFloorCommand(Collection<SampleRef> samples, int level) {
		super(samples);
		if (level < Short.MIN_VALUE || level > Short.MAX_VALUE) {
			throw new IllegalArgumentException("floor level outside −32768 … 32767: " + level);
		}
		this.level = level;
		samples.forEach(sample -> sites.add(sample.survey().getSite()));
	}

	@Override
	protected boolean prepare() {
		return sites.stream().allMatch(this::hasLevel) && super.prepare();
	}

	/** A survey that is in no site yet has no floors to compare with. */
	private boolean hasLevel(Site site) {
		return site == null || site.getFloors().stream().anyMatch(floor -> floor.getLevel() == level);
	}

	@Override
	protected boolean changes(SampleTable table, int row) {
		return table.floorLevel(row) != level;
	}

	@Override
	protected void change(SampleEdit edit, SampleTable table, int row) {
		edit.floorLevel(row, level);
	}

	@Override
	protected String label(int samples) {
		return Words.bind(Messages.SetFloorCommand_putOnFloor, Count.of(samples, "sample"), level);
	}
}
