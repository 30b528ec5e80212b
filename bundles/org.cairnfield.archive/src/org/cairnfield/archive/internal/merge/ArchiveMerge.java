package org.cairnfield.archive.internal.merge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Brings together what two sides have made of one archive, record by record. What one side has not touched is as the other
 * has it; no verdict is ever dropped, and nothing that one side has removed and the other changed. A pure function of three
 * models, none of which is touched.
 */
public final class ArchiveMerge {

	/**
	 * @param archive   what both sides agree on, and the base where they do not
	 * @param conflicts what somebody has to decide
	 */
	public record Merged(Archive archive, List<MergeConflict> conflicts) {
	}

	private final ThreeWay values = new ThreeWay();
	private final Archive base;
	private final Archive mine;
	private final Archive theirs;

	private ArchiveMerge(Archive base, Archive mine, Archive theirs) {
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
	}

	/** @param base what both sides began with */
	public static Merged of(Archive base, Archive mine, Archive theirs) {
		return new ArchiveMerge(base, mine, theirs).merge();
	}

	private Merged merge() {
		Archive merged = EcoreUtil.copy(mine);
		merge(base, merged, theirs, "archive");
		Map<String, Device> devices = new HashMap<>();
		merged.getDevices().forEach(device -> devices.put(device.getId(), device));
		for (Site site : merged.getSites()) {
			for (Survey survey : site.getSurveys()) { // some come from another model
				survey.setDevice(survey.getDevice() == null ? null : devices.get(survey.getDevice().getId()));
			}
		}
		return new Merged(merged, values.conflicts());
	}

	/** @param merged a copy of mine, which becomes the outcome; @param before null where both sides have added it */
	private void merge(EObject before, EObject merged, EObject other, String where) {
		for (EAttribute attribute : merged.eClass().getEAllAttributes()) {
			if (attribute.isChangeable() && !attribute.isDerived() && !attribute.isID()) {
				merged.eSet(attribute, values.value(where, attribute.getName(), before != null, before == null ? null : before.eGet(attribute),
						merged.eGet(attribute), other.eGet(attribute)));
			}
		}
		for (EReference reference : merged.eClass().getEAllContainments()) {
			if (reference.isMany()) {
				mergeList(before, merged, other, reference, where);
			}
		}
		if (merged instanceof Survey survey) {
			mergeSurvey((Survey) before, survey, (Survey) other, where);
		}
	}

	private void mergeSurvey(Survey before, Survey merged, Survey other, String where) {
		String id = values.value(where, "device", before != null, deviceOf(before), deviceOf(merged), deviceOf(other));
		for (Survey each : before == null ? List.of(merged, other) : List.of(merged, other, before)) {
			if (id == null || id.equals(deviceOf(each))) {
				merged.setDevice(id == null ? null : each.getDevice());
				break;
			}
		}
		SampleTable table = TableMerge.of(before == null ? null : before.table(), merged.table(), other.table(), where, values);
		if (merged.getSamples() == null && other.getSamples() != null) {
			merged.setSamples((Samples) EcoreUtil.create(ModelPackage.Literals.SAMPLES));
		}
		if (merged.getSamples() != null) {
			merged.getSamples().setTable(table);
		}
	}

	private static String deviceOf(Survey survey) {
		return survey == null || survey.getDevice() == null ? null : survey.getDevice().getId();
	}

	private void mergeList(EObject before, EObject merged, EObject other, EReference reference, String where) {
		Map<String, EObject> then = before == null ? Map.of() : index(before, reference);
		Map<String, EObject> own = index(merged, reference);
		Map<String, EObject> others = index(other, reference);
		Set<String> keys = new LinkedHashSet<>(own.keySet());
		keys.addAll(others.keySet());
		EList<EObject> list = list(merged, reference);
		for (String key : keys) {
			EObject old = then.get(key);
			EObject one = own.get(key);
			EObject two = others.get(key);
			String place = (where.equals("archive") ? "" : where + ", ") + word(one == null ? two : one) + ' ' + key;
			if (one != null && two != null) {
				mergeBoth(list, old, one, two, place);
			} else if (one != null && old != null && isGone(old, one, null, place)) {
				list.remove(one);
			} else if (one == null && (old == null || !isGone(old, null, two, place))) {
				list.add(EcoreUtil.copy(two));
			}
		}
	}

	private void mergeBoth(EList<EObject> list, EObject old, EObject one, EObject two, String place) {
		if (one instanceof Ledger ledger) {
			List<Verdict> before = old == null ? List.of() : ((Ledger) old).getVerdicts();
			List<Verdict> lines = LedgerMerge.of(before, ledger.getVerdicts(), ((Ledger) two).getVerdicts(), place, values);
			ledger.getVerdicts().clear();
			ledger.getVerdicts().addAll(lines);
		} else if (one instanceof Split split) {
			list.set(list.indexOf(one), merge((Split) old, split, (Split) two, place));
		} else {
			merge(old, one, two, place);
		}
	}

	/** Labels, proposals and figures of a split are of one run and stay together; whether it is released is apart. */
	private Split merge(Split old, Split one, Split two, String place) {
		Boolean released = values.<Boolean>value(place, "in release", old != null, old == null ? null : old.isInRelease(), one.isInRelease(), two.isInRelease());
		Run chosen = values.value(place, "content", old != null, old == null ? null : Run.of(old), Run.of(one), Run.of(two));
		Split merged = EcoreUtil.copy(chosen.split);
		merged.setInRelease(released);
		return merged;
	}

	/** A split but for its place in releases, compared by what it says. */
	private record Run(Split split, List<Object> content) {

		static Run of(Split split) {
			List<Object> content = new ArrayList<>();
			split.eClass().getEAllAttributes().stream().filter(a -> a != ModelPackage.Literals.SPLIT__IN_RELEASE)
					.forEach(attribute -> content.add(split.eGet(attribute)));
			split.getClusters().forEach(cluster -> content.add(List.of(cluster.getNumber(), cluster.getSize())));
			return new Run(split, content);
		}

		@Override
		public boolean equals(Object other) {
			return other instanceof Run run && content.equals(run.content);
		}

		@Override
		public int hashCode() {
			return content.hashCode();
		}

		@Override
		public String toString() {
			return "epsilon " + split.getEpsilon() + ", minPts " + split.getMinPts() + ", " + split.getClusters().size() + " clusters, " + content.hashCode();
		}
	}

	/** Whether what one side has removed is to go: the other has not touched it, and nobody's verdicts rest on it. */
	private boolean isGone(EObject old, EObject one, EObject two, String place) {
		EObject left = one == null ? two : one;
		if (left instanceof Ledger || left instanceof Split split && hasNewVerdicts(split.getId())) {
			return false;
		}
		if (says(old).equals(says(left))) {
			return true;
		}
		values.conflict(place, "presence", "there", one == null ? null : "changed", two == null ? null : "changed");
		return false;
	}

	/** All that an object says with what it contains, wherever it is itself. */
	private static List<Object> says(EObject object) {
		List<Object> all = new ArrayList<>();
		object.eClass().getEAllAttributes().forEach(attribute -> all.add(object.eGet(attribute)));
		all.add(object instanceof Survey survey ? deviceOf(survey) : null);
		object.eContents().forEach(content -> all.add(says(content)));
		return all;
	}

	private boolean hasNewVerdicts(String split) {
		int before = verdicts(base, split);
		return verdicts(mine, split) > before || verdicts(theirs, split) > before;
	}

	private static int verdicts(Archive archive, String ledger) {
		return archive.getLedgers().stream().filter(each -> ledger.equals(each.getId())).mapToInt(each -> each.getVerdicts().size()).sum();
	}

	@SuppressWarnings("unchecked")
	private static EList<EObject> list(EObject object, EReference reference) {
		return (EList<EObject>) object.eGet(reference);
	}

	private static Map<String, EObject> index(EObject object, EReference reference) {
		Map<String, EObject> found = new LinkedHashMap<>();
		for (EObject each : list(object, reference)) {
			String key = key(each);
			for (int n = 2; found.putIfAbsent(key, each) != null; n++) {
				key = key(each) + " (" + n + ')';
			}
		}
		return found;
	}

	private static String key(EObject object) {
		if (object instanceof Floor floor) {
			return Integer.toString(floor.getLevel());
		}
		if (object instanceof Waiver waiver) { // is what it says, and is withdrawn as a whole
			return String.join(" ", waiver.getRule(), waiver.getContentKey(), waiver.getPerson(), String.valueOf(waiver.getTime()), waiver.getReason());
		}
		return EcoreUtil.getID(object);
	}

	private static String word(EObject object) {
		return object.eClass().getName().toLowerCase(Locale.ROOT);
	}
}
