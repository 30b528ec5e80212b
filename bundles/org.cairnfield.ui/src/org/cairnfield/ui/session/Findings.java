package org.cairnfield.ui.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.curation.check.RuleCheck;
import org.cairnfield.curation.check.KeptWaiver;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.work.Soon;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/**
 * What the rules say of the archive on show. They look again beside the user interface shortly after each change, at what has
 * changed only.
 */
public final class Findings {

	private static final int PATIENCE_MILLIS = 300;

	private final ArchiveSession session;
	private RuleCheck last;
	private Map<String, List<Finding>> bySample = Map.of();
	private Map<String, List<Finding>> byAddress = Map.of();
	private Job job;
	private final Soon soon = new Soon(PATIENCE_MILLIS, this::check);

	Findings(ArchiveSession session) {
		this.session = session;
	}

	/** Looks again once nothing more has changed for a moment. */
	public void checkSoon() {
		soon.request();
	}

	private void check() {
		if (job != null) {
			job.cancel();
		}
		Archive still = ArchiveCopy.of(session.archive());
		Job[] own = new Job[1];
		own[0] = Work.start(Messages.Findings_checkingTheArchive, workers -> RuleCheck.remembering(still, workers),
				result -> accept(own[0], result), problem -> fail(own[0], problem));
		job = own[0];
		session.tell(SessionListener::findingsChanged);
	}

	private void accept(Job of, RuleCheck result) {
		if (job != of) { // a newer one is on its way
			return;
		}
		job = null;
		last = result;
		Map<String, List<Finding>> addresses = new HashMap<>();
		for (Finding finding : result.open()) {
			for (Subject subject : finding.subjects()) {
				if (subject instanceof Subject.OfAccessPoint accessPoint) {
					addresses.computeIfAbsent(accessPoint.address(), id -> new ArrayList<>(1)).add(finding);
				}
			}
		}
		bySample = result.openBySample();
		byAddress = addresses;
		session.tell(SessionListener::findingsChanged);
	}

	private void fail(Job of, Exception problem) {
		if (job == of) {
			job = null;
			Problems.log(Messages.Findings_theCheckDidNotFinish, problem);
			session.tell(SessionListener::findingsChanged);
		}
	}

	/** Stops looking. */
	public void cancel() {
		soon.cancel();
		if (job != null) {
			job.cancel();
			job = null;
			session.tell(SessionListener::findingsChanged);
		}
	}

	/** Whether the rules are looking, or about to. */
	public boolean isChecking() {
		return soon.isDue() || job != null;
	}

	/** What they said last; empty before the first look is done. */
	public Optional<RuleCheck> last() {
		return Optional.ofNullable(last);
	}

	/** Findings that nobody has waived, worst first. */
	public List<Finding> open() {
		return last == null ? List.of() : last.open();
	}

	/** All waivers of the archive, with what each covers. */
	public List<KeptWaiver> waivers() {
		return last == null ? List.of() : KeptWaiver.of(session.archive(), last.findings());
	}

	/** How many open findings are so severe. */
	public long count(Severity severity) {
		return open().stream().filter(finding -> finding.severity() == severity).count();
	}

	/** The counts, in words. */
	public String summary() {
		if (last == null) {
			return isChecking() ? Messages.Findings_checkingForTheFirstTime : Messages.Findings_notCheckedYet;
		}
		return NLS.bind(Messages.Findings_waived,
				new Object[] { count(Severity.ERROR, "error"), count(Severity.WARNING, "warning"),
						count(Severity.NOTE, "note"), last.waived().size(), notAsked(),
						isChecking() ? Messages.Findings_checkingAgain : "" });
	}

	/** Who sees few findings must see why. */
	private String notAsked() {
		long off = RuleSettings.of(session.archive()).rules().told().stream().filter(told -> told.parameter() == null)
				.count();
		return off == 0 ? "" : NLS.bind(Messages.Findings_notAsked, Count.of(off, "rule"));
	}

	private String count(Severity severity, String what) {
		return Count.of(count(severity), what);
	}

	/** Open findings about a sample, worst first. */
	public List<Finding> of(SampleRef sample) {
		return bySample.isEmpty() ? List.of()
				: bySample.getOrDefault(
						SampleKey.text(sample.survey().getId(), sample.survey().table().id(sample.row())), List.of());
	}

	/** Open findings about an access point. */
	public List<Finding> of(AccessPoint accessPoint) {
		return byAddress.getOrDefault(ModelText.address(accessPoint), List.of());
	}

	/** Names, {@code survey/sample}, of all samples that an open finding is about. */
	public Collection<String> samples() {
		return Collections.unmodifiableSet(bySample.keySet());
	}
}
