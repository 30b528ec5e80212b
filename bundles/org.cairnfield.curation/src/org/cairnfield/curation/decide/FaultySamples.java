package org.cairnfield.curation.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;

/** Sets samples aside that verdicts call faulty, for the reason that these give. */
final class FaultySamples {

	private FaultySamples() {
	}

	/** @return null where there is nothing to set aside */
	static Command setAside(Archive archive, List<LedgerEntry> verdicts) {
		ArchiveIndex index = ArchiveIndex.of(archive);
		Map<String, List<SampleRef>> byReason = new LinkedHashMap<>();
		for (LedgerEntry verdict : verdicts) {
			if (verdict.decision() == Decision.FAULTY && !verdict.takesBack()) {
				index.sample(verdict.sample()).filter(ref -> ref.survey().table().isKept(ref.row()))
						.ifPresent(ref -> byReason.computeIfAbsent(reason(verdict), why -> new ArrayList<>()).add(ref));
			}
		}
		CompoundCommand all = new CompoundCommand();
		byReason.forEach((reason, samples) -> all.append(SetSampleStateCommand.setAside(samples, reason)));
		return all.canExecute() ? all : null;
	}

	private static String reason(LedgerEntry verdict) {
		if (verdict.text() != null) {
			return Words.bind(Messages.FaultySamples_faulty, verdict.text().strip().replaceAll("\\s+", " "));
		}
		boolean plain = verdict.reasonCode() == null || verdict.reasonCode().equals(ReasonCode.FAULTY.code());
		return plain ? "faulty"
				: Words.bind(Messages.FaultySamples_faulty,
						ReasonCode.named(verdict.reasonCode()).map(ReasonCode::title).orElse(verdict.reasonCode()));
	}
}
