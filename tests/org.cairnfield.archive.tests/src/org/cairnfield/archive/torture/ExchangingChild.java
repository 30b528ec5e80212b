package org.cairnfield.archive.torture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.internal.merge.RandomWork;
import org.cairnfield.core.task.Progress;

/** Works on an archive at random and exchanges it: {@code FOLDER PERSON SEED}. Says what it is about to do, so as to be killed. */
public final class ExchangingChild {

	private ExchangingChild() {
	}

	/** Waits for a line before each exchange, so that the others have work to be taken in. */
	public static void main(String[] args) throws IOException {
		Person person = Person.named(args[1]);
		try (OpenArchive open = new ArchiveStore().open(Path.of(args[0]), Mode.EDIT)) {
			RandomWork.in(open.archive(), person.name(), new Random(Long.parseLong(args[2])));
			open.savePoint(person, null);
			say("saved ");
			System.in.read();
			say("exchanging");
			open.exchange().run(person, null, true, Progress.NONE);
			say("exchanged ");
		} catch (ArchiveException e) {
			say("refused " + e.getMessage().replace('\n', ' '));
		}
	}

	private static void say(String line) {
		System.out.println(line);
		System.out.flush();
	}
}
