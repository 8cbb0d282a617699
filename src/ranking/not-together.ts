import { hungFor, type Build } from './build.ts';
import type { TaskId } from '../answers/schema.ts';

/** Whether a part a catalogue names, by a word of ours or by its id, is on in this build. */
function isOn(part: string, build: Build): boolean {
  const { backhoe, loader, mower, cab, tools = {} } = build;
  switch (part) {
    case 'backhoe':
      return backhoe !== undefined;
    case 'hitch':
      return mower?.kind === 'rear' || Object.keys(tools).some((task) => hungFor(task as TaskId, build) !== undefined);
    case 'loader':
      return loader !== undefined;
    case 'deck':
      return mower?.kind === 'belly';
    case 'cab':
      return cab !== undefined;
    default:
      return [loader?.part.id, mower?.kind === 'belly' ? mower.deck.part.id : undefined, cab?.part.id].includes(part);
  }
}

/** The pairs of parts this build has that can't be on the machine at once. */
export const clashesIn = (build: Build) => (build.machine.notTogether ?? []).filter((pair) => pair.every((part) => isOn(part, build)));
