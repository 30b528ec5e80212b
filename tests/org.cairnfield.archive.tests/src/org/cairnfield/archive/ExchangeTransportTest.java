package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.UnreachableException;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.remote.RemoteUrl;
import org.cairnfield.core.task.Progress;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** The exchange through real servers, with the credentials that Git has. */
@Isolated
class ExchangeTransportTest {

	private static final String CONFIG = "cairnfield.git.config";
	private static final Person ANN = Person.named("Ann");
	private static final Person BEN = Person.named("Ben");

	@TempDir
	Path folder;
	private final ArchiveStore store = new ArchiveStore();
	private Path bare;
	private Path config;
	private String configured;

	@BeforeEach
	void prepare() throws IOException {
		bare = folder.resolve("meeting.git");
		config = Files.createFile(folder.resolve("gitconfig"));
		configured = System.setProperty(CONFIG, config.toString());
		try (OpenArchive open = store.create(folder.resolve("ann"), "Marrow Quay")) {
			SampleArchives.fill(open.archive(), 7, 2, 12);
			open.exchange().connect(RemoteUrl.parse(bare.toString()));
			open.exchange().run(ANN, null, true, Progress.NONE);
		}
	}

	@AfterEach
	void restore() {
		if (configured == null) {
			System.clearProperty(CONFIG);
		} else {
			System.setProperty(CONFIG, configured);
		}
	}

	/** Two people work through a URL, one of them with an archive that was connected to something else. */
	private void work(String url) throws IOException {
		RemoteUrl remote = RemoteUrl.parse(url);
		Path copy = store.copy(remote, folder.resolve("ben"), Progress.NONE);
		try (OpenArchive ann = store.open(folder.resolve("ann"), Mode.EDIT);
				OpenArchive ben = store.open(copy, Mode.EDIT)) {
			ann.exchange().connect(remote);
			ann.archive().setName("by Ann");
			assertEquals(1, ann.exchange().run(ANN, null, true, Progress.NONE).sent().size());
			ben.release("1.0.0", "{}\n", ben.digest(), "first", BEN);
			assertEquals(1, ben.exchange().run(BEN, null, true, Progress.NONE).received().size());
			assertEquals(2, ann.exchange().run(ANN, null, true, Progress.NONE).received().size());
			assertEquals(ann.digest(), ben.digest());
			assertEquals(List.of("1.0.0"), ann.history().releases().stream().map(tag -> tag.version()).toList());
		}
		assertFalse(Files.readString(copy.resolve(".git/config")).contains("tide"), "no password is kept");
	}

	/** Begun, and cancelled once the other side is being waited for. */
	private static final class Cancelled implements Progress {

		private volatile boolean begun;

		@Override
		public void begin(String step, long total) {
			begun = true;
		}

		@Override
		public void advance(long by) {
			// nothing to show
		}

		@Override
		public boolean isCancelled() {
			return begun;
		}
	}

	@Test
	void waitingForAServerThatNeverAnswersCanBeCancelledAndChangesNothing() throws IOException {
		PlainGit git = new PlainGit(folder.resolve("ann"));
		String before = git.run("rev-parse", "HEAD");
		try (ServerSocket silent = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
				OpenArchive ann = store.open(folder.resolve("ann"), Mode.EDIT)) {
			ann.exchange().connect(RemoteUrl.parse("http://127.0.0.1:" + silent.getLocalPort() + "/quay.git"));
			assertTimeout(Duration.ofSeconds(30), () -> assertThrows(CancellationException.class,
					() -> ann.exchange().run(ANN, null, true, new Cancelled())));
			assertEquals(before, git.run("rev-parse", "HEAD"));
			assertEquals("", git.run("status", "--porcelain"));
			assertEquals(List.of(), locks());
			ann.exchange().connect(RemoteUrl.parse(bare.toString()));
			assertEquals(List.of(), ann.exchange().run(ANN, null, true, Progress.NONE).sent());
		}
	}

	private List<Path> locks() throws IOException {
		try (Stream<Path> files = Files.walk(folder.resolve("ann/.git"))) {
			return files.filter(file -> file.toString().endsWith(".lock")).toList();
		}
	}

	@Test
	void throughAWebServerWithTheCredentialsOfGit() throws IOException {
		assumeTrue(isInstalled("git"));
		try (HttpMeeting meeting = new HttpMeeting(bare, "mq", "tide")) {
			Path passwords = folder.resolve("passwords");
			Files.writeString(config, "[credential]\n\thelper = store --file=" + passwords + '\n');
			UnreachableException refused = assertThrows(UnreachableException.class,
					() -> store.copy(RemoteUrl.parse(meeting.url()), folder.resolve("nobody"), Progress.NONE));
			assertTrue(refused.getMessage().contains(meeting.url()), refused::getMessage);
			Files.writeString(passwords,
					meeting.url().replace("http://", "http://mq:tide@").replace("/quay.git", "") + '\n');
			work(meeting.url());
		}
	}

	@Test
	void anSshProgramThatEndsAMomentAfterItsOutputIsNotReached() throws Exception {
		Path program = Files.writeString(folder.resolve("slow"), "exec 1>&- 2>&-\nsleep 1\nexit 255\n");
		Files.writeString(config, "[core]\n\tsshCommand = sh " + program + '\n');
		assertThrows(UnreachableException.class,
				() -> store.copy(RemoteUrl.parse("ssh://quay.invalid/quay.git"), folder.resolve("nobody"),
						Progress.NONE));
	}

	@Test
	void throughSshWithTheKeyOfThePerson() throws Exception {
		assumeTrue(isInstalled("ssh") && isInstalled("ssh-keygen"));
		Path key = folder.resolve("key");
		new ProcessBuilder("ssh-keygen", "-q", "-t", "ecdsa", "-N", "", "-f", key.toString()).inheritIO().start()
				.waitFor();
		try (SshMeeting meeting = new SshMeeting(bare, Path.of(key + ".pub"), folder.resolve("host"))) {
			String command = "ssh -F none -o IdentitiesOnly=yes -o UserKnownHostsFile=" + folder.resolve("hosts")
					+ " -o StrictHostKeyChecking=accept-new";
			Files.writeString(config, "[core]\n\tsshCommand = " + command + '\n');
			assertThrows(UnreachableException.class,
					() -> store.copy(RemoteUrl.parse(meeting.url()), folder.resolve("nobody"), Progress.NONE));
			Files.writeString(config, "[core]\n\tsshCommand = " + command + " -i " + key + '\n');
			work(meeting.url());
		}
	}

	@Test
	void aServerThatIsGoneIsUnreachable() throws IOException {
		String url;
		try (HttpMeeting meeting = new HttpMeeting(bare, "mq", "tide")) {
			url = meeting.url();
		}
		assertThrows(UnreachableException.class,
				() -> store.copy(RemoteUrl.parse(url), folder.resolve("nobody"), Progress.NONE));
		assertFalse(Files.exists(folder.resolve("nobody")));
	}

	private static boolean isInstalled(String program) {
		return List.of(System.getenv("PATH").split(":")).stream()
				.anyMatch(place -> Files.isExecutable(Path.of(place, program)));
	}
}
