package org.cairnfield.archive.internal.merge;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Random;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.check.LedgerOrder;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What a person may do to an archive in a day, by seed. Some changes meet those of others in the same place. */
public final class RandomWork {

	private final Archive archive;
	private final String person;
	private final Random random;
	private int made;
	private long seconds;

	private RandomWork(Archive archive, String person, Random random) {
		this.archive = archive;
		this.person = person;
		this.random = random;
		seconds = random.nextInt(100);
	}

	/** Changes the archive itself. */
	public static void in(Archive archive, String person, Random random) {
		RandomWork work = new RandomWork(archive, person, random);
		for (int n = 1 + random.nextInt(6); n > 0; n--) {
			work.one();
		}
		if (random.nextInt(3) == 0) {
			work.tellTheRules();
		}
	}

	/** Changes the archive itself, but nothing that others can change as well. */
	public static void apart(Archive archive, String person, Random random) {
		RandomWork work = new RandomWork(archive, person, random);
		for (int n = 1 + random.nextInt(3); n > 0; n--) {
			work.waive();
			work.takeIn();
		}
	}

	/** A changed copy. */
	public static Archive on(Archive archive, String person, Random random) {
		Archive changed = EcoreUtil.copy(archive);
		in(changed, person, random);
		return changed;
	}

	private void one() {
		switch (random.nextInt(11)) {
		case 0 -> archive.setName("by " + person);
		case 1 -> {
			AccessPoint accessPoint = archive.getAccessPoints().get(random.nextInt(4));
			accessPoint.setReason("hotspot, " + person);
			accessPoint.setPlace(new KnownPlace("th", 0, person.charAt(0), 2));
		}
		case 2 -> waive();
		case 3 -> {
			if (!archive.getWaivers().isEmpty()) {
				archive.getWaivers().remove(random.nextInt(archive.getWaivers().size()));
			}
		}
		case 4 -> takeIn();
		case 5 -> removeASurvey();
		case 6 -> edit();
		case 7 -> keepASplit();
		case 8 -> {
			if (!archive.getSplits().isEmpty()) {
				Split split = archive.getSplits().get(random.nextInt(archive.getSplits().size()));
				if (random.nextBoolean()) {
					split.setInRelease(!split.isInRelease());
				} else {
					archive.getSplits().remove(split);
				}
			}
		}
		default -> give();
		}
	}

	/** Sets a number of a rule or whether it is asked, or sets it back. */
	private void tellTheRules() {
		String parameter = random.nextInt(4) == 0 ? null : "fastest";
		archive.getRuleSettings().removeIf(setting -> Objects.equals(setting.getParameter(), parameter));
		if (random.nextInt(3) > 0) {
			archive.getRuleSettings()
					.add(setting(parameter, parameter == null ? "off" : Integer.toString(random.nextInt(3)),
							random.nextBoolean() ? null : "by " + person));
		}
	}

	/** Of the rule jump. */
	static RuleSetting setting(String parameter, String value, String reason) {
		RuleSetting setting = ModelFactory.eINSTANCE.createRuleSetting();
		setting.setRule("jump");
		setting.setParameter(parameter);
		setting.setValue(value);
		setting.setReason(reason);
		return setting;
	}

	private Instant time() {
		seconds += random.nextInt(7) - 1; // a clock that now and then runs back
		return Instant.ofEpochSecond(1_940_000_000L + seconds);
	}

	private String id(String what) {
		return what + '-' + person + '-' + ++made + '-' + random.nextInt(1 << 20);
	}

	private void waive() {
		Waiver waiver = ModelFactory.eINSTANCE.createWaiver();
		waiver.setRule("rarely-heard");
		waiver.setContentKey(id("key"));
		waiver.setReason("the last gallery");
		waiver.setPerson(person);
		waiver.setTime(time());
		archive.getWaivers().add(waiver);
	}

	private void takeIn() {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id("survey"));
		survey.setDevice(archive.getDevices().get(random.nextInt(archive.getDevices().size())));
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(
				SampleTable.builder().sample("S-1", 0, random.nextInt(40), 2).reading("00005e005301", -50).build());
		survey.setSamples(samples);
		archive.getSites().get(random.nextInt(archive.getSites().size())).getSurveys().add(survey);
	}

	private void removeASurvey() {
		List<Site> sites = archive.getSites().stream().filter(site -> !site.getSurveys().isEmpty()).toList();
		if (!sites.isEmpty() && random.nextInt(3) == 0) {
			List<Survey> surveys = sites.get(random.nextInt(sites.size())).getSurveys();
			surveys.remove(random.nextInt(surveys.size()));
		}
	}

	private void edit() {
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				SampleTable table = survey.table();
				int row = random.nextInt(Math.min(3, table.size()));
				survey.getSamples().setTable(switch (random.nextInt(4)) {
				case 0 -> table.edit().reason(row, "by " + person).done();
				case 1 -> table.edit().position(row, random.nextInt(40), random.nextInt(40)).done();
				case 2 -> table.edit().floorLevel(row, random.nextInt(3)).done();
				default -> table.edit().readings(row, table.readings(row).without(ap -> random.nextInt(4) == 0)).done();
				});
			}
		}
	}

	private void keepASplit() {
		if (!archive.getSplits().isEmpty()) {
			Split split = EcoreUtil.copy(archive.getSplits().get(0));
			split.setId(id("split"));
			archive.getSplits().add(split);
		}
	}

	private void give() {
		Ledger ledger = archive.getLedgers().get(0);
		for (int n = 1 + random.nextInt(3); n > 0; n--) {
			Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
			verdict.setId(id("v"));
			verdict.setSplit("all");
			verdict.setSample(new SampleKey("survey-0", "S-" + random.nextInt(4)));
			verdict.setDecision(random.nextBoolean() ? Decision.APPROVE : Decision.POOL);
			verdict.setPerson(person);
			verdict.setTime(LedgerOrder.next(ledger, time()));
			ledger.getVerdicts().add(verdict);
		}
	}
}
