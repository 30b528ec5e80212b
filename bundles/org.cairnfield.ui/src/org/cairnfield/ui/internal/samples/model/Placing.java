package org.cairnfield.ui.internal.samples.model;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetFloorCommand;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.osgi.util.NLS;

/** Where a sample shall be, from what a person wrote. */
public final class Placing {

	private static final double TOLD_APART_METRES = 0.005;
	private static final int MOST_FLOOR = 999;

	private Placing() {
	}

	/** What is wrong with a level, and what to write instead; null where it is sound. */
	public static String floorProblem(String text) {
		try {
			if (Math.abs(Integer.parseInt(text.replace('−', '-'))) <= MOST_FLOOR) {
				return null;
			}
		} catch (NumberFormatException e) {
			// said below
		}
		return NLS.bind(Messages.Placing_isNoFloorWriteIts, text);
	}

	/** Likewise of the level of a sample, which its site must have. */
	public static String floorProblem(SampleRef ref, String text) {
		String problem = floorProblem(text);
		Site site = ref.survey().getSite();
		if (problem != null || site == null
				|| site.getFloors().stream().anyMatch(floor -> floor.getLevel() == floor(text))) {
			return problem;
		}
		return NLS.bind(Messages.Placing_hasNoFloor,
				new Object[] { ModelText.name(site), text, site.getFloors().isEmpty() ? Messages.Placing_itHasNoFloorsAt
						: NLS.bind(Messages.Placing_itsFloorsAre, site.getFloors().stream()
								.map(floor -> Integer.toString(floor.getLevel())).collect(Collectors.joining(", "))) });
	}

	/** Floors that all sites of some samples have, by level, each with its name and, where that does not say it, its level. */
	public static SortedMap<Integer, String> floorsFor(Collection<SampleRef> samples) {
		SortedMap<Integer, String> common = null;
		for (Site site : samples.stream().map(sample -> sample.survey().getSite()).filter(Objects::nonNull).distinct()
				.toList()) {
			SortedMap<Integer, String> own = new TreeMap<>();
			site.getFloors().forEach(floor -> own.put(floor.getLevel(), label(floor)));
			if (common == null) {
				common = own;
			} else {
				common.keySet().retainAll(own.keySet());
				common.replaceAll(
						(level, name) -> name.equals(own.get(level)) ? name : NLS.bind(Messages.Placing_floor, level));
			}
		}
		return common == null ? new TreeMap<>() : common;
	}

	private static String label(Floor floor) {
		String name = ModelText.name(floor);
		return name.contains(Integer.toString(floor.getLevel())) ? name
				: NLS.bind(Messages.Placing_level, name, floor.getLevel());
	}

	/**
	 * The level that a text says.
	 *
	 * @param text without {@link #floorProblem}
	 */
	public static int floor(String text) {
		return Integer.parseInt(text.replace('−', '-'));
	}

	/** What is wrong with a coordinate, and what to write instead; null where it is sound. */
	public static String metresProblem(String name, String text) {
		try {
			if (Double.isFinite(metres(text))) {
				return null;
			}
		} catch (NumberFormatException e) {
			// said below
		}
		return NLS.bind(Messages.Placing_isNoLengthWriteMetres, name, text);
	}

	private static double metres(String text) {
		return Double.parseDouble(text.replace('−', '-').replace(',', '.').replaceFirst("\\s*m$", ""));
	}

	/**
	 * The change to a place; nothing in it where nothing is changed. A coordinate that reads as it was shown stays as it is
	 * to the last digit.
	 *
	 * @param floor   without {@link #floorProblem}
	 * @param xMetres without {@link #metresProblem}; so is yMetres
	 */
	public static Command command(SampleRef ref, String floor, String xMetres, String yMetres) {
		SampleTable table = ref.survey().table();
		double x = changed(table.xMetres(ref.row()), metres(xMetres));
		double y = changed(table.yMetres(ref.row()), metres(yMetres));
		boolean moved = x != table.xMetres(ref.row()) || y != table.yMetres(ref.row());
		boolean lifted = floor(floor) != table.floorLevel(ref.row());
		if (moved && lifted) {
			CompoundCommand both = new CompoundCommand(
					NLS.bind(Messages.Placing_moveSampleAndPutIt, table.id(ref.row()), floor(floor)));
			both.append(new MoveSampleCommand(ref, x, y));
			both.append(new SetFloorCommand(List.of(ref), floor(floor)));
			return both;
		}
		return lifted ? new SetFloorCommand(List.of(ref), floor(floor)) : new MoveSampleCommand(ref, x, y);
	}

	private static double changed(double before, double written) {
		return Math.abs(before - written) <= TOLD_APART_METRES ? before : written;
	}
}
