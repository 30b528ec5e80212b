package org.cairnfield.ui.review.internal.desk;

import org.cairnfield.curation.decide.CarrySource;
import org.cairnfield.curation.decide.VerdictIntake;
import org.cairnfield.curation.review.ReviewSession;
import org.cairnfield.curation.review.VerdictTransfer;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.work.LatestWork;
import org.eclipse.osgi.util.NLS;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Asks what is to be known of verdicts of other splits and of tables, beside the user interface. */
public final class VerdictExchange {

	private final Supplier<ReviewSession> review;
	private final LatestWork looking = new LatestWork();
	private final LatestWork tables = new LatestWork();

	VerdictExchange(Supplier<ReviewSession> review) {
		this.review = review;
	}

	private VerdictTransfer transfer() {
		return new VerdictTransfer(review.get());
	}

	/** Splits whose verdicts could be carried over to the one under review, the most natural first. */
	public List<CarrySource> sources() {
		return transfer().sources();
	}

	/** What to carry over to a split that nobody has reviewed yet. */
	public Optional<CarrySource> offer() {
		return transfer().offer();
	}

	/** Whether the archive can be changed, and has another split with verdicts. */
	public boolean canCarry() {
		return transfer().canCarry();
	}

	/** Looks at what carrying over would do; the latest question counts. */
	public void look(String from, Consumer<VerdictTransfer.Preview> result, Consumer<String> failed) {
		var question = transfer().look(from);
		looking.start(NLS.bind(Messages.VerdictExchange_comparingSplitsAnd, from, split()), workers -> question.call(),
				result,
				why -> failed.accept(Problems.text(why)));
	}

	private String split() {
		return review.get().split().getId();
	}

	/** Carries over what was looked at, as one change. @return whether it was done; the message has the reason why not */
	public boolean carry(VerdictTransfer.Preview preview) {
		return transfer().carry(preview);
	}

	/** Writes the table of verdicts for review outside, with what the person may see. */
	public void export(Path file) {
		String id = split();
		var question = transfer().export(file);
		tables.start(NLS.bind(Messages.VerdictExchange_writingTheVerdictsOfSplit, id), workers -> question.call(),
				rows -> transfer().exported(file, id, rows),
				this::failed);
	}

	/**
	 * Takes in a table that was filled in, as one change; nothing of it where a row is wrong.
	 *
	 * @param wrong hears what is wrong, if something is
	 */
	public void takeIn(Path file, Consumer<List<VerdictIntake.Problem>> wrong) {
		var question = transfer().read(file);
		tables.start(NLS.bind(Messages.VerdictExchange_reading, file.getFileName()), workers -> question.call(),
				table -> {
					List<VerdictIntake.Problem> problems = transfer().take(table);
					if (!problems.isEmpty()) {
						wrong.accept(problems);
					}
				}, this::failed);
	}

	private void failed(Exception why) {
		review.get().refuse(Problems.text(why));
	}
}
