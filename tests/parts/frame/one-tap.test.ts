import { beforeEach, expect, test, vi } from 'vitest';

let page: EventTarget;
let heard: string[];

class Control {
  constructor(
    readonly name: string,
    readonly type = 'button',
  ) {}
  closest = () => this;
}
const row = new Control('row');
const log = new Control('log');
const save = new Control('save', 'submit');

beforeEach(async () => {
  vi.resetModules();
  page = new EventTarget();
  heard = [];
  vi.stubGlobal('addEventListener', page.addEventListener.bind(page));
  (await import('../../../src/parts/frame/one-tap')).tapOnce();
  page.addEventListener('click', ({ target }) => void heard.push((target as unknown as Control).name));
  return () => vi.unstubAllGlobals();
});

function send(type: string, target: Control, timeStamp: number, place = {}): Event {
  const event = Object.assign(new Event(type, { cancelable: true }), { x: 100, y: 700, detail: 1, ...place });
  Object.defineProperties(event, { target: { value: target }, timeStamp: { value: timeStamp } });
  page.dispatchEvent(event);
  return event;
}

/** A finger lies on the glass for 60 ms. Gives whether the page itself did what a tap there does. */
function tap(target: Control, ms: number, place = {}): boolean {
  send('pointerdown', target, ms, place);
  return !send('click', target, ms + 60, place).defaultPrevented;
}

test.each([
  ['on what the first has brought there', row, log, 160, {}, ['row']],
  ['on a form that the first has sent', save, save, 160, {}, ['save']],
  ['a step or a choice twice', row, row, 110, {}, ['row', 'row']],
  ['another control, elsewhere', row, log, 160, { y: 660 }, ['row', 'log']],
  ['a finger’s width beside', row, log, 160, { x: 120, y: 715 }, ['row']],
  ['just before 0.3 s are over', save, save, 359, {}, ['save']],
  ['after 0.3 s', save, save, 360, {}, ['save', 'save']],
])('%s', (_, first, second, ms, place, done) => {
  expect(tap(first, 0)).toBe(true);
  expect(tap(second, ms, place)).toBe(done.length === 2);
  expect(heard).toEqual(done);
});

test('a third tap is judged by the one before it, which was not heard', () => {
  tap(save, 0);
  tap(save, 200);
  tap(save, 400);
  expect(heard).toEqual(['save']);
  tap(save, 1000);
  expect(heard).toEqual(['save', 'save']);
});

test.each(['keydown', 'beforeinput'])('a %s between two taps lies between two acts', (type) => {
  tap(save, 0);
  send(type, save, 100);
  tap(save, 160);
  expect(heard).toEqual(['save', 'save']);
});

test('who sends by a key is heard each time', () => {
  tap(save, 0);
  send('click', save, 100, { detail: 0, x: 0, y: 0 });
  expect(heard).toEqual(['save', 'save']);
});

test('the second finger is not heard coming down, but may come down', () => {
  const down: string[] = [];
  page.addEventListener('pointerdown', ({ target }) => void down.push((target as unknown as Control).name));
  tap(row, 0);
  expect(send('pointerdown', log, 160).defaultPrevented).toBe(false);
  expect(down).toEqual(['row']);
});
