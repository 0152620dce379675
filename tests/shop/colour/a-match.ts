import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { Match, ReadingSet } from '../../../src/logbook/fold/piece/matches';
import type { USUAL_NAMES } from '../../../src/logbook/kinds/piece/match';
import { id, inTurn } from '../../logbook/entries';

export const MATCH = id(0x100);
export const WHITE = id(0x101);

type LabTexts = readonly [L: string, a: string, b: string];
type OfSaid = Extract<EntryBody, { kind: 'colour-read' }>['of'];
type Described = Extract<EntryBody, { kind: 'match-described' }>;

const bare = (text: string) => ({ text, unit: 'ratio' }) as const;
const lab = ([L, a, b]: LabTexts) => ({ as: 'lab', L: bare(L), a: bare(a), b: bare(b) }) as const;

export const tinterId = (name: (typeof USUAL_NAMES)[number]): string =>
  id(
    0x110 +
      ['ochre', 'raw sienna', 'raw umber', 'burnt umber', 'black', 'red oxide', 'green oxide'].indexOf(name),
  );
export const trialId = (number: number): string => id(0x130 + number);

/** A match on paper: said line by line, then folded. */
export class MatchOnPaper {
  private readonly bodies: EntryBody[] = [];

  constructor(tinters: readonly (typeof USUAL_NAMES)[number][], more: Partial<Described> = {}) {
    this.bodies.push({ kind: 'ingredient-described', ingredient: WHITE, name: 'White', is: 'white-base' });
    for (const name of tinters)
      this.bodies.push({ kind: 'ingredient-described', ingredient: tinterId(name), name, is: 'tinter' });
    this.bodies.push({
      kind: 'match-described',
      match: MATCH,
      name: 'Radio cabinet',
      place: 'edge',
      through: 'clear',
      white: 'D65/10',
      base: WHITE,
      tinters: tinters.map((like) => ({ ingredient: tinterId(like), like })),
      division: { text: '0.01', unit: 'g' },
      letDowns: ['let-down-10', 'let-down-1'],
      ...more,
    });
  }

  mix(
    number: number,
    added: readonly (readonly [ingredient: string, grams: string, form?: 'let-down-10'])[],
  ): this {
    this.bodies.push({
      kind: 'trial-mixed',
      match: MATCH,
      trial: trialId(number),
      added: added.map(([ingredient, text, form]) => ({
        ingredient,
        form: form ?? 'neat',
        mass: { text, unit: 'g' },
      })),
    });
    return this;
  }

  read(
    of: OfSaid | number,
    readings: readonly LabTexts[],
    more: {
      readonly isDry?: boolean;
      readonly clearCoats?: number;
      readonly white?: ReadingSet['white'];
    } = {},
  ): this {
    this.bodies.push({
      kind: 'colour-read',
      match: MATCH,
      of: typeof of === 'number' ? { as: 'trial', trial: trialId(of) } : of,
      white: 'D65/10',
      isDry: true,
      ...more,
      readings: readings.map(lab),
    });
    return this;
  }

  say(body: EntryBody): this {
    this.bodies.push(body);
    return this;
  }

  fold(): Match {
    const match = fold(this.bodies.map(inTurn)).matches.get(MATCH);
    if (!match) throw new Error('The match was not folded.');
    return match;
  }
}
