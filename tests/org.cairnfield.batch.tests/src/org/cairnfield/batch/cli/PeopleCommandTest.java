package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** A lead names people and their keys, and {@code verify --people} tells whose signature stands under which verdict. */
@Isolated
class PeopleCommandTest {

	private static final String PROPERTY = "cairnfield.git.config";

	@TempDir
	Path folder;
	private Path archive;
	private String before;

	@BeforeEach
	void make() throws IOException {
		assumeTrue(
				Arrays.stream(System.getenv("PATH").split(java.io.File.pathSeparator))
						.anyMatch(p -> Files.isExecutable(Path.of(p, "ssh-keygen"))),
				"skipped: ssh-keygen is not there");
		archive = ReleasedArchive.make(folder);
		before = System.getProperty(PROPERTY);
	}

	@AfterEach
	void leaveTheConfiguration() {
		System.setProperty(PROPERTY, before);
	}

	private Path key(String owner) throws IOException {
		Path key = folder.resolve("key-" + owner);
		if (!Files.exists(key)) {
			Process process = new ProcessBuilder("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", owner, "-f",
					key.toString()).inheritIO().start();
			process.onExit().join();
			assertEquals(0, process.exitValue());
		}
		return key;
	}

	private Path publicKey(String owner) throws IOException {
		return Path.of(key(owner) + ".pub");
	}

	private void signAs(String owner) throws IOException {
		Path config = Files.writeString(folder.resolve("config-" + owner),
				"[gpg]\n\tformat = ssh\n[user]\n\tsigningKey = " + key(owner) + "\n[commit]\n\tgpgSign = true\n");
		System.setProperty(PROPERTY, config.toString());
	}

	private static void prints(Cli done, String... words) {
		for (String word : words) {
			assertTrue(done.out().contains(word), () -> "\"" + word + "\" is missing: " + done);
		}
	}

	private void give(String id, String person, Person who) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			Verdict verdict = EcoreUtil.copy(open.archive().getLedgers().get(0).getVerdicts().get(0));
			verdict.setId(id);
			verdict.setPerson(person);
			open.archive().getLedgers().get(0).getVerdicts().add(verdict);
			open.savePoint(who, null);
		}
	}

	@Test
	void leadsNamePeopleAndVerifyGoesByTheList() throws IOException {
		prints(Cli.ok("people", "--archive", archive), "the archive names nobody");
		Cli.run("people", "--archive", archive, "--add", "L. Lead", "--key", publicKey("lead")).ended(ExitCode.ARCHIVE)
				.says("commit.gpgSign");
		signAs("lead");
		prints(Cli.ok("people", "--archive", archive, "--person", "L. Lead", "--add", "L. Lead", "--key",
				publicKey("lead")), "save point ",
				"L. Lead (lead)  ssh-ed25519  SHA256:");
		Cli.ok("people", "--archive", archive, "--person", "L. Lead", "--add", "R. Reviewer", "--key",
				publicKey("reviewer"));
		Cli listed = Cli.ok("people", "--json", "--archive", archive);
		assertEquals(2, listed.json().getAsJsonArray("people").size());
		JsonObject reviewer = listed.json().getAsJsonArray("people").get(1).getAsJsonObject();
		assertEquals("R. Reviewer", reviewer.getAsJsonArray("names").get(0).getAsString());
		assertEquals(false, reviewer.get("lead").getAsBoolean());
		signAs("reviewer");
		Cli.run("people", "--archive", archive, "--remove", "L. Lead").ended(ExitCode.ARCHIVE).says("the only lead");
		give("v-4", "R. Reviewer", Person.named("R. Reviewer"));
		prints(Cli.ok("verify", "--archive", archive, "--people"), "the people: sound",
				"3 verdicts of R. Reviewer in save point ", ": not signed",
				"verdict v-4 of R. Reviewer", ": signed (good, by R. Reviewer", "begun in save point",
				"signed by L. Lead");
		prints(Cli.run("verify", "--archive", archive, "--people", "--signed").ended(ExitCode.NOT_SOUND),
				"a good signature under each verdict: ");
		give("v-5", "L. Lead", Person.named("L. Lead"));
		Cli forged = Cli.run("verify", "--json", "--archive", archive, "--people").ended(ExitCode.NOT_SOUND);
		Map<String, String> proofs = new TreeMap<>();
		forged.json().getAsJsonArray("verdicts").forEach(v -> proofs.put(v.getAsJsonObject().get("id").getAsString(),
				v.getAsJsonObject().get("proof").getAsString()));
		assertEquals(Map.of("v-1", "not signed", "v-2", "not signed", "v-3", "not signed", "v-4", "signed", "v-5",
				"signed by somebody else"), proofs);
		prints(Cli.run("verify", "--archive", archive, "--people").ended(ExitCode.NOT_SOUND),
				"signatures under verdicts: ledger/r-reviewer.ledger: verdict v-5 of L. Lead");
		Cli.ok("verify", "--archive", archive);
	}

	@Test
	void namesAListThatNoLeadHasSigned() throws IOException {
		signAs("reviewer");
		Files.createDirectories(archive.resolve("people"));
		Files.writeString(archive.resolve("people/allowed_signers"),
				"R namespaces=\"git,cairnfield-people\" " + Files.readString(publicKey("lead")));
		prints(Cli.ok("people", "--archive", archive).says("is not as a lead has signed it"),
				"the archive names nobody");
		Cli.ok("rename", "--archive", archive, "--site", "Tide House", "--name", "Tide");
		prints(Cli.run("verify", "--archive", archive, "--people").ended(ExitCode.NOT_SOUND),
				"the list of people: save point ", "the change does not count");
	}

	@Test
	void refusesWhatIsNoKeyAndOptionsThatDoNotGoTogether() throws IOException {
		Cli.run("people", "--archive", archive, "--add", "R").ended(ExitCode.USAGE);
		Cli.run("people", "--archive", archive, "--add", "R", "--key", publicKey("r"), "--remove", "R")
				.ended(ExitCode.USAGE);
		Cli.run("people", "--archive", archive, "--lead").ended(ExitCode.USAGE);
		Cli.run("verify", "--people", archive).ended(ExitCode.USAGE);
		signAs("lead");
		Cli.run("people", "--archive", archive, "--add", "R", "--key", key("r")).ended(ExitCode.ARCHIVE)
				.says("private key");
		Cli.run("people", "--archive", archive, "--add", "R", "--key", folder.resolve("none")).ended(ExitCode.INPUT)
				.says("none: no file with a public key");
	}
}
