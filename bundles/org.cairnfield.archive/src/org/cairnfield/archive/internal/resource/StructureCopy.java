package org.cairnfield.archive.internal.resource;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Waiver;
import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * A copy of an archive as it is written to its structure file: sorted, so that the same content gives the same bytes, and
 * with references in place of what is in files of its own. Corners keep their order, which has a meaning.
 */
final class StructureCopy extends EcoreUtil.Copier {

	private static final long serialVersionUID = 1;
	private static final Comparator<String> TEXT = Comparator.nullsFirst(Comparator.naturalOrder());

	private StructureCopy() {
	}

	static Archive of(Archive archive) throws ArchiveException {
		StructureCopy copier = new StructureCopy();
		Archive copy = (Archive) copier.copy(archive);
		copier.copyReferences();
		for (Split split : archive.getSplits()) {
			copy.getSplits().add(reference(ModelFactory.eINSTANCE.createSplit(), ArchiveLayout.split(split.getId())));
		}
		for (Ledger ledger : archive.getLedgers()) {
			copy.getLedgers()
					.add(reference(ModelFactory.eINSTANCE.createLedger(), ArchiveLayout.ledger(ledger.getId())));
		}
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (survey.getSamples() != null) {
					((Survey) copier.get(survey)).setSamples(reference(ModelFactory.eINSTANCE.createSamples(),
							ArchiveLayout.samples(site.getId(), survey.getId())));
				}
			}
		}
		sort(copy);
		return copy;
	}

	private static <T extends EObject> T reference(T proxy, String path) {
		((InternalEObject) proxy).eSetProxyURI(reference(path));
		return proxy;
	}

	/** How the structure refers to the root of another file. */
	static URI reference(String path) {
		return Uris.of(path).appendFragment("/");
	}

	@Override
	protected void copyContainment(EReference reference, EObject original, EObject copy) {
		if (reference != ModelPackage.Literals.SURVEY__SAMPLES && reference != ModelPackage.Literals.ARCHIVE__SPLITS
				&& reference != ModelPackage.Literals.ARCHIVE__LEDGERS) {
			super.copyContainment(reference, original, copy);
		}
	}

	private static void sort(Archive archive) {
		sort(archive.getSites(), Comparator.comparing(Site::getId, TEXT));
		for (Site site : archive.getSites()) {
			sort(site.getFloors(), Comparator.comparingInt(Floor::getLevel).thenComparing(Floor::getName, TEXT));
			sort(site.getSurveys(), Comparator.comparing(Survey::getId, TEXT));
		}
		sort(archive.getAccessPoints(), Comparator.comparing(AccessPoint::getId, TEXT));
		sort(archive.getDevices(), Comparator.comparing(Device::getId, TEXT));
		sort(archive.getWaivers(),
				Comparator.comparing(Waiver::getRule, TEXT).thenComparing(Waiver::getContentKey, TEXT)
						.thenComparing(Waiver::getPerson, TEXT).thenComparing(w -> String.valueOf(w.getTime()))
						.thenComparing(Waiver::getReason, TEXT));
		sort(archive.getConflicts(),
				Comparator.comparing(Conflict::getPlace, TEXT).thenComparing(Conflict::getUnit, TEXT));
		for (Conflict conflict : archive.getConflicts()) {
			sort(conflict.getClaims(), Comparator.comparing(Claim::getValue, TEXT).thenComparing(Claim::getPerson, TEXT)
					.thenComparing(claim -> String.valueOf(claim.getTime())));
		}
		sort(archive.getComments(), Comparator.comparing(Comment::getId, TEXT));
		sort(archive.getAssignments(), Comparator.comparing(Assignment::getId, TEXT));
		sort(archive.getRuleSettings(),
				Comparator.comparing(RuleSetting::getRule, TEXT).thenComparing(RuleSetting::getParameter, TEXT)
						.thenComparing(RuleSetting::getValue, TEXT).thenComparing(RuleSetting::getReason, TEXT));
		// these two are references by now, told apart by what they refer to
		sort(archive.getSplits(), Comparator.comparing(StructureCopy::proxyUri));
		sort(archive.getLedgers(), Comparator.comparing(StructureCopy::proxyUri));
	}

	private static String proxyUri(EObject object) {
		return ((InternalEObject) object).eProxyURI().toString();
	}

	private static <T> void sort(EList<T> list, Comparator<? super T> order) {
		List<T> sorted = list instanceof InternalEList<T> internal
				? new ArrayList<>(internal.basicList())
				: new ArrayList<>(list);
		sorted.sort(order);
		ECollections.setEList(list, sorted);
	}
}
