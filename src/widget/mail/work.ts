const bitsOfByte = 8;
/** Hashes asked for at once, between two looks at whether anybody still wants it. */
const atOnce = 512;
const written = 36;

/** Whether a hash begins with so many zero bits. */
function begins(hash: Uint8Array, bits: number) {
  const whole = Math.floor(bits / bitsOfByte);
  for (let at = 0; at < whole; at += 1) if (hash[at] !== 0) return false;
  const rest = bits % bitsOfByte;
  return rest === 0 || hash[whole]! >> (bitsOfByte - rest) === 0;
}

/**
 * Does the work a relay asks for: a number with which SHA-256 of `ticket:number` begins with so many zero bits (after
 * hashcash). The browser hashes beside the page, so that it goes on.
 *
 * @returns the number as text; undefined where nobody wants it any more
 */
export async function doWork(ticket: string, bits: number, wanted: () => boolean): Promise<string | undefined> {
  const bytes = new TextEncoder();
  for (let from = 0; wanted(); from += atOnce) {
    const numbers = Array.from({ length: atOnce }, (_, index) => (from + index).toString(written));
    const hashes = await Promise.all(numbers.map((number) => crypto.subtle.digest('SHA-256', bytes.encode(`${ticket}:${number}`))));
    const found = hashes.findIndex((hash) => begins(new Uint8Array(hash), bits));
    if (found >= 0) return numbers[found];
  }
  return undefined;
}
