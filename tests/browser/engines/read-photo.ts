import { byHand } from './by-hand';
import type { Engine } from './engine';

export type Rgb = readonly [number, number, number];
/** Where the corners of the card and the middle of the sample are touched, as parts of the photo. */
const TOUCHES = [
  [0.12, 0.12],
  [0.38, 0.12],
  [0.38, 0.88],
  [0.12, 0.88],
  [0.75, 0.5],
];

/** Draws a photo, a grey card on the left and the sample on the right, as JPEG in base64: flat, so nothing is lost but a rounding. */
export const drawCard = (engine: Engine, card: Rgb, sample: Rgb): Promise<string> =>
  engine.run(
    `const canvas = document.createElement('canvas'); canvas.width = 480; canvas.height = 320;
     const pen = canvas.getContext('2d');
     for (const [colour, x] of [[args[0], 0], [args[1], 240]]) { pen.fillStyle = 'rgb(' + colour.join(',') + ')'; pen.fillRect(x, 0, 240, 320); }
     return canvas.toDataURL('image/jpeg', 1).replace(/.*,/, '');`,
    card,
    sample,
  );

/** Brings a photo into the match on screen, marks card and sample by touch, and gives L*, a* and b* as the page says them. */
export async function readPhoto(engine: Engine, card: Rgb, sample: Rgb): Promise<readonly number[]> {
  const { tap, see, give } = byHand(engine);
  await engine.run(`location.hash += '/photo/target';`);
  await see('Take or choose a photo');
  await tap('Grey card');
  await give(await drawCard(engine, card, sample), 'card.jpg', 'image/jpeg');
  await see('Mark by touch');
  await engine.run(
    `const shown = () => document.querySelector('.photo img');
     while (!shown()?.naturalWidth) await new Promise((resolve) => setTimeout(resolve, 50));
     for (const [x, y] of args[0]) {
       const box = shown().getBoundingClientRect();
       const at = { bubbles: true, clientX: box.left + x * box.width, clientY: box.top + y * box.height };
       shown().dispatchEvent(new MouseEvent('click', at));
       await new Promise((resolve) => setTimeout(resolve, 100));
     }`,
    TOUCHES,
  );
  await tap('Read the colour');
  const [, said = ''] = (await see('The sample reads')).match(/The sample reads (.*)/) ?? [];
  return said.split('/').map((figure) => Number(figure.trim().replace('\u2212', '-')));
}
