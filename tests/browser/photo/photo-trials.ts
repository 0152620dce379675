import type { Page } from 'playwright-core';

/** A picture file with something done to it, under a name and a type that may lie. */
export interface Trial {
  readonly picture: number;
  readonly cut?: number | undefined;
  readonly changes?: readonly { readonly at: number; readonly byte: number }[];
  readonly name?: string;
  readonly type?: string;
}

/** What the screen said to a file; `taken` where it said nothing against it. */
export type Said = 'taken' | 'nothing' | (string & {});

/** Hands the page the pictures that the trials are made of. */
export async function bringPictures(page: Page, pictures: readonly Uint8Array[]): Promise<void> {
  const base64 = pictures.map((one) => Buffer.from(one).toString('base64'));
  await page.evaluate((texts) => {
    Object.assign(globalThis, {
      pictures: texts.map((text) => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))),
    });
  }, base64);
}

/** A photo as a canvas writes it. */
export async function photoAs(page: Page, type: string): Promise<Uint8Array> {
  const base64 = await page.evaluate(async (wanted) => {
    const canvas = new OffscreenCanvas(320, 240);
    const paint = canvas.getContext('2d');
    if (!paint) throw new Error('No canvas.');
    for (let n = 0; n < 400; n++) {
      paint.fillStyle = `hsl(${n * 37} 60% ${20 + (n % 60)}%)`;
      paint.fillRect((n * 61) % 320, (n * 47) % 240, 60, 40);
    }
    const blob = await canvas.convertToBlob({ type: wanted, quality: 0.8 });
    if (blob.type !== wanted) throw new Error(`No ${wanted} here.`);
    return btoa(String.fromCharCode(...new Uint8Array(await blob.arrayBuffer())));
  }, type);
  return new Uint8Array(Buffer.from(base64, 'base64'));
}

/** How a place shows that it took a photo: one picture more, or the one picture, and then what a button says of it. */
export interface Place {
  readonly picture: string;
  readonly isAdded: boolean;
  /** Whether its marks must be moved once before it is read. */
  readonly isMarked?: boolean;
  readonly press?: string;
  readonly answer?: string;
  /** What the answer says where the photo cannot be opened after all. */
  readonly refusal?: string;
}

/** Chooses each file in turn, as a person does, and gives what the screen said to it. */
export const chooseEach = (page: Page, trials: readonly Trial[], place: Place): Promise<Said[]> =>
  page.evaluate(
    async ([all, { picture: shown, isAdded, isMarked = false, press, answer, refusal = '?' }]) => {
      const { pictures } = globalThis as unknown as { pictures: Uint8Array[] };
      const input = document.querySelector<HTMLInputElement>('main input[type="file"]');
      if (!input) throw new Error('There is no place for a photo.');
      const count = () =>
        [...document.querySelectorAll<HTMLImageElement>(shown)].filter(({ naturalWidth }) => naturalWidth > 0)
          .length;
      const problem = () => input.closest('.field, section')?.querySelector('.problem')?.textContent ?? '';
      const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

      function choose({ picture, cut, changes = [], name = 'card.jpg', type = 'image/jpeg' }: Trial): void {
        const bytes = (pictures[picture] ?? new Uint8Array()).slice(0, cut) as Uint8Array<ArrayBuffer>;
        for (const { at, byte } of changes) if (bytes.length > 0) bytes[at % bytes.length] = byte;
        const files = new DataTransfer();
        files.items.add(new File([bytes], name, { type }));
        if (input) input.files = files.files;
        input?.dispatchEvent(new Event('change', { bubbles: true }));
      }

      let isToMark = isMarked;
      async function moveMarks(): Promise<void> {
        if (!isToMark || count() === 0) return;
        isToMark = false;
        for (let mark = 1; mark <= 5; mark++) {
          const labels = [...document.querySelectorAll<HTMLElement>('main label')];
          labels.find(({ textContent }) => textContent?.startsWith(`${mark}. `))?.click();
          await pause(50);
          document.querySelector<HTMLElement>('main .nudges button')?.click();
          await pause(50);
        }
      }

      const said: string[] = [];
      for (const trial of all) {
        const before = count();
        choose(trial);
        await pause(40); // by then what was said to the last file is gone from the screen
        const until = performance.now() + 20_000;
        const isTaken = () => (isAdded ? count() > before : count() > 0);
        const isSettled = () => {
          const button = press ? document.querySelector<HTMLButtonElement>(press) : undefined;
          if (isTaken() && button && !button.disabled) button.click();
          return isTaken() && (!answer || document.querySelector(answer) !== null);
        };
        while (problem() === '' && !isSettled() && performance.now() < until) {
          await pause(10);
          await moveMarks();
        }
        const isRefused = answer && document.querySelector(answer)?.textContent?.includes(refusal);
        said.push(problem() || (isRefused ? refusal : isSettled() ? 'taken' : 'nothing'));
      }
      return said;
    },
    [trials, place] as const,
  );
