import type { Said } from '../../../actions/log';
import {
  canSolvents,
  type ThinnerSort,
  USUAL_CUT,
  USUAL_JARS,
  USUAL_SPRAY_CAN,
  usualThinner,
} from '../../../actions/mix/usual-jar';
import { finishTraits } from '../../../estimator/finishes/traits';
import { parseNumber, plainText, readTyped } from '../../../logbook/as-typed';
import type { Jar } from '../../../logbook/fold/mix/jars';
import { LIMITS } from '../../../logbook/limits';
import type { Draft } from '../../../parts/fields/typed-field';
import { draftProblem } from '../../../parts/fields/typed-field';
import { volumeSolidsOfCut } from '../../../science/film/cut';
import type { Finish } from '../../../shop/jar/own-solvents';
import { FINISH_NAMES, JAR_FORM } from '../../../words/mix/jar';
import { tracerNmOf, tracerProblem } from '../tracer-field';

/** A solvent of a blend as it is being typed; the share in percent. */
export interface BlendRow {
  readonly solvent: string | undefined;
  readonly share: string;
}
export type Of = 'lacquer' | 'mix';

/** The jar form as it stands; everything kept as typed. */
export interface JarDraft {
  readonly finish: Finish;
  readonly name: string;
  /** A jar or tin, or a spray can, into which nothing can be poured. */
  readonly comesAs: 'jar' | 'can';
  readonly solidsBy: 'solids' | 'cut';
  readonly cut: Draft<'g/L' | 'lb-cut'>;
  readonly volumeSolids: Draft<'%'>;
  readonly thinnerSort: ThinnerSort | 'own';
  readonly thinnerName: string;
  readonly blend: readonly BlendRow[];
  readonly thinning: Draft<'%'>;
  readonly of: Of;
  readonly retarder: string | undefined;
  readonly retarderShare: Draft<'%'>;
  readonly pigment: 'none' | 'grains' | 'flakes';
  readonly pigmentShare: Draft<'%'>;
  readonly amount: Draft<'mL' | 'L' | 'fl-oz-us' | 'fl-oz-imperial'>;
  readonly life: Draft<'h' | 'd' | 'months'>;
  /** The light under which it fluoresces, nm; empty where it holds no tracer. */
  readonly tracer: string;
  /** `2026-03-01`; empty for today. */
  readonly mixedOn: string;
}

type JarSaid = Omit<Said<'jar-filled'>, 'jar'>;

/** A jar of a finish at common practice. */
export function usualDraft(finish: Finish, isUs: boolean): JarDraft {
  const usual = USUAL_JARS[finish];
  return {
    finish,
    name: FINISH_NAMES[finish].label,
    comesAs: 'jar',
    solidsBy: finish === 'shellac' ? 'cut' : 'solids',
    cut: USUAL_CUT[isUs ? 'us' : 'metric'],
    volumeSolids: { text: usual.volumeSolids, unit: '%' },
    thinnerSort: 'usual',
    thinnerName: '',
    blend: [{ solvent: undefined, share: '100' }],
    thinning: { text: usual.thinning, unit: '%' },
    of: 'lacquer',
    retarder: undefined,
    retarderShare: { text: '5', unit: '%' },
    pigment: 'none',
    pigmentShare: { text: '15', unit: '%' },
    amount: { text: '', unit: isUs ? 'fl-oz-us' : 'mL' },
    life: { text: usual.life.text, unit: usual.life.unit },
    tracer: '',
    mixedOn: '',
  };
}

/** The name of a jar or can of a finish, before anybody says another. */
export const usualName = ({ finish, comesAs }: JarDraft): string =>
  comesAs === 'can' ? JAR_FORM.canName(FINISH_NAMES[finish].label) : FINISH_NAMES[finish].label;

/** The draft with another finish: what still stands at the old finish's usual moves to the new one's. */
export function withFinish(draft: JarDraft, finish: Finish, isUs: boolean): JarDraft {
  const before = usualDraft(draft.finish, isUs);
  const after = usualDraft(finish, isUs);
  const moved = <K extends 'name' | 'volumeSolids' | 'thinning' | 'life'>(key: K): JarDraft[K] =>
    JSON.stringify(draft[key]) === JSON.stringify(before[key]) ? after[key] : draft[key];
  return {
    ...draft,
    finish,
    name: moved('name'),
    volumeSolids: moved('volumeSolids'),
    solidsBy: after.solidsBy,
    comesAs: takesCan(finish) ? draft.comesAs : 'jar',
    thinning: moved('thinning'),
    life: moved('life'),
    thinnerSort: draft.thinnerSort === 'own' ? 'own' : 'usual',
  };
}

/** What is sold in spray cans. */
export const takesCan = (finish: Finish): boolean => finish !== 'conversion';
/** Shellac's solids are said by its cut. */
export const isByCut = ({ finish, solidsBy, comesAs }: JarDraft): boolean =>
  finish === 'shellac' && solidsBy === 'cut' && comesAs === 'jar';
const isCan = ({ comesAs }: JarDraft): boolean => comesAs === 'can';

/** The draft as a spray can or a jar: solids, thinner and name that nobody touched move along. */
export function withVessel(draft: JarDraft, comesAs: JarDraft['comesAs'], isUs: boolean): JarDraft {
  const jar = usualDraft(draft.finish, isUs);
  const can = {
    name: JAR_FORM.canName(FINISH_NAMES[draft.finish].label),
    volumeSolids: { text: USUAL_SPRAY_CAN.volumeSolids, unit: '%' } as const,
  };
  const [before, after] = comesAs === 'can' ? [jar, can] : [can, jar];
  return {
    ...draft,
    comesAs,
    name: draft.name === before.name ? after.name : draft.name,
    volumeSolids:
      draft.volumeSolids.text === before.volumeSolids.text ? after.volumeSolids : draft.volumeSolids,
  };
}

/** Volume solids as they are logged: as typed, or worked out from the cut. */
function solidsOf(draft: JarDraft): Draft<'%'> {
  if (!isByCut(draft)) return draft.volumeSolids;
  const cut = readTyped(draft.cut, LIMITS.cut);
  return cut.ok
    ? { text: plainText(Number((volumeSolidsOfCut(cut.value) * 100).toPrecision(3))), unit: '%' }
    : draft.volumeSolids;
}

/** Whether every field can be sent as it is. */
export function isWhole(draft: JarDraft): boolean {
  const { volumeSolids, thinning, of, retarder, retarderShare, pigment, pigmentShare, amount, life } = draft;
  const problems = [
    isByCut(draft) ? draftProblem(draft.cut, LIMITS.cut) : draftProblem(volumeSolids, LIMITS.volumeSolids),
    isCan(draft) ? undefined : draftProblem(thinning, thinningLimit(of)),
    retarder === undefined ? undefined : draftProblem(retarderShare, LIMITS.retarderOfMix),
    pigment === 'none' ? undefined : draftProblem(pigmentShare, LIMITS.pigmentOfSolids),
    draftProblem(amount, LIMITS.volume, true),
    draftProblem(life, LIMITS.life, true),
    tracerProblem(draft.tracer),
    draft.thinnerSort === 'own' ? (blendProblem(draft.blend) ?? thinnerNameProblem(draft)) : undefined,
    nameProblem(draft),
  ];
  return problems.every((problem) => problem === undefined);
}

export const thinningLimit = (of: Of) => (of === 'lacquer' ? LIMITS.thinningOfLacquer : LIMITS.thinningOfMix);
export const nameProblem = ({ name }: JarDraft): string | undefined =>
  name.trim() === '' ? JAR_FORM.noName : undefined;
export const thinnerNameProblem = ({ thinnerName }: JarDraft): string | undefined =>
  thinnerName.trim() === '' ? JAR_FORM.noThinnerName : undefined;

/** The sum of a blend's shares, percent. */
export const blendSum = (blend: readonly BlendRow[]): number =>
  blend.reduce((sum, { share }) => sum + (parseNumber(share) ?? 0), 0);

/** What is wrong with a blend of one's own. */
export function blendProblem(blend: readonly BlendRow[]): string | undefined {
  if (blend.some(({ solvent }) => solvent === undefined)) return JAR_FORM.chooseSolvent;
  const named = new Set(blend.map(({ solvent }) => solvent));
  if (named.size < blend.length) return JAR_FORM.twice;
  if (blend.some(({ share }) => !((parseNumber(share) ?? 0) > 0))) return JAR_FORM.shareAboveNought;
  return Math.abs(blendSum(blend) - 100) > 0.5 ? JAR_FORM.addUp : undefined;
}

const NOTHING = { text: '0', unit: '%' } as const;

/** What the form says, for the logbook. Only of a draft that is whole. */
export function saidOf(draft: JarDraft): JarSaid {
  const { finish, retarder, pigment, amount, life, of } = draft;
  const tracerNm = tracerNmOf(draft.tracer);
  const typedShare = isCan(draft) ? NOTHING : draft.thinning;
  return {
    name: draft.name.trim(),
    product: { finish, volumeSolids: solidsOf(draft), ...(isCan(draft) && canSolvents(finish)) },
    thinner: thinnerOf(draft),
    thinning: { of, percent: typedShare },
    ...(retarder === undefined || isCan(draft) || !finishTraits(finish).takesRetarder
      ? {}
      : { retarder: { of: 'mix' as const, solvent: retarder, percent: draft.retarderShare } }),
    ...(pigment === 'none' ? {} : { pigment: { shape: pigment, shareOfSolids: draft.pigmentShare } }),
    ...(amount.text.trim() === '' ? {} : { amount }),
    ...(isCan(draft) ? { contains: ['aerosol' as const] } : {}),
    ...(isByCut(draft) ? { cut: draft.cut } : {}),
    ...(tracerNm === undefined ? {} : { tracerNm }),
    ...(draft.mixedOn === '' ? {} : { mixedOn: draft.mixedOn }),
    ...(life.text.trim() === '' ? {} : { life: { span: life, as: USUAL_JARS[finish].life.as } }),
  };
}

function thinnerOf({ finish, thinnerSort: sort, thinnerName, blend }: JarDraft): JarSaid['thinner'] {
  if (sort !== 'own') {
    const name = JAR_FORM.thinnerNames[sort](FINISH_NAMES[finish].label.toLowerCase());
    return { name, blend: usualThinner(finish, sort) };
  }
  const sum = blendSum(blend);
  const own = blend.flatMap(({ solvent, share }) =>
    solvent === undefined ? [] : [{ solvent, share: (parseNumber(share) ?? 0) / sum }],
  );
  return { name: thinnerName.trim(), blend: own };
}

/** A value that was worked out, as one would type it; what was typed stays as it is. */
const inThreeFigures = ({ text, unit }: Draft<'%'>): Draft<'%'> => ({
  text: /\.\d{3,}$/.test(text) ? plainText(Number(Number(text).toPrecision(3))) : text,
  unit,
});

/** Another jar like this one, as the form shows it; how much is in it is not known of a new one. */
export function draftLike(jar: Jar, isUs: boolean): JarDraft {
  const { product, thinning, retarder, pigment, life, cut, thinner } = jar;
  const usual = usualDraft(product.finish, isUs);
  return {
    ...usual,
    name: jar.name,
    comesAs: jar.contains?.includes('aerosol') ? 'can' : 'jar',
    solidsBy: cut ? 'cut' : 'solids',
    cut: (cut?.typed as JarDraft['cut'] | undefined) ?? usual.cut,
    volumeSolids: inThreeFigures(product.volumeSolids.typed as Draft<'%'>),
    thinnerSort: 'own',
    thinnerName: thinner.name,
    blend: thinner.blend.map(({ solvent, share }) => ({ solvent, share: plainText(share * 100) })),
    thinning: thinning.percent.typed as Draft<'%'>,
    of: thinning.of,
    retarder: retarder?.solvent,
    retarderShare: (retarder?.percent.typed as Draft<'%'> | undefined) ?? usual.retarderShare,
    pigment: pigment?.shape ?? 'none',
    pigmentShare: (pigment?.shareOfSolids.typed as Draft<'%'> | undefined) ?? usual.pigmentShare,
    amount: (jar.amount?.typed as JarDraft['amount'] | undefined) ?? usual.amount,
    tracer: jar.tracerNm === undefined ? '' : String(jar.tracerNm),
    life: (life?.span.typed as JarDraft['life'] | undefined) ?? usual.life,
  };
}
