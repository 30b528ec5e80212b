package org.cairnfield.ui.review.internal.evidence;

import java.util.List;
import java.util.Locale;

import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.FingerprintPair;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.charts.Fingerprints;
import org.cairnfield.ui.charts.PairedBars;
import org.cairnfield.ui.review.internal.desk.DeskListener;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Two fingerprints as paired bars, and in figures how alike they are. */
final class PairPane implements DeskListener {

	private final ReviewDesk desk;
	private final Composite page;
	private final Button carrier;
	private final Button nearest;
	private final Label facts;
	private final PairedBars bars;

	PairPane(Composite parent, ReviewDesk desk) {
		this.desk = desk;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 3).spacing(8, 2).applyTo(page);
		carrier = other(Messages.PairPane_withItsCarrier, "pair.carrier", true);
		carrier.setToolTipText(Messages.PairPane_theLabelledSampleThatIt);
		nearest = other(Messages.PairPane_withTheNearestLabelledSample, "pair.nearest", false);
		nearest.setToolTipText(Messages.PairPane_theLabelledSampleWhoseFingerprint);
		facts = Marked.line(page, "pair.facts", 2);
		bars = Marked.id(new PairedBars(page, SWT.NONE), "pair.bars");
		bars.setName(Messages.PairPane_twoFingerprints);
		bars.setOrder(Fingerprints.Order.SHARED_FIRST);
		bars.setEmptyText(Messages.PairPane_takeUpASampleOf);
		GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(bars);
		desk.add(this);
		page.addListener(SWT.Dispose, event -> desk.remove(this));
		currentChanged();
	}

	private Button other(String title, String id, boolean selected) {
		Button button = Marked.id(new Button(page, SWT.RADIO), id);
		button.setText(title);
		button.setSelection(selected);
		button.addListener(SWT.Selection, event -> currentChanged());
		return button;
	}

	@Override
	public void splitChanged() {
		currentChanged();
	}

	@Override
	public void currentChanged() {
		if (page.isDisposed()) {
			return;
		}
		Evidence evidence = desk.review().evidence().of(desk.review().current());
		SplitOnMap onMap = desk.review().evidence().onMap();
		SampleKey other = evidence == null ? null : carrier.getSelection() ? evidence.carrier() : evidence.nearest();
		int first = evidence == null ? -1 : onMap.index(evidence.sample());
		int second = other == null ? -1 : onMap.index(other);
		carrier.setEnabled(evidence != null && evidence.carrier() != null);
		nearest.setEnabled(evidence != null && evidence.nearest() != null);
		if (first < 0 || second < 0) {
			bars.setFingerprints(null);
			Marked.say(facts,
					evidence == null ? "" : NLS.bind(Messages.PairPane_hasNoSuchSampleBeside, evidence.sample()));
			return;
		}
		FingerprintPair pair = FingerprintPair.of(onMap.map(), first, second);
		bars.setFingerprints(fingerprints(pair, evidence.sample().sample(), other.sample()));
		Marked.say(facts, describe(pair, evidence, carrier.getSelection()));
	}

	private static Fingerprints fingerprints(FingerprintPair pair, String first, String second) {
		List<String> addresses = pair.rows().stream().map(FingerprintPair.Row::address).toList();
		double[][] levels = {
				pair.rows().stream().mapToDouble(row -> row.firstDbm() == null ? Double.NaN : row.firstDbm()).toArray(),
				pair.rows().stream().mapToDouble(row -> row.secondDbm() == null ? Double.NaN : row.secondDbm())
						.toArray() };
		return new Fingerprints(List.of(first, second), addresses, levels);
	}

	private static String describe(FingerprintPair pair, Evidence evidence, boolean isCarrier) {
		String shared = String.format(Locale.ROOT, Messages.PairPane_ofAccessPointsSharedOverlap, pair.shared(),
				pair.rows().size(),
				pair.overlap());
		String levels = Double.isNaN(pair.levelR()) ? Messages.PairPane_tooFewSharedToCorrelate
				: String.format(Locale.ROOT, Messages.PairPane_rOfTheirLevels, pair.levelR());
		String strength = isCarrier
				? String.format(Locale.ROOT, Messages.PairPane_strengthROfDistancesTo, evidence.strengthR())
				: "";
		return shared + ", " + levels + strength + '.';
	}

	void setFocus() {
		Marked.focus(bars);
	}
}
