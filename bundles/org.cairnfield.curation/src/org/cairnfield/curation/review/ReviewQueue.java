package org.cairnfield.curation.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.team.Assigned;
import org.cairnfield.curation.team.WorkShares;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;

/** The noise samples of a split in the order and selection in which a reviewer walks through them. */
public final class ReviewQueue {

	private QueueSettings settings = QueueSettings.USUAL;
	private List<QueueRow> rows = List.of();
	private QueueList list = QueueList.EMPTY;
	private WorkShares shares = WorkShares.NONE;

	ReviewQueue() {
	}

	/** Nothing to walk through; how it is listed stays. */
	void clear() {
		rows = List.of();
		list = QueueList.EMPTY;
		shares = WorkShares.NONE;
	}

	/** Takes all noise samples on which there is evidence. */
	void fill(Archive archive, Split split, List<Evidence> evidence, Bands bands) {
		shares = WorkShares.of(archive, split, bands);
		ArchiveIndex index = ArchiveIndex.of(archive);
		Map<Site, String> sites = new HashMap<>();
		List<QueueRow> all = new ArrayList<>();
		for (Evidence each : evidence) {
			Optional<SampleRef> ref = index.sample(each.sample());
			String site = ref.map(at -> at.survey().getSite()).map(of -> sites.computeIfAbsent(of, ModelText::name))
					.orElse("");
			all.add(new QueueRow(each, bands.of(each.strengthR()).map(Band::name).orElse(""), site,
					ref.map(at -> at.survey().table().floorLevel(at.row())).orElse(null),
					shares.reviewersOf(each.sample())));
		}
		rows = all;
	}

	/** Whether everybody is assigned what they were when it was filled. */
	boolean isAssignedAsIn(Archive archive, Split split) {
		return shares.assignments().equals(Assigned.of(archive, split.getId()));
	}

	/** Who is to review which proposals of the split; nobody any while there is no evidence. */
	public WorkShares shares() {
		return shares;
	}

	/** How many proposals are left, of all or, where these are listed, of those that are assigned to the person. */
	String countText(String person, Predicate<QueueRow> isLeft) {
		List<QueueRow> counted = rows.stream().filter(
				row -> row.evidence().made() && (settings.shown() != QueueShown.MINE || row.isAssignedTo(person)))
				.toList();
		return counted.isEmpty() ? ""
				: String.format(Locale.ROOT, Messages.ReviewQueue_ofLeft, counted.stream().filter(isLeft).count(),
						counted.size());
	}

	/** Lists it again, with what was decided since in its place. */
	void arrange(QueueSettings now, Predicate<QueueRow> wanted) {
		settings = now;
		Comparator<Evidence> order = settings.order().comparator();
		rows = rows.stream().sorted((a, b) -> order.compare(a.evidence(), b.evidence())).toList();
		list = QueueList.of(rows, wanted, settings.grouping(), settings.closed());
	}

	/** How it is listed. */
	public QueueSettings settings() {
		return settings;
	}

	/** All, in order, listed or not. */
	public List<QueueRow> rows() {
		return rows;
	}

	/** As it is listed. */
	public QueueList list() {
		return list;
	}
}
