/// <reference types="mocha" />
import 'axe-core';
import { assert } from 'chai';
import { html, LitElement } from 'lit';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { buyerCodeTemplate } from '../../src/counter/opening/buyer-code.ts';
import { openingLook } from '../../src/counter/opening/look.ts';
import { Opening, type Opened } from '../../src/counter/opening/opening.ts';
import { openingTemplate, sayNotCarried } from '../../src/counter/opening/view.ts';
import { opening as de } from '../../src/counter/opening/words/de.ts';
import { opening as en } from '../../src/counter/opening/words/en.ts';
import { linkTo, readHandedOn } from '../../src/handoff/link.ts';
import { pack } from '../../src/handoff/pack.ts';
import { qrSvg } from '../../src/handoff/qr.ts';
import { typedForm } from '../../src/handoff/typed-form.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn } from '../../src/reasons/say.ts';
import { asking } from '../../src/reasons/words/en/asking.ts';
import { telling } from '../../src/reasons/words/en/telling.ts';
import { look } from '../../src/widget/look.ts';
import { instead, putBack } from '../support/instead.ts';
import { painted, scan } from '../support/scan.ts';

declare const axe: { run(root: Element, options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };

const json = async (path: string) => (await fetch(path)).json() as Promise<unknown>;
const farm = (await json('/demo/answers/hay-and-barn.json')) as AnswersDocument;
const catalogue = (await json('/demo/catalogue.json')) as CatalogueDocument;
const page = 'https://dealer.example/find';
const link = linkTo(page, pack(farm))!;
const line = (typedForm(pack(farm)) as { text: string }).text;
const reader = readerFor(asking, 'us', 'en-US', 'USD');
const voice = { words: { ...asking, ...telling }, reader, nameOf: namesIn(catalogue, reader) };

/** A counter with nothing else on it. */
class Stand extends LitElement {
  static override styles = [look, openingLook];
  words = en;
  opened: Opened[] = [];
  answers: AnswersDocument | undefined;
  readonly opening = new Opening(this, (opened) => { this.opened.push(opened); });

  protected override render() {
    return html`<div class="sheet" lang=${this.words.handoff.language}>
      ${openingTemplate({ opening: this.opening, words: this.words })}
      ${this.answers ? buyerCodeTemplate({ answers: this.answers, page, words: this.words, voice }) : ''}
    </div>`;
  }
}
customElements.define('stand-of-tests', Stand);

const frame = () => new Promise((resolve) => { requestAnimationFrame(resolve); });
async function until(holds: () => boolean) {
  while (!holds()) await frame();
}

const $ = <E extends Element>(stand: Stand, selector: string) => stand.renderRoot.querySelector<E>(selector);

async function shown(set: Partial<Stand> = {}): Promise<Stand> {
  const stand = Object.assign(document.createElement('stand-of-tests') as Stand, set);
  document.body.append(stand);
  await until(() => stand.opening.camera.state.is !== 'unknown');
  await stand.updateComplete;
  return stand;
}

/** Types as a person does, and presses Enter. */
async function enter(stand: Stand, text: string) {
  const field = $<HTMLInputElement>(stand, '#opening-field')!;
  field.value = text;
  field.dispatchEvent(new Event('input'));
  $<HTMLFormElement>(stand, 'form')!.requestSubmit();
  await stand.updateComplete;
}

/** A browser that reads codes, by another library. */
class Reader {
  static formats = ['ean_13', 'qr_code'];
  static getSupportedFormats() { return Promise.resolve(Reader.formats); }
  async detect(video: HTMLVideoElement) {
    const found = scan(video, video.videoWidth, video.videoHeight);
    return found === undefined ? [] : [{ rawValue: found }];
  }
}

interface Filmed {
  asked: MediaStreamConstraints[];
  streams: MediaStream[];
  show(text: string | undefined): Promise<void>;
}

/** A camera before which codes are held: aslant, on a desk, as people hold them. */
function film(): Filmed {
  const canvas = Object.assign(document.createElement('canvas'), { width: 480, height: 360 });
  const context = canvas.getContext('2d')!;
  const filmed: Filmed = { asked: [], streams: [], show };
  let code: HTMLCanvasElement | undefined;
  let goes = true;
  async function show(text: string | undefined) {
    const drawn = text === undefined ? undefined : new DOMParser().parseFromString(qrSvg(text, 'A code')!, 'image/svg+xml').documentElement as unknown as SVGSVGElement;
    code = drawn && await painted(drawn, 250);
  }
  const draw = () => {
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.fillStyle = '#7a6a55';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.translate(240, 180);
    context.rotate(0.2);
    if (code) context.drawImage(code, -125, -125);
    if (goes) requestAnimationFrame(draw);
  };
  draw();
  instead(globalThis, 'BarcodeDetector', Reader);
  instead(navigator.mediaDevices, 'getUserMedia', async (asked: MediaStreamConstraints) => {
    filmed.asked.push(asked);
    const stream = canvas.captureStream();
    filmed.streams.push(stream);
    return stream;
  });
  stopFilming = () => { goes = false; };
  return filmed;
}
let stopFilming = () => {};

const isEnded = (stream: MediaStream) => stream.getTracks().every(({ readyState }) => readyState === 'ended');
const scanButton = (stand: Stand) => $<HTMLButtonElement>(stand, '.actions button')!;
const said = (stand: Stand, role: string) => $(stand, `[role="${role}"]`)?.textContent;

afterEach(() => {
  document.body.replaceChildren();
  stopFilming();
  putBack();
});

describe('by the camera', () => {
  it('opens what is on a code that is held before it, and the camera is off at once', async () => {
    const filmed = film();
    const stand = await shown();
    scanButton(stand).focus();
    scanButton(stand).click();
    await until(() => stand.opening.camera.state.is === 'on');
    await stand.updateComplete;
    assert.deepEqual(filmed.asked, [{ video: { facingMode: 'environment' } }]);
    assert.equal(stand.shadowRoot!.activeElement, scanButton(stand), 'the focus stays on the button that now stops it');
    assert.equal(scanButton(stand).textContent, en.camera.stop);
    await filmed.show(link);
    await until(() => stand.opened.length > 0);
    assert.deepEqual(stand.opened, [{ answers: farm, notCarried: stand.opened[0]!.notCarried }]);
    assert.isTrue(isEnded(filmed.streams[0]!));
    assert.equal(stand.opening.camera.state.is, 'off');
  });

  it('goes on looking where it sees another code or one that is spoilt, and says so', async () => {
    const filmed = film();
    const stand = await shown();
    scanButton(stand).click();
    for (const [text, told] of [['https://dealer.example/menu', en.camera.seen.other], ['4006381333931', en.camera.seen.other], [`${link.slice(0, -3)}`, en.camera.seen.damaged], [link.replace('#a1=', '#a9='), en.camera.seen.newer]] as const) {
      await filmed.show(text);
      await until(() => said(stand, 'status') === told);
    }
    assert.isFalse(isEnded(filmed.streams[0]!));
    await filmed.show(link);
    await until(() => stand.opened.length > 0);
    assert.isTrue(isEnded(filmed.streams[0]!));
  });

  const on = async () => {
    const filmed = film();
    const stand = await shown();
    scanButton(stand).click();
    await until(() => stand.opening.camera.state.is === 'on');
    await stand.updateComplete;
    return { stand, stream: filmed.streams[0]! };
  };

  it('is off at once when it is stopped, when the page is hidden, when the counter goes on, and when its place is gone', async () => {
    for (const act of [
      (stand: Stand) => { scanButton(stand).click(); },
      () => { instead(document, 'hidden', true); document.dispatchEvent(new Event('visibilitychange')); },
      (stand: Stand) => { stand.opening.close(); },
      (stand: Stand) => { stand.remove(); },
    ]) {
      const { stand, stream } = await on();
      act(stand);
      assert.isTrue(isEnded(stream));
      assert.deepEqual(stand.opening.camera.state, { is: 'off' });
      stand.remove();
      putBack();
    }
  });

  it('a camera that comes after it was stopped is let go', async () => {
    const filmed = film();
    let come = () => {};
    const asked = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    instead(navigator.mediaDevices, 'getUserMedia', async (wanted: MediaStreamConstraints) => {
      await new Promise<void>((resolve) => { come = resolve; });
      return asked(wanted);
    });
    const stand = await shown();
    scanButton(stand).click();
    await stand.updateComplete;
    assert.equal(said(stand, 'status'), en.camera.starting);
    scanButton(stand).click();
    come();
    await until(() => filmed.streams.length > 0 && isEnded(filmed.streams[0]!));
    assert.deepEqual(stand.opening.camera.state, { is: 'off' });
  });

  it('what keeps it from starting is told, with what to do; a camera that is unplugged too', async () => {
    film();
    const stand = await shown();
    for (const [name, trouble] of [['NotAllowedError', 'refused'], ['NotFoundError', 'none'], ['NotReadableError', 'busy'], ['TypeError', 'failed']] as const) {
      instead(navigator.mediaDevices, 'getUserMedia', () => Promise.reject(new DOMException('', name)));
      scanButton(stand).click();
      await until(() => said(stand, 'alert') === en.camera.trouble[trouble]);
      assert.equal(scanButton(stand).textContent, en.camera.start);
    }
    const { stand: other, stream } = await on();
    stream.getTracks()[0]!.dispatchEvent(new Event('ended'));
    await other.updateComplete;
    assert.equal(said(other, 'alert'), en.camera.trouble.failed);
  });

  it('isn’t offered where the browser reads no codes or a page may have no camera, and why not is said', async () => {
    const without = async (why: keyof typeof en.camera.absent) => {
      const stand = await shown();
      assert.include(stand.renderRoot.textContent, en.camera.absent[why]);
      assert.lengthOf([...stand.renderRoot.querySelectorAll('button')], 1);
      stand.remove();
    };
    instead(globalThis, 'BarcodeDetector', undefined);
    await without('no-reader');
    instead(globalThis, 'BarcodeDetector', { getSupportedFormats: () => Promise.resolve(['ean_13']) });
    await without('no-reader');
    instead(globalThis, 'BarcodeDetector', { getSupportedFormats: () => Promise.reject(new DOMException('no', 'NotSupportedError')) });
    await without('no-reader');
    instead(globalThis, 'BarcodeDetector', Reader);
    instead(navigator, 'mediaDevices', undefined);
    await without('no-camera');
  });
});

describe('by the field', () => {
  for (const [what, text] of [
    ['a link', link], ['a link that a mail broke over lines', ` ${link.slice(0, 45)}\n ${link.slice(45)} `], ['its fragment', new URL(link).hash],
    ['the line', line], ['the line as it is read out', ` ${line.toLowerCase().replaceAll('-', ' ').replaceAll('0', 'o').replaceAll('1', 'l')}`],
  ] as const) {
    it(`opens ${what}`, async () => {
      const stand = await shown();
      await enter(stand, text);
      assert.deepEqual(stand.opened.map(({ answers }) => answers), [farm]);
      assert.equal($<HTMLInputElement>(stand, '#opening-field')!.value, '', 'nothing of it stays');
    });
  }

  for (const [code, text] of [
    ['nothing', '  '], ['not-ours', 'https://dealer.example/menu'], ['too-long', 'A'.repeat(70)], ['sign', line.replace(line[7]!, 'U')],
    ['damaged', line.slice(0, -1) + (line.endsWith('7') ? '8' : '7')], ['newer', link.replace('#a1=', '#a2=')],
  ] as const) {
    it(`says at the field why nothing was opened and what to do: ${code}`, async () => {
      const stand = await shown({ words: de });
      await enter(stand, text);
      const field = $<HTMLInputElement>(stand, '#opening-field')!;
      const told = field.getAttribute('aria-describedby')!.split(' ').map((id) => $(stand, `#${id}`)!.textContent.trim());
      const { what, why, mend } = de.refusals[code]({ sign: 'U', group: 2 });
      assert.deepEqual(told, [de.field.hint, `${what} ${why} ${mend}`]);
      assert.equal(field.getAttribute('aria-invalid'), 'true');
      assert.equal(stand.shadowRoot!.activeElement, field);
      assert.equal(field.value, text, 'what was typed stays to be put right');
      assert.isEmpty(stand.opened);
      await enter(stand, line);
      assert.isNull(field.getAttribute('aria-invalid'));
      assert.lengthOf(stand.opened, 1);
    });
  }
});

it('from the counter’s code a phone gets the answers back, the same by the link and by the line; what doesn’t go along is told', async () => {
  const answers = { ...farm, haul: { how: 'hire', delivery: 'K1A 0B1' } } as AnswersDocument;
  const stand = await shown({ answers });
  const svg = $<SVGSVGElement>(stand, '.buyer-code svg')!;
  const read = scan(await painted(svg, 300), 300, 300)!;
  const [byLink, byLine] = [...stand.renderRoot.querySelectorAll('.buyer-code dd')].map((each) => each.textContent.trim());
  assert.equal(read, byLink);
  assert.isTrue(read.startsWith(`${page}#`));
  const came = { answers: { ...answers, haul: { how: 'hire' } } };
  assert.deepEqual([readHandedOn(read), readHandedOn(byLine!)], [came, came] as never);
  assert.include($(stand, '.buyer-code')!.textContent, en.handoff.leftOut(en.kept.delivery));
  await enter(stand, read);
  assert.include(stand.opened[0]!.notCarried, 'delivery');
  assert.include(sayNotCarried(stand.opened[0]!, en, asking.list)!, en.kept.delivery);
  assert.isUndefined(sayNotCarried({ answers, notCarried: [] }, en, asking.list));
});

it('what no link holds is said in place of a code', async () => {
  const answers = { ...farm, owned: Array.from({ length: 400 }, (_, index) => ({ kind: 'tiller', width: { value: 48.123 + index, unit: 'in' } })) } as unknown as AnswersDocument;
  const stand = await shown({ answers });
  assert.isNull($(stand, '.buyer-code svg'));
  assert.include($(stand, '.buyer-code')!.textContent, en.takeAlong.noLink);
});

it('axe finds nothing, all can be reached by keyboard, and no target is below 48 px', async () => {
  film();
  for (const words of [en, de]) {
    const stand = await shown({ words, answers: farm });
    await enter(stand, '?');
    scanButton(stand).click();
    await until(() => stand.opening.camera.state.is === 'on');
    await stand.updateComplete;
    const { violations } = await axe.run(stand, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`), []);
    const targets = [...stand.renderRoot.querySelectorAll<HTMLElement>('button, input')];
    assert.lengthOf(targets, 3);
    for (const target of targets) {
      assert.isAtLeast(target.getBoundingClientRect().height, 48, target.outerHTML);
      assert.equal(target.tabIndex, 0);
    }
    stand.remove();
  }
});
