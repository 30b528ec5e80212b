package org.cairnfield.ui.internal.fingerprint;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.charts.Fingerprints;
import org.cairnfield.ui.charts.PairedBars;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.Companion;
import org.cairnfield.ui.scope.CompanionRole;
import org.cairnfield.ui.scope.ShortAddresses;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** What the selected samples heard, side by side where there are several. An access point chosen here is that of all parts. */
public final class FingerprintView extends ViewPart implements SessionListener {

	private Text facts;
	private PairedBars bars;
	private Map<String, AccessPoint> shown = Map.of();
	private ArchiveSession session;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		facts = new Text(page, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP);
		Marked.named(Marked.id(facts, "fingerprint.facts"), Messages.FingerprintView_aboutTheSample);
		GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(100, SWT.DEFAULT).applyTo(facts);
		bars = new PairedBars(page, SWT.NONE);
		bars.setData("org.cairnfield.id", "fingerprint.bars");
		bars.setName(Messages.FingerprintView_fingerprint);
		bars.setEmptyText(Messages.FingerprintView_selectOneSampleToSee);
		bars.setOrder(Fingerprints.Order.SHARED_FIRST);
		bars.onChosen(this::choose);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(bars);
		Sessions.workbench().add(this);
	}

	private void choose(int item) {
		if (session != null && item >= 0 && item < bars.accessPoints().size()) {
			AccessPoint accessPoint = shown.get(bars.accessPoints().get(item));
			if (accessPoint != null) {
				session.select(session.selection().withAccessPoint(accessPoint));
			}
		}
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		show();
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		if (!before.samples().equals(now.samples()) || !before.beside().equals(now.beside())) {
			show();
		}
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		show();
	}

	@Override
	public void findingsChanged() {
		facts.setText(describe(samples()));
		facts.getParent().layout();
	}

	private List<SampleRef> samples() {
		return session == null ? List.of()
				: compared().limit(Fingerprints.MOST_SAMPLES).toList();
	}

	/** Of those beside only the carrier: the reviewer's question is how alike these two are. */
	private Stream<SampleRef> compared() {
		return Stream.concat(session.selection().samples().stream(), session.selection().beside().stream()
				.filter(companion -> companion.role() == CompanionRole.CARRIER).map(Companion::sample));
	}

	private void show() {
		List<SampleRef> samples = samples();
		facts.setText(describe(samples));
		bars.setFingerprints(samples.isEmpty() ? null : fingerprints(samples));
		facts.getParent().layout();
	}

	private Fingerprints fingerprints(List<SampleRef> samples) {
		Map<String, double[]> levels = new LinkedHashMap<>();
		for (int s = 0; s < samples.size(); s++) {
			SampleTable table = samples.get(s).survey().table();
			int row = samples.get(s).row();
			for (int k = 0; k < table.heard(row); k++) {
				levels.computeIfAbsent(table.accessPoints().get(table.accessPoint(row, k)), id -> {
					double[] notHeard = new double[samples.size()];
					Arrays.fill(notHeard, Double.NaN);
					return notHeard;
				})[s] = table.rssiDbm(row, k);
			}
		}
		ArchiveIndex index = ArchiveIndex.of(session.archive());
		Map<String, String> addresses = new LinkedHashMap<>();
		levels.keySet().forEach(id -> addresses.put(id, index.accessPoint(id).map(ModelText::address).orElse(id)));
		Map<String, String> labels = ShortAddresses.of(addresses.values());
		shown = new HashMap<>();
		addresses.forEach((id, address) -> shown.put(labels.get(address), index.accessPoint(id).orElse(null)));
		double[][] bySample = new double[samples.size()][];
		for (int s = 0; s < bySample.length; s++) {
			int sample = s;
			bySample[s] = levels.values().stream().mapToDouble(each -> each[sample]).toArray();
		}
		return new Fingerprints(samples.stream().map(sample -> sample.survey().table().id(sample.row())).toList(),
				addresses.values().stream().map(labels::get).toList(), bySample);
	}

	private String describe(List<SampleRef> samples) {
		StringBuilder text = new StringBuilder();
		for (SampleRef sample : samples) {
			SampleTable table = sample.survey().table();
			int row = sample.row();
			text.append(
					String.format(Locale.ROOT, Messages.FingerprintView_floorXMYM, table.id(row), table.floorLevel(row),
							table.xMetres(row), table.yMetres(row), table.heard(row)));
			if (!table.isKept(row)) {
				text.append(Messages.FingerprintView_setAside).append(table.reason(row));
			}
			for (Finding finding : session.findings().of(sample)) {
				text.append("\n  ").append(finding.severity().code()).append(": ").append(finding.rule());
			}
			text.append('\n');
		}
		int more = session == null ? 0 : (int) compared().count() - samples.size();
		return more > 0 ? NLS.bind(Messages.FingerprintView_andMore, text, more) : text.toString().stripTrailing();
	}

	@Override
	public void setFocus() {
		Marked.focus(bars);
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(this);
		super.dispose();
	}
}
