package org.cairnfield.batch.cli;

import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "rename", description = "Gives a site another name, as one save point. Its id stays.")
final class RenameCommand extends ArchiveCommand {

	@Option(names = "--site", required = true, paramLabel = "SITE", description = "Name or id of the site.")
	String name;

	@Option(names = "--name", required = true, paramLabel = "NAME", description = "The new name; no other site has it.")
	String newName;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (newName.isBlank() || newName.chars().anyMatch(Character::isISOControl)) {
			throw new ParameterException(spec.commandLine(), "--name must be a name of one line, and not empty");
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		Site site = ArchiveWork.site(archive.archive(), name);
		String wanted = newName.strip();
		for (Site other : archive.archive().getSites()) {
			if (other != site && (wanted.equals(other.getName()) || wanted.equals(ArchiveMap.nameOf(other)))) {
				throw new ArchiveException("site " + other.getId() + " has the name '" + wanted + "' already", "choose another");
			}
		}
		site.setName(wanted);
		record(archive);
		if (json) {
			printJson(new Json().put("site", site.getId()).put("name", wanted));
		}
	}
}
