import { seenOf, type RequestFrame } from '../request/form.ts';
import type { Parts } from './parts.ts';
import { printForm, printSheet } from './printing.ts';

/** Prints what the customer on the screen takes along. */
export async function print(parts: Parts): Promise<void> {
  const { customer, reckoning, equipment: { settings, stock, spoken }, screen } = parts;
  const intake = customer.intake!;
  const shortlist = await reckoning.whole;
  const { paper, handOn } = spoken!;
  const fits = await printSheet({
    shortlist, catalogue: stock!.document, answers: intake.answers, voice: parts.voiceFor(intake), own: paper, handoff: handOn.handoff, size: settings!.paper,
    ...(settings!.page !== undefined && { page: settings!.page }),
  });
  screen.set({ said: fits ? 'printed' : 'not-fits' });
}

/** Prints all questions, to be answered by pen. */
export function printBlank({ equipment }: Parts): void {
  const { spoken, stock, settings } = equipment;
  const { dealer } = stock!.document;
  void printForm({ words: spoken!.words, reader: equipment.voice(dealer.units).reader }, spoken!.paper, dealer, settings!.paper);
}

async function frame({ customer, reckoning, equipment }: Parts): Promise<RequestFrame> {
  const { answers, units } = customer.intake!;
  const shortlist = await reckoning.whole;
  return { dealer: shortlist.catalogue.id, answers, language: equipment.language, units, seen: seenOf(shortlist) };
}

/** Seals what is to be sent and keeps it, or tells what is wrong with it. */
export async function send(parts: Parts): Promise<void> {
  const { outbox: { queue }, sending, draft, screen } = parts;
  const isKept = queue && await sending.send(await frame(parts), (request, how) => queue.put(request, how));
  if (isKept) void draft.drop();
  screen.set({ focusNext: isKept ? '#sending-heading' : '.sending [aria-invalid="true"], [data-consent="mail"]' });
}
