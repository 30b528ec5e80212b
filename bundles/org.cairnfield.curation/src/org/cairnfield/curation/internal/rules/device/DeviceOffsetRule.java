package org.cairnfield.curation.internal.rules.device;

import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.DeviceDifferences;
import org.cairnfield.model.values.Count;

/**
 * Devices that read higher or lower than the one with most samples, at places where both stood: the middle over places
 * of the middle difference over access points ({@link DeviceDifferences}). The interval of the median is that of the binomial
 * distribution, in its normal form: ranks n/2 ± 1.96·√n/2.
 */
public final class DeviceOffsetRule extends DescribedRule {

	public static final Parameter METRES = Parameter.number("same-place-metres", "taken for the same place", 1.5, 0, 20,
			"m",
			onCampuses("3 finds the same, 0.75 none of three"));
	public static final Parameter LEAST = Parameter.number("least-db", "offset from which it is reported", 3, 0.5, 30,
			"dB",
			onCampuses("1.5 and 6 find the same"));
	public static final Parameter PLACES = Parameter.count("fewest-places", "places where both stood", 10, 3, 10_000,
			onCampuses("5 and 20 find the same"));

	private static final Threshold NORMAL_95 = new Threshold("standard deviations to either side", 1.96,
			standard("95 % of the normal distribution"));

	public DeviceOffsetRule() {
		super("device-offset", "A device that reads too high or too low",
				"Readings of two devices some dB apart look like different places; a known offset is taken out.",
				Severity.WARNING, Topic.DEVICE, RuleScope.ARCHIVE, METRES, LEAST, PLACES);
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(List.of(NORMAL_95), DeviceDifferences.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		DeviceDifferences devices = new DeviceDifferences(input, settings.of(METRES));
		int n = input.map().map().devices().size();
		List<Finding> findings = new ArrayList<>();
		int present = 0;
		boolean compared = false;
		for (int d = 0; d < n; d++) {
			present += devices.samples(d) > 0 ? 1 : 0;
			if (d != devices.reference() && devices.samples(d) > 0) {
				double[] differences = devices.of(d);
				compared |= differences.length >= settings.countOf(PLACES);
				look(input.map(), settings, d, devices.reference(), differences, findings);
			}
		}
		if (present < 2) {
			return RuleOutcome.notApplicable("samples are not of two devices");
		}
		findings.sort(Comparator.comparing(f -> f.subjects().get(0).label()));
		return compared ? RuleOutcome.found(findings)
				: RuleOutcome.notApplicable("no two devices stood at " + settings.countOf(PLACES) + " places within "
						+ RuleWords.metres(settings.of(METRES)) + " of one another");
	}

	private void look(SurveyedMap map, Settings settings, int device, int reference, double[] differences,
			List<Finding> findings) {
		int n = differences.length;
		if (n < settings.countOf(PLACES)) {
			return;
		}
		Arrays.sort(differences);
		double offsetDb = Median.of(differences);
		int half = (int) Math.ceil(NORMAL_95.value() * Math.sqrt(n) / 2);
		double low = differences[Math.max(0, n / 2 - half)];
		double high = differences[Math.min(n - 1, (n - 1) / 2 + half)];
		if (Math.abs(offsetDb) < settings.of(LEAST) || low <= 0 && high >= 0) {
			return;
		}
		String name = map.map().devices().get(device);
		String than = map.map().devices().get(reference);
		double known = map.offsetDb(device);
		double whole = Math.round((known + offsetDb) * 10) / 10.0;
		String message = String.format(Locale.ROOT,
				"%s reads %.1f dB %s than %s at %s where both stood (95 %% interval %.1f … %.1f dB)%s.", name,
				Math.abs(offsetDb), offsetDb > 0 ? "more" : "less", than, Count.of(n, "place"), low, high,
				known == 0 ? "" : String.format(Locale.ROOT, ", beyond the %.1f dB already taken out", known));
		findings.add(Finding.of(this).message(message).about(map.deviceNamed(name))
				.beside(List.of(map.deviceNamed(than))).figure("offset", offsetDb, "dB").figure("low", low, "dB")
				.figure("high", high, "dB").figure("places", n, "")
				.remedy(new Remedy.CalibrateDevice(map.deviceNamed(name).id(), name, whole))
				.build());
	}
}
