package org.cairnfield.curation.filter;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What can be asked for in a filter.
 *
 * @param fields  that can be compared
 * @param samples whether access points and findings can be asked for too
 * @param owner   who has the fields, for people
 * @param word    what a word alone is looked for in, for people
 */
record Vocabulary(List<? extends Field> fields, boolean samples, String owner, String word) {

	/** Of samples. */
	static final Vocabulary SAMPLES = new Vocabulary(Arrays.asList(SampleField.values()), true, "samples", "ids");

	Optional<Field> field(Token token) {
		return token.kind() != Token.Kind.WORD ? Optional.empty()
				: fields.stream().filter(field -> token.isWord(field.word())).map(Field.class::cast).findFirst();
	}

	/** All that can be compared, for people. */
	String shown() {
		return fields.stream().map(field -> field.word() + (field.unit().isEmpty() ? "" : " (" + field.unit() + ")"))
				.collect(Collectors.joining(", ")) + (samples ? Messages.Vocabulary_apDbm : "");
	}
}
