import { html, nothing } from 'lit';
import type { TaskId } from '../../../answers/schema.ts';
import { capital } from '../../../reasons/capital.ts';
import { changesTold, sayChange, sayConflict, sayWay } from '../../../reasons/say-ways-out.ts';
import { sayPackagePrice } from '../../../reasons/say-package-price.ts';
import { sayBecause, sayFrame, sayReason } from '../../../reasons/say.ts';
import type { Part } from '../paper.ts';
import type { Extent } from './extent.ts';
import { unseen, type Plan } from './plan.ts';
import type { SheetView } from './view.ts';

/** What isn't cleared, and why: it heads every result. */
export function notClearedParts({ shortlist, voice: { words } }: SheetView): Part[] {
  if (shortlist.notCleared.length === 0) return [];
  const say = ({ id, tasks }: (typeof shortlist.notCleared)[number]) => words.notCleared[id as keyof typeof words.notCleared](words.list(tasks.map((task) => words.tasks[task])));
  return [{
    id: 'not-cleared',
    body: html`<div class="notice"><h2>${words.result.notClearedHeading}</h2><ul class="points">${shortlist.notCleared.map((each) => html`<li><span class="mark">!</span><span>${say(each)}</span></li>`)}</ul></div>`,
  }];
}

/** How many stand, the answer in a line, and what is only named for want of room. */
export function standingPart({ named }: Plan, { shortlist: { shortlist }, catalogue, voice, own }: SheetView): Part {
  const { result, tiers, joins, list } = voice.words;
  const first = catalogue.machines.find(({ id }) => id === shortlist[0]?.machine);
  const names = named.map(({ machine, package: packaged }) => `${voice.nameOf(machine)}${joins.colon}${sayPackagePrice(packaged, voice)}`);
  return {
    id: 'standing',
    body: html`
      <h2>${first ? result.standing(shortlist.length) : result.none}</h2>
      ${first ? html`<p><strong>${result.lead(sayFrame(first.frame, voice), tiers[first.tier])}</strong> ${sayReason(unseen, voice)}</p>` : nothing}
      ${names.length > 0 ? html`<p>${own.onlyNamed.machines(list(names), names.length)}</p>` : nothing}`,
  };
}

/** Stands before the first machine the dealer must be asked about. */
export const askPart = ({ voice: { words: { result } } }: SheetView): Part => ({
  id: 'ask', body: html`<h2>${result.askHeading}</h2><p>${result.askExplained}</p>`,
});

/** Where nothing fits: what stands in the way, and ways out of it, the least first. */
export function waysOutParts({ ways: most }: Extent, { shortlist, voice }: SheetView): Part[] {
  const { conflicts: { sets, complete }, waysOut } = shortlist;
  const { waysOut: words } = voice.words;
  const conflicts: Part = {
    id: 'conflicts',
    body: html`<h2>${words.conflictsHeading}</h2><ul class="plain">${sets.slice(0, most).map((set) => html`<li>${sayConflict(set, voice)}</li>`)}</ul>
      ${complete && sets.length <= most ? nothing : html`<p class="lesser">${words.moreConflicts}</p>`}`,
  };
  const out: Part = {
    id: 'ways-out',
    body: html`<h2>${words.heading}</h2><p>${words.explained}</p>
      <ol class="plain">${waysOut.slice(0, most).map((entry) => {
        const { way, hire } = sayWay(entry, shortlist, voice);
        return html`<li>${[way, ...hire].join(' ')}</li>`;
      })}</ol>
      ${waysOut.length > most ? html`<p class="lesser">${words.more(waysOut.length - most)}</p>` : nothing}`,
  };
  return [...(sets.length > 0 ? [conflicts] : []), ...(waysOut.length > 0 ? [out] : [])];
}

/** Why not the others. */
export function ruledOutParts({ whyNot }: Extent, { shortlist: { ruledOut, needs }, voice }: SheetView): Part[] {
  const { result, joins, list } = voice.words;
  if (ruledOut.length === 0 || whyNot === 'untold') return [];
  const taskOf = (need: string): TaskId | undefined => needs.find(({ id }) => id === need)?.task;
  const names = list(ruledOut.map(({ machine }) => voice.nameOf(machine)));
  return [{
    id: 'ruled-out',
    body: whyNot === 'names'
      ? html`<p><strong>${capital(result.unitVerdict['ruled-out'], voice.words.language)}</strong>${joins.colon}${names}</p>`
      : html`<h2>${result.ruledOutHeading(ruledOut.length)}</h2><ul class="plain">${ruledOut.map(({ machine, because }) => html`
          <li><strong><bdi>${voice.nameOf(machine)}</bdi></strong>${joins.colon}${because.slice(0, 1).map((each) => sayBecause(each, 'failed', taskOf(each.need), { ...voice, machine }))}</li>`)}</ul>`,
  }];
}

/** What would change the answer; where nothing fits the ways out say it. */
export function changesParts({ asides }: Extent, { shortlist, voice }: SheetView): Part[] {
  const changes = shortlist.waysOut.length > 0 ? [] : changesTold(shortlist);
  if (!asides || changes.length === 0) return [];
  return [{ id: 'changes', body: html`<h2>${voice.words.result.changesHeading}</h2><ul class="plain">${changes.map((change) => html`<li>${sayChange(change, voice)}</li>`)}</ul>` }];
}
