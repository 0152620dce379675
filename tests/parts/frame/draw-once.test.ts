import { options } from 'preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

type DrawOnce = typeof import('../../../src/parts/frame/draw-once');
let screen: DrawOnce;
let draw: (job: () => void) => void;
let seen: string[];
let frames: (() => void)[];
let page: EventTarget;
const note = (what: string) => () => void seen.push(what);
/** Until every task that was asked for has run. No frame comes by itself, and time passes only where a test lets it. */
async function settled(): Promise<void> {
  for (let n = 0; n < 5; n++) {
    vi.advanceTimersByTime(0);
    await new Promise((resolve) => setImmediate(resolve)); // messages come between two of these
  }
}

beforeEach(async () => {
  vi.resetModules();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  seen = [];
  frames = [];
  page = new EventTarget();
  vi.stubGlobal('addEventListener', page.addEventListener.bind(page));
  vi.stubGlobal('document', { hidden: false });
  vi.stubGlobal('requestAnimationFrame', (job: () => void) => frames.push(job));
  vi.stubGlobal('cancelAnimationFrame', (frame: number) => frames.splice(frame - 1, 1));
  screen = await import('../../../src/parts/frame/draw-once');
  screen.drawOnceATask();
  draw = options.debounceRendering as typeof draw;
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  delete options.debounceRendering;
});

test('what follows from a change is worked out before it is drawn, and what comes of that too', async () => {
  draw(note('page'));
  screen.beforeDrawing(() => {
    note('outlooks')();
    screen.beforeDrawing(note('standings'));
  });
  expect(seen).toEqual([]);
  await settled();
  expect(seen).toEqual(['outlooks', 'standings', 'page']);
});

test('what was said is on the screen before anything else is worked out or drawn', async () => {
  draw(note('page'));
  screen.beforeDrawing(note('standings'));
  screen.sayFirst(note('gone to'));
  await settled();
  expect(seen).toEqual([]);
  for (const frame of frames.splice(0)) frame();
  await settled();
  expect(seen).toEqual(['gone to', 'standings', 'page']);
});

test('said twice before a frame, it waits for one frame', async () => {
  screen.sayFirst(note('first'));
  screen.sayFirst(note('second'));
  draw(note('page'));
  expect(frames).toHaveLength(1);
  for (const frame of frames.splice(0)) frame();
  await settled();
  expect(seen).toEqual(['second', 'first', 'page']);
});

describe('from the finger on a button', () => {
  /** A touch of a button that sends a form, or of another. */
  const touch = (what: string, isSending = true): void => {
    const closest = () => (isSending ? {} : null);
    page.dispatchEvent(Object.defineProperty(new Event(what), 'target', { value: { closest } }));
  };

  test('that sends a form nothing else is worked out or drawn, until what it sends is', async () => {
    touch('pointerdown');
    screen.beforeDrawing(note('estimate'));
    draw(note('page'));
    await settled();
    expect(seen).toEqual([]);
    touch('click');
    const drawAgain = screen.holdDrawing(60_000); // the form, which is sent right after the click
    await settled();
    expect(seen).toEqual([]);
    drawAgain();
    await settled();
    expect(seen).toEqual(['estimate', 'page']);
  });

  test('that is left again without a tap all goes on after half a second', async () => {
    touch('pointerdown');
    draw(note('page'));
    vi.advanceTimersByTime(499);
    await settled();
    expect(seen).toEqual([]);
    vi.advanceTimersByTime(1);
    await settled();
    expect(seen).toEqual(['page']);
  });

  test('that sends nothing all goes on', async () => {
    touch('pointerdown', false);
    draw(note('page'));
    await settled();
    expect(seen).toEqual(['page']);
  });
});

describe('a hand is never ahead of the screen:', () => {
  const tell = (what: string, type: string): void =>
    void page.dispatchEvent(Object.defineProperty(new Event(what), 'target', { value: { type } }));

  test.each([
    ['input', 'text'],
    ['input', 'textarea'],
    ['input', 'time'],
    ['change', 'text'],
    ['change', 'radio'],
    ['change', 'checkbox'],
    ['change', 'select-one'],
  ])('what its %s puts into a %s field is drawn with it, though all else is held', (what, type) => {
    screen.holdDrawing(60_000);
    screen.beforeDrawing(note('estimate'));
    draw(note('field'));
    tell(what, type);
    expect(seen).toEqual(['estimate', 'field']);
  });

  test.each(['radio', 'checkbox', 'select-one'])(
    'a choice of a %s is not drawn before it is told',
    (type) => {
      draw(note('page'));
      tell('input', type);
      expect(seen).toEqual([]);
      tell('change', type);
      expect(seen).toEqual(['page']);
    },
  );

  test('what one tap has changed is drawn before the next', () => {
    draw(note('page'));
    page.dispatchEvent(Object.defineProperty(new Event('pointerdown'), 'target', { value: {} }));
    expect(seen).toEqual(['page']);
  });

  test('a field that loses the focus while it is taken off starts no drawing within one', () => {
    draw(() => {
      tell('change', 'text');
      note('page')(); // and "rest" not before it
    });
    draw(note('rest'));
    tell('input', 'text');
    expect(seen).toEqual(['page', 'rest']);
  });
});

describe('while a form is sent', () => {
  test('nothing is drawn until it is done', async () => {
    const drawAgain = screen.holdDrawing(60_000);
    draw(note('page'));
    screen.beforeDrawing(note('standings'));
    await settled();
    expect(seen).toEqual([]);
    drawAgain();
    drawAgain(); // as its time runs out
    expect(seen).toEqual([]); // what is said of it comes first
    await settled();
    expect(seen).toEqual(['standings', 'page']);
  });

  test('it is drawn all the same when that takes longer than a moment', async () => {
    const drawAgain = screen.holdDrawing(500);
    draw(note('busy'));
    vi.advanceTimersByTime(499);
    await settled();
    expect(seen).toEqual([]);
    vi.advanceTimersByTime(1);
    await settled();
    expect(seen).toEqual(['busy']);
    drawAgain();
    const other = screen.holdDrawing(60_000);
    draw(note('page'));
    await settled();
    expect(seen).toEqual(['busy']); // the one that is over holds nothing open
    other();
    await settled();
    expect(seen).toEqual(['busy', 'page']);
  });

  test('two of them hold it until both are done', async () => {
    const [one, other] = [screen.holdDrawing(60_000), screen.holdDrawing(60_000)];
    draw(note('page'));
    one();
    await settled();
    expect(seen).toEqual([]);
    other();
    await settled();
    expect(seen).toEqual(['page']);
  });

  test('what is said when it is done is on the screen before the page', async () => {
    const drawAgain = screen.holdDrawing(60_000);
    draw(note('page'));
    drawAgain();
    screen.sayFirst(note('gone to'));
    await settled();
    expect(seen).toEqual([]);
    for (const frame of frames.splice(0)) frame();
    await settled();
    expect(seen).toEqual(['gone to', 'page']);
  });
});

test('a page that is hidden waits for nothing', async () => {
  vi.stubGlobal('document', { hidden: true });
  screen.sayFirst(note('gone to'));
  draw(note('page'));
  await settled();
  expect(seen).toEqual(['gone to', 'page']);
});

test('where no frame comes it is drawn all the same', async () => {
  screen.sayFirst(note('gone to'));
  draw(note('page'));
  await settled();
  expect(seen).toEqual([]);
  vi.advanceTimersByTime(100);
  await settled();
  expect(seen).toEqual(['gone to', 'page']);
  expect(frames).toEqual([]); // or it would be done again when the page is seen
});
