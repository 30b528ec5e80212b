package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.cairnfield.archive.fault.LockOwner;

/**
 * What a lock file says.
 *
 * @param startMillis when the process began, by its machine; −1 if not known. Tells a process from a later one that got
 *                    the same number
 * @param token       of this one taking of the lock
 */
record LockNote(LockOwner owner, long startMillis, String token) {

	private static final int LARGEST_BYTES = 4096;
	/** The start of a process may be told anew after a change of the clock, a little off. */
	private static final long SAME_START_MILLIS = 2000;
	private static final LockOwner UNKNOWN = new LockOwner("unknown", "", 0, Instant.EPOCH);

	static LockNote ofThisProcess(Instant now) {
		ProcessHandle self = ProcessHandle.current();
		LockOwner owner = new LockOwner(oneLine(System.getProperty("user.name", "unknown")), host(), self.pid(), now);
		return new LockNote(owner, startMillis(self), UUID.randomUUID().toString());
	}

	/** The name of this machine, the same for all its processes, without asking a network where that can be avoided. */
	static String host() {
		try {
			return oneLine(Files.readString(Path.of("/proc/sys/kernel/hostname")).strip());
		} catch (IOException e) {
			String name = System.getenv("COMPUTERNAME");
			try {
				return oneLine(name != null ? name : InetAddress.getLocalHost().getHostName());
			} catch (UnknownHostException unknown) {
				return "localhost";
			}
		}
	}

	private static String oneLine(String text) {
		return text.replaceAll("\\p{Cntrl}", " ");
	}

	private static long startMillis(ProcessHandle process) {
		return process.info().startInstant().map(Instant::toEpochMilli).orElse(-1L);
	}

	/** The note in a file; null if there is none. One that can not be understood names an unknown owner. */
	static LockNote read(Path file) throws IOException {
		byte[] bytes;
		try {
			if (Files.size(file) > LARGEST_BYTES) {
				return new LockNote(UNKNOWN, -1, "");
			}
			bytes = Files.readAllBytes(file);
		} catch (NoSuchFileException e) {
			return null;
		}
		Map<String, String> fields = new LinkedHashMap<>();
		for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
			int colon = line.indexOf(": ");
			if (colon > 0) {
				fields.put(line.substring(0, colon), line.substring(colon + 2));
			}
		}
		try {
			LockOwner owner = new LockOwner(fields.get("user"), fields.get("host"),
					Long.parseLong(fields.get("process")),
					Instant.parse(fields.get("since")));
			return new LockNote(owner, Long.parseLong(fields.get("started")), fields.getOrDefault("token", ""));
		} catch (NullPointerException | NumberFormatException | DateTimeException e) {
			return new LockNote(UNKNOWN, -1, "");
		}
	}

	/** @param part written first, then put in the place of the file */
	void write(Disk disk, Path file, Path part) throws IOException {
		String text = "This archive is open for writing.\nuser: " + owner.user() + "\nhost: " + owner.host()
				+ "\nprocess: "
				+ owner.pid() + "\nstarted: " + startMillis + "\nsince: " + owner.since() + "\ntoken: " + token + "\n";
		try (Disk.Sink out = disk.write(part)) {
			out.write(text.getBytes(StandardCharsets.UTF_8));
			out.sync();
		}
		disk.move(part, file);
	}

	/**
	 * Whether the owner may still be at work, asked by somebody who has the lock of the operating system. A process of
	 * another machine always may. A note that says nothing is of nobody.
	 */
	boolean mayBeAlive() {
		if (owner.host().isEmpty()) {
			return false;
		}
		if (!owner.host().equals(host())) {
			return true;
		}
		if (owner.pid() == ProcessHandle.current().pid()) {
			return false; // of this process it is known that it holds nothing
		}
		Optional<ProcessHandle> process = ProcessHandle.of(owner.pid()).filter(ProcessHandle::isAlive);
		if (process.isEmpty()) {
			return false;
		}
		long start = startMillis(process.get());
		return start < 0 || startMillis < 0 || Math.abs(start - startMillis) <= SAME_START_MILLIS;
	}
}
