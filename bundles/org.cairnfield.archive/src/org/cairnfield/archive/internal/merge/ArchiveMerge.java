package org.cairnfield.archive.internal.merge;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Device;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.UnitText;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Sha256;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Brings together what two sides have made of one archive, record by record. What one side has not touched is as the other
 * has it; no verdict is ever dropped, and nothing that one side has removed and the other changed. What both have set is
 * as it was before, and is kept as a conflict of the merged archive. A pure function of three models, none of which is touched.
 */
public final class ArchiveMerge {

	/**
	 * @param archive what comes of it, with the conflicts that are open
	 * @param notes   what people should know of and need not decide
	 * @param changed ids of verdicts that say something different on the two sides, which nobody but a forger or a defect can
	 *                bring about; the merge is not to be used then
	 * @param gates   what the file of gates is to say; null where it was not merged gate by gate
	 */
	public record Merged(Archive archive, List<String> notes, List<String> changed, String gates) {
	}

	private final ThreeWay values;
	private final List<String> changed = new ArrayList<>();
	private final Archive base;
	private final Archive mine;
	private final Archive theirs;
	private final GateTexts gates;

	private ArchiveMerge(Archive base, Archive mine, Authors mineBy, Archive theirs, Authors theirsBy,
			GateTexts gates) {
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
		this.gates = gates;
		values = new ThreeWay(base, mine, mineBy, theirs, theirsBy);
	}

	/**
	 * @param base  what both sides began with
	 * @param gates which are in a file of their own
	 * @throws java.io.UncheckedIOException where the authors cannot be found out
	 */
	public static Merged of(Archive base, Archive mine, Authors mineBy, Archive theirs, Authors theirsBy,
			GateTexts gates) {
		return new ArchiveMerge(base, mine, mineBy, theirs, theirsBy, gates).merge();
	}

	private Merged merge() {
		Archive merged = EcoreUtil.copy(mine);
		merge(base, merged, theirs, Place.ARCHIVE);
		String mergedGates = gates.merge(values);
		merged.getConflicts().clear();
		merged.getConflicts().addAll(values.open());
		Map<String, Device> devices = new HashMap<>();
		merged.getDevices().forEach(device -> devices.put(device.getId(), device));
		for (Site site : merged.getSites()) {
			for (Survey survey : site.getSurveys()) { // some come from another model
				survey.setDevice(survey.getDevice() == null ? null : devices.get(survey.getDevice().getId()));
			}
		}
		return new Merged(merged, values.notes(), changed, mergedGates);
	}

	/** @param merged a copy of mine, which becomes the outcome; @param before null where both sides have added it */
	private void merge(EObject before, EObject merged, EObject other, String place) {
		for (EAttribute attribute : merged.eClass().getEAllAttributes()) {
			if (attribute.isChangeable() && !attribute.isDerived() && !attribute.isID()) {
				merged.eSet(attribute, values.value(new Unit(place, attribute.getName()),
						value -> UnitText.of(attribute, value), before != null,
						before == null ? null : before.eGet(attribute), merged.eGet(attribute), other.eGet(attribute)));
			}
		}
		for (EReference reference : merged.eClass().getEAllContainments()) {
			if (reference.isMany() && reference != ModelPackage.Literals.ARCHIVE__CONFLICTS) {
				mergeList(before, merged, other, reference, place);
			}
		}
		if (merged instanceof Survey survey) {
			mergeSurvey((Survey) before, survey, (Survey) other, place);
		}
	}

	private void mergeSurvey(Survey before, Survey merged, Survey other, String place) {
		String id = values.value(new Unit(place, Unit.DEVICE), Function.identity(), before != null, deviceOf(before),
				deviceOf(merged), deviceOf(other));
		for (Survey each : before == null ? List.of(merged, other) : List.of(merged, other, before)) {
			if (id == null || id.equals(deviceOf(each))) {
				merged.setDevice(id == null ? null : each.getDevice());
				break;
			}
		}
		SampleTable table = TableMerge.of(before == null ? null : before.table(), merged.table(), other.table(), place,
				values);
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

	private void mergeList(EObject before, EObject merged, EObject other, EReference reference, String container) {
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
			String place = Place.of(container, one == null ? two : one);
			if (one != null && two != null) {
				mergeBoth(list, old, one, two, place);
			} else if (old != null && isGone(old, one == null ? two : one, one != null, place)) {
				list.remove(one); // null where it is gone here already
			} else {
				values.keepOpenIn(place, one != null);
				if (one == null) {
					list.add(EcoreUtil.copy(two));
				}
			}
		}
	}

	private void mergeBoth(EList<EObject> list, EObject old, EObject one, EObject two, String place) {
		if (one instanceof Ledger ledger) {
			List<Verdict> before = old == null ? List.of() : ((Ledger) old).getVerdicts();
			List<Verdict> lines = LedgerMerge.of(before, ledger.getVerdicts(), ((Ledger) two).getVerdicts(), changed);
			ledger.getVerdicts().clear();
			ledger.getVerdicts().addAll(lines);
			return;
		}
		values.presence(place, () -> old != null && !says(old).equals(says(one)),
				() -> old != null && !says(old).equals(says(two)));
		if (one instanceof Split split) {
			list.set(list.indexOf(one), merge((Split) old, split, (Split) two, place));
		} else {
			merge(old, one, two, place);
		}
	}

	/**
	 * Labels, proposals and figures of a split are of one run and stay together. They were computed and can be again, so where
	 * both sides have done so nobody has to decide. Whether the split is released is apart.
	 */
	private Split merge(Split old, Split one, Split two, String place) {
		boolean released = values.value(new Unit(place, ModelPackage.Literals.SPLIT__IN_RELEASE.getName()),
				String::valueOf, old != null,
				old != null && old.isInRelease(), one.isInRelease(), two.isInRelease());
		Run mineRun = Run.of(one);
		Run theirRun = Run.of(two);
		Run chosen = mineRun;
		if (!mineRun.equals(theirRun) && (old == null || !theirRun.equals(Run.of(old)))) {
			chosen = theirRun;
			if (old == null || !mineRun.equals(Run.of(old))) {
				chosen = mineRun.digest().compareTo(theirRun.digest()) <= 0 ? mineRun : theirRun;
				values.note(Words.bind(Messages.ArchiveMerge_splitWasComputedOnBoth, one.getId()));
			}
		}
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

		/** The same for the same content on any computer. */
		String digest() {
			return Sha256.of(content.toString().getBytes(StandardCharsets.UTF_8));
		}
	}

	/** Whether what one side has removed is to go: the other has not touched it, and nobody's verdicts rest on it. */
	private boolean isGone(EObject old, EObject left, boolean leftHere, String place) {
		if (left instanceof Ledger || left instanceof Comment
				|| left instanceof Split split && hasNewVerdicts(split.getId())) {
			return false;
		}
		if (says(old).equals(says(left)) && !values.hasNewClaimsIn(place, leftHere)) {
			return true;
		}
		values.clashOverPresence(place, !leftHere);
		return false;
	}

	/** All that an object says with what it contains, wherever it is itself. */
	public static List<Object> says(EObject object) {
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
		return archive.getLedgers().stream().filter(each -> ledger.equals(each.getId()))
				.mapToInt(each -> each.getVerdicts().size()).sum();
	}

	@SuppressWarnings("unchecked")
	private static EList<EObject> list(EObject object, EReference reference) {
		return (EList<EObject>) object.eGet(reference);
	}

	private static Map<String, EObject> index(EObject object, EReference reference) {
		Map<String, EObject> found = new LinkedHashMap<>();
		for (EObject each : list(object, reference)) {
			String key = Place.key(each);
			for (int n = 2; found.putIfAbsent(key, each) != null; n++) {
				key = Place.key(each) + " (" + n + ')';
			}
		}
		return found;
	}
}
