package org.cairnfield.ui.internal.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.exchange.Quarantine;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.PageChangingEvent;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Takes survey files into the archive on show: which, how they are understood, where they belong, what comes of them. */
public final class IntakeWizard extends Wizard {

	private final IntakeState state;
	private final FilesPage files;
	private final LayoutPage layout;
	private final PlacePage place;
	private final OutcomePage outcome;

	/** Of an archive that can be changed. */
	public IntakeWizard(ArchiveSession session, List<Path> begun) {
		state = new IntakeState(session);
		state.draft(state.draft().plus(begun));
		files = new FilesPage(state);
		layout = new LayoutPage(state);
		place = new PlacePage(state);
		outcome = new OutcomePage(state);
		setWindowTitle(Messages.IntakeWizard_takeInSurveyFiles);
		setNeedsProgressMonitor(true);
		setHelpAvailable(false);
	}

	@Override
	public void addPages() {
		addPage(files);
		addPage(layout);
		addPage(place);
		addPage(outcome);
	}

	@Override
	public IWizardPage getStartingPage() {
		return state.draft().entries().isEmpty() ? files : layout;
	}

	/** Looks or reads before a page that shows what comes of it; stays where that fails. */
	private void changing(PageChangingEvent event) {
		IntakePage from = (IntakePage) event.getCurrentPage();
		Object to = event.getTargetPage();
		String problem = null;
		if (to == layout || to == place) {
			problem = state.look(getContainer());
		} else if (to == outcome) {
			problem = state.read(getContainer());
		}
		if (problem != null) {
			event.doit = false;
			from.say(problem.isEmpty() ? Messages.IntakeWizard_cancelledNothingWasRead : problem);
		}
	}

	@Override
	public boolean canFinish() {
		return getContainer().getCurrentPage() == outcome && outcome.isPageComplete();
	}

	@Override
	public boolean performFinish() {
		IntakeState.Reading reading = state.reading();
		if (!keepOtherWork()) {
			return false;
		}
		Optional<Path> folder = outcome.quarantineFolder();
		String problem = state.run(getContainer(), workers -> {
			List<Path> written = new ArrayList<>();
			for (Quarantine quarantine : reading.intake().quarantines()) {
				(folder.isPresent() ? quarantine.writeTo(folder.get()) : quarantine.writeBeside())
						.ifPresent(written::add);
			}
			return written;
		}, written -> {
		});
		if (problem != null) {
			outcome.say(problem.isEmpty() ? Messages.IntakeWizard_cancelledNothingWasTakenIn : problem);
			return false;
		}
		SurveyTaking taking = reading.taking();
		if (!state.session().run(taking.command())) {
			outcome.say(NLS.bind(Messages.IntakeWizard_nothingWasTakenIn,
					state.session().readOnlyReason().orElse(Messages.IntakeWizard_thereWasNothingNew)));
			return false;
		}
		show(taking);
		record(taking);
		return true;
	}

	/** The save point of the intake holds it alone: work before it gets one of its own. False: the person wants to stay. */
	private boolean keepOtherWork() {
		ArchiveSession session = state.session();
		if (session.isModified()
				&& MessageDialog.open(MessageDialog.QUESTION, getShell(), Messages.IntakeWizard_unsavedChanges,
						Messages.IntakeWizard_thereAreUnsavedChangesThey, 0, Messages.IntakeWizard_saveAndTakeIn,
						Messages.IntakeWizard_cancel) != 0) {
			return false;
		}
		return session.readOnlyReason().isPresent() || inName(Messages.IntakeWizard_beforeAnIntake);
	}

	/** Makes what the surveys bring, as they are, a state that can be restored; it can still be undone. */
	private void record(SurveyTaking taking) {
		inName(NLS.bind(Messages.IntakeWizard_takeIn,
				String.join(", ",
						taking.surveys().stream().map(survey -> survey.file().getFileName().toString()).distinct()
								.toList())));
	}

	private boolean inName(String note) {
		return Saving.inName(state.session(), Messages.IntakeWizard_makingASavePoint,
				person -> state.session().open().savePoint(person, note));
	}

	/** Goes to what is new. */
	private void show(SurveyTaking taking) {
		String first = taking.surveys().get(0).surveyId();
		for (Site site : state.session().archive().getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (survey.getId().equals(first)) {
					state.session().select(state.session().selection()
							.withScope(taking.surveys().size() == 1 ? survey : site).withSamples(List.of()));
				}
			}
		}
	}

	/**
	 * Opens it for the archive on show; does nothing where there is none.
	 *
	 * @param files with some it begins at the second page
	 */
	public static void open(Shell parent, List<Path> files) {
		Optional<ArchiveSession> session = Sessions.workbench().current();
		if (session.isPresent()) {
			IntakeWizard wizard = new IntakeWizard(session.get(), files);
			WizardDialog dialog = wizard.dialog(parent);
			dialog.open();
		}
	}

	/** The dialog that it lives in. */
	WizardDialog dialog(Shell parent) {
		WizardDialog dialog = new IntakeDialog(parent, this);
		dialog.setPageSize(900, 500);
		dialog.addPageChangingListener(this::changing);
		dialog.create();
		dialog.getShell().setMinimumSize(640, 480);
		if (getStartingPage() == layout) {
			Shell shell = dialog.getShell();
			shell.getDisplay().asyncExec(() -> {
				if (!shell.isDisposed()) {
					layout.refresh(state.look(getContainer()));
				}
			});
		}
		return dialog;
	}
}
