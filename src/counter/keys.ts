/** Signs that choose an option, in their order: the digits, then letters. `0` stays free for "not sure". */
const signs = '123456789abcdefghijklmnopqrstuvwxyz';
export const notSureSign = '0';

/** The sign of an option by its place, from 0; none where there are more options than signs. */
export const signOf = (place: number): string | undefined => signs[place];

/** The place of the option a key chooses; undefined where it chooses none. */
export function placeOf({ key, altKey, ctrlKey, metaKey }: KeyboardEvent): number | undefined {
  if (altKey || ctrlKey || metaKey || key.length !== 1) return undefined;
  const place = signs.indexOf(key.toLowerCase());
  return place < 0 ? undefined : place;
}

/** The digit pressed with Alt: by the key's place, for with Alt some keyboards write another sign. */
export function altDigit({ altKey, ctrlKey, metaKey, code }: KeyboardEvent): number | undefined {
  const digit = altKey && !ctrlKey && !metaKey ? /^(?:Digit|Numpad)(\d)$/.exec(code) : null;
  return digit ? Number(digit[1]) : undefined;
}

/** The first control of each field of the sheet, in its order; of options the chosen one. */
function fieldControls(root: ParentNode): HTMLElement[] {
  return [...root.querySelectorAll<HTMLElement>('[data-box]')].flatMap((box) => {
    const chosen = box.querySelector<HTMLElement>('input[type="radio"]:checked');
    return chosen ?? box.querySelector<HTMLElement>('input, select') ?? [];
  });
}

/** Goes from the field that has the focus to the one after it, or before it. */
export function goToNext(root: ParentNode, from: HTMLElement, back: boolean) {
  const box = from.closest('[data-box]');
  const controls = fieldControls(root);
  const at = controls.findIndex((control) => control.closest('[data-box]') === box);
  controls[at + (back ? -1 : 1)]?.focus();
}

export const goToFirst = (section: ParentNode) => fieldControls(section)[0]?.focus();
