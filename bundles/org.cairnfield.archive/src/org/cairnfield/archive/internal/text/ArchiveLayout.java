package org.cairnfield.archive.internal.text;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Ids;

/** Which file of an archive holds what. Paths are below its folder, with / between steps. */
public final class ArchiveLayout {

	/** Everything but what the other files hold. */
	public static final String STRUCTURE = "archive.xmi";
	/** Tells Git to leave line ends alone. */
	public static final String ATTRIBUTES = ".gitattributes";
	/** Has one file. */
	public static final String PEOPLE_FOLDER = "people";
	/** Who may sign for whom. */
	public static final String PEOPLE = PEOPLE_FOLDER + "/allowed_signers";

	/** The gates that a release has to pass. */
	public static final String GATES = "releases/gates.txt";

	private static final String SURVEYS = "surveys/";
	private static final String SPLITS = "splits/";
	private static final String LEDGERS = "ledger/";
	private static final String RELEASES = "releases/";
	private static final String SAMPLES_END = ".samples";
	private static final String PARTS_END = ".parts";
	private static final String SPLIT_END = ".split";
	private static final String LEDGER_END = ".ledger";

	private ArchiveLayout() {
	}

	/** The file with the samples of a survey. */
	public static String samples(String site, String survey) throws ArchiveException {
		return SURVEYS + usable(site, "site") + '/' + usable(survey, "survey") + SAMPLES_END;
	}

	/** The file with a part of the samples of a large survey, see {@link SampleParts}; {@code samples} is the path of their list. */
	public static String part(String samples, String name) {
		return samples.substring(0, samples.length() - SAMPLES_END.length()) + PARTS_END + '/' + name + SAMPLES_END;
	}

	/** Whether a path is that of a file with a part of the samples of a survey. */
	public static boolean isSurveyPart(String path) {
		return path.startsWith(SURVEYS) && path.endsWith(SAMPLES_END) && slashes(path) == 3
				&& path.substring(0, path.lastIndexOf('/')).endsWith(PARTS_END);
	}

	/** The path that content is known by: for a part of the samples of a survey that of their list, for any other file its own. */
	public static String whole(String path) {
		return isSurveyPart(path) ? path.substring(0, path.lastIndexOf('/') - PARTS_END.length()) + SAMPLES_END : path;
	}

	/** The file with a split. */
	public static String split(String id) throws ArchiveException {
		return SPLITS + usable(id, "split") + SPLIT_END;
	}

	/** The file with a ledger. */
	public static String ledger(String id) throws ArchiveException {
		return LEDGERS + usable(id, "ledger") + LEDGER_END;
	}

	private static String usable(String id, String what) throws ArchiveException {
		if (!Ids.isUsable(id)) {
			throw new ArchiveException(Words.bind(Messages.ArchiveLayout_nothingWasSavedTheId, id, what),
					Messages.ArchiveLayout_giveItAnIdOf);
		}
		return id;
	}

	/** The file that tells of a release. */
	public static String release(String version) {
		return RELEASES + version + ".json";
	}

	/** Whether a path is that of a file that tells of a release. */
	public static boolean isManifest(String path) {
		return isRelease(path) && path.endsWith(".json");
	}

	/** Whether a path is that of a file about releases. */
	public static boolean isRelease(String path) {
		return path.startsWith(RELEASES);
	}

	/** Whether a file stays as it is when an earlier state is restored: one about releases, and who may sign for whom. */
	public static boolean outlivesRestoring(String path) {
		return isRelease(path) || path.equals(PEOPLE);
	}

	/** Whether a path is that of a file of the archive, or of a folder that has such. */
	public static boolean isPart(String path) {
		return path.equals(STRUCTURE) || path.equals(ATTRIBUTES) || kind(path) != null || isFolder(path)
				|| path.startsWith(RELEASES) || path.startsWith("plans/") || path.equals(PEOPLE);
	}

	private static boolean isFolder(String path) {
		return path.equals("surveys")
				|| path.startsWith(SURVEYS) && (slashes(path) == 1 || slashes(path) == 2 && path.endsWith(PARTS_END))
				|| path.equals("splits") || path.equals("ledger") || path.equals("releases") || path.equals("plans")
				|| path.equals(PEOPLE_FOLDER);
	}

	/** What a file holds; null for one that is not of the archive's own making. */
	public static FileKind kind(String path) {
		if (path.equals(STRUCTURE)) {
			return FileKind.STRUCTURE;
		}
		int slashes = slashes(path);
		if (path.startsWith(SURVEYS) && path.endsWith(SAMPLES_END) && slashes == 2 || isSurveyPart(path)) {
			return FileKind.SAMPLES;
		}
		if (path.startsWith(SPLITS) && path.endsWith(SPLIT_END) && slashes == 1) {
			return FileKind.SPLIT;
		}
		return path.startsWith(LEDGERS) && path.endsWith(LEDGER_END) && slashes == 1 ? FileKind.LEDGER : null;
	}

	private static int slashes(String path) {
		return (int) path.chars().filter(c -> c == '/').count();
	}
}
