import type { Voice } from '../../reasons/say.ts';
import { formatNumber } from '../../units/formats.ts';
import { showAmount } from '../../units/show.ts';
import type { LotWords } from '../words/words.ts';
import type { AskingContext, NoContext } from './context.ts';

/** An asking price in context, in words: one text a sentence, the last of them always that it is no valuation. */
export function sayAsking(context: AskingContext | NoContext, { voice: { reader, words }, lot: { asking } }: { voice: Voice; lot: LotWords }): string[] {
  if ('why' in context) {
    switch (context.why) {
      case 'unit': return [asking.unit(words.list(context.missing.map((field) => asking.fields[field]))), asking.noValuation];
      case 'too-few': return [asking.tooFew(context.count, context.least), asking.noValuation];
      case 'alike': return [asking.alike(context.count), asking.noValuation];
    }
  }
  const money = (amount: number) => showAmount(amount, 'money', reader);
  const change = (share: number) => formatNumber(share, reader.locale, { style: 'percent', maximumFractionDigits: 1, signDisplay: 'exceptZero' });
  const { lies, price, low, high, share, trend, pool, count, sold, byYear, byHundredHours } = context;
  return [
    asking.lies[lies](money(price), money(low), money(high), showAmount(share, 'ratio', reader)),
    asking.trend(money(trend)), asking.from[pool](count, sold), asking.slopes(change(byYear), change(byHundredHours)), asking.noValuation,
  ];
}
