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

@Command(name = "rename", description = "${bundle:RenameCommand_what}")
final class RenameCommand extends ArchiveCommand {

	/** Exactly one of them. */
	static final class Target {
		@Option(names = "--site", required = true, paramLabel = "SITE", descriptionKey = "RenameCommand_site")
		String site;

		@Option(names = "--survey", required = true, paramLabel = "SURVEY", descriptionKey = "RenameCommand_survey")
		String survey;

		@Option(names = "--device", required = true, paramLabel = "DEVICE", descriptionKey = "RenameCommand_device")
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

	@Option(names = "--name", required = true, paramLabel = "NAME", descriptionKey = "RenameCommand_name")
	String newName;

	@Override
	Mode mode() {
		return Mode.EDIT;
	}

	@Override
	void checkArguments() {
		if (newName.isBlank() || newName.chars().anyMatch(Character::isISOControl)) {
			throw new ParameterException(spec.commandLine(), Messages.RenameCommand_nameMustBeAName);
		}
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		EObject object = target.in(archive.archive());
		String wanted = newName.strip();
		String refusal = SiblingNames.refusal(object, wanted).orElse(null);
		if (refusal != null) {
			throw new ArchiveException(refusal, Messages.RenameCommand_chooseAnother);
		}
		object.eSet(object.eClass().getEStructuralFeature("name"), wanted);
		record(archive);
		if (json) {
			printJson(new Json().put(object.eClass().getName().toLowerCase(Locale.ROOT), EcoreUtil.getID(object))
					.put("name", wanted));
		}
	}
}
