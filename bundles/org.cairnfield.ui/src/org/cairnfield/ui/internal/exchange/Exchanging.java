package org.cairnfield.ui.internal.exchange;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.Exchanged;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.ui.internal.exchange.model.ExchangeText;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;

/** Exchanges the archive on show with others, and tells what came of it in the strip. */
final class Exchanging {

	private static final String NOTICE = "exchanged";

	private Exchanging() {
	}

	static void run(ArchiveSession session) {
		OpenArchive archive = session.open();
		Exchanged[] exchanged = new Exchanged[1];
		boolean done = Saving.inName(session, Messages.Exchanging_exchangingWithOthers,
				(person, progress) -> exchanged[0] = archive.exchange().run(person, null, true, progress));
		if (archive.archive() != session.archive()) { // read again, also where sending failed after that
			Sessions.workbench().showAgain(archive);
		} else {
			if (!done && !archive.isModified()) { // what was unsaved is a save point
				session.saved();
			}
			Connection.workbench().exchanged();
		}
		if (done) {
			show(exchanged[0]);
		}
	}

	private static void show(Exchanged exchanged) {
		List<Notice.Action> actions = new ArrayList<>();
		if (!exchanged.received().isEmpty() || !exchanged.sent().isEmpty() || exchanged.notes().size() > 1) {
			actions.add(new Notice.Action(Messages.Exchanging_show, () -> new ExchangedDialog(null, exchanged).open()));
		}
		actions.add(new Notice.Action(Messages.Exchanging_dismiss, () -> Notices.workbench().remove(NOTICE)));
		Notices.workbench()
				.say(new Notice(NOTICE, exchanged.notes().isEmpty() ? Notice.Kind.INFORMATION : Notice.Kind.WARNING,
						ExchangeText.done(exchanged), actions));
	}
}
