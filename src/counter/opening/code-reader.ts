/** What the browser's reader of codes is, as far as it is used (Barcode Detection API, WICG); the types of the language lack it. */
interface Detector {
  detect(picture: HTMLVideoElement): Promise<readonly { rawValue: string }[]>;
}
interface DetectorClass {
  new (options: { formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

/** What the codes in a picture say. */
export type CodeReader = (picture: HTMLVideoElement) => Promise<readonly string[]>;

/** A reader of QR codes; undefined where the browser has none. */
export async function codeReader(): Promise<CodeReader | undefined> {
  const { BarcodeDetector } = globalThis as { BarcodeDetector?: DetectorClass };
  const formats = await BarcodeDetector?.getSupportedFormats().catch((): string[] => []);
  if (!BarcodeDetector || !formats?.includes('qr_code')) return undefined;
  const detector = new BarcodeDetector({ formats: ['qr_code'] });
  return async (picture) => (await detector.detect(picture)).map(({ rawValue }) => rawValue);
}
