package org.cairnfield.archive.signature;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.text.Words;

/**
 * People and the SSH keys that they sign with, in the format in which ssh-keygen reads allowed signers: a line a key. A lead's
 * key has {@value #LEAD} among its namespaces. Comments and lines that cannot be read stay as they are. Immutable.
 */
public final class SignerList {

	/** The namespace that marks the key of a lead, who may change the list. */
	public static final String LEAD = "cairnfield-people";
	/** Nobody. */
	public static final SignerList NOBODY = of(new byte[0]);

	private static final Pattern TYPE = Pattern.compile("(sk-)?(ssh|ecdsa)-[A-Za-z0-9@.-]+");
	private static final Pattern NAMESPACES = Pattern.compile("(?i)(?:^|,)namespaces=\"([^\"]*)\"");
	private static final Pattern PART = Pattern.compile("(?:[^\\s\"]|\"[^\"]*\")+");
	private static final String NOT_IN_NAMES = "\",*?!\\#<>";

	private final List<String> lines;
	/** By line; null for one that names no key. */
	private final List<Signatory> signatories;

	private SignerList(List<String> lines) {
		this.lines = List.copyOf(lines);
		signatories = this.lines.stream().map(SignerList::read).toList();
	}

	/** The list in a file. */
	public static SignerList of(byte[] file) {
		String text = new String(file, StandardCharsets.UTF_8);
		return new SignerList(text.isEmpty() ? List.of() : Arrays.asList(text.split("\r?\n")));
	}

	/** The file. */
	public byte[] toBytes() {
		return lines.isEmpty() ? new byte[0] : (String.join("\n", lines) + '\n').getBytes(StandardCharsets.UTF_8);
	}

	/** Those that can be read, in their order. */
	public List<Signatory> signatories() {
		return signatories.stream().filter(s -> s != null).toList();
	}

	/** Numbers of lines, from 1, that are no comments and name no key. */
	public List<Integer> unreadable() {
		List<Integer> numbers = new ArrayList<>();
		for (int i = 0; i < lines.size(); i++) {
			if (signatories.get(i) == null && !lines.get(i).isBlank() && !lines.get(i).startsWith("#")) {
				numbers.add(i + 1);
			}
		}
		return numbers;
	}

	/** Whether it names no key. */
	public boolean isEmpty() {
		return signatories().isEmpty();
	}

	/** The leads alone. */
	public SignerList leads() {
		List<String> kept = new ArrayList<>();
		for (int i = 0; i < lines.size(); i++) {
			if (signatories.get(i) != null && signatories.get(i).lead()) {
				kept.add(lines.get(i));
			}
		}
		return new SignerList(kept);
	}

	/**
	 * The list with one key more. The first person to be named is a lead.
	 *
	 * @param publicKey a line as ssh-keygen writes it to a file .pub
	 * @throws ArchiveException for a name that such a list cannot hold, what is no public key, and a key that somebody has
	 */
	public SignerList with(String name, String publicKey, boolean lead) throws ArchiveException {
		Signatory added = signatory(name, publicKey, lead || isEmpty());
		Optional<Signatory> owner = signatories().stream().filter(s -> s.key().equals(added.key())).findFirst();
		if (owner.isPresent()) {
			throw new ArchiveException(
					Words.bind(Messages.SignerList_theKeyIsThatOf, added.fingerprint(),
							String.join(", ", owner.get().names())),
					Messages.SignerList_nameAnotherKeyOrRemove);
		}
		List<String> more = new ArrayList<>(lines);
		more.add((name.contains(" ") ? '"' + name + '"' : name) + " namespaces=\"git" + (added.lead() ? "," + LEAD : "")
				+ "\" " + added.type() + ' '
				+ added.key());
		return new SignerList(more);
	}

	private static Signatory signatory(String name, String publicKey, boolean lead) throws ArchiveException {
		if (publicKey.contains("PRIVATE KEY")) {
			throw new ArchiveException(Messages.SignerList_thatIsAPrivateKey,
					Messages.SignerList_nameTheFileWithThe);
		}
		if (name.isBlank() || !name.strip().equals(name)
				|| name.chars().anyMatch(c -> NOT_IN_NAMES.indexOf(c) >= 0 || Character.isISOControl(c))) {
			throw new ArchiveException(Words.bind(Messages.SignerList_aListOfSignersCannot, name),
					Words.bind(Messages.SignerList_giveANameWithoutAny, NOT_IN_NAMES));
		}
		Signatory found = read("x " + publicKey.strip());
		if (found == null || publicKey.strip().lines().count() != 1
				|| !TYPE.matcher(publicKey.strip().split("\\s")[0]).matches()) {
			throw new ArchiveException(Messages.SignerList_thatIsNoPublicKey,
					Messages.SignerList_nameAFileAsSsh);
		}
		return new Signatory(List.of(name), lead, found.type(), found.key(), found.fingerprint());
	}

	/**
	 * The list without a person.
	 *
	 * @throws ArchiveException where nobody has that name, a key has others too, or no lead would be left
	 */
	public SignerList without(String name) throws ArchiveException {
		List<String> rest = new ArrayList<>();
		for (int i = 0; i < lines.size(); i++) {
			Signatory signatory = signatories.get(i);
			if (signatory == null || signatory.names().stream().noneMatch(n -> Signature.isSame(n, name))) {
				rest.add(lines.get(i));
			} else if (signatory.names().size() > 1) {
				throw new ArchiveException(
						Words.bind(Messages.SignerList_theKeyOfIsAlso, name, String.join(", ", signatory.names())),
						Messages.SignerList_editTheFileByHand);
			}
		}
		if (rest.size() == lines.size()) {
			throw new ArchiveException(Words.bind(Messages.SignerList_theListNamesNobody, name),
					Words.bind(Messages.SignerList_itNames, isEmpty() ? Messages.SignerList_nobodyAtAll
							: String.join(", ", signatories().stream().flatMap(s -> s.names().stream()).toList())));
		}
		SignerList left = new SignerList(rest);
		if (left.leads().isEmpty()) {
			throw new ArchiveException(Words.bind(Messages.SignerList_isTheOnlyLeadAnd, name),
					Messages.SignerList_addAnotherLeadFirst);
		}
		return left;
	}

	private static Signatory read(String line) {
		List<String> parts = new ArrayList<>();
		for (Matcher part = PART.matcher(line); part.find() && parts.size() < 4;) {
			parts.add(part.group());
		}
		if (parts.isEmpty() || parts.get(0).startsWith("#")) {
			return null;
		}
		boolean options = parts.size() > 1 && !TYPE.matcher(parts.get(1)).matches();
		int type = options ? 2 : 1;
		if (parts.size() < type + 2 || !TYPE.matcher(parts.get(type)).matches()) {
			return null;
		}
		String print = fingerprint(parts.get(type), parts.get(type + 1));
		return print == null ? null
				: new Signatory(List.of(parts.get(0).replace("\"", "").split(",")), options && isLead(parts.get(1)),
						parts.get(type),
						parts.get(type + 1), print);
	}

	private static boolean isLead(String options) {
		Matcher namespaces = NAMESPACES.matcher(options);
		return namespaces.find()
				&& Arrays.asList(namespaces.group(1).toLowerCase(Locale.ROOT).split(",")).contains(LEAD);
	}

	/** Null where it is no key of that type: a key begins with its type. */
	private static String fingerprint(String type, String base64) {
		try {
			byte[] key = Base64.getDecoder().decode(base64);
			byte[] name = type.getBytes(StandardCharsets.US_ASCII);
			if (key.length <= 4 + name.length || !Arrays.equals(name, Arrays.copyOfRange(key, 4, 4 + name.length))
					|| key[3] != name.length) {
				return null;
			}
			return "SHA256:" + Base64.getEncoder().withoutPadding()
					.encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
		} catch (IllegalArgumentException e) {
			return null;
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException(e);
		}
	}
}
