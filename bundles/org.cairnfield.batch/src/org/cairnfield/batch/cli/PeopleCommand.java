package org.cairnfield.batch.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.People;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.signature.Signatory;
import org.cairnfield.archive.signature.SignerList;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.IntakeException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "people", description = {
		"${bundle:PeopleCommand_what}",
		"${bundle:PeopleCommand_more}" })
final class PeopleCommand extends ArchiveCommand {

	private static final int LONGEST_KEY_BYTES = 1 << 16;

	@Option(names = "--add", paramLabel = "NAME", descriptionKey = "PeopleCommand_add")
	String added;

	@Option(names = "--key", paramLabel = "FILE", descriptionKey = "PeopleCommand_key")
	Path key;

	@Option(names = "--lead", descriptionKey = "PeopleCommand_lead2")
	boolean lead;

	@Option(names = "--remove", paramLabel = "NAME", descriptionKey = "PeopleCommand_remove")
	String removed;

	@Override
	Mode mode() {
		return added == null && removed == null ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (added != null && removed != null || (added == null) != (key == null) || lead && added == null) {
			throw new ParameterException(spec.commandLine(),
					Messages.PeopleCommand_giveAddWithKeyOr);
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		People people = new People(archive, new ArchiveStore());
		SavePoint made = null;
		if (added != null) {
			made = people.add(added, publicKey(), lead, archiveArgs.person(), archiveArgs.note);
		} else if (removed != null) {
			made = people.remove(removed, archiveArgs.person(), archiveArgs.note);
		}
		SignerList list = people.list();
		noteUnsigned(archive, list);
		if (json) {
			printJson(new Json().put("savePoint", made == null ? null : made.id()).put("people",
					list.signatories().stream().map(PeopleCommand::json).toList()));
			return;
		}
		if (made != null) {
			out().println(Words.bind(Messages.PeopleCommand_savePoint, made.shortId(), made.summary()));
		}
		for (Signatory s : list.signatories()) {
			out().println(String.join(", ", s.names()) + (s.lead() ? Messages.PeopleCommand_lead : "") + "  " + s.type()
					+ "  "
					+ s.fingerprint());
		}
		if (list.isEmpty()) {
			out().println(Messages.PeopleCommand_theArchiveNamesNobody);
		}
	}

	static Object json(Signatory s) {
		return new Json().put("names", s.names()).put("lead", s.lead()).put("type", s.type())
				.put("fingerprint", s.fingerprint()).fields();
	}

	private String publicKey() throws IOException, IntakeException {
		if (!Files.isRegularFile(key) || Files.size(key) > LONGEST_KEY_BYTES) {
			throw new IntakeException(key, 0, Messages.PeopleCommand_noFileWithAPublic,
					Messages.PeopleCommand_nameOneAsSshKeygen);
		}
		return new String(Files.readAllBytes(key), StandardCharsets.UTF_8).strip();
	}

	/** A list that somebody has edited says nothing until a lead signs it. */
	private void noteUnsigned(OpenArchive archive, SignerList list) throws IOException, ArchiveException {
		Path file = archive.resolve(People.FILE);
		if (Files.isRegularFile(file)
				&& !Arrays.equals(SignerList.of(Files.readAllBytes(file)).toBytes(), list.toBytes())) {
			note(Words.bind(Messages.PeopleCommand_isNotAsALead, People.FILE));
		}
	}
}
