package org.cairnfield.archive.internal.resource;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Content;
import org.cairnfield.archive.internal.disk.FileChanges;
import org.cairnfield.archive.internal.disk.FileSource;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.SampleParts;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Sha256;
import org.eclipse.emf.ecore.EObject;

/** Which files an archive is written to, and with which bytes: the same content always gives the same. */
public final class ArchiveFiles {

	private ArchiveFiles() {
	}

	/**
	 * What belongs in files of lines, by path. The samples of a large survey lie in several files, beside the one of that path.
	 *
	 * @throws ArchiveException where ids can not name files, or would name the same one
	 */
	public static SortedMap<String, EObject> parts(Archive archive) throws ArchiveException {
		checkIds(archive);
		SortedMap<String, EObject> parts = new TreeMap<>();
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (survey.getSamples() != null) {
					parts.put(ArchiveLayout.samples(site.getId(), survey.getId()), survey.getSamples());
				}
			}
		}
		for (Split split : archive.getSplits()) {
			parts.put(ArchiveLayout.split(split.getId()), split);
		}
		for (Ledger ledger : archive.getLedgers()) {
			parts.put(ArchiveLayout.ledger(ledger.getId()), ledger);
		}
		return parts;
	}

	/** Names of files and references within the structure must be told apart on any file system. */
	private static void checkIds(Archive archive) throws ArchiveException {
		Map<String, String> seen = new HashMap<>();
		for (Site site : archive.getSites()) {
			claim(seen, site.getId(), "site");
			for (Survey survey : site.getSurveys()) {
				claim(seen, survey.getId(), "survey");
				if (survey.getDevice() != null && survey.getDevice().eContainer() != archive) {
					throw new ArchiveException(
							Words.bind(Messages.ArchiveFiles_nothingWasSavedSurveyNames, survey.getId(),
									survey.getDevice().getId()),
							Messages.ArchiveFiles_addTheDeviceOrName);
				}
			}
		}
		for (Device device : archive.getDevices()) {
			claim(seen, device.getId(), "device");
		}
		for (AccessPoint accessPoint : archive.getAccessPoints()) {
			claim(seen, accessPoint.getId(), Messages.ArchiveFiles_accessPoint);
		}
		seen.clear();
		for (Split split : archive.getSplits()) {
			claim(seen, split.getId(), "split");
		}
		seen.clear();
		for (Ledger ledger : archive.getLedgers()) {
			claim(seen, ledger.getId(), "ledger");
		}
	}

	private static void claim(Map<String, String> seen, String id, String what) throws ArchiveException {
		if (!Ids.isUsable(id)) {
			throw new ArchiveException(Words.bind(Messages.ArchiveFiles_nothingWasSavedTheId, id, what),
					Messages.ArchiveFiles_giveItAnIdOf);
		}
		String other = seen.putIfAbsent(id.toLowerCase(Locale.ROOT), what);
		if (other != null) {
			throw new ArchiveException(
					Words.bind(Messages.ArchiveFiles_nothingWasSavedTheId2, id, other, what),
					Messages.ArchiveFiles_giveOneOfThemAnother);
		}
	}

	/** What the structure file is to hold, of the archive as it is now. */
	public static Content structure(Archive archive) throws ArchiveException {
		Archive copy = StructureCopy.of(archive);
		return out -> StructureXml.write(copy, out);
	}

	/** Writes the structure file. */
	public static void writeStructure(Archive archive, OutputStream out) throws IOException {
		StructureXml.write(StructureCopy.of(archive), out);
	}

	/** Writes all that belongs at a path into one file of lines. */
	public static void writePart(EObject root, OutputStream out) throws IOException {
		PartResource.write(root, out);
	}

	/**
	 * Tells which files of lines are to hold what belongs at a path: one or, for a large survey, several. Of those, files that
	 * hold it already are not told.
	 *
	 * @param path as in {@link #parts}
	 * @param now  the files as they are
	 * @return paths of the files that change
	 */
	public static SortedSet<String> put(String path, EObject root, FileSource now, FileChanges changes)
			throws IOException {
		SampleTable table = root instanceof Samples samples ? samples.getTable() : null;
		List<SampleParts.Part> parts = table == null ? List.of() : SampleParts.of(table);
		SortedMap<String, Content> files = new TreeMap<>();
		files.put(path, parts.isEmpty() ? out -> writePart(root, out) : out -> SampleParts.writeList(parts, out));
		parts.forEach(part -> files.put(ArchiveLayout.part(path, part.name()), out -> part.write(table, out)));
		SortedSet<String> changed = new TreeSet<>();
		for (Map.Entry<String, Content> file : files.entrySet()) {
			boolean goes = parts.isEmpty() ? changes.put(file.getKey(), file.getValue())
					: putWhereOther(file.getKey(), file.getValue(), now, changes);
			if (goes) {
				changed.add(file.getKey());
			}
		}
		deleteParts(path, now, changes, changed, files.keySet());
		return changed;
	}

	/** Parts are small, and most have not changed: looking costs less than writing. */
	private static boolean putWhereOther(String path, Content content, FileSource now, FileChanges changes)
			throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		content.writeTo(bytes);
		if (now.has(path)) {
			try (InputStream in = now.open(path)) {
				if (Arrays.equals(in.readAllBytes(), bytes.toByteArray())) {
					return false;
				}
			}
		}
		return changes.put(path, bytes::writeTo);
	}

	/** Tells that what belongs at a path is to be gone; otherwise as {@link #put}. */
	public static SortedSet<String> delete(String path, FileSource now, FileChanges changes) throws IOException {
		SortedSet<String> changed = new TreeSet<>();
		if (changes.delete(path)) {
			changed.add(path);
		}
		deleteParts(path, now, changes, changed, Set.of());
		return changed;
	}

	private static void deleteParts(String path, FileSource now, FileChanges changes, Set<String> changed,
			Set<String> kept) throws IOException {
		for (String part : WholeSurveys.parts(now).getOrDefault(path, List.of())) {
			if (!kept.contains(part) && changes.delete(part)) {
				changed.add(part);
			}
		}
	}

	/**
	 * SHA-256 of the content, in hexadecimal digits: of the paths of {@link #parts} and the digests of what belongs there, each
	 * in one file as the first version of the formats has it. Releases carry it, so it has to stay the same for the same content,
	 * whatever the program's version.
	 */
	public static String digest(Archive archive) throws IOException {
		MessageDigest all = Sha256.begin();
		add(all, ArchiveLayout.STRUCTURE, out -> writeStructure(archive, out));
		for (Map.Entry<String, EObject> part : parts(archive).entrySet()) {
			add(all, part.getKey(), out -> writePart(part.getValue(), out));
		}
		return Sha256.hex(all);
	}

	private static void add(MessageDigest all, String path, Content content)
			throws IOException {
		MessageDigest one = Sha256.begin();
		content.writeTo(new DigestOutputStream(OutputStream.nullOutputStream(), one));
		all.update((path + '\n' + Sha256.hex(one) + '\n').getBytes(StandardCharsets.UTF_8));
	}
}
