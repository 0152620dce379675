import { afterDrawing } from '../../frame/draw-once';

// What was typed into a form before its reader was sent elsewhere to put something right: it stands there again on coming back.

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;
type Typed = ReadonlyMap<string, string | boolean>;
let left: { readonly hash: string; readonly typed: Typed } | undefined;

/** Every field of the page, by the name of its group and its own. */
function fieldsShown(): Map<string, Field> {
  const shown = new Map<string, Field>();
  for (const field of document.querySelectorAll<Field>(
    'main :is(input:not([type=file]), textarea, select)',
  )) {
    const own = field.getAttribute('aria-label') ?? field.labels?.[0]?.textContent;
    let name = `${groupOf(field)}\n${own}`;
    while (shown.has(name)) name += '\n'; // one more of that name
    shown.set(name, field);
  }
  return shown;
}

const groupOf = (field: Element): string =>
  field.closest('fieldset')?.querySelector('legend')?.textContent ?? '';
const isTick = (field: Field): field is HTMLInputElement => /^(radio|checkbox)$/.test(field.type);
const typedIn = (field: Field): string | boolean => (isTick(field) ? field.checked : field.value);

function keep({ target }: Event): void {
  if (!(target as Element).closest('main a[href*="?back="]')) return;
  const typed = new Map([...fieldsShown()].map(([name, field]) => [name, typedIn(field)]));
  left = { hash: location.hash, typed };
}

/** Fields given back, and rows added for them: a form that never comes to what it was is let be. */
const MOST_ROUNDS = 200;

/** One field at a time, each once the one before is drawn: what it brings with it is then there. */
function giveBack(typed: Typed, rounds = MOST_ROUNDS, lackedBefore = Number.POSITIVE_INFINITY): void {
  const shown = fieldsShown();
  const next = [...shown].find(([name, field]) => isOther(field, typed.get(name)));
  const lacked = [...typed.keys()].filter((name) => !shown.has(name));
  if (next) fill(next[1], typed.get(next[0]));
  else {
    const longer = lacked.length < lackedBefore ? buttonFor(lacked[0]) : undefined;
    if (!longer) return;
    longer.click();
  }
  if (rounds > 0) afterDrawing(() => giveBack(typed, rounds - 1, next ? lackedBefore : lacked.length));
}

const isOther = (field: Field, was: string | boolean | undefined): boolean =>
  was !== undefined && was !== typedIn(field) && (was !== false || field.type !== 'radio');

function fill(field: Field, was: string | boolean | undefined): void {
  if (typeof was === 'string') {
    field.value = was;
    for (const told of ['input', 'change']) field.dispatchEvent(new Event(told, { bubbles: true }));
  } else field.click();
}

/** The button that makes a group longer; where the group is not there yet, the form's own. */
function buttonFor(name: string | undefined): HTMLButtonElement | undefined {
  if (name === undefined) return undefined;
  const all = [...document.querySelectorAll<HTMLButtonElement>('main button[data-adds]')];
  return all.find((one) => groupOf(one) === name.split('\n')[0]) ?? all[0];
}

/** For as long as a form is shown: what is in its fields is kept when a link that leads back here is followed, and given back then. */
export function keepWhatIsTyped(): () => void {
  if (left?.hash === location.hash) {
    const { typed } = left;
    left = undefined;
    giveBack(typed);
  }
  const listen = (event: Event): void => keep(event); // each form its own: one that goes must not stop another
  addEventListener('click', listen, true);
  return () => removeEventListener('click', listen, true);
}
