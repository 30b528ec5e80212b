package org.cairnfield.curation.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelPackage.Literals;
import org.cairnfield.model.Site;
import org.cairnfield.model.check.AccessPointCheck;
import org.cairnfield.model.values.KnownPlace;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What an object must be like once a value is changed: the checks of the model, and those that take two values. */
final class EditableRules {

	private static final String INITIALS = "\\p{L}{1,4}";

	private EditableRules() {
	}

	/** @throws UnfitValueException where something would be wrong that is not wrong now */
	static void require(EObject object, EStructuralFeature feature, Object value) {
		if (feature == Literals.ARCHIVE__NAME && value == null) {
			throw new UnfitValueException(Messages.EditableRules_anArchiveNeedsAName);
		}
		if (feature == Literals.ARCHIVE__SITE_ORDER && value != null) {
			requireSites((Archive) object, value.toString());
		}
		if (feature == Literals.SURVEY__KIND && value == null) {
			throw new UnfitValueException(Messages.EditableRules_aSurveyIsForTraining);
		}
		if (feature == Literals.SURVEY__SURVEYOR && value != null && !value.toString().matches(INITIALS)) {
			throw new UnfitValueException(
					Words.bind(Messages.EditableRules_isNotInitialsOfAt, value));
		}
		if (value instanceof KnownPlace place && EcoreUtil.getRootContainer(object) instanceof Archive archive
				&& !AccessPointCheck.isOnAFloor(place, archive)) {
			throw new UnfitValueException(
					Words.bind(Messages.EditableRules_noSiteOfThisArchive, place.site(), place.level()));
		}
		EObject changed = alone(object);
		List<String> before = problems(changed);
		changed.eSet(feature, value);
		List<String> after = problems(changed);
		after.removeAll(before);
		if (!after.isEmpty()) {
			throw new UnfitValueException(after.get(0).replaceAll("\\.$", ""));
		}
	}

	private static void requireSites(Archive archive, String order) {
		List<String> known = archive.getSites().stream().map(Site::getId).toList();
		List<String> seen = new ArrayList<>();
		for (String id : order.split("\\s+")) {
			if (!known.contains(id) || seen.contains(id)) {
				throw new UnfitValueException(
						Words.bind(Messages.EditableRules_nameSitesByTheirIds,
								seen.contains(id) ? Words.bind(Messages.EditableRules_isNamedTwice, id)
										: Words.bind(Messages.EditableRules_thereIsNoSite, id),
								String.join(", ", known)));
			}
			seen.add(id);
		}
	}

	/** A copy without what it contains, which may be much and is not changed: this is asked at every key. */
	private static EObject alone(EObject object) {
		EObject copy = EcoreUtil.create(object.eClass());
		for (EAttribute each : object.eClass().getEAllAttributes()) {
			if (each.isChangeable() && !each.isDerived() && !each.isMany()) {
				copy.eSet(each, object.eGet(each));
			}
		}
		return copy;
	}

	private static List<String> problems(EObject object) {
		List<String> found = new ArrayList<>();
		collect(Diagnostician.INSTANCE.validate(object), found);
		if (object.eClass() == Literals.SITE) {
			LocalDate from = (LocalDate) object.eGet(Literals.SITE__MAP_FROM);
			LocalDate until = (LocalDate) object.eGet(Literals.SITE__MAP_UNTIL);
			if (from != null && until != null && until.isBefore(from)) {
				found.add(Words.bind(Messages.EditableRules_aMapFromCannotEnd, from, until));
			}
		} else if (object.eClass() == Literals.ACCESS_POINT
				&& object.eGet(Literals.ACCESS_POINT__BAND) instanceof WifiBand band) {
			int channel = (Integer) object.eGet(Literals.ACCESS_POINT__CHANNEL);
			if (channel != 0 && (channel < band.first() || channel > band.last())) {
				found.add(Words.bind(Messages.EditableRules_channelIsNotOneOf, channel, band.first(), band.last()));
			}
		}
		return found;
	}

	private static void collect(Diagnostic diagnostic, List<String> found) {
		if (diagnostic.getSeverity() >= Diagnostic.WARNING && diagnostic.getChildren().isEmpty()) {
			found.add(diagnostic.getMessage());
		}
		diagnostic.getChildren().forEach(child -> collect(child, found));
	}
}
