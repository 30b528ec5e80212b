package org.cairnfield.curation.split;

import java.util.Collection;
import java.util.List;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Split;
import org.eclipse.emf.common.command.AbstractCommand;

/** Sets by hand how a kept split is searched. It can be executed where that is another search. */
public final class SetSearchCommand extends AbstractCommand {

	/** Why the split is searched that way from then on. */
	static final String REASON = Messages.SetSearchCommand_setByHand;

	private final Split split;
	private final Search search;
	private Search searchBefore;
	private String reasonBefore;

	public SetSearchCommand(Split split, SearchChoice choice) {
		super(Words.bind(Messages.SetSearchCommand_setTheSearchOfSplit, split.getId()));
		this.split = split;
		search = choice.search();
	}

	@Override
	protected boolean prepare() {
		return !search.equals(split.getSearch());
	}

	@Override
	public void execute() {
		searchBefore = split.getSearch();
		reasonBefore = split.getSearchReason();
		redo();
	}

	@Override
	public void redo() {
		split.setSearch(search);
		split.setSearchReason(REASON);
	}

	@Override
	public void undo() {
		split.setSearch(searchBefore);
		split.setSearchReason(reasonBefore);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(split);
	}
}
