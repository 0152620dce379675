import { parseNumber, readTyped } from '../../../logbook/as-typed';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { LIMITS } from '../../../logbook/limits';
import type { Draft } from '../../../parts/fields/typed-field';
import { type Material, materialByRate, materialFor, type SprayJob } from '../../../science/film/material';
import {
  SHAPE_FACTORS,
  type Shape,
  type ShapeFactor,
  shapeAreaM2,
  USUAL_AREAS_M2,
} from '../../../science/film/shapes';
import { withKeepBack } from '../../../science/mixing/contents';
import { AMOUNT_WORDS as WORDS } from '../../../words/mix/tools';

export type ShapeKey = keyof typeof WORDS.shapes;
export const SHAPE_KEYS = Object.keys(WORDS.shapes) as readonly ShapeKey[];
export type Size = 'length' | 'width' | 'height' | 'diameter';
/** By gun, from a can, or by brush or pad: only a gun holds some back, and by hand nearly all stays on the piece. */
export type Way = 'spray' | 'can' | 'hand';

/** The form of a job as it stands; percent and millilitres as typed. */
export interface JobDraft {
  readonly shape: ShapeKey;
  readonly area: Draft<'m2' | 'cm2' | 'ft2' | 'in2'>;
  readonly sizes: Readonly<Record<Size, string>>;
  readonly sizeUnit: 'cm' | 'in';
  readonly slim: ShapeFactor;
  readonly way: Way;
  readonly coats: string;
  readonly by: 'wet' | 'rate';
  readonly wetFilm: Draft<'um' | 'mil'>;
  readonly rate: Draft<'m2/L' | 'ft2/gal'>;
  readonly transfer: string;
  readonly holdUp: Draft<'mL' | 'fl-oz-us'>;
  readonly fillings: string;
  readonly keepBack: Draft<'%'>;
}

export const newJob = (isUs: boolean): JobDraft => ({
  shape: 'known',
  area: { text: '', unit: isUs ? 'ft2' : 'm2' },
  sizes: { length: '', width: '', height: '', diameter: '' },
  sizeUnit: isUs ? 'in' : 'cm',
  slim: 'flat',
  way: 'spray',
  coats: '3',
  by: 'wet',
  wetFilm: isUs ? { text: '4', unit: 'mil' } : { text: '100', unit: 'um' },
  rate: isUs ? { text: '300', unit: 'ft2/gal' } : { text: '7', unit: 'm2/L' },
  transfer: '35',
  holdUp: isUs ? { text: '0.5', unit: 'fl-oz-us' } : { text: '15', unit: 'mL' },
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
/** A session with the pad: 2 um dry of a shellac of about a sixth solids (common practice, no source). */
export const padFilm = (isUs: boolean): JobDraft['wetFilm'] =>
  isUs ? { text: '0.5', unit: 'mil' } : { text: '12', unit: 'um' };

const COATS_A_FILLING = 3;
/** Fillings as typed; left empty, one for a day's three coats (common practice, no source). */
export function fillingsOf(draft: JobDraft): number | undefined {
  if (draft.fillings.trim() !== '') return whole(draft.fillings, 0, 200);
  const coats = coatsOf(draft);
  return coats === undefined ? undefined : Math.ceil(coats / COATS_A_FILLING);
}

/** What a job takes, m3; on a slim shape more, so from the least to the most. */
export interface Need {
  readonly least: Material;
  readonly most: Material;
  /** The same without the shape: what flat faces of this area take. */
  readonly flat: Material;
  /** To be mixed with the share that is kept back, for the most. */
  readonly wholeM3: number;
  readonly keptM3: number;
  readonly wetFilmM: number;
  readonly coats: number;
  readonly way: Way;
}

/** What the job takes; undefined while a field is not right. */
export function needOf(draft: JobDraft): Need | undefined {
  const area = areaM2(draft);
  const coats = coatsOf(draft);
  const gun = gunOf(draft);
  const isKeptWhole = draft.keepBack.text.trim() === '';
  const keepBack = isKeptWhole ? undefined : readTyped(draft.keepBack, LIMITS.keepBack);
  const film = filmOf(draft);
  if (area === undefined || coats === undefined || !gun || !film) return undefined;
  if (keepBack?.ok === false) return undefined;
  const take = (factor: number) => film.take({ ...gun, coats, areaM2: area * factor });
  const { from, to } = SHAPE_FACTORS[draft.slim];
  const most = take(to);
  const wholeM3 = withKeepBack(most.mixedM3, keepBack?.value ?? 0);
  const keptM3 = wholeM3 - most.mixedM3;
  return {
    least: take(from),
    most,
    flat: take(1),
    wholeM3,
    keptM3,
    wetFilmM: film.wetFilmM,
    coats,
    way: draft.way,
  };
}

type Gun = Pick<SprayJob, 'gunHoldUpM3' | 'fillings'>;
type Job = Gun & Pick<SprayJob, 'areaM2' | 'coats'>;

/** What stays in the gun, and how often; undefined while a field is not right. */
function gunOf(draft: JobDraft): Gun | undefined {
  if (draft.way !== 'spray') return { gunHoldUpM3: 0, fillings: 0 };
  const fillings = fillingsOf(draft);
  const holdUp = readTyped(draft.holdUp, LIMITS.gunHoldUp);
  return fillings === undefined || !holdUp.ok ? undefined : { gunHoldUpM3: holdUp.value, fillings };
}

/** How a coat is said: by its wet film and what of it lands, or by what a volume covers. */
function filmOf(draft: JobDraft): { wetFilmM: number; take: (job: Job) => Material } | undefined {
  if (draft.by === 'rate') {
    const rate = readTyped(draft.rate, LIMITS.spreadingRate);
    if (!rate.ok) return undefined;
    return { wetFilmM: 1 / rate.value, take: (job) => materialByRate({ ...job, rateM2M3: rate.value }) };
  }
  const wetFilm = readTyped(draft.wetFilm, LIMITS.wetFilm);
  const transfer = draft.way === 'hand' ? 100 : transferOf(draft);
  if (!wetFilm.ok || transfer === undefined) return undefined;
  const spray = { wetFilmM: wetFilm.value, transferEfficiency: transfer / 100 };
  return { wetFilmM: wetFilm.value, take: (job) => materialFor({ ...job, ...spray }) };
}
