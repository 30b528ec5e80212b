package org.cairnfield.ui.plan.internal.colour;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Device;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.swt.graphics.RGB;

/** Which device recorded a sample. */
public final class ByDevice implements SampleColouring {

	@Override
	public String name() {
		return Messages.ByDevice_device;
	}

	@Override
	public SampleColours colours(SampleRows samples, ArchiveSession session, RGB background) {
		List<Device> devices = new ArrayList<>(session.archive().getDevices());
		List<String> names = new ArrayList<>(devices.stream().map(ModelText::name).toList());
		names.add(Messages.ByDevice_deviceNotKnown);
		int[] kindOf = samples.parts().stream().map(part -> part.source().getDevice()).mapToInt(devices::indexOf)
				.map(index -> index < 0 ? devices.size() : index).toArray();
		return Categories.of(Messages.ByDevice_device, names, samples.size(), i -> kindOf[samples.partNumber(i)],
				background);
	}
}
