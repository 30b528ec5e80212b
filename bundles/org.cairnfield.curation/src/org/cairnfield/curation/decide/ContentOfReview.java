package org.cairnfield.curation.decide;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;

/**
 * Keys of what verdicts rest on, as the archive is now. The content of a sample is its place, time, readings and
 * whether it is kept. The evidence is what a reviewer is shown of its proposal: the carrier and what that holds, r and
 * margin to two digits, whether the nearest labelled sample agrees, and which samples the target cluster has. Numbers
 * of clusters play no part, so that the same evidence has the same key in another split.
 */
final class ContentOfReview {

	private final Split split;
	private final ArchiveIndex index;
	private final Map<String, Long> accessPoints = new HashMap<>();
	private final SplitMembers members;

	ContentOfReview(Archive archive, Split split) {
		this(archive, split, SplitMembers.of(split));
	}

	ContentOfReview(Archive archive, Split split, SplitMembers members) {
		this.split = split;
		this.members = members;
		index = ArchiveIndex.of(archive);
	}

	/** Whether the split has a cluster of that number. */
	boolean hasCluster(int number) {
		return members.has(number);
	}

	/** Whether the archive has the sample, in the map. */
	boolean isKept(SampleKey key) {
		return index.sample(key).filter(ref -> ref.survey().table().isKept(ref.row())).isPresent();
	}

	/** Empty where the archive does not have the sample. */
	Optional<String> sample(SampleKey key) {
		return index.sample(key).map(ref -> content(ref, ref.survey().table().isKept(ref.row())));
	}

	/** What the key would be with the sample set aside. */
	Optional<String> sampleSetAside(SampleKey key) {
		return index.sample(key).map(ref -> content(ref, false));
	}

	private String content(SampleRef ref, boolean kept) {
		SampleTable table = ref.survey().table();
		int row = ref.row();
		long key = kept ? 1 : 0;
		key = ContentKeys.join(key, table.floorLevel(row));
		key = ContentKeys.join(key, Double.doubleToLongBits(table.xMetres(row)));
		key = ContentKeys.join(key, Double.doubleToLongBits(table.yMetres(row)));
		key = ContentKeys.join(key, table.timeMillis(row));
		for (int k = 0; k < table.heard(row); k++) {
			String accessPoint = table.accessPoints().get(table.accessPoint(row, k));
			key = ContentKeys.join(key, accessPoints.computeIfAbsent(accessPoint, ContentKeys::of));
			key = ContentKeys.join(key, table.rssiDbm(row, k));
		}
		return ContentKeys.text(key);
	}

	/** The proposal for a sample, also one below the threshold. */
	Optional<Proposal> proposal(SampleKey key) {
		return split.getProposals() == null ? Optional.empty() : split.getProposals().of(key);
	}

	/** Empty where nothing is proposed. */
	Optional<String> evidence(SampleKey key) {
		return proposal(key).map(p -> {
			long hash = ContentKeys.of(p.carrier().toString());
			hash = ContentKeys.join(hash, sample(p.carrier()).map(ContentKeys::of).orElse(0L));
			hash = ContentKeys.join(hash, Math.round(100 * p.strengthR()));
			hash = ContentKeys.join(hash, Double.isNaN(p.margin()) ? -1 : Math.round(100 * p.margin()));
			hash = ContentKeys.join(hash, p.nearestAgrees() ? 1 : 0);
			return ContentKeys.text(ContentKeys.join(hash, members.key(p.cluster())));
		});
	}

	/** Whether what a verdict rests on is still the same; what it does not tell counts as the same. */
	boolean holds(LedgerEntry entry) {
		return isSame(entry.sampleContent(), sample(entry.sample()))
				&& isSame(entry.evidence(), evidence(entry.sample()));
	}

	private static boolean isSame(String then, Optional<String> now) {
		return then == null || now.isPresent() && then.equals(now.get());
	}
}
