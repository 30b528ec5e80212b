package org.cairnfield.batch.cli;

import java.util.Locale;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Survey;
import org.cairnfield.model.check.SiblingNames;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "rename", description = "Give a site, a survey or a device another name, as one save point. Its id stays.")
final class RenameCommand extends ArchiveCommand {

	/** Exactly one of them. */
	static final class Target {
		@Option(names = "--site", required = true, paramLabel = "SITE", description = "Name or id of the site.")
		String site;

		@Option(names = "--survey", required = true, paramLabel = "SURVEY", description = "Name or id of the survey.")
		String survey;

		@Option(names = "--device", required = true, paramLabel = "DEVICE", description = "Name or id of the device.")
		String device;

		EObject in(Archive archive) throws ArchiveException {
			if (site != null) {
				return ArchiveWork.site(archive, site);
			} else if (device != null) {
				return ArchiveWork.named("device", archive.getDevices(), Device::getId, device);
			}
			return ArchiveWork.named("survey",
					archive.getSites().stream().flatMap(each -> each.getSurveys().stream()).toList(), Survey::getId,
					survey);
		}
	}

	@ArgGroup(multiplicity = "1")
	Target target;

	@Option(names = "--name", required = true, paramLabel = "NAME", description = "The new name; no other site, survey of the site, or device has it.")
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
		EObject object = target.in(archive.archive());
		String wanted = newName.strip();
		String refusal = SiblingNames.refusal(object, wanted).orElse(null);
		if (refusal != null) {
			throw new ArchiveException(refusal, "choose another");
		}
		object.eSet(object.eClass().getEStructuralFeature("name"), wanted);
		record(archive);
		if (json) {
			printJson(new Json().put(object.eClass().getName().toLowerCase(Locale.ROOT), EcoreUtil.getID(object))
					.put("name", wanted));
		}
	}
}
