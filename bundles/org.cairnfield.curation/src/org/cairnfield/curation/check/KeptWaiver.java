package org.cairnfield.curation.check;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Waiver;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.Sha256;

/**
 * A waiver that an archive keeps.
 *
 * @param kept    as the archive has it
 * @param covered findings that it covers now; none where what it was about has changed, or is mended
 */
public record KeptWaiver(org.cairnfield.model.Waiver kept, List<Finding> covered) {

	private static final int ID_DIGITS = 8;

	/**
	 * All of an archive, in the order given.
	 *
	 * @param findings all that the rules say of the archive, waived or not
	 */
	public static List<KeptWaiver> of(Archive archive, List<Finding> findings) {
		return archive.getWaivers().stream().map(kept -> {
			Waiver waiver = RuleCheck.fromModel(kept);
			return new KeptWaiver(kept, findings.stream().filter(waiver::covers).toList());
		}).toList();
	}

	/** What people call it: hexadecimal digits that follow from its content. */
	public String id() {
		String content = kept.getRule() + '\n' + kept.getContentKey() + '\n' + kept.getTime();
		return Sha256.of(content.getBytes(StandardCharsets.UTF_8)).substring(0, ID_DIGITS);
	}

	/** What it covers, for a person. */
	public String about() {
		return covered.isEmpty() ? Messages.KeptWaiver_nothingThatTheRulesReport
				: covered.size() == 1 ? covered.get(0).message()
						: Words.bind(Messages.KeptWaiver_andMore, covered.get(0).message(), covered.size() - 1);
	}
}
