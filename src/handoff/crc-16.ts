const polynomial = 0x1021;
const start = 0xffff;

/**
 * The cyclic redundancy check CRC-16/IBM-3740 (polynomial 0x1021, start 0xFFFF, not reflected): finds every change
 * within 16 neighbouring bits, thus each wrong sign of a typed form and each pair of neighbours that changed places.
 *
 * @returns 0 to 65,535
 */
export function crc16(bytes: readonly number[]): number {
  let check = start;
  for (const byte of bytes) {
    check ^= byte << 8;
    for (let bit = 0; bit < 8; bit++) check = ((check << 1) ^ (check & 0x8000 ? polynomial : 0)) & 0xffff;
  }
  return check;
}
