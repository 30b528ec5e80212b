package org.cairnfield.archive.internal.text;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.Damage;
import org.cairnfield.core.text.Words;

/** What reading one file has found besides its content. */
public final class PartReport {

	/** More lines than this are counted, not listed. */
	private static final int MOST_LISTED = 20;
	private static final String RESTORE = Messages.PartReport_restoreTheFileFromThe;

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
		notice(Messages.PartReport_itsLinesEndWithCr);
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
		notice(Messages.PartReport_wasChangedByAnotherProgram);
	}

	/** All that is wrong, none if the file is sound. */
	public List<Damage> damages() {
		List<Damage> all = new ArrayList<>(damages);
		if (more > 0) {
			all.add(new Damage(file, 0, Words.bind(Messages.PartReport_moreLinesAreDamaged, more), RESTORE));
		}
		if (sealBroken) {
			all.add(new Damage(file, 0, Messages.PartReport_doesNotMatchItsChecksum,
					Messages.PartReport_ifTheChangeIsMeant));
		}
		return all;
	}

	/** What a person may want to know although nothing is wrong. */
	public List<String> notices() {
		return List.copyOf(notices);
	}
}
