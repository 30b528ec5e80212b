package org.cairnfield.ui.plan.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Random;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;

/** An archive with one floor of 120 m × 80 m, an image of it and as many samples as wanted. */
final class BigFloor {

	private static final int ACCESS_POINTS = 120;
	private static final int PIXELS_PER_METRE = 20;

	private BigFloor() {
	}

	static OpenArchive create(Path folder, int samples) throws Exception {
		OpenArchive open = new ArchiveStore().create(folder, "Marrow Quay Museums");
		Device device = ModelFactory.eINSTANCE.createDevice();
		device.setId("guide-a");
		device.setName("Wrist guide A");
		open.archive().getDevices().add(device);
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		site.setName("Tide House");
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(0);
		floor.setOutline(Outline.parse("0,0 120,0 120,80 0,80"));
		floor.setPlanImage("plans/th-0.png");
		floor.setPlanPlacement(new Placement(1.0 / PIXELS_PER_METRE, 0, 0, 80));
		site.getFloors().add(floor);
		for (int a = 0; a < ACCESS_POINTS; a++) {
			AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
			accessPoint.setId(String.format(Locale.ROOT, "ap%03d", a));
			accessPoint.setAddress(String.format(Locale.ROOT, "00:00:5e:00:53:%02x", a));
			open.archive().getAccessPoints().add(accessPoint);
		}
		for (int s = 0; s < 4; s++) {
			Survey survey = ModelFactory.eINSTANCE.createSurvey();
			survey.setId("th-" + s);
			survey.setName("th-" + s);
			survey.setDate(LocalDate.of(2031, 4, 9 + s));
			survey.setDevice(device);
			Samples kept = ModelFactory.eINSTANCE.createSamples();
			kept.setTable(table(new Random(s), samples / 4).build());
			survey.setSamples(kept);
			site.getSurveys().add(survey);
		}
		open.archive().getSites().add(site);
		draw(open.resolve("plans/th-0.png"));
		return open;
	}

	private static SampleTableBuilder table(Random random, int samples) {
		SampleTableBuilder builder = SampleTable.builder();
		for (int i = 0; i < samples; i++) {
			builder.sample(String.format(Locale.ROOT, "S%06d", i), 0, 120 * random.nextDouble(),
					80 * random.nextDouble());
			if (random.nextInt(20) == 0) {
				builder.reason("unsteady");
			}
			for (int a = random.nextInt(8); a < ACCESS_POINTS; a += 2 + random.nextInt(12)) {
				builder.reading(String.format(Locale.ROOT, "ap%03d", a), -40 - random.nextInt(55));
			}
		}
		return builder;
	}

	private static void draw(Path file) throws Exception {
		ImageData image = new ImageData(120 * PIXELS_PER_METRE, 80 * PIXELS_PER_METRE, 24,
				new PaletteData(0xff0000, 0xff00, 0xff));
		for (int r = 0; r < image.height; r++) {
			for (int c = 0; c < image.width; c++) {
				image.setPixel(c, r, c % 200 < 6 || r % 160 < 6 ? 0x808080 : 0xffffff);
			}
		}
		Files.createDirectories(file.getParent());
		ImageLoader loader = new ImageLoader();
		loader.data = new ImageData[] { image };
		loader.save(file.toString(), SWT.IMAGE_PNG);
	}
}
