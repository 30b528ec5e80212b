package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.zip.CRC32C;

import org.cairnfield.archive.fault.Damage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Structure files that somebody has written with intent, under a seal that matches. */
class HostileStructureTest {

	private static final String SECRET = "the content of a file outside";

	@TempDir
	Path folder;
	private Path root;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.resolve("archive");
		try (OpenArchive open = new ArchiveStore().create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 2, 5);
			open.archive().setName("name");
			open.save();
		}
		FolderText.delete(root.resolve(".git"));
		Files.writeString(folder.resolve("secret"), SECRET);
	}

	/** Opens the archive with another structure. */
	private OpenArchive openWith(UnaryOperator<String> change) throws IOException {
		Path file = root.resolve("archive.xmi");
		String text = Files.readString(file);
		String document = change.apply(text.substring(0, text.lastIndexOf("<!-- cairnfield")));
		CRC32C crc = new CRC32C();
		crc.update(document.getBytes(StandardCharsets.UTF_8));
		Files.writeString(file, document + String.format("<!-- cairnfield archive 1 end %08x -->\n", crc.getValue()));
		return new ArchiveStore().open(root, Mode.READ);
	}

	private static void assertTold(OpenArchive open, String word) {
		List<Damage> damages = open.damages();
		assertTrue(
				damages.stream()
						.anyMatch(damage -> damage.file().equals("archive.xmi") && damage.reason().contains(word)),
				damages::toString);
		assertFalse(ModelText.of(open.archive()).contains(SECRET));
	}

	@Test
	void opensTheUntouchedOne() throws IOException {
		try (OpenArchive open = openWith(text -> text)) {
			assertEquals(List.of(), open.damages());
		}
	}

	// OWASP's cheat sheet on XML external entities: with document types refused, none of these can begin
	@ParameterizedTest
	@ValueSource(strings = { "<!DOCTYPE a [<!ENTITY x SYSTEM \"SECRET\">]>", "<!DOCTYPE a SYSTEM \"SECRET\">",
			"<!DOCTYPE a [<!ENTITY % x SYSTEM \"SECRET\"> %x;]>",
			"<!DOCTYPE a [<!ENTITY x \"xxxxxxxxxx\"><!ENTITY y \"&x;&x;&x;&x;&x;&x;&x;&x;&x;&x;\">]>", "<!DOCTYPE a>" })
	void readsNoDocumentType(String type) throws IOException {
		String uri = folder.resolve("secret").toUri().toString();
		try (OpenArchive open = openWith(
				text -> text.replaceFirst("\\?>\n", "?>\n" + type.replace("SECRET", uri) + "\n")
						.replace("name=\"name\"", "name=\"&x;\""))) {
			assertTold(open, "DOCTYPE");
			assertTrue(open.damages().get(0).line() > 0, open.damages()::toString);
		}
	}

	@Test
	void expandsNoEntityThatItDoesNotKnow() throws IOException {
		try (OpenArchive open = openWith(text -> text.replace("name=\"name\"", "name=\"&x;\""))) {
			assertTold(open, "x");
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "../secret#/", "file:///etc/hostname#/", "http://192.0.2.1/x.samples#/",
			"surveys/th/../../secret#/",
			"surveys/th/other.samples#/", "archive.xmi#/", "surveys/Sail.Hall_2/survey-1.samples#/",
			"surveys/th/survey-0.samples#//@x",
			"cairnfield:/surveys/th/survey-9.samples#/", "jar:file:///x.jar!/y#/", "" })
	void followsNoReferenceToAnotherPlace(String reference) throws IOException {
		try (OpenArchive open = openWith(text -> text.replace("surveys/th/survey-0.samples#/", reference))) {
			assertTold(open, "");
			assertTrue(open.readOnlyReason().isPresent());
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "../secret.split#/", "surveys/th/survey-0.samples#/", "splits/../archive.xmi#/",
			"splits/none.split#/",
			"splits/th-0.split#/" })
	void takesASplitFromItsPlaceOnly(String reference) throws IOException {
		try (OpenArchive open = openWith(text -> text.replace("splits/all.split#/", reference))) {
			assertFalse(open.damages().isEmpty());
		}
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "device=\"guide-|device=\"nobody-", "device=\"guide-|device=\"../x#guide-",
			"<sites id=\"th\"|<sites id=\"../th\"", "<sites id=\"th\"|<sites id=\"guide-a\"",
			"<sites id=\"th\"|<sites id=\"GUIDE-A\"",
			"<sites id=\"th\"|<sites", "<sites id=\"th\"|<sites xsi:type=\"cairnfield:Ledger\" id=\"th\"",
			"<sites id=\"th\"|<colours id=\"th\"", "cairnfield:Archive|cairnfield:Site",
			"urn:org.cairnfield:model:1|urn:other",
			"level=\"-1\"|level=\"many\"", "kind=\"test\"|kind=\"exam\"", "date=\"2031-04-07\"|date=\"2031-02-30\"",
			"outline=\"0|outline=\"zero", "<devices id|<devices extra=\"1\" id",
			"</cairnfield:Archive>|</cairnfield:Archive><x/>",
			"<?xml version=\"1.0\" encoding=\"UTF-8\"?>|<?xml version=\"1.0\" encoding=\"UTF-16\"?>" })
	void refusesWhatTheModelDoesNotKnow(String part, String other) throws IOException {
		try (OpenArchive open = openWith(text -> {
			assertTrue(text.contains(part), part);
			return text.replace(part, other);
		})) {
			assertTold(open, "");
		}
	}

	@Test
	void refusesSamplesWithinTheStructure() throws IOException {
		try (OpenArchive open = openWith(
				text -> text.replace("<samples href=\"surveys/th/survey-0.samples#/\"/>", "<samples/>"))) {
			assertTold(open, "in a file of its own");
		}
	}

	@Test
	void refusesTwoArchivesInOneFile() throws IOException {
		try (OpenArchive open = openWith(text -> {
			String archive = text.substring(text.indexOf("<cairnfield:Archive")).replace(" xmi:version=\"2.0\"", "");
			String declarations = "xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\"";
			return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<xmi:XMI " + declarations + ">" + archive + archive
					+ "</xmi:XMI>\n";
		})) {
			assertTold(open, "");
		}
	}

	@Test
	void doesNotFollowAFileThatIsALink() throws IOException {
		Path samples = root.resolve("surveys/th/survey-0.samples");
		Files.move(samples, folder.resolve("elsewhere"));
		Files.createSymbolicLink(samples, folder.resolve("elsewhere"));
		try (OpenArchive open = new ArchiveStore().open(root, Mode.EDIT)) {
			assertTrue(open.damages().stream().anyMatch(d -> d.file().equals("surveys/th/survey-0.samples")
					&& d.reason().contains("not followed")), open.damages()::toString);
		}
		Files.delete(samples);
		FolderText.delete(root.resolve("surveys/th"));
		Files.createSymbolicLink(root.resolve("surveys/th"), folder);
		try (OpenArchive open = new ArchiveStore().open(root, Mode.EDIT)) {
			assertFalse(open.damages().isEmpty());
		}
	}

	@Test
	void writesNothingThroughALink() throws IOException {
		try (OpenArchive open = new ArchiveStore().open(root, Mode.EDIT)) {
			Path outside = Files.createDirectory(folder.resolve("outside"));
			FolderText.delete(root.resolve("surveys/th"));
			Files.createSymbolicLink(root.resolve("surveys/th"), outside);
			var survey = SampleArchives.survey(open.archive(), "survey-0");
			survey.getSamples().setTable(survey.table().edit().reason(0, "x").done());
			IOException refused = assertThrows(IOException.class, open::save);
			assertTrue(refused.getMessage().contains("nothing was saved"), refused::getMessage);
			try (var files = Files.list(outside)) {
				assertEquals(List.of(), files.toList());
			}
		}
	}

	@Test
	void bearsManyNestedElements() throws IOException {
		try (OpenArchive open = openWith(
				text -> text.replace("</cairnfield:Archive>", "<sites>".repeat(200_000) + "</cairnfield:Archive>"))) {
			assertTold(open, "");
		}
	}
}
