package org.cairnfield.curation.remedy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.CalibrateDeviceCommand;
import org.cairnfield.model.edit.CorrectDeviceCommand;
import org.cairnfield.model.edit.CountAccessPointsAsCommand;
import org.cairnfield.model.edit.GroupAccessPointsCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetAccessPointStateCommand;
import org.cairnfield.model.edit.SetFloorCommand;
import org.cairnfield.model.edit.SetMapPeriodCommand;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.edit.SwapAxesCommand;
import org.cairnfield.model.values.Count;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;

/** Turns the remedies that rules offer into changes of an archive that can be undone. */
public final class RemedyCommands {

	private final Archive archive;

	/** @param archive the one that is to change; the rules may have looked at a copy of it */
	public RemedyCommands(Archive archive) {
		this.archive = archive;
	}

	/**
	 * The change that a remedy stands for. What is no longer in the archive is passed over; where nothing is
	 * left to change the command cannot be executed.
	 */
	public Command command(Remedy remedy) {
		if (remedy instanceof Remedy.SetAsideSamples r) {
			return SetSampleStateCommand.setAside(samples(r.sampleIds()), r.reason());
		}
		if (remedy instanceof Remedy.SetAsideAccessPoints r) {
			return SetAccessPointStateCommand.setAside(accessPoints(r.addresses()), r.reason());
		}
		if (remedy instanceof Remedy.SetAsideSurvey r) {
			return SetSampleStateCommand.setAside(samplesOf(r.surveyId()), r.reason());
		}
		if (remedy instanceof Remedy.SwapAxes r) {
			return new SwapAxesCommand(samples(r.sampleIds()));
		}
		if (remedy instanceof Remedy.SetFloor r) {
			return new SetFloorCommand(samples(r.sampleIds()), r.level());
		}
		if (remedy instanceof Remedy.DropReadings r) {
			return leaveOut(r);
		}
		if (remedy instanceof Remedy.AverageSamples r) {
			return average(r);
		}
		if (remedy instanceof Remedy.GroupAccessPoints r) {
			return new GroupAccessPointsCommand(accessPoints(r.addresses()), r.addresses().get(0));
		}
		if (remedy instanceof Remedy.CalibrateDevice r) {
			return calibrate(r);
		}
		if (remedy instanceof Remedy.CountAs r) {
			return countAs(r);
		}
		if (remedy instanceof Remedy.MapFrom r) {
			CompoundCommand all = new CompoundCommand(0);
			ArchiveIndex.of(archive).site(r.siteId())
					.ifPresent(site -> all.append(new SetMapPeriodCommand(site, r.from(), site.getMapUntil())));
			return all.unwrap();
		}
		if (remedy instanceof Remedy.CorrectDevice r) {
			return correct(r);
		}
		throw new IllegalArgumentException("no change is known for " + remedy);
	}

	/** Whether a remedy would change anything. */
	public boolean changes(Remedy remedy) {
		return command(remedy).canExecute();
	}

	/** Makes the change at once, for work without an undo stack; the history can take it back. */
	public void apply(Remedy remedy) {
		Command command = command(remedy);
		if (command.canExecute()) {
			command.execute();
		}
	}

	private List<SampleRef> samples(Collection<String> keys) {
		ArchiveIndex index = ArchiveIndex.of(archive);
		return keys.stream().flatMap(key -> index.sample(key).stream()).toList();
	}

	private List<SampleRef> samplesOf(String surveyId) {
		return ArchiveIndex.of(archive).survey(surveyId).map(survey -> IntStream.range(0, survey.table().size())
				.filter(survey.table()::isKept) // another reason stays as it is
				.mapToObj(row -> new SampleRef(survey, row)).toList()).orElse(List.of());
	}

	private List<AccessPoint> accessPoints(Collection<String> addresses) {
		ArchiveIndex index = ArchiveIndex.of(archive);
		return addresses.stream().distinct().flatMap(address -> index.address(address).stream()).toList();
	}

	private Command leaveOut(Remedy.DropReadings remedy) {
		ArchiveIndex index = ArchiveIndex.of(archive);
		Map<Survey, List<SampleRef>> refs = new LinkedHashMap<>();
		Map<Survey, Map<String, Set<String>>> goes = new HashMap<>();
		for (Remedy.Reading reading : remedy.readings()) {
			index.sample(reading.sampleId()).ifPresent(ref -> {
				refs.computeIfAbsent(ref.survey(), s -> new ArrayList<>()).add(ref);
				goes.computeIfAbsent(ref.survey(), s -> new HashMap<>())
						.computeIfAbsent(ref.key().sample(), s -> new TreeSet<>())
						.add(index.address(reading.address()).map(AccessPoint::getId).orElse(reading.address()));
			});
		}
		CompoundCommand all = new CompoundCommand(0,
				Words.bind(Messages.RemedyCommands_leaveOutReadings, remedy.size()));
		refs.forEach((survey, of) -> all.append(new LeaveOutReadingsCommand(of, goes.get(survey))));
		return all;
	}

	private Command average(Remedy.AverageSamples remedy) {
		Map<Survey, List<List<SampleRef>>> bySurvey = new LinkedHashMap<>();
		remedy.groups().stream().map(this::samples).filter(group -> group.size() > 1)
				.forEach(group -> bySurvey.computeIfAbsent(group.get(0).survey(), s -> new ArrayList<>()).add(group));
		CompoundCommand all = new CompoundCommand(0,
				Words.bind(Messages.RemedyCommands_averageScans, Count.of(remedy.size(), "sample")));
		bySurvey.values().forEach(groups -> all.append(new AverageSamplesCommand(groups, remedy.reason())));
		return all;
	}

	private Command countAs(Remedy.CountAs remedy) {
		ArchiveIndex index = ArchiveIndex.of(archive);
		CompoundCommand all = new CompoundCommand(0, Words.bind(Messages.RemedyCommands_countAsOthers,
				Count.of(remedy.size(), Messages.RemedyCommands_accessPoint)));
		remedy.others().forEach((address, other) -> index.address(address).ifPresent(one -> index.address(other)
				.ifPresent(counted -> all.appendIfCanExecute(new CountAccessPointsAsCommand(List.of(one), counted)))));
		return all;
	}

	private Command correct(Remedy.CorrectDevice remedy) {
		CompoundCommand all = new CompoundCommand(0);
		ArchiveIndex.of(archive).device(remedy.deviceId())
				.ifPresent(device -> all
						.append(new CorrectDeviceCommand(device, remedy.line().slope(), remedy.line().shiftDb())));
		return all.unwrap();
	}

	private Command calibrate(Remedy.CalibrateDevice remedy) {
		CompoundCommand all = new CompoundCommand(0);
		ArchiveIndex.of(archive).device(remedy.deviceId())
				.ifPresent(device -> all.append(new CalibrateDeviceCommand(device, remedy.offsetDb())));
		return all.unwrap();
	}
}
