package org.cairnfield.archive;

import static java.nio.file.Files.createDirectories;
import static java.nio.file.Files.createLink;
import static java.nio.file.Files.createSymbolicLink;
import static java.nio.file.Files.move;
import static java.nio.file.Files.readString;
import static java.nio.file.Files.writeString;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Archives that somebody has prepared so that opening them, saving, or making a save point would write, delete, create or
 * run something outside. {@code docs/security.md} has the same table for people.
 *
 * <p>Outside lie {@code precious.txt}, {@code folder/} with files of the names that an archive uses, {@code other/}, an
 * archive with a history of its own, and {@code run.sh}, which leaves a file {@code ran} beside itself.
 */
enum HostileArchive {

	PRIVATE_FOLDER_LINK(".cairnfield is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".cairnfield"));
		createSymbolicLink(in.resolve(".cairnfield"), out.resolve("folder"));
	}),
	LOCK_LINK("lock is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/lock"), out.resolve("precious.txt"))),
	LOCK_HOLD_LINK("lock.hold is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/lock.hold"), out.resolve("precious.txt"))),
	LOCK_HOLD_TO_NEW("lock.hold is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/lock.hold"), out.resolve("new.txt"))),
	LOCK_PART_LINK("lock.part is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/lock.part"), out.resolve("precious.txt"))),
	LOCK_PART_HARD_LINK("", (in, out) -> hardLink(in.resolve(".cairnfield/lock.part"), out.resolve("precious.txt"))),
	LOCK_PIPE("lock is no plain file", (in, out) -> pipe(in.resolve(".cairnfield/lock"))),
	PENDING_LINK("pending is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".cairnfield/pending"));
		createSymbolicLink(in.resolve(".cairnfield/pending"), out.resolve("folder/pending"));
	}),
	PENDING_FILE_LINK("", (in, out) -> link(in.resolve(".cairnfield/pending/0"), out.resolve("precious.txt"))),
	PENDING_FILE_HARD_LINK("", (in, out) -> hardLink(in.resolve(".cairnfield/pending/0"), out.resolve("precious.txt"))),
	PENDING_JOURNAL_LINK("", (in, out) -> link(in.resolve(".cairnfield/pending/journal"), out.resolve("precious.txt"))),
	PENDING_FOLDER("pending/0 is no plain file",
			(in, out) -> createDirectories(in.resolve(".cairnfield/pending/0/more"))),
	JOURNAL_LINK("journal is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/journal"), out.resolve("folder/journal"))),
	JOURNAL_PIPE("journal is no plain file", (in, out) -> pipe(in.resolve(".cairnfield/journal"))),
	JOURNAL_DELETES_OUTSIDE("leads out of the archive", (in, out) -> journal(in,
			"delete\t" + sha256(readString(out.resolve("precious.txt"))) + "\t../outside/precious.txt\n")),
	JOURNAL_WRITES_OUTSIDE("leads out of the archive", (in, out) -> {
		writeString(in.resolve(".cairnfield/pending/0"), "planted");
		journal(in, "put\t" + sha256("planted") + "\t7\t-\t0\t../outside/new.txt\n");
	}),
	JOURNAL_WRITES_TO_GIT("leads out of the archive", (in, out) -> {
		writeString(in.resolve(".cairnfield/pending/0"), "planted");
		journal(in, "put\t" + sha256("planted") + "\t7\t-\t0\t.GIT/hooks/post-commit\n");
	}),
	COMMITTING_LINK("committing is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/committing"), out.resolve("new.txt"))),
	COMMITTING_HARD_LINK("", (in, out) -> hardLink(in.resolve(".cairnfield/committing"), out.resolve("precious.txt"))),
	SAVE_POINT_LINK("save-point is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/save-point"), out.resolve("precious.txt"))),
	SAVE_POINT_PART_LINK("save-point.part is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/save-point.part"), out.resolve("precious.txt"))),
	SAVED_BY_LINK("saved-by is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/saved-by"), out.resolve("precious.txt"))),
	MERGES_SEEN_LINK("merges-seen is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/merges-seen"), out.resolve("precious.txt"))),
	MERGES_SEEN_PART_HARD_LINK("",
			(in, out) -> hardLink(in.resolve(".cairnfield/merges-seen.part"), out.resolve("precious.txt"))),
	SAVED_BY_PART_HARD_LINK("",
			(in, out) -> hardLink(in.resolve(".cairnfield/saved-by.part"), out.resolve("precious.txt"))),
	DAMAGED_LINK("damaged is a symbolic link", (in, out) -> {
		writeString(in.resolve("splits/all.split"), "damaged");
		createSymbolicLink(in.resolve(".cairnfield/damaged"), out.resolve("folder"));
	}),
	IGNORE_LINK(".gitignore is a symbolic link",
			(in, out) -> link(in.resolve(".cairnfield/.gitignore"), out.resolve("new.txt"))),

	GIT_LINK(".git is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".git"));
		createSymbolicLink(in.resolve(".git"), out.resolve("other/.git"));
	}),
	GIT_LINK_TO_NOTHING(".git is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".git"));
		createSymbolicLink(in.resolve(".git"), out.resolve("new"));
	}),
	GIT_FILE(".git is no plain folder", (in, out) -> {
		FolderText.delete(in.resolve(".git"));
		writeString(in.resolve(".git"), "gitdir: " + out.resolve("other/.git") + "\n");
	}),
	COMMON_DIR("commondir shares",
			(in, out) -> writeString(in.resolve(".git/commondir"), out.resolve("other/.git") + "\n")),
	HEAD_OUTSIDE(".git/HEAD names neither", (in, out) -> writeString(in.resolve(".git/HEAD"),
			"ref: refs/heads/../../../../outside/new.txt\n")),
	HEAD_LINK(".git/HEAD is a symbolic link",
			(in, out) -> link(in.resolve(".git/HEAD"), out.resolve("other/.git/HEAD"))),
	HEAD_PIPE(".git/HEAD is no plain file", (in, out) -> pipe(in.resolve(".git/HEAD"))),
	REFS_LINK(".git/refs is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".git/refs"));
		createSymbolicLink(in.resolve(".git/refs"), out.resolve("other/.git/refs"));
	}),
	HEADS_LINK("refs/heads is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".git/refs/heads"));
		createSymbolicLink(in.resolve(".git/refs/heads"), out.resolve("other/.git/refs/heads"));
	}),
	BRANCH_LINK("refs/heads/main is a symbolic link", (in, out) -> link(in.resolve(".git/refs/heads/main"),
			out.resolve("other/.git/refs/heads/main"))),
	BRANCH_NAMES_OUTSIDE("refs/heads/main names", (in, out) -> writeString(in.resolve(".git/refs/heads/main"),
			"ref: refs/heads/../../../../outside/new.txt\n")),
	OTHER_REF_NAMES_OUTSIDE("refs/remotes/origin/HEAD names", (in, out) -> {
		createDirectories(in.resolve(".git/refs/remotes/origin"));
		writeString(in.resolve(".git/refs/remotes/origin/HEAD"), "ref: ../../../outside/precious.txt\n");
	}),
	PACKED_REFS_LINK("packed-refs is a symbolic link",
			(in, out) -> link(in.resolve(".git/packed-refs"), out.resolve("precious.txt"))),
	OBJECTS_LINK("objects is a symbolic link", (in, out) -> {
		move(in.resolve(".git/objects"), out.resolve("objects"));
		createSymbolicLink(in.resolve(".git/objects"), out.resolve("objects"));
	}),
	OBJECT_FOLDERS_LINKS("is a symbolic link", (in, out) -> {
		for (int i = 0; i < 256; i++) {
			Path folder = in.resolve(".git/objects").resolve(String.format("%02x", i));
			if (!Files.exists(folder)) {
				createSymbolicLink(folder, out.resolve("folder"));
			}
		}
	}),
	PACKS_LINK("objects/pack is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".git/objects/pack"));
		createSymbolicLink(in.resolve(".git/objects/pack"), out.resolve("folder"));
	}),
	ALTERNATES("alternates borrows", (in, out) -> {
		createDirectories(in.resolve(".git/objects/info"));
		writeString(in.resolve(".git/objects/info/alternates"), out.resolve("other/.git/objects") + "\n");
	}),
	INDEX_LINK(".git/index is a symbolic link",
			(in, out) -> link(in.resolve(".git/index"), out.resolve("other/.git/index"))),
	INDEX_HARD_LINK("", (in, out) -> hardLink(in.resolve(".git/index"), out.resolve("other/.git/index"))),
	INDEX_LOCK_LINK("index.lock is a symbolic link", (in, out) -> {
		link(in.resolve(".git/index.lock"), out.resolve("precious.txt"));
		writeString(in.resolve(".cairnfield/committing"), "A save point is being made.\n");
	}),
	LOGS_LINK(".git/logs is a symbolic link", (in, out) -> {
		FolderText.delete(in.resolve(".git/logs"));
		createSymbolicLink(in.resolve(".git/logs"), out.resolve("folder"));
	}),
	LOG_LINK("logs/HEAD is a symbolic link",
			(in, out) -> link(in.resolve(".git/logs/HEAD"), out.resolve("precious.txt"))),
	LOGS_HARD_LINKS("", (in, out) -> {
		hardLink(in.resolve(".git/logs/HEAD"), out.resolve("precious.txt"));
		hardLink(in.resolve(".git/logs/refs/heads/main"), out.resolve("folder/journal"));
	}),
	OBJECT_PIPE("is no plain file or folder", (in, out) -> {
		try (Stream<Path> objects = Files.walk(in.resolve(".git/objects"))) {
			for (Path object : objects.filter(Files::isRegularFile).toList()) {
				pipe(object);
			}
		}
	}),
	CONFIG_LINK(".git/config is a symbolic link",
			(in, out) -> link(in.resolve(".git/config"), out.resolve("other/.git/config"))),
	CONFIG_INCLUDE(".git/config includes",
			(in, out) -> config(in, "[include]\n\tpath = " + out.resolve("precious.txt") + "\n")),
	CONFIG_INCLUDE_IF(".git/config includes",
			(in, out) -> config(in, "[includeIf \"gitdir:**\"]\n\tpath = " + out.resolve("precious.txt")
					+ "\n")),
	CONFIG_WORK_TREE("",
			(in, out) -> config(in, "[core]\n\tbare = false\n\tworktree = " + out.resolve("folder") + "\n")),
	CONFIG_REF_TABLE("extensions.refStorage", (in, out) -> config(in,
			"[core]\n\trepositoryformatversion = 1\n[extensions]\n\trefStorage = reftable\n")),
	CONFIG_PROGRAMS("", (in, out) -> {
		String run = program(out);
		config(in,
				"[core]\n\tfsmonitor = " + run + "\n\tsshCommand = " + run + "\n\teditor = " + run + "\n\tpager = "
						+ run
						+ "\n\taskPass = " + run + "\n\tgitProxy = " + run
						+ "\n[gc]\n\tauto = 1\n\tautoDetach = false\n[credential]\n\thelper = !"
						+ run + "\n[filter \"x\"]\n\tclean = " + run + "\n\tsmudge = " + run + "\n\tprocess = " + run
						+ "\n\trequired = true\n[diff \"x\"]\n\tcommand = " + run + "\n\ttextconv = " + run
						+ "\n[merge \"x\"]\n\tdriver = " + run
						+ "\n[gpg]\n\tprogram = " + run + "\n[commit]\n\tgpgSign = true\n[alias]\n\tlog = !" + run
						+ "\n[remote \"origin\"]\n\turl = ext::"
						+ run + "\n\tpromisor = true\n");
		writeString(in.resolve(".gitattributes"), "* filter=x diff=x merge=x\n");
		createDirectories(in.resolve(".git/info"));
		writeString(in.resolve(".git/info/attributes"), "* filter=x diff=x merge=x\n");
	}),
	CONFIG_SIGNS("", (in, out) -> config(in,
			"[tag]\n\tgpgSign = true\n\tforceSignAnnotated = true\n[gpg]\n\tprogram = " + program(out)
					+ "\n[gpg \"openpgp\"]\n\tprogram = " + program(out) + "\n[user]\n\tsigningKey = planted\n")),
	CONFIG_HOOKS_PATH("", (in, out) -> {
		hooks(out.resolve("hooks"), program(out));
		config(in, "[core]\n\thooksPath = " + out.resolve("hooks") + "\n");
	}),
	HOOKS("", (in, out) -> hooks(createDirectories(in.resolve(".git/hooks")), program(out))),
	LARGE_FILES("", (in, out) -> {
		config(in,
				"[lfs]\n\turl = http://192.0.2.1/\n[lfs \"customtransfer.x\"]\n\tpath = " + program(out)
						+ "\n[filter \"lfs\"]\n\tclean = "
						+ program(out) + "\n\tuseJGitBuiltin = true\n");
		writeString(in.resolve(".gitattributes"), "* filter=lfs\n");
	}),

	SURVEYS_LINK("not followed", (in, out) -> {
		FolderText.delete(in.resolve("surveys/th"));
		createSymbolicLink(in.resolve("surveys/th"), out.resolve("folder"));
	}),
	STRUCTURE_LINK("archive.xmi", (in, out) -> link(in.resolve("archive.xmi"), out.resolve("precious.txt"))),
	STRUCTURE_HARD_LINK("", (in, out) -> {
		createLink(out.resolve("linked.xmi"), in.resolve("archive.xmi"));
		createLink(out.resolve("linked.samples"), in.resolve("surveys/th/survey-0.samples"));
	}),
	RELEASES_LINK("not followed", (in, out) -> createSymbolicLink(in.resolve("releases"), out.resolve("folder")));

	/** Prepares an archive. */
	@FunctionalInterface
	interface Plant {
		void in(Path archive, Path outside) throws IOException;
	}

	private final String refusal;
	private final Plant plant;

	/** @param refusal what a refusal names; empty where all goes well and nothing happens outside */
	HostileArchive(String refusal, Plant plant) {
		this.refusal = refusal;
		this.plant = plant;
	}

	String refusal() {
		return refusal;
	}

	void prepare(Path archive, Path outside) throws IOException {
		plant.in(archive, outside);
	}

	private static void link(Path link, Path target) throws IOException {
		Files.deleteIfExists(link);
		createSymbolicLink(link, target);
	}

	private static void hardLink(Path link, Path target) throws IOException {
		Files.deleteIfExists(link);
		createLink(link, target);
	}

	private static void pipe(Path file) throws IOException {
		Files.deleteIfExists(file);
		new ProcessBuilder("mkfifo", file.toString()).start().onExit().join();
	}

	private static void config(Path archive, String text) throws IOException {
		writeString(archive.resolve(".git/config"), text, StandardOpenOption.APPEND);
	}

	private static String program(Path outside) throws IOException {
		Path run = outside.resolve("run.sh");
		if (!Files.exists(run)) {
			writeString(run, "#!/bin/sh\ntouch " + outside.resolve("ran") + "\ncat\n");
			Files.setPosixFilePermissions(run, PosixFilePermissions.fromString("rwxr-xr-x"));
		}
		return run.toString();
	}

	private static void hooks(Path folder, String run) throws IOException {
		createDirectories(folder);
		for (String hook : List.of("pre-commit", "prepare-commit-msg", "commit-msg", "post-commit", "post-index-change",
				"reference-transaction", "post-checkout", "post-rewrite", "pre-auto-gc", "fsmonitor-watchman")) {
			Path file = folder.resolve(hook);
			writeString(file, readString(Path.of(run)));
			Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
		}
	}

	/** A journal under a seal that matches. */
	private static void journal(Path archive, String line) throws IOException {
		String body = "cairnfield journal 1\n" + line;
		writeString(archive.resolve(".cairnfield/journal"), body + "end\t1\t" + sha256(body) + "\n");
	}

	private static String sha256(String text) {
		try {
			return HexFormat.of()
					.formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException(e);
		}
	}
}
