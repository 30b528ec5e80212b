package org.cairnfield.curation.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.cairnfield.model.Archive;
import org.cairnfield.model.RuleSetting;
import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.common.util.ECollections;

/** Sets what an archive tells the cleaning rules, as one change. What stays as it is stays the same object. */
public final class SetRuleSettingsCommand extends AbstractCommand {

	private final Archive archive;
	private final RuleSettings wanted;
	private List<RuleSetting> before;
	private List<RuleSetting> after;

	public SetRuleSettingsCommand(Archive archive, RuleSettings wanted) {
		this.archive = archive;
		this.wanted = wanted;
	}

	@Override
	protected boolean prepare() {
		return !RuleSettings.of(archive).equals(wanted);
	}

	@Override
	public void execute() {
		before = List.copyOf(archive.getRuleSettings());
		List<RuleSetting> rest = new ArrayList<>(before);
		after = wanted.all().stream().map(one -> take(rest, one)).toList();
		redo();
	}

	private static RuleSetting take(List<RuleSetting> rest, RuleSettings.One one) {
		for (RuleSetting kept : rest) {
			if (RuleSettings.One.of(kept).equals(one)) {
				rest.remove(kept);
				return kept;
			}
		}
		return one.toModel();
	}

	@Override
	public void undo() {
		ECollections.setEList(archive.getRuleSettings(), before);
	}

	@Override
	public void redo() {
		ECollections.setEList(archive.getRuleSettings(), after);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(archive);
	}

	@Override
	public String getLabel() {
		return Messages.SetRuleSettingsCommand_setTheRules;
	}
}
