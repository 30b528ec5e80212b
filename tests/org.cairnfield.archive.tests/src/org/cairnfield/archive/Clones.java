package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;

import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;
import org.cairnfield.model.Archive;

/** A bare repository and the archives of several people that are copies of it. */
public final class Clones implements AutoCloseable {

	/** One second later each time it is asked. */
	private static final class Ticking extends Clock {

		private Instant now;

		Ticking(Instant start) {
			now = start;
		}

		@Override
		public Instant instant() {
			now = now.plusSeconds(1);
			return now;
		}

		@Override
		public ZoneId getZone() {
			return ZoneOffset.UTC;
		}

		@Override
		public Clock withZone(ZoneId zone) {
			throw new UnsupportedOperationException();
		}
	}

	/** A change of an archive. */
	public interface Edit {
		void of(Archive archive) throws IOException;
	}

	private final Path folder;
	private final Path meeting;
	private final RemoteUrl url;
	private final Map<String, OpenArchive> open = new LinkedHashMap<>();
	private final ArchiveStore store = new ArchiveStore(new Ticking(Instant.parse("2031-05-01T10:00:00Z")));

	/** @param first makes the archive, from which the others have copied it */
	public Clones(Path folder, Edit content, String first, String... others) throws IOException {
		this(folder, folder.resolve("meeting.git"), content, first, others);
	}

	/** With the bare repository in a place of its own. */
	Clones(Path folder, Path meeting, Edit content, String first, String... others) throws IOException {
		this.folder = folder;
		this.meeting = meeting;
		this.url = RemoteUrl.parse(meeting.toString());
		OpenArchive made = store.create(folder.resolve(first), "Marrow Quay");
		open.put(first, made);
		content.of(made.archive());
		made.savePoint(Person.named(first), "the beginning");
		made.exchange().connect(url);
		exchange(first);
		for (String person : others) {
			open.put(person, store.open(store.copy(url, folder.resolve(person), Progress.NONE), Mode.EDIT));
		}
	}

	RemoteUrl url() {
		return url;
	}

	Path remote() {
		return meeting;
	}

	Path folder(String person) {
		return folder.resolve(person);
	}

	public OpenArchive of(String person) {
		return open.get(person);
	}

	public Archive archive(String person) {
		return open.get(person).archive();
	}

	/** Closes the archive of a person, to work on its folder by other means. */
	public void close(String person) throws IOException {
		open.get(person).close();
	}

	public void open(String person) throws IOException {
		open.put(person, store.open(folder.resolve(person), Mode.EDIT));
	}

	/** Makes a change and a save point of it. */
	public void edit(String person, Edit edit) throws IOException {
		edit.of(archive(person));
		open.get(person).savePoint(Person.named(person), null);
	}

	public Exchanged exchange(String person) throws IOException {
		return open.get(person).exchange().run(Person.named(person), null, true, Progress.NONE);
	}

	Exchanged look(String person) throws IOException {
		return open.get(person).exchange().look(Progress.NONE);
	}

	@Override
	public void close() throws IOException {
		for (OpenArchive each : open.values()) {
			each.close();
		}
	}
}
