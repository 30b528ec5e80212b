package org.cairnfield.ui.internal.start;

import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.show.Marked;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** Leads somebody new through the first ten minutes, beside the work. */
public final class FirstStepsView extends ViewPart {

	private ScrolledComposite scrolled;

	@Override
	public void createPartControl(Composite parent) {
		scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		Composite page = new Composite(scrolled, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(10, 10).spacing(5, 5).applyTo(page);
		for (int i = 0; i < FirstSteps.ALL.size(); i++) {
			add(page, i, FirstSteps.ALL.get(i));
		}
		scrolled.setContent(page);
		scrolled.addListener(SWT.Resize,
				event -> scrolled.setMinSize(page.computeSize(scrolled.getClientArea().width, SWT.DEFAULT)));
	}

	private void add(Composite page, int number, FirstSteps step) {
		Label title = new Label(page, SWT.WRAP);
		title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		title.setText(number + 1 + ". " + step.title());
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).indent(0, number == 0 ? 0 : 8)
				.applyTo(title);
		Label text = new Label(page, SWT.WRAP);
		text.setText(step.text());
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(text);
		Link link = Marked.id(new Link(page, SWT.NONE), "steps." + (number + 1));
		link.setText("<a>" + step.button() + "</a>");
		link.addListener(SWT.Selection, event -> run(step.command()));
	}

	private void run(String command) {
		getViewSite().getActionBars().getStatusLineManager().setMessage(null);
		try {
			getSite().getService(IHandlerService.class)
					.executeCommand(getSite().getService(ICommandService.class).deserialize(command), null);
		} catch (NotDefinedException e) {
			Problems.log(NLS.bind(Messages.FirstStepsView_aFirstStepCannotBe, command), e);
		} catch (CommandException e) { // greyed at the moment, such as taking surveys into no archive
			getViewSite().getActionBars().getStatusLineManager()
					.setMessage(Messages.FirstStepsView_thisCannotBeDoneNow);
		}
	}

	@Override
	public void setFocus() {
		Marked.focus(scrolled);
	}
}
