/** Bytes as signs of an alphabet of 2^bits, the first bits first, as RFC 4648 has it; what is missing of the last sign is noughts. */
export function toSigns(bytes: readonly number[], alphabet: string, bits: number): string {
  let signs = '';
  let held = 0;
  let many = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    for (many += 8; many >= bits; held &= (1 << many) - 1) {
      many -= bits;
      signs += alphabet[held >> many];
    }
  }
  return many > 0 ? signs + alphabet[held << (bits - many)] : signs;
}

/** The bytes behind signs, all of them of the alphabet; undefined where no bytes are written so. */
export function toBytes(signs: string, alphabet: string, bits: number): number[] | undefined {
  const bytes: number[] = [];
  let held = 0;
  let many = 0;
  for (const sign of signs) {
    held = (held << bits) | alphabet.indexOf(sign);
    many += bits;
    if (many >= 8) {
      many -= 8;
      bytes.push(held >> many);
      held &= (1 << many) - 1;
    }
  }
  return held === 0 && many < bits ? bytes : undefined;
}
