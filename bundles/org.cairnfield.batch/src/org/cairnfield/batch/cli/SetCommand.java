package org.cairnfield.batch.cli;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.edit.Editable;
import org.cairnfield.curation.edit.UnfitValueException;
import org.eclipse.emf.ecore.EObject;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;

@Command(name = "set", description = {
		"Show what can be changed of an object of the archive, or change it: names, dates, kinds, outlines, offsets and the like.",
		"All changes of a call are made, and become one save point, or none is." })
final class SetCommand extends ArchiveCommand {

	@Parameters(index = "0", paramLabel = "OBJECT", description = {
			"What is meant: archive, site:SITE, floor:SITE/LEVEL, survey:SURVEY, device:DEVICE or "
					+ "access-point:ADDRESS; each by name or id." })
	String named;

	@Parameters(index = "1..*", paramLabel = "NAME=TEXT", description = "The new text of a value, such as name=Tide House; nothing after the sign unsets it.")
	List<String> changes = List.of();

	@Override
	Mode mode() {
		return changes.isEmpty() ? Mode.READ : Mode.EDIT;
	}

	@Override
	void checkArguments() {
		changes.stream().filter(change -> change.indexOf('=') < 1).findFirst().ifPresent(change -> {
			throw new ParameterException(spec.commandLine(), "'" + change + "' is not of the form NAME=TEXT");
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
						change.field.name() + ": " + e.getMessage() + "; nothing was changed");
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
					+ (field.choices().isEmpty() ? "" : "  (one of " + String.join(", ", field.choices()) + ")"));
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
							"nothing of " + named + " is called '" + name + "'; it has "
									+ String.join(", ", fields.stream().map(Editable::name).toList())));
			read.add(new Change(field, change.substring(name.length() + 1)));
		}
		return read;
	}
}
