/** A file that is saved takes its time to be read; the address of it is given up after that. */
const kept = 60_000;

/** Hands a text to whoever sits at the page, as a file. */
export function handOver(name: string, type: string, text: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), kept);
}
