import type { Voice } from '../reasons/say.ts';
import { formatNumber } from '../units/formats.ts';
import { fewest } from './counted.ts';
import type { DemandReport, Row, Told } from './report.ts';
import type { DemandWords } from './words/words.ts';

/** A report in words, in the order it is read. */
export interface SaidReport {
  title: string;
  lead: string[];
  /** How the buyers are served: what, and how many. */
  served: [string, string][];
  sections: { heading: string; explained: string; column: string; rows: [string, string][] }[];
  bring: { heading: string; explained: string; lines: string[] };
  closing: string[];
}

/**
 * @param isInvented  whether the requests were made up for show, which stands at the head then
 */
export function sayReport(report: DemandReport, { words: { needs }, nameOf, reader }: Voice, own: DemandWords, isInvented: boolean): SaidReport {
  const whole = (value: number) => formatNumber(value, reader.locale, {});
  const percent = (value: number) => formatNumber(value, reader.locale, { style: 'percent', maximumFractionDigits: 1 });
  const told = (each: Told) => ('few' in each ? own.few : 'keptBack' in each ? own.keptBack
    : own.told(whole(each.count), each.within ? own.within(percent(each.within.low), percent(each.within.high)) : percent(each.share)));
  const rows = (each: readonly Row[], name: (id: string) => string) => each.map(({ id, told: many }): [string, string] => [name(id), told(many)]);
  const together = (best: DemandReport['best']) => (!best ? own.bound : best.isBring ? own.isBest
    : own.better(new Intl.ListFormat(reader.locale).format(best.machines.map((machine) => nameOf(machine))), told(best.told)));
  return {
    title: own.title,
    lead: [
      ...(isInvented ? [own.invented] : []),
      own.requests(whole(report.requests)),
      ...(report.counted + report.unreadable < report.requests ? [own.drawn(whole(report.counted), whole(report.requests))] : []),
      ...(report.unreadable >= fewest ? [own.unreadable(whole(report.unreadable))] : []),
    ],
    served: [[own.served, told(report.served)], [own.toAsk, told(report.toAsk)], [own.unserved, told(report.unserved)], [own.beyond, told(report.beyond)]],
    sections: [
      { heading: own.firstHeading, explained: own.firstExplained, column: own.machine, rows: rows(report.first, nameOf) },
      { heading: own.lackedHeading, explained: own.lackedExplained, column: own.need, rows: rows(report.lacked, (id) => needs[id] ?? id) },
      { heading: own.wouldHeading, explained: own.wouldExplained, column: own.machine, rows: rows(report.would, nameOf) },
    ].filter((section) => section.rows.length > 0),
    bring: {
      heading: own.bringHeading,
      explained: [report.bring.length > 0 ? own.bringExplained : own.nobody, ...(report.bring.length > 1 ? [together(report.best)] : [])].join(' '),
      lines: report.bring.map(({ machine, more, alone }, index) => `${own.bring(index + 1, nameOf(machine), told(more))}; ${own.alone(told(alone))}`),
    },
    closing: [own.method, own.privacy],
  };
}
