/** The address of a saved file is given up after that [ms]. */
const kept = 60_000;

/** Hands a text to the person at the page as a file. */
export function handOver(name: string, type: string, text: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), kept);
}
