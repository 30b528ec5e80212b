package org.cairnfield.curation.team;

import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.archive.history.Person;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Comment;
import org.cairnfield.model.ModelFactory;
import org.eclipse.emf.common.command.AbstractCommand;

/**
 * What people have said about proposals, findings and releases of an archive. Comments are only added: one that was saved is
 * never changed or removed.
 */
public final class CommentBook {

	/** So many characters a comment has at most. */
	public static final int LONGEST = 2000;

	private static final Comparator<Comment> ORDER = Comparator
			.comparing(Comment::getTime, Comparator.nullsFirst(Comparator.<Instant>naturalOrder()))
			.thenComparing(Comment::getId, Comparator.nullsFirst(Comparator.<String>naturalOrder()));

	private final Archive archive;
	private final Clock clock;
	private final Set<String> saved = new HashSet<>();

	/** Of an archive as it was opened: all its comments count as saved. */
	public CommentBook(Archive archive, Clock clock) {
		this.archive = archive;
		this.clock = clock;
		saved();
	}

	/** The comments that there are now are on disk, and stay. */
	public void saved() {
		archive.getComments().forEach(comment -> saved.add(comment.getId()));
	}

	/** All, the oldest first. */
	public List<Comment> all() {
		return archive.getComments().stream().sorted(ORDER).toList();
	}

	/** Those on one subject, the oldest first. */
	public List<Comment> on(CommentSubject subject) {
		return archive.getComments().stream().filter(comment -> subject.toString().equals(comment.getSubject()))
				.sorted(ORDER).toList();
	}

	/**
	 * @param text   control characters and line breaks become blanks
	 * @param person who says it
	 * @throws ReviewRefused where there is no text, or too much of it
	 */
	public TeamChange add(CommentSubject subject, String text, String person) {
		String plain = text.replaceAll("[\\p{Cntrl}\\p{Cs}\\uFFFE\\uFFFF]+", " ").strip();
		if (plain.isEmpty()) {
			throw new ReviewRefused(Messages.CommentBook_aCommentNeedsAText);
		}
		if (plain.length() > LONGEST) {
			throw new ReviewRefused(Words.bind(Messages.CommentBook_aCommentHasAtMost, LONGEST, plain.length()));
		}
		Comment comment = ModelFactory.eINSTANCE.createComment();
		comment.setSubject(subject.toString());
		comment.setText(plain);
		comment.setPerson(person(person));
		comment.setTime(clock.instant());
		comment.setId(new FreeIds(archive)
				.next(List.of(comment.getSubject(), plain, comment.getPerson(), comment.getTime().toString())));
		return new TeamChange(new Adding(comment, Words.bind(Messages.CommentBook_commentOn, subject.title())));
	}

	private static String person(String typed) {
		try {
			return Person.named(typed).name();
		} catch (IllegalArgumentException e) {
			throw new ReviewRefused(e.getMessage());
		}
	}

	/** Adds a comment; undo takes it out as long as it was not saved. */
	private final class Adding extends AbstractCommand {
		private final Comment comment;
		private final String what;

		Adding(Comment comment, String what) {
			this.comment = comment;
			this.what = what;
		}

		private boolean stays() {
			return saved.contains(comment.getId());
		}

		@Override
		protected boolean prepare() {
			return true;
		}

		@Override
		public void execute() {
			redo();
		}

		@Override
		public void redo() {
			if (!archive.getComments().contains(comment)) {
				archive.getComments().add(comment);
			}
		}

		@Override
		public void undo() {
			if (!stays()) {
				archive.getComments().remove(comment);
			}
		}

		@Override
		public Collection<?> getAffectedObjects() {
			return List.of(archive);
		}

		@Override
		public String getLabel() {
			return what + (stays() ? Messages.CommentBook_whichIsSavedAndStays : "");
		}
	}
}
