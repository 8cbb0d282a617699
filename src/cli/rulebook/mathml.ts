import { boundsOf, tokensOf, type FormulaToken } from '../../trade/read-formula.ts';

/**
 * The formula texts of the rule book as MathML Core. A text is read as a person reads it: names are
 * words, `×` and `/` go from left to right, a root or a power takes what stands next to it, `;` parts two
 * formulas. What can't be read so stays text: this never throws.
 */

/** A piece as it is set, and as it is set where a bar or a root already holds it together. */
interface Piece {
  whole: string;
  unbracketed: string;
}

/** How a name or a number is written; as it stands, if nobody says otherwise. */
type SayToken = (token: FormulaToken) => string;

const closers: Readonly<Record<string, string>> = { '(': ')', '[': ']', '⌈': '⌉', '⌊': '⌋' };
const powers: Readonly<Record<string, string>> = { '²': '2', '³': '3' };
const relations = ['=', '≤', '≥', '<', '>', '≈'];
const sums = ['+', '−', '-', '±'];
const products = ['×', '·'];
/** Marks that end whatever comes before them. */
const ending = [...relations, ...sums, ...products, ...Object.values(closers), '/', ',', '^', '²', '³'];
/** No formula of a person is nested this deep; what is deeper is set mark by mark. */
const deepest = 30;

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };
const element = (name: string, text: string) => `<${name}>${text.replace(/[&<>]/g, (each) => escapes[each]!)}</${name}>`;
const operator = (text: string) => element('mo', text === '-' ? '−' : text);
const row = (...parts: readonly string[]) => (parts.length === 1 ? parts[0]! : `<mrow>${parts.join('')}</mrow>`);
const piece = (...parts: readonly string[]): Piece => ({ whole: row(...parts), unbracketed: row(...parts) });

class Reader {
  private at = 0;
  private depth = 0;
  private readonly tokens: readonly FormulaToken[];
  private readonly say: SayToken;

  constructor(text: string, say: SayToken) {
    this.tokens = tokensOf(text);
    this.say = say;
  }

  private get next() {
    return this.tokens[this.at];
  }

  private isNext(...marks: readonly string[]) {
    return this.next?.kind === 'mark' && marks.includes(this.next.text);
  }

  private take() {
    return this.tokens[this.at++]!;
  }

  /** All of it: relations between commas, and marks that belong to nothing. */
  whole(): string {
    const parts: string[] = [];
    while (this.next) {
      if (this.isNext(',')) parts.push(operator(this.take().text), ...this.phrase());
      else if (this.isNext(...ending) && !this.isNext(...relations, ...sums)) parts.push(operator(this.take().text));
      else parts.push(this.relation().whole);
    }
    return parts.join('');
  }

  /** Words behind a comma, such as "never above rated", are said and not reckoned. */
  private phrase(): string[] {
    const behind = this.tokens[this.at + 1];
    const isPhrase = this.next?.kind === 'name' && (behind === undefined || (behind.kind === 'mark' && behind.text === ','));
    return isPhrase ? [element('mtext', `\u00a0${this.say(this.take())}`)] : [];
  }

  private chain(marks: readonly string[], part: () => Piece): Piece {
    const parts = this.isNext(...marks) ? [] : [part()];
    while (this.isNext(...marks)) parts.push(piece(operator(this.take().text)), part());
    return parts.length === 1 ? parts[0]! : piece(...parts.map(({ whole }) => whole));
  }

  private relation(): Piece {
    return this.chain(relations, () => this.sum());
  }

  private sum(): Piece {
    return this.chain(sums, () => this.product());
  }

  /** `a / b / c` is (a / b) / c and `a × b / c` is (a × b) / c: what came before goes on the bar. */
  private product(): Piece {
    let before = this.factor();
    for (;;) {
      if (this.isNext(...products)) {
        const mark = operator(this.take().text);
        before = piece(before.whole, mark, this.factor().whole);
      } else if (this.isNext('/')) {
        this.take();
        before = piece(`<mfrac>${before.unbracketed}${this.factor().unbracketed}</mfrac>`);
      } else if (this.next && !this.isNext(...ending)) {
        before = piece(before.whole, this.next.blank === '' && this.isNext('(') ? '<mo>\u2061</mo>' : '<mspace width="0.3em"></mspace>', this.factor().whole);
      } else return before;
    }
  }

  private factor(): Piece {
    this.depth += 1;
    const read = this.depth > deepest && this.next ? piece(operator(this.take().text)) : this.prefixed();
    this.depth -= 1;
    return read;
  }

  private prefixed(): Piece {
    if (this.isNext('√')) {
      this.take();
      return piece(`<msqrt>${this.factor().unbracketed}</msqrt>`);
    }
    if (this.isNext('∛')) {
      this.take();
      return piece(`<mroot>${this.factor().unbracketed}<mn>3</mn></mroot>`);
    }
    if (this.isNext(...sums)) return piece(operator(this.take().text), this.factor().whole);
    // A sum is over all of the product behind it.
    if (this.isNext('Σ')) return piece(operator(this.take().text), this.product().whole);
    if (this.next?.kind === 'sum') {
      const { from, to } = boundsOf(this.take().text);
      return piece(`<munderover><mo>Σ</mo>${row(new Reader(from, this.say).whole())}${row(new Reader(to, this.say).whole())}</munderover>`, this.product().whole);
    }
    return this.power();
  }

  private power(): Piece {
    let base = this.atom();
    while (this.isNext('^', '²', '³')) {
      const mark = this.take().text;
      const exponent = powers[mark] ? `<mn>${powers[mark]}</mn>` : this.factor().unbracketed;
      base = piece(`<msup>${base.whole}${exponent}</msup>`);
    }
    return base;
  }

  private atom(): Piece {
    if (this.next === undefined || this.isNext(...ending)) return piece('<mrow></mrow>');
    const taken = this.take();
    const { kind, text } = taken;
    if (kind === 'name') return piece(element('mi', this.say(taken)));
    if (kind === 'number') return piece(element('mn', this.say(taken)));
    const closer = closers[text];
    return closer === undefined ? piece(element('mtext', text)) : this.bracketed(text, closer);
  }

  private bracketed(opener: string, closer: string): Piece {
    const parts: string[] = [];
    while (this.next && !this.isNext(...Object.values(closers))) {
      if (this.isNext(...ending) && !this.isNext(...relations, ...sums)) parts.push(operator(this.take().text));
      else parts.push(this.relation().whole);
    }
    if (!this.isNext(closer)) return piece(operator(opener), ...parts);
    this.take();
    const inside = row(...parts);
    const whole = row(operator(opener), inside, operator(closer));
    return { whole, unbracketed: opener === '(' ? inside : whole };
  }
}

/** Each formula of a text as one `math` element. */
export const mathOf = (formula: string, say: SayToken = ({ text }) => text): string[] =>
  formula.split(';').map((each) => each.trim()).filter((each) => each !== '')
    .map((each) => `<math display="block">${new Reader(each, say).whole()}</math>`);
