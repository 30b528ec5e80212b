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
			return List.of(leaf("Nothing differs."));
		}
		for (SurveyDiff survey : diff.surveys()) {
			List<DiffNode> samples = new ArrayList<>();
			survey.samples().forEach(sample -> samples.add(
					new DiffNode(sample.id() + "  " + describe(sample), new SampleKey(survey.survey(), sample.id()), sample, List.of())));
			roots.add(new DiffNode("Survey " + survey.survey() + ": " + counts(survey), null, null, samples));
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
		return Stream.concat(sample == null ? Stream.empty() : Stream.of(this), children.stream().flatMap(DiffNode::ofSamples));
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
			return "added at " + place(change.after());
		} else if (change.isRemoved()) {
			return "removed, was at " + place(change.before());
		}
		List<String> parts = new ArrayList<>();
		if (change.isSetAside()) {
			parts.add("set aside: " + change.after().reason());
		}
		if (change.isTakenBack()) {
			parts.add("taken back, was set aside: " + change.before().reason());
		}
		if (change.isReasonChanged()) {
			parts.add("other reason: " + change.after().reason());
		}
		if (change.isMoved()) {
			parts.add("moved from " + place(change.before()) + " to " + place(change.after()));
		}
		if (change.isRetimed()) {
			parts.add("other time");
		}
		if (change.hasOtherReadings()) {
			parts.add(change.before().readings().size() + " readings before, " + change.after().readings().size() + " after, some other");
		}
		return String.join("; ", parts);
	}

	private static String place(Sample sample) {
		return String.format(Locale.ROOT, "%.2f m, %.2f m on floor %d", sample.xMetres(), sample.yMetres(), sample.floorLevel());
	}
}
