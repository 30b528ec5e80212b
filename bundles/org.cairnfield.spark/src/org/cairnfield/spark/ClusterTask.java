package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * The clusters that one task finds among its own samples. Beside these it has whatever decides their roles: of a component
 * that is cut the samples up to 2ε beyond its range, and the quietest samples out of earshot. So roles of its own samples are
 * right, of others up to ε beyond the range too; where one lies farther it may be missed as core, never taken for one. Two
 * cores that the task has in one cluster are therefore in one cluster of the whole.
 */
final class ClusterTask {

	/**
	 * A sample in a task.
	 *
	 * @param component of the whole map
	 * @param own       whether the task answers for it
	 */
	record Member(Fingerprint sample, int component, boolean own) implements Serializable {
	}

	/**
	 * What is asked of all tasks.
	 *
	 * @param lowestRssiDbm     of the whole map
	 * @param quietestMagnitude of the whole map
	 * @param alone             whether there is only one component, so that nothing is out of earshot
	 */
	record Question(double epsilon, int minPts, int lowestRssiDbm, double quietestMagnitude, boolean alone)
			implements Serializable {

		/** Whether a sample may have neighbours out of earshot. */
		boolean reachesBeyond(double magnitude) {
			return !alone && magnitude + quietestMagnitude <= epsilon;
		}
	}

	/**
	 * Own samples with the task's own cluster numbers, {@link Clustering#NOISE} for none, and roles by ordinal.
	 */
	record Labelled(int task, int[] ids, int[] clusters, byte[] roles) implements Serializable {
	}

	/** A core sample that other tasks have too, or that may have neighbours out of earshot. */
	record Core(int id, int component, double magnitude, int cluster) implements Serializable {
	}

	/**
	 * A sample that is not core and may have neighbours out of earshot.
	 *
	 * @param distance    to the nearest core within earshot and ε, +∞ where there is none
	 * @param nearest     that core, of equals the first in the map
	 * @param nearestCluster its cluster
	 */
	record Other(int id, int component, double magnitude, double distance, int nearest, int nearestCluster)
			implements Serializable {
	}

	/**
	 * What the driver joins.
	 *
	 * @param firstCores by cluster of the task the first of its own core samples, {@link Integer#MAX_VALUE} where it has none
	 * @param shared     core samples near the ends of a range
	 */
	record Summary(int task, int[] firstCores, List<Core> shared, List<Core> quietCores, List<Other> quietOthers)
			implements Serializable {
	}

	/** Both. */
	record Answer(Labelled labelled, Summary summary) implements Serializable {
	}

	private final int task;
	private final Question question;
	private final double from;
	private final double to;
	private final List<Member> members;
	private final Signals signals;
	private final Clustering clustering;

	private ClusterTask(int task, Question question, double from, double to, List<Member> members) {
		this.task = task;
		this.question = question;
		this.from = from;
		this.to = to;
		this.members = new ArrayList<>(members);
		this.members.sort(Comparator.comparingInt(m -> m.sample().id()));
		signals = Signals.ofPart(
				Fingerprint.map(this.members.stream().map(Member::sample).toList(), s -> "", Integer::toString),
				Representation.positive(), Distance.CITY_BLOCK, question.lowestRssiDbm());
		clustering = Dbscan.cluster(signals, question.epsilon(), question.minPts(), Workers.inline());
	}

	/**
	 * @param from    where the task's range of magnitude begins, −∞ unless a component is cut
	 * @param to      where it ends, exclusive, +∞ likewise
	 * @param members own samples and others, in any order
	 */
	static Answer answer(int task, Question question, double from, double to, List<Member> members) {
		ClusterTask run = new ClusterTask(task, question, from, to, members);
		return new Answer(run.labelled(), run.summary());
	}

	private Labelled labelled() {
		int own = (int) members.stream().filter(Member::own).count();
		Labelled labelled = new Labelled(task, new int[own], new int[own], new byte[own]);
		for (int s = 0, i = 0; s < members.size(); s++) {
			if (members.get(s).own()) {
				labelled.ids[i] = members.get(s).sample().id();
				labelled.clusters[i] = clustering.label(s);
				labelled.roles[i++] = (byte) clustering.role(s).ordinal();
			}
		}
		return labelled;
	}

	private Summary summary() {
		int[] firstCores = new int[clustering.clusters()];
		Arrays.fill(firstCores, Integer.MAX_VALUE);
		List<Core> shared = new ArrayList<>();
		List<Core> quietCores = new ArrayList<>();
		List<Other> quietOthers = new ArrayList<>();
		double[] row = new double[signals.components().largest()];
		DistanceKernel kernel = signals.kernel();
		for (int s = 0; s < members.size(); s++) {
			Member member = members.get(s);
			double magnitude = signals.rows().magnitude(s);
			if (isCore(s)) {
				Core core = new Core(member.sample().id(), member.component(), magnitude, clustering.label(s));
				if (member.own()) {
					firstCores[core.cluster] = Math.min(firstCores[core.cluster], core.id);
				}
				if (isShared(member, magnitude)) {
					shared.add(core);
				}
				if (member.own() && question.reachesBeyond(magnitude)) {
					quietCores.add(core);
				}
			} else if (member.own() && question.reachesBeyond(magnitude)) {
				quietOthers.add(other(s, magnitude, kernel, row));
			}
		}
		return new Summary(task, firstCores, shared, quietCores, quietOthers);
	}

	private boolean isCore(int s) {
		return clustering.role(s) == Role.CORE;
	}

	/** Of a component that is cut: within ε of an end of the range, on either side. */
	private boolean isShared(Member member, double magnitude) {
		double reach = question.epsilon();
		boolean cut = from > Double.NEGATIVE_INFINITY || to < Double.POSITIVE_INFINITY;
		return cut && magnitude >= from - reach && magnitude <= to + reach
				&& (!member.own() || magnitude <= from + reach || magnitude >= to - reach);
	}

	private Other other(int s, double magnitude, DistanceKernel kernel, double[] row) {
		kernel.row(s, row);
		Components near = signals.components();
		int component = members.get(s).component();
		int nearest = -1;
		double distance = Double.POSITIVE_INFINITY;
		for (int o = 0; o < members.size(); o++) {
			if (isCore(o) && members.get(o).component() == component) {
				double d = near.componentOf(o) == near.componentOf(s) ? row[near.placeOf(o)] : signals.apart(s, o);
				if (d <= question.epsilon() && d < distance) {
					distance = d;
					nearest = o;
				}
			}
		}
		return new Other(members.get(s).sample().id(), component, magnitude, distance,
				nearest < 0 ? -1 : members.get(nearest).sample().id(),
				nearest < 0 ? Clustering.NOISE : clustering.label(nearest));
	}
}
