package org.cairnfield.curation.study;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.cairnfield.curation.measure.TestRun;

/** What a study sets side by side. Codes are a contract with scripts. */
public enum StudyMethod {

	/** The baseline. */
	PLAIN(TestRun.PLAIN, TestRun.HOW_PLAIN, 0.2),
	/** The stronger baseline. */
	PLAIN_3W(TestRun.PLAIN_3W, TestRun.HOW_PLAIN_3W, 0.2),
	/** As published. */
	DBSCAN("dbscan", Messages.StudyMethod_dbscanNoiseDropped, 6),
	/** The same split, noise given back. */
	DBSCAN_CORRELATION("dbscan+correlation",
			Messages.StudyMethod_theSameSplitNoiseWith, 6),
	/** Likewise. */
	DBSCAN_NEAREST("dbscan+nearest", Messages.StudyMethod_theSameSplitNoiseIn, 4),
	/** Clusters found among principal components. */
	DBSCAN_PCA("dbscan+pca", Messages.StudyMethod_dbscanOnPrincipalComponents, 6),
	/** Cells around means. */
	K_MEANS("k-means", "k-means++", 4),
	/** The same, widened. */
	K_MEANS_OVERLAP("k-means-overlap",
			Messages.StudyMethod_kMeansWithZonesThat, 4),
	/** Exemplars. */
	AFFINITY("affinity", Messages.StudyMethod_affinityPropagation, 40),
	/** Fewer access points. */
	ORTHOGONAL_SEARCH("orthogonal-search",
			Messages.StudyMethod_accessPointsThatExplainThe, 8),
	/** Few directions. */
	KERNEL_REDUCTION("kernel-reduction",
			Messages.StudyMethod_directionsThatCarryThePlace, 12),
	/** What wins on held-out training positions. */
	CHOSEN("chosen", Messages.StudyMethod_theBestOfAllMethods, 2);

	private final String code;
	private final String how;
	private final double weight;

	StudyMethod(String code, String how, double weight) {
		this.code = code;
		this.how = how;
		this.weight = weight;
	}

	/** As files and options have it. */
	public String code() {
		return code;
	}

	/** For a person. */
	public String how() {
		return how;
	}

	/** How long it takes beside the others, roughly: for the time left. */
	double weight() {
		return weight;
	}

	/** Whether every sample is compared. */
	public boolean isPlain() {
		return this == PLAIN || this == PLAIN_3W;
	}

	/** Whether {@link #CHOSEN} may take it. */
	boolean isCandidate() {
		return !isPlain() && this != CHOSEN;
	}

	/** @throws IllegalArgumentException for a text that is no code, naming those that are */
	public static StudyMethod of(String code) {
		return Arrays.stream(values()).filter(method -> method.code.equals(code)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("no method '" + code + "'; the methods are "
						+ Arrays.stream(values()).map(StudyMethod::code).collect(Collectors.joining(", "))));
	}

	/** All of them. */
	public static List<StudyMethod> all() {
		return List.of(values());
	}
}
