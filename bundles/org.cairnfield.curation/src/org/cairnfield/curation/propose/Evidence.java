package org.cairnfield.curation.propose;

import java.util.List;
import java.util.Set;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;

/**
 * What is known of one noise sample. Where nothing is known numbers are NaN, clusters −1, samples null.
 *
 * @param sample            the noise sample
 * @param index             in the map of the split; −1 where it is not in the map any more
 * @param made              whether a proposal is made: its r reaches the threshold
 * @param cluster           that holds the most correlated labelled sample
 * @param strengthR         correlation with that sample, −1 … 1: where the sample fits, not whether it is good
 * @param margin            by how much it beats the next best cluster, 0 … 2
 * @param carrier           that sample
 * @param nearest           the labelled sample nearest in signal space
 * @param nearestDistance   how far, in the units of the split's distance
 * @param nearestCluster    its cluster
 * @param floorMetres       to the cluster's nearest sample on the sample's floor
 * @param floorMember       that sample
 * @param carrierOnFloor    whether the carrier is on the sample's floor
 * @param clusterFloorShare share of the cluster's samples that are on the sample's floor, 0 … 1
 * @param floorVotes        how many of the nearest in signal space are on the sample's floor
 * @param floorVoters       of how many
 * @param placeErrorMetres  median distance from where the sample is said to be to those nearest in signal space
 * @param placeScore        rank of doubt in its place among all samples, 0 … 1
 * @param overlap           of the access points heard with the samples around it, 0 … 1
 * @param levelDeficitDb    how much weaker it hears than they do
 * @param levelScatterDb    how unevenly
 * @param readingsScore     rank of doubt in its readings, 0 … 1
 * @param outlook           what each home of it would do
 * @param warnings          in the order of weight
 */
public record Evidence(SampleKey sample, int index, boolean made, int cluster, double strengthR, double margin,
		SampleKey carrier, SampleKey nearest, double nearestDistance, int nearestCluster, double floorMetres,
		SampleKey floorMember, boolean carrierOnFloor, double clusterFloorShare, int floorVotes, int floorVoters,
		double placeErrorMetres, double placeScore, double overlap, double levelDeficitDb, double levelScatterDb,
		double readingsScore, Outlook outlook, Set<Warning> warnings) {

	/** Where it had best go. */
	public Advice advice() {
		return Advice.of(outlook, made, agrees());
	}

	/** The warnings that mark it, in the order of weight. */
	public List<Warning> marks() {
		return warnings.stream().filter(Warning::isMark).toList();
	}

	/**
	 * Of a sample that is not in the map any more: what was proposed, and nothing else.
	 *
	 * @param proposal null for none
	 */
	public static Evidence gone(SampleKey sample, Proposal proposal, boolean made) {
		double unknown = Double.NaN;
		return new Evidence(sample, -1, made, proposal == null ? -1 : proposal.cluster(),
				proposal == null ? unknown : proposal.strengthR(),
				proposal == null ? unknown : proposal.margin(), proposal == null ? null : proposal.carrier(), null,
				unknown,
				proposal == null ? -1 : proposal.nearestCluster(), unknown, null, false, unknown, 0, 0, unknown,
				unknown, unknown, unknown, unknown,
				unknown, Outlook.UNKNOWN, Set.of());
	}

	/** Of approving it alone. */
	public Effect effect() {
		return outlook.proposed();
	}

	/** Whether the most correlated and the nearest labelled sample are of one cluster. */
	public boolean agrees() {
		return cluster >= 0 && cluster == nearestCluster;
	}
}
