package org.cairnfield.batch.cli;

import java.util.List;
import java.util.Optional;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.eclipse.emf.ecore.EObject;

/** Objects of an archive by what a person types, such as {@code floor:tide-house/0}. */
final class ArchiveObjects {

	private static final String FORMS = Messages.ArchiveObjects_writeArchiveSiteSiteFloor;

	private final Archive archive;

	ArchiveObjects(Archive archive) {
		this.archive = archive;
	}

	/** @throws ArchiveException where there is none, or more than one */
	EObject named(String typed) throws ArchiveException {
		if (typed.equals("archive")) {
			return archive;
		}
		String[] parts = typed.split(":", 2);
		if (parts.length < 2) {
			throw new ArchiveException(Words.bind(Messages.ArchiveObjects_namesNoObjectOfAn, typed), FORMS);
		}
		String name = parts[1];
		return switch (parts[0]) {
		case "site" -> ArchiveWork.site(archive, name);
		case "floor" -> floor(name);
		case "survey" -> ArchiveWork.named("survey", surveys(), Survey::getId, name);
		case "device" -> ArchiveWork.named("device", archive.getDevices(), Device::getId, name);
		case "access-point" -> accessPoint(name);
		default ->
			throw new ArchiveException(Words.bind(Messages.ArchiveObjects_anArchiveHasNoObjects, parts[0]), FORMS);
		};
	}

	private List<Survey> surveys() {
		return archive.getSites().stream().flatMap(site -> site.getSurveys().stream()).toList();
	}

	private EObject floor(String name) throws ArchiveException {
		int slash = name.lastIndexOf('/');
		if (slash < 0) {
			throw new ArchiveException(Words.bind(Messages.ArchiveObjects_namesNoFloor, name),
					Messages.ArchiveObjects_writeFloorSiteLevelSuch);
		}
		Site site = ArchiveWork.site(archive, name.substring(0, slash));
		return ArchiveWork.named("floor", site.getFloors(), floor -> Integer.toString(floor.getLevel()),
				name.substring(slash + 1));
	}

	private EObject accessPoint(String name) throws ArchiveException {
		Optional<AccessPoint> found = archive.getAccessPoints().stream()
				.filter(each -> name.equals(each.getId()) || name.equalsIgnoreCase(each.getAddress()))
				.findFirst();
		return found.orElseThrow(
				() -> new ArchiveException(Words.bind(Messages.ArchiveObjects_theArchiveHasNoAccess, name),
						Messages.ArchiveObjects_nameItByItsAddress));
	}
}
