package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.edit.Editable;
import org.cairnfield.curation.edit.UnfitValueException;
import org.eclipse.emf.ecore.EObject;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;

@Command(name = "set", description = {
		"${bundle:SetCommand_what}",
		"${bundle:SetCommand_more}" })
final class SetCommand extends ArchiveCommand {

	@Parameters(index = "0", paramLabel = "OBJECT", descriptionKey = "SetCommand_object")
	String named;

	@Parameters(index = "1..*", paramLabel = "NAME=TEXT", descriptionKey = "SetCommand_nameTEXT")
	List<String> changes = List.of();

	@Override
	Mode mode() {
		return changes.isEmpty() ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		changes.stream().filter(change -> change.indexOf('=') < 1).findFirst().ifPresent(change -> {
			throw new ParameterException(spec.commandLine(), Words.bind(Messages.SetCommand_isNotOfTheForm, change));
		});
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		EObject object = new ArchiveObjects(archive.archive()).named(named);
		List<Editable> fields = Editable.of(object);
		for (Change change : read(fields)) { // nothing is saved where one of them is refused
			try {
				change.field.set(change.text);
			} catch (UnfitValueException e) {
				throw new ParameterException(spec.commandLine(),
						Words.bind(Messages.SetCommand_nothingWasChanged, change.field.name(), e.getMessage()));
			}
		}
		if (!changes.isEmpty()) {
			record(archive);
		}
		if (json) {
			Json values = new Json();
			fields.forEach(field -> values.put(field.name(), field.text().isEmpty() ? null : field.text()));
			printJson(new Json().put("object", named).put("values", values));
			return;
		}
		for (Editable field : fields) {
			out().println(field.name() + "=" + field.text()
					+ (field.choices().isEmpty() ? ""
							: Words.bind(Messages.SetCommand_oneOf, String.join(", ", field.choices()))));
		}
	}

	private record Change(Editable field, String text) {
	}

	private List<Change> read(List<Editable> fields) {
		List<Change> read = new ArrayList<>();
		for (String change : changes) {
			String name = change.substring(0, change.indexOf('='));
			Editable field = fields.stream().filter(each -> each.name().equals(name)).findFirst()
					.orElseThrow(() -> new ParameterException(spec.commandLine(),
							Words.bind(Messages.SetCommand_nothingOfIsCalledIt, named, name,
									String.join(", ", fields.stream().map(Editable::name).toList()))));
			read.add(new Change(field, change.substring(name.length() + 1)));
		}
		return read;
	}
}
