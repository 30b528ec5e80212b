package org.cairnfield.model.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What people call sites, floors, surveys and devices. Siblings, such as the floors of one site, have different names. An archive
 * in which they have not opens all the same, since it is mended by other names; until then ids tell them apart.
 */
public final class SiblingNames {

	private SiblingNames() {
	}

	/** The name or, where there is none, the id; where a sibling is called so too, the id follows the name. */
	public static String label(EObject object) {
		String label = plain(object);
		while (holder(object, label).isPresent()) {
			label += " (" + id(object) + ')';
		}
		return label;
	}

	/** Whether a person may mean it by a name; several siblings may be meant. */
	public static boolean isCalled(EObject object, String name) {
		return name.equals(plain(object)) || name.equals(label(object));
	}

	/** Why an object cannot have a name; empty where it can. */
	public static Optional<String> refusal(EObject object, String name) {
		return siblings(object).stream().filter(other -> other != object && isCalled(other, name)).findFirst()
				.map(other -> Words.bind(Messages.SiblingNames_hasTheNameAlready, kind(other), id(other), name));
	}

	/** Sites without a name, and names that several siblings have, each with a remedy; none as a rule. */
	public static List<String> problems(Archive archive) {
		List<String> problems = new ArrayList<>();
		for (Site site : archive.getSites()) {
			if (!Report.isSet(site.getName())) {
				problems.add(Words.bind(Messages.SiblingNames_siteHasNoNameAnd, site.getId()));
			}
		}
		addShared(archive.getSites(), "", problems);
		addShared(archive.getDevices(), "", problems);
		for (Site site : archive.getSites()) {
			addShared(site.getFloors(), Words.bind(Messages.SiblingNames_ofSite, site.getId()), problems);
			addShared(site.getSurveys(), Words.bind(Messages.SiblingNames_ofSite, site.getId()), problems);
		}
		return problems;
	}

	private static void addShared(List<? extends EObject> siblings, String where, List<String> problems) {
		Map<String, List<EObject>> byName = new LinkedHashMap<>();
		for (EObject each : siblings) {
			if (Report.isSet(name(each))) {
				byName.computeIfAbsent(name(each), name -> new ArrayList<>()).add(each);
			}
		}
		byName.forEach((name, all) -> {
			if (all.size() > 1) {
				problems.add(
						Words.bind(Messages.SiblingNames_sHaveTheSameName, kind(all.get(0)),
								String.join(", ", all.stream().map(SiblingNames::id).toList()), where, name));
			}
		});
	}

	private static Optional<EObject> holder(EObject object, String name) {
		return siblings(object).stream().filter(other -> other != object && name.equals(plain(other))).findFirst();
	}

	@SuppressWarnings("unchecked")
	private static List<EObject> siblings(EObject object) {
		EObject parent = object.eContainer();
		return parent == null ? List.of() : (List<EObject>) parent.eGet(object.eContainmentFeature());
	}

	private static String plain(EObject object) {
		return Report.isSet(name(object)) ? name(object)
				: object instanceof Floor ? Words.bind(Messages.SiblingNames_floor, id(object)) : id(object);
	}

	private static String name(EObject object) {
		return (String) object.eGet(object.eClass().getEStructuralFeature("name"));
	}

	/** Of a floor its level, which is its own within the site. */
	private static String id(EObject object) {
		String id = object instanceof Floor floor ? Integer.toString(floor.getLevel()) : EcoreUtil.getID(object);
		return id == null ? "" : id;
	}

	private static String kind(EObject object) {
		return object.eClass().getName().toLowerCase(Locale.ROOT);
	}
}
