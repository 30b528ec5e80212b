package org.cairnfield.ui.review.internal.verdict;

import java.util.Map;
import java.util.function.Consumer;

import org.cairnfield.curation.review.Choice;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;

/** The keys of the reviewer; which one a handler is for stands after the class name in plugin.xml. */
public final class VerdictHandler extends AbstractHandler implements IExecutableExtension {

	private static final Map<String, Consumer<ReviewDesk>> KEYS = Map.of("APPROVE",
			desk -> desk.review().decide(Choice.APPROVE),
			"MOVE", desk -> desk.review().decide(Choice.MOVE), "POOL", desk -> desk.review().decide(Choice.POOL),
			"DEFER",
			desk -> desk.review().decide(Choice.DEFER), "FAULTY", desk -> desk.review().decide(Choice.FAULTY), "NEXT",
			desk -> desk.review().walk(1), "BACK", desk -> desk.review().walk(-1), "REASON", ReviewDesk::askReason,
			"TAKE_BACK",
			desk -> desk.review().takeBack());

	private Consumer<ReviewDesk> key;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		key = KEYS.get(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (key != null) {
			key.accept(ReviewDesk.workbench());
		}
		return null;
	}
}
