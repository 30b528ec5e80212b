package org.cairnfield.archive;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Round;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.model.values.Scope;

/** Archives with something of everything in them, made by seed. Texts are as nasty as the model allows. */
public final class SampleArchives {

	private static final String[] TEXTS = { "Tide House", "Sailmakers' Hall", "a\tb", "two\nlines", "\r", "<&>\"'",
			"]]>", "\\",
			"\\u0041", "", " ", "  blanks  ", "\u0000", "\u0007\u001b", "\u0085\u2028\u2029", "\ud83d\ude00", "\ud83d",
			"\ude00x",
			"\ufeffmark", "\uffff", "Z\u0308urich", "-", "end", "ＡＰ", "%2e%2e/", "../..", "$HOME", "<!-- -->" };

	private final Random random;

	private SampleArchives(long seed) {
		random = new Random(seed);
	}

	/** Fills an archive: the same for the same seed and counts. */
	public static void fill(Archive archive, long seed, int surveys, int samplesEach) {
		new SampleArchives(seed).fill(archive, surveys, samplesEach);
	}

	/** The survey with an id, wherever it is. */
	public static Survey survey(Archive archive, String id) {
		return archive.getSites().stream().flatMap(site -> site.getSurveys().stream()).filter(s -> s.getId().equals(id))
				.findFirst()
				.orElseThrow();
	}

	private void fill(Archive archive, int surveys, int samplesEach) {
		archive.setName(text());
		List<String> heard = new ArrayList<>();
		for (int i = 0; i < 40; i++) {
			AccessPoint accessPoint = accessPoint(i);
			heard.add(accessPoint.getId());
			archive.getAccessPoints().add(accessPoint);
		}
		for (int i = 0; i < 2; i++) {
			Device device = ModelFactory.eINSTANCE.createDevice();
			device.setId("guide-" + (char) ('a' + i));
			device.setName(text());
			device.setOffsetDb(random.nextBoolean() ? null : random.nextGaussian() * 4);
			archive.getDevices().add(device);
		}
		for (int i = 0; i < 2; i++) {
			archive.getSites().add(site(i));
		}
		archive.setSiteOrder("th Sail.Hall_2");
		List<SampleKey> keys = new ArrayList<>();
		for (int i = 0; i < surveys; i++) {
			Site site = archive.getSites().get(i % 2);
			Survey survey = survey("survey-" + i, archive.getDevices().get(random.nextInt(2)));
			site.getSurveys().add(survey);
			Samples samples = ModelFactory.eINSTANCE.createSamples();
			samples.setTable(table(survey.getId(), samplesEach, heard, keys));
			survey.setSamples(samples);
		}
		archive.getSplits().add(split("all", Scope.ARCHIVE, keys));
		archive.getSplits().add(split("th-0", Scope.floor("th", 0), keys));
		archive.getLedgers().add(ledger("mq", keys));
		for (int i = 0; i < 3; i++) {
			archive.getWaivers().add(waiver(i));
		}
	}

	private String text() {
		return TEXTS[random.nextInt(TEXTS.length)]
				+ (random.nextInt(4) == 0 ? TEXTS[random.nextInt(TEXTS.length)] : "");
	}

	private AccessPoint accessPoint(int i) {
		AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
		accessPoint.setId(String.format("00005e0053%02x", i));
		accessPoint.setAddress(i % 5 == 0 ? text() : String.format("00:00:5E:00:53:%02X", i));
		accessPoint.setBand(random.nextBoolean() ? null : WifiBand.values()[random.nextInt(WifiBand.values().length)]);
		accessPoint.setChannel(random.nextInt(14));
		accessPoint.setFirstHeard(LocalDate.ofEpochDay(20_000 + random.nextInt(500)));
		accessPoint.setGroup(random.nextBoolean() ? null : text());
		accessPoint
				.setPlace(i % 3 > 0 ? null : new KnownPlace(i % 2 == 0 ? "th" : "Sail.Hall_2", i % 3 - 1, i, -2.5 * i));
		accessPoint.setReason(random.nextInt(5) > 0 ? null : text());
		return accessPoint;
	}

	private Site site(int i) {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId(i == 0 ? "th" : "Sail.Hall_2");
		site.setName(text());
		site.setGeoreference(new Georeference(-33.5 + random.nextDouble(), 18.25, random.nextDouble() * 360));
		for (int level = -1; level < 2; level++) {
			Floor floor = ModelFactory.eINSTANCE.createFloor();
			floor.setLevel(level);
			floor.setName(random.nextBoolean() ? null : text());
			floor.setOutline(Outline.of(new double[] { 0, 40, 40 + random.nextDouble() }, new double[] { 0, 0, 25 }));
			floor.setHeightMetres(random.nextBoolean() ? null : 3.5);
			floor.setPlanImage("plans/th-" + level + ".png");
			floor.setPlanPlacement(new Placement(0.05, random.nextDouble(), 0, 22.5));
			site.getFloors().add(floor);
		}
		return site;
	}

	private Survey survey(String id, Device device) {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id);
		survey.setName(text());
		survey.setDate(LocalDate.of(2031, 4, 7));
		survey.setSurveyor("MQ");
		survey.setDevice(device);
		survey.setProtocol(text());
		survey.setKind(SurveyKind.values()[random.nextInt(2)]);
		survey.setSourceFile(text());
		return survey;
	}

	private SampleTable table(String survey, int count, List<String> heard, List<SampleKey> keys) {
		SampleTableBuilder builder = SampleTable.builder();
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			order.add(i);
		}
		Collections.shuffle(order, random);
		for (int i : order) {
			String id = i % 37 == 1 ? "end\u00e9 \\" + i : i % 37 == 2 ? "\ud83d\ude00\ud83d" + i : "S-" + i;
			builder.sample(id, random.nextInt(3) - 1, number(), number());
			if (random.nextInt(5) > 0) {
				builder.time(
						1_933_000_000_000L + random.nextInt(1_000_000_000) * (random.nextInt(50) == 0 ? -90_000L : 1L));
			}
			if (random.nextInt(8) == 0) {
				builder.reason(random.nextBoolean() ? "outside the outline" : "\u00e4 \\t: \ud83d");
			}
			for (String accessPoint : heard) {
				if (random.nextInt(3) == 0) {
					builder.reading(accessPoint,
							random.nextInt(40) == 0 ? random.nextInt(256) - 128 : -30 - random.nextInt(65));
				}
			}
			keys.add(new SampleKey(survey, id));
		}
		return builder.build();
	}

	private double number() {
		return switch (random.nextInt(8)) {
		case 0 -> random.nextInt(100);
		case 1 -> random.nextDouble() * 1e-9;
		case 2 -> random.nextGaussian() * 1e12;
		case 3 -> random.nextGaussian() * 50;
		default -> random.nextInt(4000) / 100.0;
		};
	}

	private Split split(String id, Scope scope, List<SampleKey> keys) {
		Split split = ModelFactory.eINSTANCE.createSplit();
		split.setId(id);
		split.setScope(scope);
		split.setRepresentation("POSITIVE");
		split.setDistance("CITY_BLOCK");
		split.setEpsilon(random.nextDouble() * 200);
		split.setMinPts(1 + random.nextInt(9));
		split.setPcaShare(random.nextBoolean() ? null : 0.95);
		if (random.nextBoolean()) {
			split.setSearch(
					new Search(random.nextBoolean(), random.nextInt(4), 1 + random.nextInt(8), random.nextBoolean(),
							new Voting(1 + random.nextInt(5), random.nextBoolean())));
			split.setSearchReason("of 56 tried\ton held-out positions");
			split.setInRelease(random.nextBoolean());
		}
		split.setSeed(random.nextLong());
		split.setGate(random.nextBoolean() ? 0.1 : 0.25);
		split.setThreshold(random.nextBoolean() ? 0.1 : -1);
		for (int i = 2; i >= 0; i--) {
			Cluster cluster = ModelFactory.eINSTANCE.createCluster();
			cluster.setNumber(i);
			cluster.setSize(random.nextInt(100));
			split.getClusters().add(cluster);
		}
		LabelsBuilder labels = Labels.builder();
		List<Proposal> proposals = new ArrayList<>();
		for (SampleKey key : keys) {
			int cluster = random.nextInt(4) - 1;
			if (random.nextInt(20) > 0) {
				labels.add(key, cluster, cluster < 0 ? Role.NOISE : random.nextBoolean() ? Role.CORE : Role.BORDER);
			}
			if (cluster < 0) {
				proposals.add(new Proposal(key, random.nextInt(3), random.nextDouble(),
						random.nextBoolean() ? Double.NaN : random.nextDouble(), keys.get(random.nextInt(keys.size())),
						random.nextInt(4) - 1));
			}
		}
		split.setLabels(labels.build());
		split.setProposals(Proposals.of(proposals));
		return split;
	}

	private Ledger ledger(String id, List<SampleKey> keys) {
		Ledger ledger = ModelFactory.eINSTANCE.createLedger();
		ledger.setId(id);
		for (int i = 0; i < 12; i++) {
			Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
			verdict.setId("v-" + i);
			verdict.setSplit("all");
			verdict.setSample(keys.isEmpty() ? null : keys.get(random.nextInt(keys.size())));
			verdict.setCluster(random.nextInt(3));
			verdict.setDecision(Decision.values()[random.nextInt(3)]);
			verdict.setReasonCode(random.nextBoolean() ? null : "far");
			verdict.setText(random.nextBoolean() ? null : text());
			verdict.setPerson("M.Q.");
			verdict.setTime(Instant.ofEpochSecond(1_933_000_000L + i, random.nextInt(2) * 123_456_789L));
			verdict.setSupersedes(i == 0 ? null : "v-" + (i - 1));
			if (random.nextInt(3) == 0) {
				verdict.setRound(Round.values()[random.nextInt(3)]);
				verdict.setSampleContent("00000000000000aa");
				verdict.setEvidence(random.nextBoolean() ? null : "00000000000000bb");
				verdict.setBatch(random.nextBoolean() ? null : "audit-close-1");
			}
			ledger.getVerdicts().add(verdict);
		}
		return ledger;
	}

	private Waiver waiver(int i) {
		Waiver waiver = ModelFactory.eINSTANCE.createWaiver();
		waiver.setRule("empty-sample");
		waiver.setContentKey(text() + i);
		waiver.setReason(text());
		waiver.setPerson("M.Q.");
		waiver.setTime(Instant.parse("2031-05-01T10:00:00Z"));
		return waiver;
	}
}
