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
import org.cairnfield.core.text.Words;
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

	public static final Parameter METRES = Parameter.number("same-place-metres",
			Messages.DeviceOffsetRule_takenForTheSamePlace, 1.5, 0, 20,
			"m",
			onCampuses(Messages.DeviceOffsetRule_3FindsTheSame0));
	public static final Parameter LEAST = Parameter.number("least-db", Messages.DeviceOffsetRule_offsetFromWhichItIs, 3,
			0.5, 30,
			"dB",
			onCampuses(Messages.DeviceOffsetRule_15And6Find));
	public static final Parameter PLACES = Parameter.count("fewest-places",
			Messages.DeviceOffsetRule_placesWhereBothStood, 10, 3, 10_000,
			onCampuses(Messages.DeviceOffsetRule_5And20FindThe));

	private static final Threshold NORMAL_95 = new Threshold(Messages.DeviceOffsetRule_standardDeviationsToEitherSide,
			1.96,
			standard(Messages.DeviceOffsetRule_95OfTheNormalDistribution));

	public DeviceOffsetRule() {
		super("device-offset", Messages.DeviceOffsetRule_aDeviceThatReadsToo,
				Messages.DeviceOffsetRule_readingsOfTwoDevicesSome,
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
			return RuleOutcome.notApplicable(Messages.DeviceOffsetRule_samplesAreNotOfTwo);
		}
		findings.sort(Comparator.comparing(f -> f.subjects().get(0).label()));
		return compared ? RuleOutcome.found(findings)
				: RuleOutcome.notApplicable(Words.bind(Messages.DeviceOffsetRule_noTwoDevicesStoodAt,
						settings.countOf(PLACES), RuleWords.metres(settings.of(METRES))));
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
				Messages.DeviceOffsetRule_readsDbThanAtWhere, name,
				Math.abs(offsetDb), offsetDb > 0 ? "more" : "less", than, Count.of(n, "place"), low, high,
				known == 0 ? "" : String.format(Locale.ROOT, Messages.DeviceOffsetRule_beyondTheDbAlreadyTaken, known));
		findings.add(Finding.of(this).message(message).about(map.deviceNamed(name))
				.beside(List.of(map.deviceNamed(than))).figure("offset", offsetDb, "dB").figure("low", low, "dB")
				.figure("high", high, "dB").figure("places", n, "")
				.remedy(new Remedy.CalibrateDevice(map.deviceNamed(name).id(), name, whole))
				.build());
	}
}
