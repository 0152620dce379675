import * as v from 'valibot';
import { fail, type Result, succeed } from '../result';
import { LOGBOOK_WORDS } from '../words/frame/logbook';
import { type Limit, rangeIn } from './limits';
import { UNITS, type Unit } from './unit';

/** A quantity exactly as the person typed it, so that it is shown back as typed. */
export interface Typed {
  readonly text: string;
  readonly unit: Unit;
}

/** A quantity in SI beside what was typed for it. */
export interface Quantity {
  readonly si: number;
  readonly typed: Typed;
}

const PLAIN = /^[+-]?(\d{1,15}([.,]\d{0,15})?|[.,]\d{1,15})$/;

/**
 * The number that a kept text stands for, decimal point or decimal comma; undefined when it is not one number.
 * What a person types is read by `readNumber`, which asks where a comma may mean either.
 */
export function plainNumber(text: string): number | undefined {
  const trimmed = text.trim().replace('\u2212', '-');
  return PLAIN.test(trimmed) ? Number(trimmed.replace(',', '.')) : undefined;
}

/** The amount in SI, or a sentence that says what would be accepted. */
export function within(amount: number, unit: Unit, limit: Limit): Result<number, string> {
  const si = UNITS[unit].toSi(amount);
  const toSi = UNITS[limit.units[0]].toSi;
  if (si >= toSi(limit.lowest) && si <= toSi(limit.highest)) return succeed(si);
  return fail(LOGBOOK_WORDS.outOfRange({ ...rangeIn(limit, unit), unit }));
}

function readKept({ text, unit }: Typed, limit: Limit): Result<number, string> {
  const amount = plainNumber(text);
  return amount === undefined ? fail(LOGBOOK_WORDS.notANumber) : within(amount, unit, limit);
}

/** The typed quantity in SI beside its text. Only for what the schema has passed. */
export const quantity = (typed: Typed): Quantity => ({
  si: UNITS[typed.unit].toSi(plainNumber(typed.text) ?? Number.NaN),
  typed,
});

/** Schema of a typed quantity within a limit. */
export const typed = <const Units extends readonly [Unit, ...Unit[]]>(limit: Limit<Units>) =>
  v.pipe(
    v.object({ text: v.string(), unit: v.picklist(limit.units) }),
    v.check(
      (input) => readKept(input, limit).ok,
      ({ input }) => {
        const read = readKept(input, limit);
        return read.ok ? '' : read.failure;
      },
    ),
  );
