package org.cairnfield.curation.decide;

import java.util.List;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.edit.FieldCommand;

/** Sets how the proposals of an archive are reviewed. The usual policy is kept as none. */
public final class SetReviewPolicyCommand extends FieldCommand {

	public SetReviewPolicyCommand(Archive archive, ReviewPolicy policy) {
		super(List.of(archive), ModelPackage.Literals.ARCHIVE__REVIEW_POLICY,
				policy.equals(ReviewPolicy.USUAL) ? null : policy.toString());
	}

	@Override
	protected String label(int changing) {
		return Messages.SetReviewPolicyCommand_setTheReviewPolicy;
	}

	/** Sets the policy where the archive has another, outside any undo stack. */
	public void executeIfAnother() {
		if (canExecute()) {
			execute();
		}
	}
}
