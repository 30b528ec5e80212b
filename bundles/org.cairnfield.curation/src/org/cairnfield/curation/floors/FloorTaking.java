package org.cairnfield.curation.floors;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.floors.FloorChange.Drawn;
import org.cairnfield.exchange.AtomicFile;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.exchange.floors.FramePlace;
import org.cairnfield.exchange.floors.MappedFloors;
import org.cairnfield.exchange.floors.MappedLevel;
import org.cairnfield.exchange.floors.PlacedLevel;
import org.cairnfield.exchange.floors.SvgPlan;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ChangeCommand;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Sha256;

/**
 * What taking in floor plans does to a site, worked out before anything is done: floors get outlines and plan images, and those that the
 * site does not have are made. The archive passed in is only read, and may be a copy; {@link #command} changes one.
 */
public final class FloorTaking {

	private final String siteId;
	private final Georeference placed;
	private final List<FloorChange> changes;
	private final List<String> notes;

	private FloorTaking(String siteId, Georeference placed, List<FloorChange> changes, List<String> notes) {
		this.siteId = siteId;
		this.placed = placed;
		this.changes = List.copyOf(changes);
		this.notes = List.copyOf(notes);
	}

	/**
	 * @param siteId of the site of the archive
	 * @throws IntakeException where the plans cannot be those of the site; the message says why and what helps
	 */
	public static FloorTaking of(Archive archive, String siteId, MappedFloors floors, FloorWish wish)
			throws IntakeException {
		Site site = ArchiveIndex.of(archive).site(siteId).orElseThrow();
		List<String> notes = new ArrayList<>();
		List<MappedLevel> levels = LevelChoice.of(floors, ModelText.name(site), wish, notes);
		SiteSamples samples = new SiteSamples(site);
		Georeference known = site.getGeoreference();
		if (known != null && wish.place()) {
			notes.add(Words.bind(Messages.FloorTaking_theSiteHasAPlace, known));
		}
		Georeference where = known != null ? known : place(site, floors, levels, wish, samples, notes);
		FloorNaming naming = new FloorNaming(site);
		List<FloorChange> changes = new ArrayList<>();
		for (MappedLevel level : levels) {
			changes.add(change(site, floors, level, level.ordinal() + wish.shift(), where, naming, samples));
		}
		FloorNotes.add(site, changes, samples, notes);
		notes.addAll(floors.notes());
		return new FloorTaking(siteId, known == null ? where : null, changes, notes);
	}

	private static Georeference place(Site site, MappedFloors floors, List<MappedLevel> levels, FloorWish wish,
			SiteSamples samples, List<String> notes)
			throws IntakeException {
		if (!wish.place()) {
			throw new IntakeException(floors.file(), 0,
					Words.bind(Messages.FloorTaking_siteHasNoPlaceOn, ModelText.name(site)),
					Messages.FloorTaking_sayWhereItLiesEdit);
		}
		try {
			SiteFrame.Anchor anchor = FramePlace.of(levels, samples.middle());
			Georeference placed = new Georeference(anchor.latitudeDegrees(), anchor.longitudeDegrees(),
					anchor.bearingDegrees());
			notes.add(Words.bind(Messages.FloorTaking_theSiteIsPlacedAt, placed, samples.middle() == null
					? Messages.FloorTaking_itsOriginAtTheSouth
					: Messages.FloorTaking_theMiddleOfItsSamples));
			return placed;
		} catch (IllegalArgumentException e) {
			throw new IntakeException(floors.file(), 0,
					Words.bind(Messages.FloorTaking_theSiteCannotBePlaced, e.getMessage()),
					Messages.FloorTaking_sayWhereTheSiteLies);
		}
	}

	private static FloorChange change(Site site, MappedFloors floors, MappedLevel level, int number, Georeference where,
			FloorNaming naming, SiteSamples samples)
			throws IntakeException {
		Optional<Floor> floor = ArchiveIndex.floor(site, number);
		Drawn before = floor.map(FloorTaking::drawn).orElse(Drawn.NOTHING);
		PlacedLevel placed = placed(floors, level, where);
		Outline outline = placed.outline().map(FloorTaking::outline).orElse(before.outline());
		if (outline != null && !(outline.areaSquareMetres() > 0)) {
			throw new IntakeException(floors.file(), 0,
					Words.bind(Messages.FloorTaking_levelItsOutlineEnclosesNothing, level.feature()),
					Messages.FloorTaking_drawItAnew);
		}
		SvgPlan plan = SvgPlan.of(placed);
		Drawn after = plan == null ? new Drawn(outline, before.image(), before.placement())
				: new Drawn(outline,
						PlanFiles.name(site.getId(), number, Sha256.of(plan.text().getBytes(StandardCharsets.UTF_8)),
								"svg"),
						new Placement(plan.metresPerPixel(), 0, plan.xMetres(), plan.yMetres()));
		return new FloorChange(number, floor.map(ModelText::name).orElseGet(() -> naming.of(level.name(), number)),
				floor.isEmpty(), level, before, after,
				plan == null ? null : plan.text(), samples.fit(number, outline));
	}

	private static PlacedLevel placed(MappedFloors floors, MappedLevel level, Georeference where)
			throws IntakeException {
		try {
			return PlacedLevel.of(level,
					new SiteFrame.Anchor(where.latitudeDegrees(), where.longitudeDegrees(), where.bearingDegrees()));
		} catch (IllegalArgumentException e) {
			throw new IntakeException(floors.file(), 0,
					Words.bind(Messages.FloorTaking_levelCannotBeOnThis, level.feature(), e.getMessage()),
					Messages.FloorTaking_chooseTheSiteWhosePlans);
		}
	}

	private static Drawn drawn(Floor floor) {
		return new Drawn(floor.getOutline(), floor.getPlanImage(), floor.getPlanPlacement());
	}

	private static Outline outline(Polygon polygon) {
		double[] x = new double[polygon.size()];
		double[] y = new double[x.length];
		for (int i = 0; i < x.length; i++) {
			x[i] = polygon.xMetres(i);
			y[i] = polygon.yMetres(i);
		}
		return Outline.of(x, y);
	}

	/** By rising level, also of floors that stay as they are. */
	public List<FloorChange> changes() {
		return changes;
	}

	/** What a person should know before and after, a sentence each. */
	public List<String> notes() {
		return notes;
	}

	/** Where the site is said to lie by this; empty where it was known. */
	public Optional<Georeference> placed() {
		return Optional.ofNullable(placed);
	}

	/** Whether there is anything to do. */
	public boolean isChange() {
		return placed != null || changes.stream().anyMatch(FloorChange::isChange);
	}

	/**
	 * Writes the plan images into the folder of the archive, where the command's floors will find them. Their names have their content in
	 * them, so no other image is touched; where one cannot be written, none of them is left. Works on any thread.
	 *
	 * @throws IntakeException where one cannot be written
	 */
	public void write(OpenArchive archive) throws IntakeException {
		List<Path> written = new ArrayList<>();
		try {
			for (FloorChange change : changes) {
				if (change.svg() != null && change.isChange()) {
					Path file = archive.resolve(change.after().image());
					if (!Files.exists(file)) {
						Files.createDirectories(file.getParent());
						AtomicFile.write(file, change.svg().getBytes(StandardCharsets.UTF_8));
						written.add(file);
					}
				}
			}
		} catch (IOException e) {
			written.forEach(file -> file.toFile().delete());
			throw new IntakeException(archive.folder(), 0,
					Words.bind(Messages.FloorTaking_aPlanImageCouldNot, e.getMessage()),
					Messages.FloorTaking_makeRoomOnTheDisk);
		}
	}

	/** Writes the images and makes the change, for who keeps no steps to undo; does nothing where nothing would change. */
	public void apply(OpenArchive archive) throws IntakeException {
		if (isChange()) {
			write(archive);
			command(archive.archive()).execute();
		}
	}

	/** Makes the change in an archive that has the site, as one step; it cannot be executed where nothing would change. */
	public ChangeCommand command(Archive archive) {
		Site site = ArchiveIndex.of(archive).site(siteId).orElseThrow();
		List<FloorStep> steps = changes.stream().filter(FloorChange::isChange).map(change -> FloorStep.of(site, change))
				.toList();
		Georeference before = site.getGeoreference();
		List<Object> affected = new ArrayList<>(steps.stream().map(FloorStep::floor).toList());
		if (placed != null) {
			affected.add(site);
		}
		return new ChangeCommand(
				Words.bind(Messages.FloorTaking_takeInFloorPlansOf, ModelText.name(site),
						Count.of(steps.size(), "floor")),
				() -> {
					if (placed != null) {
						site.setGeoreference(placed);
					}
					steps.forEach(FloorStep::make);
				}, () -> {
					steps.forEach(FloorStep::takeBack);
					if (placed != null) {
						site.setGeoreference(before);
					}
				}, affected);
	}
}
