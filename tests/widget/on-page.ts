import type { AcreToAxle } from '../../src/widget/define.ts';

export const all = <E extends Element>(wizard: AcreToAxle, selector: string) => [...wizard.shadowRoot!.querySelectorAll<E>(selector)];

/** Waits until the page shows what it was told, and what its size makes of that. */
export async function settled(wizard: AcreToAxle) {
  await wizard.updateComplete;
  for (let frame = 0; frame < 3; frame++) await new Promise((resolve) => { requestAnimationFrame(resolve); });
  await wizard.updateComplete;
}
