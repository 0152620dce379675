import { parseNumber, readTyped } from '../../../logbook/as-typed';
import type { Piece } from '../../../logbook/fold/pieces';
import { LIMITS } from '../../../logbook/limits';
import type { Draft } from '../../../parts/fields/typed-field';
import { type Material, materialFor } from '../../../science/film/material';
import { type Shape, shapeAreaM2, USUAL_AREAS_M2 } from '../../../science/film/shapes';
import { withKeepBack } from '../../../science/mixing/contents';
import { AMOUNT_WORDS as WORDS } from '../../../words/mix/tools';

export type ShapeKey = keyof typeof WORDS.shapes;
export const SHAPE_KEYS = Object.keys(WORDS.shapes) as readonly ShapeKey[];
export type Size = 'length' | 'width' | 'height' | 'diameter';

/** The form of a job as it stands; percent and millilitres as typed. */
export interface JobDraft {
  readonly shape: ShapeKey;
  readonly area: Draft<'m2' | 'cm2' | 'ft2' | 'in2'>;
  readonly sizes: Readonly<Record<Size, string>>;
  readonly sizeUnit: 'cm' | 'in';
  readonly coats: string;
  readonly wetFilm: Draft<'um' | 'mil'>;
  readonly transfer: string;
  readonly holdUp: string;
  readonly fillings: string;
  readonly keepBack: Draft<'%'>;
}

export const newJob = (isUs: boolean): JobDraft => ({
  shape: 'known',
  area: { text: '', unit: isUs ? 'ft2' : 'm2' },
  sizes: { length: '', width: '', height: '', diameter: '' },
  sizeUnit: isUs ? 'in' : 'cm',
  coats: '3',
  wetFilm: isUs ? { text: '4', unit: 'mil' } : { text: '100', unit: 'um' },
  transfer: '35',
  holdUp: '15',
  fillings: '',
  keepBack: { text: '10', unit: '%' },
});

/** The area of a piece as the form shows it. */
export const areaOfPiece = ({ area }: Piece): Partial<JobDraft> =>
  area ? { shape: 'known', area: area.typed as JobDraft['area'] } : {};

export const SIZES: Readonly<Partial<Record<ShapeKey, readonly Size[]>>> = {
  panel: ['length', 'width'],
  box: ['length', 'width', 'height'],
  cylinder: ['diameter', 'height'],
  disc: ['diameter'],
  sphere: ['diameter'],
};
const METRES = { cm: 0.01, in: 0.0254 } as const;
const LONGEST_M = 10;

/** One size in metres; undefined while it cannot be. */
export function sizeM({ sizes, sizeUnit }: JobDraft, size: Size): number | undefined {
  const metres = (parseNumber(sizes[size]) ?? Number.NaN) * METRES[sizeUnit];
  return metres > 0 && metres <= LONGEST_M ? metres : undefined;
}

/** The area to coat, m2; undefined while it is not known. */
export function areaM2(draft: JobDraft): number | undefined {
  const { shape } = draft;
  if (shape === 'known') {
    const read = readTyped(draft.area, LIMITS.area);
    return read.ok ? read.value : undefined;
  }
  if (shape in USUAL_AREAS_M2) return USUAL_AREAS_M2[shape as keyof typeof USUAL_AREAS_M2];
  const sizes = (SIZES[shape] ?? []).map((size) => [`${size}M`, sizeM(draft, size)] as const);
  if (sizes.some(([, metres]) => metres === undefined)) return undefined;
  return shapeAreaM2({ is: shape, ...Object.fromEntries(sizes) } as unknown as Shape);
}

const within = (text: string, lowest: number, highest: number): number | undefined => {
  const value = parseNumber(text);
  return value !== undefined && value >= lowest && value <= highest ? value : undefined;
};
const whole = (text: string, lowest: number, highest: number): number | undefined => {
  const value = within(text, lowest, highest);
  return value !== undefined && Number.isInteger(value) ? value : undefined;
};

export const coatsOf = ({ coats }: JobDraft): number | undefined => whole(coats, 1, 100);
export const transferOf = ({ transfer }: JobDraft): number | undefined => within(transfer, 1, 100);
export const holdUpOf = ({ holdUp }: JobDraft): number | undefined => within(holdUp, 0, 500);
const COATS_A_FILLING = 3;
/** Fillings as typed; left empty, one for a day's three coats (common practice, no source). */
export function fillingsOf(draft: JobDraft): number | undefined {
  if (draft.fillings.trim() !== '') return whole(draft.fillings, 0, 200);
  const coats = coatsOf(draft);
  return coats === undefined ? undefined : Math.ceil(coats / COATS_A_FILLING);
}

/** What a job takes, m3. */
export interface Need extends Material {
  /** To be mixed with the share that is kept back. */
  readonly wholeM3: number;
  readonly keptM3: number;
  readonly wetFilmM: number;
  readonly coats: number;
}

/** What the job takes; undefined while a field is not right. */
export function needOf(draft: JobDraft): Need | undefined {
  const area = areaM2(draft);
  const coats = coatsOf(draft);
  const wetFilm = readTyped(draft.wetFilm, LIMITS.wetFilm);
  const transfer = transferOf(draft);
  const holdUpMl = holdUpOf(draft);
  const fillings = fillingsOf(draft);
  const keepBack =
    draft.keepBack.text.trim() === ''
      ? { ok: true as const, value: 0 }
      : readTyped(draft.keepBack, LIMITS.keepBack);
  if (area === undefined || coats === undefined || transfer === undefined) return undefined;
  if (holdUpMl === undefined || fillings === undefined || !wetFilm.ok || !keepBack.ok) return undefined;
  const material = materialFor({
    areaM2: area,
    coats,
    wetFilmM: wetFilm.value,
    transferEfficiency: transfer / 100,
    gunHoldUpM3: holdUpMl / 1e6,
    fillings,
  });
  const wholeM3 = withKeepBack(material.mixedM3, keepBack.value);
  return { ...material, wholeM3, keptM3: wholeM3 - material.mixedM3, wetFilmM: wetFilm.value, coats };
}
