/** What stands in the way is shown as a dialog: all else is out of reach, and what had the focus has it again afterwards. */
export class Dialogs {
  private before: HTMLElement | undefined;
  private isShown = false;

  /** Looks what is there once the page has been drawn. */
  look(root: ShadowRoot) {
    const dialogs = [...root.querySelectorAll('dialog')];
    if (dialogs.length > 0 && !this.isShown) this.before = root.activeElement instanceof HTMLElement ? root.activeElement : undefined;
    for (const dialog of dialogs) if (!dialog.open) dialog.showModal();
    if (dialogs.length === 0 && this.isShown && this.before?.isConnected) this.before.focus();
    this.isShown = dialogs.length > 0;
  }
}
