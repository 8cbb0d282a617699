import type { AnswersDocument } from '../answers/schema.ts';
import type { AcreToAxle } from '../widget/element.ts';

/** Whether the wizard has been filled in with something it wasn't told to go on with. */
const isFilled = (form: Element) => form.querySelector('input:checked') !== null
  || [...form.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input[type="text"], select')].some(({ value }) => value.trim() !== '');

/** The same answers in the wizard: what staff entered goes in, what the customer answers comes out. */
export class StepByStep {
  private given: AnswersDocument | undefined;
  /** The wizard is made anew each time it is shown. */
  private to: AcreToAxle | undefined;

  /** @param take  is handed the answers whenever the wizard has others */
  constructor(private readonly wizard: () => AcreToAxle | null, private readonly take: (answers: AnswersDocument) => void) {}

  /** Another customer: the wizard holds nothing of his. */
  forget() {
    this.given = undefined;
    this.to = undefined;
  }

  /** Given before it is ready they wait in it, and it asks nothing meanwhile. */
  give(answers: AnswersDocument) {
    const wizard = this.wizard();
    if (!wizard || (this.given === answers && this.to === wizard)) return;
    this.given = answers;
    this.to = wizard;
    if (wizard.answers !== answers) wizard.answers = answers;
  }

  /** Something was done in it. */
  readonly heard = async () => {
    const wizard = this.wizard();
    if (!wizard) return;
    await wizard.ready;
    await wizard.updateComplete;
    const { answers } = wizard;
    if (this.given === undefined || answers === this.given || JSON.stringify(answers) === JSON.stringify(this.given)) return;
    this.given = answers;
    this.take(answers);
  };

  /** Something else is wanted: what stands in the wizard's boxes is taken along, where it can be read. */
  async leave() {
    const form = this.wizard()?.shadowRoot?.querySelector<HTMLFormElement>('form[part="question"]');
    if (form && isFilled(form)) form.requestSubmit();
    await this.heard();
  }

  /** Shows the page of the result. */
  async showResult() {
    const wizard = this.wizard();
    await wizard?.ready;
    await wizard?.updateComplete;
    wizard?.shadowRoot?.querySelector<HTMLElement>('[part="see-result"], [part="check"] [part="continue"]')?.click();
  }
}
