import { MINUTE_MS } from '../../units';

const CALENDAR_TYPE = 'text/calendar';

/** How a file or a text left the app. */
export type HandedOver = 'shared' | 'downloaded' | 'copied' | 'given-up' | 'failed';

/** Whether the share sheet takes this file. */
export const canShare = (file: File): boolean =>
  'canShare' in navigator && navigator.canShare({ files: [file] });

/** Gives a calendar file out: by the share sheet where there is one for files, else as a download. */
export const handOverCalendar = (text: string, fileName: string): Promise<HandedOver> =>
  handOverFile(new File([text], fileName, { type: CALENDAR_TYPE }));

/** Gives a file out: by the share sheet where there is one for such files, else as a download. */
export async function handOverFile(file: File): Promise<HandedOver> {
  if (!canShare(file)) return download(file);
  const shared = await share({ files: [file] });
  return shared === 'failed' ? download(file) : shared;
}

/** Gives a text out: by the share sheet, else onto the clipboard. */
export async function handOverText(text: string): Promise<HandedOver> {
  if ('share' in navigator) {
    const shared = await share({ text });
    if (shared !== 'failed') return shared;
  }
  return copy(text);
}

/** Puts a text onto the clipboard. */
export async function copy(text: string): Promise<HandedOver> {
  try {
    await navigator.clipboard.writeText(text);
    return 'copied';
  } catch {
    return 'failed';
  }
}

async function share(what: ShareData): Promise<HandedOver> {
  try {
    await navigator.share(what);
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'given-up' : 'failed';
  }
}

/** Gives a file out as a download. */
export function download(file: File): HandedOver {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  // The browser reads the address after the click; freed at once, some save nothing.
  setTimeout(() => URL.revokeObjectURL(address), MINUTE_MS);
  return 'downloaded';
}
