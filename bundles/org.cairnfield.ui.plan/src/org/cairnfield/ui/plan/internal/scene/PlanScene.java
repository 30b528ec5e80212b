package org.cairnfield.ui.plan.internal.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.curation.measure.Landing;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Outline;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.SampleColouring;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.internal.colour.ErrorColours;
import org.cairnfield.ui.plan.internal.errors.ErrorsShown;
import org.cairnfield.ui.plan.internal.errors.FloorErrors;
import org.cairnfield.ui.plan.internal.geometry.Bounds;
import org.cairnfield.ui.plan.internal.geometry.PointGrid;
import org.cairnfield.ui.plan.internal.model.EstimatedPlace;
import org.cairnfield.ui.plan.internal.model.MountedPlace;
import org.cairnfield.ui.plan.internal.raster.FloorLayer;
import org.cairnfield.ui.plan.internal.raster.FloorRaster;
import org.cairnfield.ui.plan.internal.raster.Ink;
import org.cairnfield.ui.plan.internal.raster.PlanPicture;
import org.cairnfield.ui.plan.internal.raster.Rgb;
import org.cairnfield.ui.plan.internal.raster.SampleMark;
import org.cairnfield.ui.plan.internal.surface.FloorSurface;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.Companion;
import org.cairnfield.ui.scope.CompanionRole;
import org.cairnfield.ui.scope.MarkedPlace;
import org.cairnfield.ui.session.ArchiveSession;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;

/** What the plan shows of a floor at the moment. */
public final class PlanScene {

	/** Around what is to be seen, in metres. */
	private static final double EDGE_METRES = 1;

	private Ink ink;
	private ArchiveSession session;
	private SampleColouring colouring;
	private Floor floor;
	private ErrorsShown shown;
	private FloorErrors errors;
	private SampleRows samples = SampleRows.NONE;
	private double[] xMetres = new double[0];
	private double[] yMetres = new double[0];
	private PointGrid grid = new PointGrid(xMetres, yMetres);
	private SampleColours colours;
	private byte[] marks = new byte[0];
	/** How many samples are marked as of test surveys. */
	private int tests;
	private BitSet selected = new BitSet();
	private BitSet carriers = new BitSet();
	private BitSet members = new BitSet();
	private List<SampleLabel> labels = List.of();
	private BitSet found = new BitSet();
	private PlanPicture picture;
	private List<EstimatedPlace> places = List.of();
	private List<MountedPlace> mounted = List.of();
	private FloorSurface surface;
	private boolean outlineHidden;

	public PlanScene(Ink ink, SampleColouring colouring) {
		this.ink = ink;
		this.colouring = colouring;
	}

	/** Shows a floor, or none (null); image and places of the floor before are gone. */
	public void show(ArchiveSession of, Floor shown) {
		session = of;
		floor = shown;
		picture = null;
		surface = null;
		places = List.of();
		readSamples();
	}

	/** Takes samples, known places, colours, findings and selection anew. */
	public void readSamples() {
		mounted = floor == null ? List.of() : MountedPlace.on(floor, archive());
		SampleRows all = floor == null ? SampleRows.NONE : SampleRows.of(floor);
		errors = shown == null || shown.map() == null ? null : FloorErrors.of(shown, all);
		samples = shown == null ? all : errors == null ? SampleRows.NONE : errors.samples();
		xMetres = IntStream.range(0, samples.size()).mapToDouble(i -> samples.table(i).xMetres(samples.row(i)))
				.toArray();
		yMetres = IntStream.range(0, samples.size()).mapToDouble(i -> samples.table(i).yMetres(samples.row(i)))
				.toArray();
		grid = new PointGrid(xMetres, yMetres);
		readMarked();
		found = foundNow();
		mark();
		colour();
	}

	/** Shows the errors of a way of matching in place of the map, or the map again (null). */
	public void showErrors(ErrorsShown other) {
		shown = other;
		readSamples();
	}

	/** What is shown in place of the map; null for the map. */
	public ErrorsShown shown() {
		return shown;
	}

	/** Errors on this floor; null where none are shown. */
	public FloorErrors errors() {
		return errors;
	}

	/** Takes the colours anew. @return whether any sample looks other than before */
	public boolean colour() {
		SampleColours before = colours;
		colours = session == null ? null
				: errors == null ? colouring.colours(samples, session, background())
						: ErrorColours.of(errors, background());
		return before == null || colours == null || !before.looks().equals(colours.looks())
				|| !Arrays.equals(before.lookOf(), colours.lookOf());
	}

	/** Colours in another way from now on. */
	public void colourBy(SampleColouring other) {
		colouring = other;
		colour();
	}

	/** How many samples there are, and how many of them are selected; empty for none. */
	public String summary() {
		int chosen = selected.cardinality();
		return samples.size() == 0 ? ""
				: ShownNumbers.text(samples.size(), 0) + (errors == null ? Messages.PlanScene_samples + ofTests()
						: Messages.PlanScene_testSamplesArrowsLeadFrom)
						+ (chosen == 0 ? "" : NLS.bind(Messages.PlanScene_selected, ShownNumbers.text(chosen, 0)));
	}

	private String ofTests() {
		return tests == 0 ? "" : NLS.bind(Messages.PlanScene_ofThemForTests, ShownNumbers.text(tests, 0));
	}

	/** Whether samples of test surveys are marked as such, beside others. */
	public boolean marksTests() {
		return tests > 0;
	}

	/** Colours what is not data in another way, and what is as it stands out from that. */
	public void ink(Ink other) {
		ink = other;
		colour();
	}

	/** The choice of colours. */
	public SampleColouring colouring() {
		return colouring;
	}

	private RGB background() {
		return Rgb.rgb(ink.background());
	}

	/** Takes the selection anew. @return the samples that look other than before */
	public BitSet readSelection() {
		BitSet changed = (BitSet) selected.clone();
		BitSet carriersBefore = carriers;
		BitSet membersBefore = members;
		readMarked();
		changed.xor(selected);
		carriersBefore.xor(carriers);
		membersBefore.xor(members);
		changed.or(carriersBefore);
		changed.or(membersBefore);
		mark();
		return changed;
	}

	private void readMarked() {
		selected = session == null ? new BitSet() : indices(session.selection().samples());
		carriers = companions(CompanionRole.CARRIER);
		members = companions(CompanionRole.MEMBER);
		labels = session == null ? List.of() : labelsNow(session.selection());
	}

	private BitSet companions(CompanionRole role) {
		BitSet found = session == null ? new BitSet()
				: indices(session.selection().beside().stream().filter(each -> each.role() == role)
						.map(Companion::sample).toList());
		found.andNot(selected);
		return found;
	}

	/** Where samples are compared or places marked, each says what it is. */
	private List<SampleLabel> labelsNow(ArchiveSelection selection) {
		List<SampleLabel> found = new ArrayList<>();
		if (!selection.beside().isEmpty()) {
			selected.stream().forEach(index -> found.add(label(index, Messages.PlanScene_underReview)));
		}
		for (Companion each : selection.beside()) {
			int index = samples.indexOf(each.sample());
			if (index >= 0 && !selected.get(index)) {
				found.add(label(index, each.label()));
			}
		}
		crosses().forEach(place -> found.add(new SampleLabel(place.xMetres(), place.yMetres(), place.label())));
		return found;
	}

	private SampleLabel label(int sample, String text) {
		return new SampleLabel(xMetres[sample], yMetres[sample], text);
	}

	/** Places on this floor that are marked without a sample. */
	public List<MarkedPlace> crosses() {
		return session == null ? List.of()
				: session.selection().marked().stream().filter(place -> place.floor() == floor).toList();
	}

	/** Takes the findings anew. @return the samples that had or have one, not both */
	public BitSet readFindings() {
		BitSet now = foundNow();
		BitSet changed = (BitSet) found.clone();
		changed.xor(now);
		found = now;
		mark();
		return changed;
	}

	private void mark() {
		tests = 0;
		byte[] all = marks.length == samples.size() ? marks : new byte[samples.size()];
		for (int i = 0; i < all.length; i++) {
			boolean test = errors == null && samples.part(i).kind() == SurveyKind.TEST; // errors are of test samples only
			tests += test ? 1 : 0;
			all[i] = (byte) ((test ? SampleMark.TEST : 0)
					| (samples.table(i).isKept(samples.row(i)) ? SampleMark.KEPT : 0)
					| (found.get(i) ? SampleMark.FOUND : 0)
					| (carriers.get(i) ? SampleMark.CARRIER : 0)
					| (members.get(i) ? SampleMark.MEMBER : 0) | (selected.get(i) ? SampleMark.SELECTED : 0));
		}
		marks = all;
	}

	private BitSet indices(List<SampleRef> refs) {
		BitSet indices = new BitSet();
		for (SampleRef ref : refs) {
			int index = samples.indexOf(ref);
			if (index >= 0) {
				indices.set(index);
			}
		}
		return indices;
	}

	private BitSet foundNow() {
		BitSet now = new BitSet();
		if (session == null || shown != null) {
			return now;
		}
		ArchiveIndex index = ArchiveIndex.of(session.archive());
		return indices(session.findings().samples().stream().flatMap(key -> index.sample(key).stream()).toList());
	}

	/** Shows a plan image, or none (null). */
	public void picture(PlanPicture image) {
		picture = image;
	}

	/** The plan image; null for none, or while it is read. */
	public PlanPicture picture() {
		return picture;
	}

	/** Shows a surface below the samples, or none (null). */
	public void surface(FloorSurface other) {
		surface = other;
	}

	/** Leaves the outline out while it is drawn anew, or shows it again. */
	public void hideOutline(boolean hidden) {
		outlineHidden = hidden;
	}

	/** What is shown below the samples; null for none. */
	public FloorSurface surface() {
		return surface;
	}

	/** Shows places of access points; those of other floors are left out. */
	public void places(List<EstimatedPlace> all) {
		places = floor == null ? List.of()
				: all.stream().filter(place -> place.floorLevel() == floor.getLevel()).toList();
	}

	/** Places on this floor. */
	public List<EstimatedPlace> places() {
		return places;
	}

	/** Places of access points on this floor that somebody knows. */
	public List<MountedPlace> mounted() {
		return mounted;
	}

	/** The floor; null for none. */
	public Floor floor() {
		return floor;
	}

	/** The site of the floor; null for none. */
	public Site site() {
		return floor == null ? null : (Site) floor.eContainer();
	}

	/** The archive; null for none. */
	public Archive archive() {
		return session == null ? null : session.archive();
	}

	public SampleRows samples() {
		return samples;
	}

	/** Of all samples, metres; not to be changed. */
	public double[] xMetres() {
		return xMetres;
	}

	/** Of all samples, metres; not to be changed. */
	public double[] yMetres() {
		return yMetres;
	}

	public PointGrid grid() {
		return grid;
	}

	/** Null without an archive. */
	public SampleColours colours() {
		return colours;
	}

	/** Indices of the selected samples on this floor. */
	public BitSet selected() {
		return selected;
	}

	/** Likewise with those that they are compared with. */
	public BitSet marked() {
		BitSet all = (BitSet) selected.clone();
		all.or(carriers);
		all.or(members);
		return all;
	}

	/** Words at samples of this floor that are compared with each other, and at marked places; none otherwise. */
	public List<SampleLabel> labels() {
		return labels;
	}

	public Ink ink() {
		return ink;
	}

	/** Draws what is shown now. */
	public FloorRaster raster() {
		Outline outline = floor == null || outlineHidden ? null : floor.getOutline();
		return new FloorRaster(picture, outline, xMetres, yMetres, grid,
				colours == null ? List.of() : colours.looks(), colours == null ? new int[0] : colours.lookOf(), marks,
				ink,
				errors != null ? errorLayer() : surface == null ? null : surface.layer(background(), outlined()));
	}

	private FloorLayer errorLayer() {
		Bounds inside = outlined();
		List<FloorLayer.Patch> squares = errors.heat().stream().map(square -> {
			Bounds whole = new Bounds(square.leftMetres(), square.bottomMetres(),
					square.leftMetres() + square.sideMetres(),
					square.bottomMetres() + square.sideMetres());
			return new FloorLayer.Patch(inside.isEmpty() ? whole : whole.within(inside),
					ErrorColours.heat(square.meanMetres(), errors.topMetres(), background()));
		}).toList();
		List<FloorLayer.Arrow> arrows = errors.placed().placed().stream()
				.filter(each -> each.landing() == Landing.RIGHT_FLOOR || each.landing() == Landing.OTHER_FLOOR)
				.map(each -> new FloorLayer.Arrow(each.xMetres(), each.yMetres(), each.putXMetres(), each.putYMetres(),
						!each.isRight()))
				.toList();
		return new FloorLayer(squares, arrows, ink.line());
	}

	/** What a person wants to see: outline and samples, or the image where there is neither. */
	public Bounds bounds() {
		Bounds all = outlined();
		for (int i = 0; i < samples.size(); i++) {
			all = all.with(xMetres[i], yMetres[i]);
		}
		if (all.isEmpty() && picture != null) {
			for (int corner = 0; corner < 4; corner++) {
				int column = corner % 2 * picture.width();
				int row = corner / 2 * picture.height();
				all = all.with(picture.placement().xMetres(column, row), picture.placement().yMetres(column, row));
			}
		}
		return all.isEmpty() ? all : all.grown(EDGE_METRES);
	}

	private Bounds outlined() {
		Bounds all = Bounds.EMPTY;
		Outline outline = floor == null ? null : floor.getOutline();
		for (int i = 0; outline != null && i < outline.size(); i++) {
			all = all.with(outline.xMetres(i), outline.yMetres(i));
		}
		return all;
	}

	/** Round some samples. */
	public Bounds boundsOf(BitSet some) {
		Bounds all = Bounds.EMPTY;
		for (int i = some.nextSetBit(0); i >= 0; i = some.nextSetBit(i + 1)) {
			all = all.with(xMetres[i], yMetres[i]);
		}
		return all;
	}

	/** Samples as selections name them. */
	public List<SampleRef> refs(BitSet some) {
		List<SampleRef> refs = new ArrayList<>(some.cardinality());
		for (int i = some.nextSetBit(0); i >= 0; i = some.nextSetBit(i + 1)) {
			refs.add(samples.ref(i));
		}
		return refs;
	}
}
