/** A text in small letters and without accents, which many leave out: words that differ in no more are the same. */
export const folded = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('ß', 'ss');
