package org.cairnfield.model.edit;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleKey;

/**
 * Finds what an archive holds by its id. Names are labels for people, and several things may share one; nothing is looked up by
 * them here. Each kind is indexed when it is first asked for, so an index is for one piece of work: take another one after
 * something was added, removed or given another id.
 */
public final class ArchiveIndex {

	private final Archive archive;
	private Map<String, Site> sites;
	private Map<String, Survey> surveys;
	private Map<String, AccessPoint> accessPoints;
	private Map<String, AccessPoint> addresses;

	private ArchiveIndex(Archive archive) {
		this.archive = archive;
	}

	public static ArchiveIndex of(Archive archive) {
		return new ArchiveIndex(archive);
	}

	public Archive archive() {
		return archive;
	}

	public Optional<Site> site(String id) {
		if (sites == null) {
			sites = index(archive.getSites(), Site::getId);
		}
		return Optional.ofNullable(sites.get(id));
	}

	/** The floor of that level of a site. */
	public Optional<Floor> floor(String siteId, int level) {
		return site(siteId).flatMap(site -> floor(site, level));
	}

	/** Likewise. */
	public static Optional<Floor> floor(Site site, int level) {
		return site.getFloors().stream().filter(floor -> floor.getLevel() == level).findFirst();
	}

	/** The floor that a sample says it is on, if its site has it. */
	public static Optional<Floor> floor(SampleRef sample) {
		Site site = sample.survey().getSite();
		return site == null ? Optional.empty() : floor(site, sample.survey().table().floorLevel(sample.row()));
	}

	public Optional<Survey> survey(String id) {
		if (surveys == null) {
			surveys = index(archive.getSites().stream().flatMap(site -> site.getSurveys().stream()).toList(),
					Survey::getId);
		}
		return Optional.ofNullable(surveys.get(id));
	}

	/** Where a sample is in the archive now; empty where it is gone. */
	public Optional<SampleRef> sample(SampleKey key) {
		return survey(key.survey()).map(survey -> SampleRef.of(survey, key.sample()));
	}

	/** Likewise, by the text form of its key; empty for a text that is none. */
	public Optional<SampleRef> sample(String key) {
		try {
			return sample(SampleKey.parse(key));
		} catch (IllegalArgumentException e) {
			return Optional.empty();
		}
	}

	public Optional<AccessPoint> accessPoint(String id) {
		if (accessPoints == null) {
			accessPoints = index(archive.getAccessPoints(), AccessPoint::getId);
		}
		return Optional.ofNullable(accessPoints.get(id));
	}

	/** The access point that maps and findings call so: by its address, or by its id where it has none. */
	public Optional<AccessPoint> address(String address) {
		if (addresses == null) {
			addresses = index(archive.getAccessPoints(), ModelText::address);
		}
		return Optional.ofNullable(addresses.get(address));
	}

	public Optional<Device> device(String id) {
		return archive.getDevices().stream().filter(device -> id.equals(device.getId())).findFirst();
	}

	public Optional<Split> split(String id) {
		return archive.getSplits().stream().filter(split -> split.getId().equals(id)).findFirst();
	}

	/** The first where an archive has several of one id. */
	private static <T> Map<String, T> index(Collection<T> all, Function<T, String> id) {
		Map<String, T> index = new HashMap<>();
		all.forEach(each -> index.putIfAbsent(id.apply(each), each));
		return index;
	}
}
