package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.Save;
import org.cairnfield.archive.internal.git.OwnKey;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.signature.Signature;
import org.cairnfield.archive.signature.Signature.State;
import org.cairnfield.archive.signature.SignerList;
import org.cairnfield.core.text.Words;

/** Whose key is whose in an archive. Each change is one save point, which a lead of the list has to sign. */
public final class People {

	/** The path of the list in an archive. */
	public static final String FILE = ArchiveLayout.PEOPLE;

	private final OpenArchive open;
	private final ArchiveStore store;

	public People(OpenArchive open, ArchiveStore store) {
		this.open = open;
		this.store = store;
	}

	/** The list, as far as leads have signed it. */
	public SignerList list() throws IOException {
		if (!open.hasHistory()) {
			return SignerList.NOBODY;
		}
		try (History history = open.history()) {
			return history.check().signers();
		} catch (RuntimeException e) { // Git's readers stumble over what they do not expect
			throw new ArchiveException(Words.bind(Messages.People_theListOfPeopleCannot, e.getMessage()),
					Messages.People_verifyPeopleTellsWhatIs, e);
		}
	}

	/**
	 * Names one key more. The first is that of a lead.
	 *
	 * @param publicKey a line as ssh-keygen writes it to a file .pub
	 * @throws ArchiveException where the list cannot hold that, or the change would not count; nothing is changed then
	 */
	public SavePoint add(String name, String publicKey, boolean lead, Person person, String note) throws IOException {
		SignerList before = list();
		return change(before, before.with(name, publicKey, lead), person,
				note == null ? Words.bind(Messages.People_addToThePeopleWho, name) : note);
	}

	/**
	 * Takes the keys of a person out of the list. What they have signed so far stays theirs.
	 *
	 * @throws ArchiveException where nobody has that name, no lead would be left, or the change would not count
	 */
	public SavePoint remove(String name, Person person, String note) throws IOException {
		SignerList before = list();
		return change(before, before.without(name), person,
				note == null ? Words.bind(Messages.People_removeFromThePeopleWho, name) : note);
	}

	private SavePoint change(SignerList before, SignerList after, Person person, String note) throws IOException {
		open.requireWritable();
		open.requireUnmodified();
		requireLead((before.isEmpty() ? after : before).leads());
		Path root = open.folder();
		open.savePoint(person, Words.bind(Messages.People_asSavedBeforeIsChanged, FILE));
		try (Save save = Save.begin(store.disk(), root)) {
			save.put(FILE, out -> out.write(after.toBytes()));
			save.commit();
		}
		open.reload();
		return open.savePoint(person, note).orElseThrow(
				() -> new ArchiveException(Messages.People_theListOfPeopleIs, Messages.People_thereIsNothingToDo));
	}

	private void requireLead(SignerList leads) throws IOException {
		Signature own = OwnKey.tried(open.folder(), leads, store.clock().instant());
		if (own.state() != State.GOOD) {
			String names = String.join(", ",
					leads.signatories().stream().flatMap(lead -> lead.names().stream()).distinct().toList());
			throw new ArchiveException(
					Words.bind(Messages.People_nothingWasChangedOnlyThe, names, own),
					own.state() == State.NOT_SIGNED
							? Messages.People_setCommitGpgsignGpgFormat
							: Messages.People_askALeadToMake);
		}
	}
}
