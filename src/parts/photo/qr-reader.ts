/** The browser's own reader of codes, where it has one (Shape Detection API, not in the DOM types). */
interface BarcodeReader {
  detect(from: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
type ReaderClass = new (options: { formats: readonly string[] }) => BarcodeReader;

/** A reader of QR codes; undefined where the browser has none. */
export function qrReader(): BarcodeReader | undefined {
  const Reader = (globalThis as { BarcodeDetector?: ReaderClass }).BarcodeDetector;
  if (!Reader) return undefined;
  try {
    return new Reader({ formats: ['qr_code'] });
  } catch {
    return undefined; // the class is there, the platform's reader is not
  }
}
