import { readWhole } from '../../../parts/photo/use-kept-photo';

const HTML_TYPE = 'text/html';

/**
 * The record as one file that opens anywhere: what is on the page, its pictures inside, its styles beside it, no script. The same
 * words, for it is the same page.
 */
export async function recordFile(record: HTMLElement, title: string, name: string): Promise<File> {
  const copy = document.implementation.createHTMLDocument(title).importNode(record, true);
  await pictureInside(copy);
  const heading = document.createElement('title');
  heading.textContent = title; // written out with its < and & made harmless
  const head = [
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    heading.outerHTML,
    `<style>${stylesHere()}</style>`,
  ];
  const page = ['<!doctype html>', '<html lang="en" data-theme="light"><head>', ...head, '</head><body>'];
  return new File([[...page, copy.outerHTML, '</body></html>'].join('\n')], name, { type: HTML_TYPE });
}

/** Every rule that this page is drawn by. */
const stylesHere = (): string =>
  [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules].map(({ cssText }) => cssText)).join('\n');

/** Puts the pictures themselves where their addresses were: those hold on this page alone. */
async function pictureInside(copy: HTMLElement): Promise<void> {
  for (const image of copy.querySelectorAll<SVGImageElement>('image')) {
    const id = image.closest('[data-photo]')?.getAttribute('data-photo') ?? '';
    const picture = await readWhole(id);
    if (picture) image.setAttribute('href', await asAddress(picture));
    else image.remove();
  }
}

const asAddress = (picture: Blob): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(picture);
  });
