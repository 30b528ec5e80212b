package org.cairnfield.archive.internal.text;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.Damage;

/** What reading one file has found besides its content. */
public final class PartReport {

	/** More lines than this are counted, not listed. */
	private static final int MOST_LISTED = 20;
	private static final String RESTORE = "restore the file from the last save point, or mend it in a text editor and commit it with Git";

	private final String file;
	private final List<Damage> damages = new ArrayList<>();
	private final List<String> notices = new ArrayList<>();
	private long more;
	private boolean sealBroken;

	/** @param file path below the folder of the archive */
	public PartReport(String file) {
		this.file = file;
	}

	/** The path of the file. */
	public String file() {
		return file;
	}

	/** @param line from 1, or 0 for the file as a whole */
	public void damage(long line, String reason) {
		damage(line, reason, RESTORE);
	}

	void damage(long line, String reason, String remedy) {
		if (damages.size() < MOST_LISTED) {
			damages.add(new Damage(file, line, reason, remedy));
		} else {
			more++;
		}
	}

	/** The file is in order by its form, but is not the one that was saved. */
	void brokenSeal() {
		sealBroken = true;
	}

	/** Lines end with CR LF, which a text editor or Git may have made of LF. */
	void carriageReturns() {
		notice("its lines end with CR LF since another program wrote it; the next save writes LF");
	}

	/** Something a person may want to know. */
	public void notice(String what) {
		notices.add(file + ": " + what);
	}

	/** Whether something is wrong besides the seal. */
	public boolean isDamaged() {
		return !damages.isEmpty();
	}

	/** Whether nothing is wrong but that the seal does not match: as when somebody edited the file. */
	public boolean isOnlyChanged() {
		return sealBroken && damages.isEmpty();
	}

	/** Takes the change for meant, as the file was committed like this. */
	public void acceptChange() {
		sealBroken = false;
		notice("was changed by another program and committed with Git; it is taken as it is");
	}

	/** All that is wrong, none if the file is sound. */
	public List<Damage> damages() {
		List<Damage> all = new ArrayList<>(damages);
		if (more > 0) {
			all.add(new Damage(file, 0, more + " more lines are damaged", RESTORE));
		}
		if (sealBroken) {
			all.add(new Damage(file, 0, "does not match its checksum: it was changed by another program, or is damaged",
					"if the change is meant, commit the file with Git; if not, restore it from the last save point"));
		}
		return all;
	}

	/** What a person may want to know although nothing is wrong. */
	public List<String> notices() {
		return List.copyOf(notices);
	}
}
