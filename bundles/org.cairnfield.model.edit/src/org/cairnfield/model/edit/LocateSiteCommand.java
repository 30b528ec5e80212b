package org.cairnfield.model.edit;

import java.util.List;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Georeference;

/** Says where on Earth a site lies, or takes it back. Positions stay in the frame of the site. */
public final class LocateSiteCommand extends FieldCommand {

	private final Site site;
	private final Georeference where;

	/** @param where null: not known */
	public LocateSiteCommand(Site site, Georeference where) {
		super(List.of(site), ModelPackage.Literals.SITE__GEOREFERENCE, where);
		this.site = site;
		this.where = where;
	}

	@Override
	protected String label(int changing) {
		return Words.bind(Messages.LocateSiteCommand_lies,
				where == null ? Messages.LocateSiteCommand_forgetWhereOnEarth
						: Messages.LocateSiteCommand_sayWhereOnEarth,
				ModelText.name(site));
	}
}
