package org.cairnfield.ui.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.FieldChange;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.SampleChange;
import org.cairnfield.archive.history.SurveyDiff;
import org.cairnfield.model.values.Sample;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.osgi.util.NLS;

/**
 * A line of the tree of changes, with those beneath it.
 *
 * @param sample that it is about, or null
 * @param change of that sample, or null
 */
record DiffNode(String text, SampleKey sample, SampleChange change, List<DiffNode> children) {

	/** The changes as a tree: first what they come to, then each survey's samples, then all other things by kind. */
	static List<DiffNode> of(ArchiveDiff diff) {
		List<DiffNode> roots = new ArrayList<>();
		if (diff.isEmpty()) {
			return List.of(leaf(Messages.DiffNode_nothingDiffers));
		}
		for (SurveyDiff survey : diff.surveys()) {
			List<DiffNode> samples = new ArrayList<>();
			survey.samples().forEach(sample -> samples.add(
					new DiffNode(sample.id() + "  " + describe(sample), new SampleKey(survey.survey(), sample.id()),
							sample, List.of())));
			roots.add(new DiffNode(NLS.bind(Messages.DiffNode_survey, survey.survey(), counts(survey)), null, null,
					samples));
		}
		Map<String, List<DiffNode>> kinds = new LinkedHashMap<>();
		for (ObjectChange change : diff.objects()) {
			List<DiffNode> fields = change.fields().stream().map(FieldChange::toString).map(DiffNode::leaf).toList();
			kinds.computeIfAbsent(change.what() + ' ' + way(change.way()), k -> new ArrayList<>())
					.add(new DiffNode(change.id(), null, null, fields));
		}
		kinds.forEach((kind, nodes) -> roots.add(new DiffNode(nodes.size() + " × " + kind, null, null, nodes)));
		diff.notes().forEach(note -> roots.add(leaf(note)));
		return roots;
	}

	/** Those of samples, here and beneath. */
	Stream<DiffNode> ofSamples() {
		return Stream.concat(sample == null ? Stream.empty() : Stream.of(this),
				children.stream().flatMap(DiffNode::ofSamples));
	}

	private static DiffNode leaf(String text) {
		return new DiffNode(text, null, null, List.of());
	}

	private static String way(ObjectChange.Way way) {
		return way.name().toLowerCase(Locale.ROOT);
	}

	private static String counts(SurveyDiff survey) {
		return String.join(", ", new ArchiveDiff(List.of(survey), List.of(), List.of()).summary());
	}

	private static String describe(SampleChange change) {
		if (change.isAdded()) {
			return NLS.bind(Messages.DiffNode_addedAt, place(change.after()));
		} else if (change.isRemoved()) {
			return NLS.bind(Messages.DiffNode_removedWasAt, place(change.before()));
		}
		List<String> parts = new ArrayList<>();
		if (change.isSetAside()) {
			parts.add(NLS.bind(Messages.DiffNode_setAside, change.after().reason()));
		}
		if (change.isTakenBack()) {
			parts.add(NLS.bind(Messages.DiffNode_takenBackWasSetAside, change.before().reason()));
		}
		if (change.isReasonChanged()) {
			parts.add(NLS.bind(Messages.DiffNode_otherReason, change.after().reason()));
		}
		if (change.isMoved()) {
			parts.add(NLS.bind(Messages.DiffNode_movedFromTo, place(change.before()), place(change.after())));
		}
		if (change.isRetimed()) {
			parts.add(Messages.DiffNode_otherTime);
		}
		if (change.hasOtherReadings()) {
			parts.add(NLS.bind(Messages.DiffNode_readingsBeforeAfterSomeOther, change.before().readings().size(),
					change.after().readings().size()));
		}
		return String.join("; ", parts);
	}

	private static String place(Sample sample) {
		return String.format(Locale.ROOT, Messages.DiffNode_mMOnFloor, sample.xMetres(), sample.yMetres(),
				sample.floorLevel());
	}
}
