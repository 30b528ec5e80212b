package org.cairnfield.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;

/**
 * Archives of any number of samples, in surveys of a thousand. They come from a simulated map of 20,000; what is more
 * than that was surveyed again, day by day, each time with levels some decibels off.
 */
final class Archives {

	static final int SURVEY_SAMPLES = 1000;
	static final Person PERSON = Person.named("M.Q.");

	private static final CampusSize CAMPUS = Maps.MANY;
	private static final int SIMULATED = 20_000;
	private static final long DAY_MILLIS = 86_400_000;

	private final RadioMap map;
	private final ModelFactory make = ModelFactory.eINSTANCE;
	private final SplittableRandom random = new SplittableRandom(11);

	private Archives(RadioMap map) {
		this.map = map;
	}

	/** An archive in a folder that is not there yet, saved, with one save point. */
	static void make(Maps maps, Path folder, int samples) throws IOException {
		Files.createDirectories(folder.getParent());
		RadioMap map = maps.of(CAMPUS, Math.min(samples, SIMULATED));
		try (OpenArchive open = new ArchiveStore().create(folder, "Marrow Quay Museums")) {
			new Archives(map).fill(open.archive(), samples);
			open.savePoint(PERSON, null);
		}
	}

	private void fill(Archive archive, int samples) {
		for (int a = 0; a < map.accessPointCount(); a++) {
			AccessPoint accessPoint = make.createAccessPoint();
			accessPoint.setId(accessPointId(a));
			accessPoint.setAddress(map.accessPoints().get(a));
			archive.getAccessPoints().add(accessPoint);
		}
		Device device = make.createDevice();
		device.setId("guide");
		device.setName("guide");
		archive.getDevices().add(device);
		for (int s = 0; s < map.sites().size(); s++) {
			Site site = make.createSite();
			site.setId("site-" + s);
			site.setName(map.sites().get(s));
			for (int level = 0; level < CAMPUS.floorsPerSite(); level++) {
				Floor floor = make.createFloor();
				floor.setLevel(level);
				floor.setName("floor " + level);
				site.getFloors().add(floor);
			}
			archive.getSites().add(site);
		}
		int[] rowsBySite = IntStream.range(0, map.size()).boxed()
				.sorted(Comparator.comparingInt(map::site)).mapToInt(Integer::intValue).toArray();
		int left = samples;
		for (int day = 0; left > 0; day++) {
			for (int from = 0, n = 0; from < rowsBySite.length && left > 0; n++) {
				int site = map.site(rowsBySite[from]);
				int to = from;
				while (to < rowsBySite.length && map.site(rowsBySite[to]) == site
						&& to - from < Math.min(SURVEY_SAMPLES, left)) {
					to++;
				}
				archive.getSites().get(site).getSurveys().add(survey(device, rowsBySite, from, to, day, n));
				left -= to - from;
				from = to;
			}
		}
	}

	private Survey survey(Device device, int[] rows, int from, int to, int day, int number) {
		Survey survey = make.createSurvey();
		survey.setId(String.format(Locale.ROOT, "day-%03d-part-%02d", day, number));
		survey.setName(survey.getId());
		survey.setDate(LocalDate.of(2031, 4, 7).plusDays(day));
		survey.setDevice(device);
		SampleTableBuilder table = SampleTable.builder();
		int[] column = new int[map.accessPointCount()];
		for (int a = 0; a < column.length; a++) {
			column[a] = table.accessPoint(accessPointId(a));
		}
		for (int i = from; i < to; i++) {
			int row = rows[i];
			table.sample(String.format(Locale.ROOT, "S-%05d", i - from), map.floor(row), map.x(row), map.y(row))
					.time(map.timeMillis(row) + day * DAY_MILLIS);
			for (int k = map.firstReading(row); k < map.endReading(row); k++) {
				int off = day == 0 ? 0 : random.nextInt(7) - 3;
				table.reading(column[map.accessPoint(k)], Math.max(RadioMap.LOWEST_RSSI_DBM,
						Math.min(RadioMap.HIGHEST_RSSI_DBM, map.rssiDbm(k) + off)));
			}
		}
		Samples samples = make.createSamples();
		samples.setTable(table.build());
		survey.setSamples(samples);
		return survey;
	}

	private static String accessPointId(int a) {
		return String.format(Locale.ROOT, "ap-%04d", a);
	}

	/** Moves one sample of a survey to a place where it never was. */
	static void moveOne(Survey survey, int row, double metres) {
		SampleTable table = survey.table();
		survey.getSamples().setTable(table.edit().position(row, 1000 + metres, 1000).done());
	}

	static Survey first(Archive archive) {
		return archive.getSites().get(0).getSurveys().get(0);
	}

	static int samples(Archive archive) {
		return archive.getSites().stream().flatMap(s -> s.getSurveys().stream()).mapToInt(s -> s.table().size()).sum();
	}
}
