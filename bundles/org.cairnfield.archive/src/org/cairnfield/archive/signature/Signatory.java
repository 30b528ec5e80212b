package org.cairnfield.archive.signature;

import java.util.List;

/**
 * A key of a person, as a line of a list has it.
 *
 * @param names       whom signatures of the key stand for
 * @param lead        whether the key may change the list
 * @param type        such as ssh-ed25519
 * @param key         in Base64
 * @param fingerprint as ssh-keygen shows it, SHA256:…
 */
public record Signatory(List<String> names, boolean lead, String type, String key, String fingerprint) {

	public Signatory {
		names = List.copyOf(names);
	}
}
