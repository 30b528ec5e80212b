package org.cairnfield.ui.scope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SiteOrder;
import org.eclipse.emf.ecore.EObject;

/**
 * What a person looks at: a scope, the floor on the plan, some samples, an access point. All parts follow the one of the
 * session; immutable, so that each change is one new value.
 *
 * @param scope       object of the archive whose samples are listed: the archive, a site, floor, survey, device, access point
 *                    or split
 * @param floor       shown on the plan; null where the archive has none
 * @param samples     selected, of any survey
 * @param beside      shown with the samples to compare them with, but not selected: no command and no drag touches them
 * @param marked      places that the plan marks beside the samples
 * @param accessPoint whose levels colour the plan and fill its view; null for none
 */
public record ArchiveSelection(EObject scope, Floor floor, List<SampleRef> samples, List<Companion> beside,
		List<MarkedPlace> marked,
		AccessPoint accessPoint) {

	public ArchiveSelection {
		Objects.requireNonNull(scope);
		samples = List.copyOf(samples);
		beside = List.copyOf(beside);
		marked = List.copyOf(marked);
	}

	/** The whole archive, and its first floor. */
	public static ArchiveSelection of(Archive archive) {
		return new ArchiveSelection(archive, firstFloor(archive).orElse(null), List.of(), List.of(), List.of(), null);
	}

	private static Optional<Floor> firstFloor(Archive archive) {
		return SiteOrder.of(archive).stream().flatMap(site -> site.getFloors().stream()).findFirst();
	}

	/** Another scope; the plan follows where the scope says a floor, and the selected samples stay. */
	public ArchiveSelection withScope(EObject other) {
		Floor shown = floor;
		AccessPoint chosen = accessPoint;
		if (other instanceof Floor f) {
			shown = f;
		} else if (other instanceof Site site && !site.getFloors().isEmpty()
				&& (floor == null || floor.eContainer() != site)) {
			shown = site.getFloors().get(0);
		} else if (other instanceof AccessPoint a) {
			chosen = a;
		}
		return new ArchiveSelection(other, shown, samples, beside, marked, chosen);
	}

	/** Other samples, and nothing beside or marked; the plan goes to the floor of the first. */
	public ArchiveSelection withSamples(List<SampleRef> others) {
		return new ArchiveSelection(scope, others.isEmpty() ? floor : ArchiveIndex.floor(others.get(0)).orElse(floor),
				others, List.of(), List.of(), accessPoint);
	}

	/** Other samples to compare with. */
	public ArchiveSelection withBeside(List<Companion> others) {
		return new ArchiveSelection(scope, floor, samples, others, marked, accessPoint);
	}

	/** Other places to mark. */
	public ArchiveSelection withMarked(List<MarkedPlace> others) {
		return new ArchiveSelection(scope, floor, samples, beside, others, accessPoint);
	}

	/** Another floor on the plan, all else as it is. */
	public ArchiveSelection withFloor(Floor other) {
		return new ArchiveSelection(scope, other, samples, beside, marked, accessPoint);
	}

	/** Another access point, or null for none. */
	public ArchiveSelection withAccessPoint(AccessPoint other) {
		return new ArchiveSelection(scope, floor, samples, beside, marked, other);
	}
}
