package org.cairnfield.curation.release;

import java.util.List;
import java.util.Map;

import org.cairnfield.curation.measure.Way;
import org.cairnfield.exchange.pack.PackSettings;

/**
 * What a release says of itself: {@code releases/VERSION.json}. Written once; equal manifests give equal bytes.
 *
 * @param version    by Semantic Versioning
 * @param archive    name of the archive
 * @param digest     SHA-256 of the content in its canonical form
 * @param previous   version before, or empty
 * @param bump       why this version, in words
 * @param counts     by what is counted, in words
 * @param splits     ids of the splits that count
 * @param settings   of the device pack
 * @param files      SHA-256 by path of files of the archive that the digest leaves out, such as plans
 * @param gates      figures, bounds, evidence, and who overrode what
 * @param gateSet    text of the gates that were asked
 * @param measures   by way of matching
 * @param changes    since the version before, in words
 * @param ages       how old the map of each site is and what its latest survey says, in words
 * @param rules      what the cleaning rules were told otherwise than usual, in words
 * @param notes      in a person's words, or empty
 * @param preparedBy a name
 * @param preparedAt RFC 3339, UTC
 * @param signedBy   a name, or empty while nobody has
 * @param signedAt   likewise
 */
public record ReleaseManifest(String version, String archive, String digest, String previous, List<String> bump,
		Map<String, Long> counts, List<String> splits, PackSettings settings, Map<String, String> files,
		List<AskedGate> gates,
		String gateSet, List<Measured> measures, List<String> changes, List<String> ages, List<String> rules,
		String notes, String preparedBy,
		String preparedAt, String signedBy, String signedAt) {

	/** Name of the format and its version. */
	public static final String FORMAT = "cairnfield release 1";

	/**
	 * A gate as it was asked. Figure and bound are texts, so that what could not be measured can be said.
	 *
	 * @param overruledBy empty where nobody did
	 */
	public record AskedGate(String gate, String title, String figure, String bound, boolean met, String evidence,
			String overruledBy,
			String reason) {

		static AskedGate of(GateResult r) {
			return new AskedGate(r.gate().key(), r.gate().title(), r.shownFigure(), r.shownBound(), r.isMet(),
					r.evidence(),
					r.overrule() == null ? "" : r.overrule().person(),
					r.overrule() == null ? "" : r.overrule().reason());
		}
	}

	/**
	 * A way of matching as it was measured; metres and shares.
	 *
	 * @param n test samples that got a position
	 */
	public record Measured(String name, String how, int n, double meanMetres, double meanLowMetres,
			double meanHighMetres,
			double medianMetres, double p75Metres, double p95Metres, double rightFloorShare, double comparisons) {

		static Measured of(Way w) {
			return new Measured(w.name(), w.how(), w.errors().n(), w.errors().meanMetres(), w.mean().low(),
					w.mean().high(),
					w.errors().medianMetres(), w.errors().p75Metres(), w.errors().p95Metres(),
					(double) w.errors().siteAndFloorHits() / w.errors().points(), w.comparisons());
		}
	}

	/** Whether somebody has signed. */
	public boolean isSigned() {
		return !signedBy.isEmpty();
	}

	/** The same, signed. */
	public ReleaseManifest signed(String person, String time) {
		return new ReleaseManifest(version, archive, digest, previous, bump, counts, splits, settings, files, gates,
				gateSet, measures,
				changes, ages, rules, notes, preparedBy, preparedAt, person, time);
	}

	/** The same with other notes. */
	public ReleaseManifest withNotes(String text) {
		return new ReleaseManifest(version, archive, digest, previous, bump, counts, splits, settings, files, gates,
				gateSet, measures,
				changes, ages, rules, text, preparedBy, preparedAt, signedBy, signedAt);
	}

	/** Message of the tag: version, changes, what was overridden, notes. */
	public String message() {
		StringBuilder text = new StringBuilder(
				archive.isBlank() ? "Release" : archive.strip().lines().findFirst().orElse("Release"))
				.append(' ').append(version).append("\n\n").append("content ").append(digest).append('\n');
		text.append("prepared by ").append(preparedBy).append(", signed by ").append(signedBy).append('\n');
		gates.stream().filter(g -> !g.overruledBy().isEmpty())
				.forEach(g -> text.append("gate ").append(g.gate()).append(" (")
						.append(g.figure()).append(", ").append(g.bound()).append(") overridden by ")
						.append(g.overruledBy()).append(": ")
						.append(g.reason()).append('\n'));
		if (!changes.isEmpty()) {
			text.append('\n');
			changes.forEach(change -> text.append("- ").append(change).append('\n'));
		}
		if (!ages.isEmpty()) {
			text.append('\n');
			ages.forEach(age -> text.append("- ").append(age).append('\n'));
		}
		if (!rules.isEmpty()) {
			text.append('\n');
			rules.forEach(rule -> text.append("- rule setting ").append(rule).append('\n'));
		}
		if (!notes.isBlank()) {
			text.append('\n').append(notes.strip()).append('\n');
		}
		return text.toString();
	}
}
