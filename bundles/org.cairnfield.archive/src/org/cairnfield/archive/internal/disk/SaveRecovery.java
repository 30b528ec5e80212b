package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Sha256;

/** Finishes or throws away what an interrupted save has left. Needs the lock of the folder. */
public final class SaveRecovery {

	private SaveRecovery() {
	}

	/** Makes the private folder, which Git does not see. */
	public static void prepare(Disk disk, Path root) throws IOException {
		Path own = Places.privateFolder(root);
		disk.createFolder(own);
		disk.createFolder(Places.privateFolder(root, Places.PENDING));
		Path ignore = Places.privateFile(root, ".gitignore");
		if (!Files.exists(ignore)) {
			try (Disk.Sink out = disk.write(ignore)) {
				out.write("*\n".getBytes(StandardCharsets.UTF_8));
				out.sync();
			}
			disk.syncFolder(own);
			disk.syncFolder(root);
		}
	}

	/**
	 * Afterwards the folder is as before the interrupted save or as after it.
	 *
	 * @return what stands in the way; nothing was changed then
	 */
	public static List<Damage> run(Disk disk, Path root) throws IOException {
		Journal journal;
		try {
			journal = Journal.read(root);
		} catch (Journal.BrokenException e) {
			return List.of(broken(e));
		}
		if (journal != null) {
			List<Damage> obstacles = obstacles(root, journal);
			if (!obstacles.isEmpty()) {
				return obstacles;
			}
			Applying applying = new Applying(disk, root);
			applying.apply(journal);
			applying.forget();
		}
		clear(disk, root, Places.privateFolder(root, Places.PENDING));
		return List.of();
	}

	static Damage broken(Journal.BrokenException cause) {
		return new Damage(Places.JOURNAL, 0, cause.getMessage(),
				Messages.SaveRecovery_anInterruptedSaveCanNot);
	}

	/** Files that are neither as the save found them nor as it leaves them. */
	private static List<Damage> obstacles(Path root, Journal journal) throws IOException {
		List<Damage> found = new ArrayList<>();
		for (Journal.Step step : journal.steps()) {
			Path target;
			try {
				target = Places.inside(root, step.path());
			} catch (ArchiveException e) {
				found.add(new Damage(Places.JOURNAL, 0, e.getMessage(),
						Messages.SaveRecovery_restoreTheLastSavePoint));
				continue;
			}
			String now = Places.isFile(target) ? Sha256.of(target) : Journal.ABSENT;
			boolean done = now.equals(step.deletes() ? Journal.ABSENT : step.digest());
			if (done) {
				continue;
			}
			if (!now.equals(step.before())) {
				found.add(new Damage(step.path(), 0, Messages.SaveRecovery_changedByAnotherProgramWhile,
						Messages.SaveRecovery_restoreTheLastSavePoint2));
			} else if (!step.deletes() && !isSound(root, step)) {
				found.add(new Damage(step.path(), 0,
						Messages.SaveRecovery_anInterruptedSaveCanNot2,
						Words.bind(Messages.SaveRecovery_restoreTheLastSavePoint3, Places.JOURNAL)));
			}
		}
		return found;
	}

	private static boolean isSound(Path root, Journal.Step step) throws IOException {
		Path pending = Places.pendingFile(root, step.pending());
		return Places.isFile(pending) && Files.size(pending) == step.size() && Sha256.of(pending).equals(step.digest());
	}

	/** Moves a save that can not be finished out of the way, into a folder that is there already. */
	public static void setAside(Path root, Path folder) throws IOException {
		if (Places.isFile(Journal.file(root))) {
			Files.move(Journal.file(root), folder.resolve("journal"));
			Path pending = Places.privateFolder(root, Places.PENDING);
			Files.move(pending, folder.resolve("pending"));
			Files.createDirectory(pending);
		}
	}

	private static void clear(Disk disk, Path root, Path pending) throws IOException {
		if (Places.isFolder(pending)) {
			try (DirectoryStream<Path> left = Files.newDirectoryStream(pending)) {
				for (Path file : left) {
					disk.delete(Places.requireKind(root, file, !Places.isFolder(file), "file")); // a link goes, not what it names
				}
			}
		}
	}
}
