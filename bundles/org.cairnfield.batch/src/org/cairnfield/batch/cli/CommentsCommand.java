package org.cairnfield.batch.cli;

import java.time.Clock;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.team.CommentBook;
import org.cairnfield.curation.team.CommentSubject;
import org.cairnfield.model.Comment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "comments", description = "${bundle:CommentsCommand_what}")
final class CommentsCommand extends ArchiveCommand {

	@Option(names = "--on", paramLabel = "SUBJECT", descriptionKey = "CommentsCommand_on2")
	String on;

	private CommentSubject subject;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void checkArguments() {
		subject = on == null ? null : CommentCommand.subject(this, on);
	}

	@Override
	void run(OpenArchive archive, Workers workers) {
		CommentBook book = new CommentBook(archive.archive(), Clock.systemUTC());
		List<Comment> comments = subject == null ? book.all() : book.on(subject);
		if (json) {
			printJson(new Json().put("comments",
					comments.stream()
							.map(comment -> new Json().put("id", comment.getId()).put("on", comment.getSubject())
									.put("person", comment.getPerson()).put("time", String.valueOf(comment.getTime()))
									.put("text", comment.getText()).fields())
							.toList()));
			return;
		}
		comments.forEach(comment -> out().println(Words.bind(Messages.CommentsCommand_on, comment.getTime(),
				comment.getPerson(), comment.getSubject(), comment.getText())));
		if (comments.isEmpty()) {
			out().println(Messages.CommentsCommand_noComments);
		}
	}
}
