package org.cairnfield.archive.internal.resource;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.PartReport;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.internal.text.SampleParts;
import org.cairnfield.archive.internal.text.SamplesText;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.check.SiblingNames;
import org.cairnfield.model.values.Ids;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.InternalEList;

/** Reads all files of an archive into one model. Whatever is wrong with one of them, the others are read. */
public final class ArchiveReader {

	/** What the history knows of the files that are read. */
	public interface Committed {

		/** Whether the file is, byte by byte, in the last commit. */
		boolean has(String path) throws IOException;

		/** The file of the last commit; null if there is none. */
		byte[] content(String path) throws IOException;
	}

	/** Where nothing is known of a history. */
	public static final Committed NOTHING = new Committed() {
		@Override
		public boolean has(String path) {
			return false;
		}

		@Override
		public byte[] content(String path) {
			return null;
		}
	};

	/** Where the files are those of a commit. */
	public static final Committed VOUCHED = new Committed() {
		@Override
		public boolean has(String path) {
			return true;
		}

		@Override
		public byte[] content(String path) {
			return null;
		}
	};

	private final FileSource files;
	private final Migrations migrations;
	private final Committed committed;
	private final ResourceSet set = Uris.closedSet();
	private final List<Damage> damages = new ArrayList<>();
	private final List<String> notices = new ArrayList<>();
	private final Map<String, Resource> parts = new TreeMap<>();
	private final Set<String> outdated = new TreeSet<>();
	private final Set<String> seen = new HashSet<>();
	private final Map<String, List<String>> surveyParts;

	private ArchiveReader(FileSource files, Migrations migrations, Committed committed) {
		this.files = files;
		this.migrations = migrations;
		this.committed = committed;
		this.surveyParts = WholeSurveys.parts(files);
	}

	/** @throws IOException where the files can not be read at all */
	public static Loaded read(FileSource files, Migrations migrations, Committed committed) throws IOException {
		ArchiveReader reader = new ArchiveReader(files, migrations, committed);
		Archive archive = reader.readStructure();
		if (archive != null) {
			reader.readSamples(archive);
			reader.readSplits(archive);
			reader.readLedgers(archive);
			reader.reportStrays();
			reader.notices.addAll(SiblingNames.problems(archive));
		} else {
			archive = ModelFactory.eINSTANCE.createArchive();
			archive.setName("");
			reader.set.getResources().clear();
			Resource empty = new StructureXml(Uris.of(ArchiveLayout.STRUCTURE));
			reader.set.getResources().add(empty);
			empty.getContents().add(archive);
		}
		for (Resource resource : reader.set.getResources()) {
			resource.setTrackingModification(true);
			resource.setModified(false);
		}
		return new Loaded(archive, List.copyOf(reader.damages), List.copyOf(reader.notices), reader.parts,
				reader.outdated);
	}

	/**
	 * The structure alone: samples, splits and ledgers are references.
	 *
	 * @param notes told where it can not be read
	 * @return null where it is not there or can not be read
	 */
	public static Archive structure(FileSource files, Migrations migrations, List<String> notes) throws IOException {
		if (!files.has(ArchiveLayout.STRUCTURE)) {
			return null;
		}
		PartReport report = new PartReport(ArchiveLayout.STRUCTURE);
		try (InputStream in = files.open(ArchiveLayout.STRUCTURE)) {
			Archive archive = new StructureReader(report).read(in.readAllBytes(), migrations, Uris.closedSet());
			if (archive == null) {
				notes.add(Words.bind(Messages.ArchiveReader_isDamagedInOneOf, ArchiveLayout.STRUCTURE,
						report.damages().get(0).reason()));
			}
			return archive;
		}
	}

	private Archive readStructure() throws IOException {
		PartReport report = new PartReport(ArchiveLayout.STRUCTURE);
		Archive archive = null;
		if (files.has(ArchiveLayout.STRUCTURE)) {
			try (InputStream in = files.open(ArchiveLayout.STRUCTURE)) {
				archive = new StructureReader(report).read(in.readAllBytes(), migrations, set);
			}
		} else {
			report.damage(0, Messages.ArchiveReader_isMissing);
		}
		finish(report);
		return archive != null ? archive : lastCommitted();
	}

	/** Better the structure of the last save point than samples that belong nowhere. */
	private Archive lastCommitted() throws IOException {
		byte[] content = committed.content(ArchiveLayout.STRUCTURE);
		if (content == null) {
			return null;
		}
		set.getResources().clear();
		PartReport report = new PartReport(ArchiveLayout.STRUCTURE);
		Archive archive = new StructureReader(report).read(content, migrations, set);
		if (archive != null) {
			notices.add(Words.bind(Messages.ArchiveReader_shownAsOfTheLast, ArchiveLayout.STRUCTURE));
		}
		return archive;
	}

	private void readSamples(Archive archive) throws IOException {
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				EObject reference = (EObject) survey.eGet(ModelPackage.Literals.SURVEY__SAMPLES, false);
				if (reference != null) {
					String path = ArchiveLayout.samples(site.getId(), survey.getId());
					EObject root = !refersTo(reference, path) ? null
							: isInParts(path) ? readParts(path) : readWhole(path);
					survey.setSamples((Samples) root);
				}
			}
		}
	}

	/** Parts without a list, or with one that is damaged, are shown all the same. */
	private boolean isInParts(String path) throws IOException {
		if (!files.has(path)) {
			return surveyParts.containsKey(path);
		}
		try (InputStream in = new BufferedInputStream(files.open(path))) {
			return SampleParts.isList(in) || surveyParts.containsKey(path) && !SampleParts.isWhole(in);
		}
	}

	private EObject readWhole(String path) throws IOException {
		EObject root = readPart(path);
		if (root instanceof Samples samples && samples.getTable().size() > SampleParts.LARGEST_WHOLE
				&& outdated.add(path)) {
			notices.add(
					Words.bind(Messages.ArchiveReader_isOfFormat1Which, path));
		}
		return root;
	}

	private EObject readParts(String path) throws IOException {
		PartReport report = new PartReport(path);
		List<String> listed = new ArrayList<>();
		if (files.has(path)) {
			try (InputStream in = files.open(path)) {
				SampleParts.list(in, report).forEach(name -> listed.add(ArchiveLayout.part(path, name)));
			}
		} else {
			report.damage(0, Messages.ArchiveReader_isMissing);
		}
		finish(report);
		seen.add(path);
		SamplesText.Reading reading = new SamplesText.Reading();
		for (String part : report.damages().isEmpty() ? listed : surveyParts.getOrDefault(path, List.of())) {
			seen.add(part);
			PartReport of = new PartReport(part);
			read(of, in -> reading.add(in, migrations, of));
			finish(of);
		}
		PartReport together = new PartReport(path);
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(reading.table(together));
		finish(together);
		PartResource resource = PartResource.of(Uris.of(path), samples);
		set.getResources().add(resource);
		parts.put(path, resource);
		return samples;
	}

	private void readSplits(Archive archive) throws IOException {
		for (EObject reference : takeAll(archive.getSplits())) {
			String path = pathOf(reference, FileKind.SPLIT);
			Split split = path == null ? null : (Split) readPart(path);
			if (split != null) {
				if (!Ids.isUsable(split.getId()) || !path.equals(ArchiveLayout.split(split.getId()))) {
					damage(path, Words.bind(Messages.ArchiveReader_holdsTheSplitWhichIs, split.getId()));
				} else {
					archive.getSplits().add(split);
				}
			}
		}
	}

	private void readLedgers(Archive archive) throws IOException {
		for (EObject reference : takeAll(archive.getLedgers())) {
			String path = pathOf(reference, FileKind.LEDGER);
			Ledger ledger = path == null ? null : (Ledger) readPart(path);
			if (ledger != null) {
				if (!Ids.isUsable(ledger.getId()) || !path.equals(ArchiveLayout.ledger(ledger.getId()))) {
					damage(path, Words.bind(Messages.ArchiveReader_holdsTheLedgerWhichIs, ledger.getId()));
				} else {
					archive.getLedgers().add(ledger);
				}
			}
		}
	}

	private static <T extends EObject> List<EObject> takeAll(EList<T> list) {
		List<EObject> references = new ArrayList<>(((InternalEList<T>) list).basicList());
		list.clear();
		return references;
	}

	private String pathOf(EObject reference, FileKind kind) {
		String path = reference.eIsProxy() ? Uris.path(((InternalEObject) reference).eProxyURI()) : null;
		if (path == null || ArchiveLayout.kind(path) != kind || !refersTo(reference, path)) {
			if (path == null || ArchiveLayout.kind(path) != kind) {
				refuse(reference);
			}
			return null;
		}
		if (parts.containsKey(path)) {
			damage(ArchiveLayout.STRUCTURE, Words.bind(Messages.ArchiveReader_refersToTwice, path));
			return null;
		}
		return path;
	}

	private boolean refersTo(EObject reference, String path) {
		if (reference.eIsProxy() && ((InternalEObject) reference).eProxyURI().equals(StructureCopy.reference(path))) {
			return true;
		}
		refuse(reference);
		return false;
	}

	private void refuse(EObject reference) {
		damage(ArchiveLayout.STRUCTURE, reference.eIsProxy()
				? Words.bind(Messages.ArchiveReader_refersToWhichIsNo, ((InternalEObject) reference).eProxyURI())
				: Messages.ArchiveReader_holdsWhatBelongsInA);
	}

	private void damage(String file, String reason) {
		PartReport report = new PartReport(file);
		report.damage(0, reason);
		damages.addAll(report.damages());
	}

	private EObject readPart(String path) throws IOException {
		PartReport report = new PartReport(path);
		if (!files.has(path)) {
			report.damage(0, Messages.ArchiveReader_isMissing);
			damages.addAll(report.damages());
			return null;
		}
		PartResource resource = new PartResource(Uris.of(path));
		set.getResources().add(resource);
		read(report, in -> resource.read(in, migrations, report));
		finish(report);
		parts.put(path, resource);
		seen.add(path);
		return resource.getContents().isEmpty() ? null : resource.getContents().get(0);
	}

	private interface Reading {
		void read(InputStream in) throws IOException;
	}

	private void read(PartReport report, Reading reading) throws IOException {
		if (!files.has(report.file())) {
			report.damage(0, Messages.ArchiveReader_isMissing);
			return;
		}
		try (InputStream in = files.open(report.file())) {
			reading.read(in);
		} catch (ArchiveException e) {
			report.damage(0, e.getMessage());
		}
	}

	private void finish(PartReport report) throws IOException {
		if (report.isOnlyChanged() && committed.has(report.file())) {
			report.acceptChange();
		}
		if (report.damages().isEmpty() && !report.notices().isEmpty()) {
			outdated.add(ArchiveLayout.whole(report.file()));
		}
		damages.addAll(report.damages());
		notices.addAll(report.notices());
	}

	private void reportStrays() {
		for (String path : files.paths()) {
			FileKind kind = ArchiveLayout.kind(path);
			if (kind != null && kind != FileKind.STRUCTURE && !seen.contains(path)
					&& damages.stream().noneMatch(damage -> damage.file().equals(path))) {
				String list = ArchiveLayout.isSurveyPart(path) ? ArchiveLayout.whole(path) : ArchiveLayout.STRUCTURE;
				damages.add(new Damage(path, 0, Words.bind(Messages.ArchiveReader_isNotPartOfThe, list),
						Words.bind(Messages.ArchiveReader_moveItElsewhereOrRestore, list)));
			}
		}
	}
}
