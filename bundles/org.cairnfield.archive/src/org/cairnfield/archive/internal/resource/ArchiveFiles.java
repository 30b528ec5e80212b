package org.cairnfield.archive.internal.resource;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Content;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Ids;
import org.cairnfield.model.values.Sha256;
import org.eclipse.emf.ecore.EObject;

/** Which files an archive is written to, and with which bytes: the same content always gives the same. */
public final class ArchiveFiles {

	private ArchiveFiles() {
	}

	/**
	 * The files of lines, by path, each with what it is to hold.
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
					throw new ArchiveException("nothing was saved: survey " + survey.getId() + " names the device '"
							+ survey.getDevice().getId() + "', which is not in the archive", "add the device, or name another");
				}
			}
		}
		for (Device device : archive.getDevices()) {
			claim(seen, device.getId(), "device");
		}
		for (AccessPoint accessPoint : archive.getAccessPoints()) {
			claim(seen, accessPoint.getId(), "access point");
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
			throw new ArchiveException("nothing was saved: the id '" + id + "' of a " + what + " can not be used",
					"give it an id of letters, digits, '_', '-' and '.'");
		}
		String other = seen.putIfAbsent(id.toLowerCase(Locale.ROOT), what);
		if (other != null) {
			throw new ArchiveException("nothing was saved: the id '" + id + "' is that of a " + other + " and of a " + what
					+ " (upper and lower case count as the same)", "give one of them another id");
		}
	}

	/** Writes the structure file. */
	public static void writeStructure(Archive archive, OutputStream out) throws IOException {
		StructureXml.write(StructureCopy.of(archive), out);
	}

	/** Writes a file of lines. */
	public static void writePart(EObject root, OutputStream out) throws IOException {
		PartResource.write(root, out);
	}

	/**
	 * SHA-256 of the content, in hexadecimal digits: of the paths and digests of all files in order, as they would be
	 * written. Releases carry it, so it has to stay the same for the same content, whatever the program's version.
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
