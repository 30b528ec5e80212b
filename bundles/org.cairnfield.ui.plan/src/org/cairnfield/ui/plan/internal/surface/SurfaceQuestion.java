package org.cairnfield.ui.plan.internal.surface;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.cairnfield.core.surface.Surface;
import org.cairnfield.core.surface.Surfaces;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.colour.ByRssi;
import org.eclipse.osgi.util.NLS;

/**
 * What a surface of a floor is made of, taken on the thread of the archive; answered on any. Samples that are set aside, and those
 * of test surveys, are not in the map and have no say.
 */
public final class SurfaceQuestion {

	private final double[] x;
	private final double[] y;
	/** NaN where it is not heard; null for the density. */
	private final double[] levels;
	private final String name;

	private SurfaceQuestion(double[] x, double[] y, double[] levels, String name) {
		this.x = x;
		this.y = y;
		this.levels = levels;
		this.name = name;
	}

	/** @param accessPoint whose levels are asked for; null for the density of samples */
	public static SurfaceQuestion of(SampleRows samples, AccessPoint accessPoint) {
		boolean[] counts = new boolean[samples.parts().size()];
		int[] wanted = new int[counts.length];
		for (int part = 0; part < counts.length; part++) {
			counts[part] = ArchiveMap.isOfTheMap(samples.parts().get(part).source());
			wanted[part] = accessPoint == null ? -1
					: samples.parts().get(part).table().accessPoints().indexOf(accessPoint.getId());
		}
		int[] used = IntStream.range(0, samples.size())
				.filter(i -> counts[samples.partNumber(i)] && samples.table(i).isKept(samples.row(i))).toArray();
		double[] x = Arrays.stream(used).mapToDouble(i -> samples.table(i).xMetres(samples.row(i))).toArray();
		double[] y = Arrays.stream(used).mapToDouble(i -> samples.table(i).yMetres(samples.row(i))).toArray();
		double[] levels = accessPoint == null ? null : Arrays.stream(used).mapToDouble(i -> {
			int at = wanted[samples.partNumber(i)];
			int reading = at < 0 ? -1 : samples.table(i).reading(samples.row(i), at);
			return reading < 0 ? Double.NaN : samples.table(i).rssiDbm(samples.row(i), reading);
		}).toArray();
		return new SurfaceQuestion(x, y, levels, accessPoint == null ? "" : ModelText.name(accessPoint));
	}

	/** Works it out. */
	public FloorSurface answer(Workers workers) {
		return levels == null ? density(Surfaces.density(x, y, workers)) : level(Surfaces.level(x, y, levels, workers));
	}

	private static FloorSurface density(Surface surface) {
		double highest = Double.isNaN(surface.highest()) ? 1 : surface.highest();
		double step = Math.pow(10, Math.floor(Math.log10(highest)));
		return new FloorSurface(surface, Messages.SurfaceQuestion_samplesOn100M, 0, Math.ceil(highest / step) * step,
				Messages.SurfaceQuestion_orMore, true,
				NLS.bind(Messages.SurfaceQuestion_sampleDensitySamplesOfThe, metres(surface)));
	}

	private FloorSurface level(Surface surface) {
		if (Double.isNaN(surface.highest())) {
			return FloorSurface.none(NLS.bind(Messages.SurfaceQuestion_rssiOfNoPlaceOf, name));
		}
		String words = NLS.bind(Messages.SurfaceQuestion_rssiOfBy1D,
				new Object[] { name, metres(surface),
						Double.isNaN(surface.error()) ? ""
								: NLS.bind(Messages.SurfaceQuestion_meanErrorAtAPlace,
										ShownNumbers.text(surface.error(), 1, "dB")) });
		return new FloorSurface(surface, NLS.bind(Messages.SurfaceQuestion_surfaceRssiOf, name), ByRssi.LOW_DBM,
				ByRssi.HIGH_DBM, "dBm", false, words);
	}

	private static String metres(Surface surface) {
		return ShownNumbers.text(surface.reachMetres(), 1, "m");
	}
}
