/** The normal deviate that 19 of 20 lie within. */
const deviate = 1.959964;

/**
 * Between which shares the true one lies in 19 of 20 draws.
 *
 * @param of  how many were drawn, above 0
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.4.1 (after Wilson 1927)
 */
export function shareWithin(count: number, of: number): { low: number; high: number } {
  const share = count / of;
  const z2 = deviate * deviate;
  const middle = share + z2 / (2 * of);
  const half = deviate * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of * of));
  const whole = 1 + z2 / of;
  return { low: (middle - half) / whole, high: (middle + half) / whole };
}
