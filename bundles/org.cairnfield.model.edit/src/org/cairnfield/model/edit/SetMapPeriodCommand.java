package org.cairnfield.model.edit;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EAttribute;

/** Says of which days the training surveys of a site make its map. The surveys stay in the archive. */
public final class SetMapPeriodCommand extends CompoundCommand {

	/**
	 * @param from  first day; null: from the first survey on
	 * @param until last day, not before the first; null: up to the last survey
	 */
	public SetMapPeriodCommand(Site site, LocalDate from, LocalDate until) {
		super(label(site, from, until));
		if (from != null && until != null && until.isBefore(from)) {
			throw new IllegalArgumentException("a map from " + from + " cannot end on " + until);
		}
		appendIfCanExecute(new Bound(site, ModelPackage.Literals.SITE__MAP_FROM, from));
		appendIfCanExecute(new Bound(site, ModelPackage.Literals.SITE__MAP_UNTIL, until));
	}

	private static String label(Site site, LocalDate from, LocalDate until) {
		String days = from == null && until == null ? Messages.SetMapPeriodCommand_allSurveys
				: "surveys" + (from == null ? "" : Words.bind(Messages.SetMapPeriodCommand_from, from))
						+ (until == null ? "" : Words.bind(Messages.SetMapPeriodCommand_until, until));
		return Words.bind(Messages.SetMapPeriodCommand_makeTheMapOfOf, ModelText.name(site), days);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return commandList.isEmpty() ? List.of() : super.getAffectedObjects();
	}

	private static final class Bound extends FieldCommand {

		Bound(Site site, EAttribute attribute, LocalDate day) {
			super(List.of(site), attribute, day);
		}

		@Override
		protected String label(int changing) {
			return Messages.SetMapPeriodCommand_setTheDaysOfThe;
		}
	}
}
