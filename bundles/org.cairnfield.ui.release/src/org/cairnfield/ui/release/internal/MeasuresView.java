package org.cairnfield.ui.release.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.ui.part.ViewPart;

/** How the map positions, by each way of matching and by earlier releases on the same test samples: in all, by floor, and where it is worst. */
public final class MeasuresView extends ViewPart implements ReleaseDesk.Listener {

	private static final String NONE = Messages.MeasuresView_noEarlierRelease;
	private static final String ALL = Messages.MeasuresView_allReleases;

	private final ReleaseDesk desk = ReleaseDesk.workbench();
	private Button measure;
	private Combo earlier;
	private Label from;
	private TableViewer ways;
	private TableViewer floors;
	private WorstPane worst;
	private SideBySide shown;

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(4).margins(6, 4).applyTo(page);
		measure = Forms.button(page, Messages.MeasuresView_measure, "measures.measure", () -> desk.measure(compared()));
		new Label(page, SWT.NONE).setText(Messages.MeasuresView_andWithIt);
		earlier = new Combo(page, SWT.READ_ONLY);
		earlier.setData("org.cairnfield.id", "measures.earlier");
		earlier.setToolTipText(Messages.MeasuresView_releasesWhoseOwnMapsAre);
		earlier.addListener(SWT.Selection, event -> desk.measure(compared()));
		from = new Label(page, SWT.NONE);
		from.setData("org.cairnfield.id", "measures.from");
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(from);
		CTabFolder tabs = new CTabFolder(page, SWT.BOTTOM);
		tabs.setData("org.cairnfield.id", "measures.tabs");
		GridDataFactory.fillDefaults().grab(true, true).span(4, 1).hint(300, 80).applyTo(tabs);
		createWays(tabs);
		floors = Forms.table(tabs, SWT.SINGLE, "measures.floors", Messages.MeasuresView_errorsByFloor);
		tab(tabs, Messages.MeasuresView_byFloor, floors.getTable());
		worst = new WorstPane(tabs, desk);
		tab(tabs, Messages.MeasuresView_worstSamples, worst.control());
		tabs.setSelection(0);
		desk.add(this);
	}

	private static void tab(CTabFolder tabs, String title, Control control) {
		CTabItem item = new CTabItem(tabs, SWT.NONE);
		item.setText(title);
		item.setControl(control);
	}

	private void createWays(CTabFolder tabs) {
		ways = Forms.table(tabs, SWT.SINGLE, "measures.table", Messages.MeasuresView_waysOfMatching);
		tab(tabs, Messages.MeasuresView_waysOfMatching, ways.getTable());
		Forms.<Way>column(ways, Messages.MeasuresView_wayOfMatching, 142, SWT.LEFT, way -> way.name());
		Forms.<Way>column(ways, Messages.MeasuresView_meanErrorM, 122, SWT.RIGHT,
				way -> metres(way.errors().meanMetres()));
		Forms.<Way>column(ways, Messages.MeasuresView_95OfMeanM, 136, SWT.RIGHT,
				way -> metres(way.mean().low()) + " … " + metres(way.mean().high()));
		Forms.<Way>column(ways, Messages.MeasuresView_toPlain, 72, SWT.RIGHT, way -> ratio(way.ratio()));
		Forms.<Way>column(ways, Messages.MeasuresView_95OfRatio, 112, SWT.RIGHT,
				way -> ratio(way.ratioInterval().low()) + " … " + ratio(way.ratioInterval().high()));
		Forms.<Way>column(ways, Messages.MeasuresView_medianM, 94, SWT.RIGHT,
				way -> metres(way.errors().medianMetres()));
		Forms.<Way>column(ways, "75 %, m", 76, SWT.RIGHT, way -> metres(way.errors().p75Metres()));
		Forms.<Way>column(ways, "95 %, m", 76, SWT.RIGHT, way -> metres(way.errors().p95Metres()));
		Forms.<Way>column(ways, Messages.MeasuresView_rightFloor, 90, SWT.RIGHT,
				way -> percent(way.errors().siteAndFloorHitRate()));
		Forms.<Way>column(ways, Messages.MeasuresView_compared, 90, SWT.RIGHT,
				way -> String.format(Locale.ROOT, "%,.0f", way.comparisons()));
		Forms.<Way>column(ways, Messages.MeasuresView_comparedOfPlain, 136, SWT.RIGHT,
				way -> percent(way.comparisonShare()));
		Forms.<Way>column(ways, Messages.MeasuresView_bytesRead, 98, SWT.RIGHT,
				way -> String.format(Locale.ROOT, "%,.0f", way.bytes()));
		Forms.<Way>column(ways, Messages.MeasuresView_readOfPlain, 106, SWT.RIGHT, way -> percent(way.byteShare()));
		Forms.<Way>column(ways, Messages.MeasuresView_how, 420, SWT.LEFT, way -> way.how());
		ways.getTable().getColumn(9).setToolTipText(Messages.MeasuresView_fingerprintsComparedForOnePosition);
		ways.getTable().getColumn(11).setToolTipText(Messages.MeasuresView_bytesOfItsPackThat);
	}

	static String metres(double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%.2f", value);
	}

	private static String ratio(double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%.3f", value);
	}

	private static String percent(double share) {
		return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
	}

	private List<String> compared() {
		int at = earlier.getSelectionIndex();
		List<String> versions = desk.releases().stream().map(release -> release.version().toString()).toList();
		return at <= 0 ? List.of() : at == 1 ? versions : versions.subList(at - 2, at - 1);
	}

	@Override
	public void deskChanged() {
		listReleases();
		measure.setEnabled(desk.session().isPresent() && !desk.isMeasuring() && !desk.isAsking());
		earlier.setEnabled(desk.session().isPresent() && !desk.releases().isEmpty());
		Optional<SideBySide> side = desk.side();
		from.setText(words(side));
		if (side.orElse(null) != shown) {
			shown = side.orElse(null);
			List<Way> columns = side.map(SideBySide::ways).orElse(List.of());
			ways.setInput(columns);
			showFloors(side, columns);
			worst.show(side);
		}
	}

	private void listReleases() {
		List<String> items = new ArrayList<>(List.of(NONE));
		if (!desk.releases().isEmpty()) {
			items.add(ALL);
			desk.releases().forEach(release -> items.add(NLS.bind(Messages.MeasuresView_release, release.version())));
		}
		if (!items.equals(List.of(earlier.getItems()))) {
			String chosen = earlier.getText();
			earlier.setItems(items.toArray(String[]::new));
			earlier.select(Math.max(0, items.indexOf(chosen)));
			earlier.getParent().layout();
		}
	}

	private String words(Optional<SideBySide> side) {
		if (desk.isMeasuring() || desk.isAsking()) {
			return Messages.MeasuresView_matchingTheTestSamples;
		} else if (!desk.measuringProblem().isEmpty()) {
			return desk.measuringProblem();
		} else if (side.isEmpty()) {
			return Messages.MeasuresView_measureTheMapOnThe;
		} else if (side.get().ways().isEmpty()) {
			return Messages.MeasuresView_thereIsNoTestSurvey;
		}
		return NLS.bind(Messages.MeasuresView_onTestSamplesAllOn, side.get().test().size());
	}

	/** A column a way: mean error, 95 % of the errors, and share on the right floor. */
	private void showFloors(Optional<SideBySide> side, List<Way> columns) {
		floors.setInput(null);
		for (TableColumn old : floors.getTable().getColumns()) {
			old.dispose();
		}
		Forms.<SideBySide.OnFloor>column(floors, Messages.MeasuresView_site, 150, SWT.LEFT, SideBySide.OnFloor::site);
		Forms.<SideBySide.OnFloor>column(floors, Messages.MeasuresView_floor, 55, SWT.RIGHT,
				floor -> String.valueOf(floor.level()));
		Forms.<SideBySide.OnFloor>column(floors, Messages.MeasuresView_testSamples, 105, SWT.RIGHT,
				floor -> String.valueOf(floor.samples()));
		for (int c = 0; c < columns.size(); c++) {
			int at = c;
			Way way = columns.get(c);
			Forms.<SideBySide.OnFloor>column(floors, way.name(), 185, SWT.RIGHT,
					floor -> metres(floor.ways().get(at).meanMetres()) + " m, "
							+ metres(floor.ways().get(at).p95Metres()) + " m, "
							+ percent(floor.ways().get(at).rightShare()));
			floors.getTable().getColumn(3 + c)
					.setToolTipText(NLS.bind(Messages.MeasuresView_meanError95OfThe, way.how()));
		}
		Forms.<SideBySide.OnFloor>column(floors, "", 10, SWT.LEFT, floor -> ""); // takes the room that is left
		floors.setInput(side.map(SideBySide::floors).orElse(List.of()));
	}

	@Override
	public void setFocus() {
		Marked.focus(measure);
	}

	@Override
	public void dispose() {
		desk.remove(this);
		super.dispose();
	}
}
