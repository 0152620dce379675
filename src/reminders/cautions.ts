import { type CautionAct, mayBeSilenced } from '../logbook/kinds/shop/caution-acts';
import { type Caution, type CautionId, cautionOf } from '../words/air/cautions';

/** What in a jar, or on a piece, calls for a caution of its own. */
export const HAZARDS = [
  'solvent',
  'isocyanate',
  'acid',
  'nitrocellulose',
  'oil',
  'aerosol',
  'old-opaque',
] as const;
export type Hazard = (typeof HAZARDS)[number];

interface Rule {
  /** It stands at these acts whatever is in the jar. */
  readonly always?: readonly CautionAct[];
  /** It stands at these acts where one of these hazards is there. */
  readonly acts?: readonly CautionAct[];
  readonly hazards?: readonly Hazard[];
}

const LAYING: readonly CautionAct[] = ['spray', 'brush'];
const WITH_LIQUID: readonly CautionAct[] = ['spray', 'brush', 'mix'];
const FLAMMABLE: readonly Hazard[] = ['solvent', 'nitrocellulose', 'oil', 'aerosol'];

/** When each caution stands, the gravest first: the order in which they are shown. */
const RULES: Record<CautionId, Rule> = {
  isocyanate: { acts: WITH_LIQUID, hazards: ['isocyanate'] },
  lead: { acts: ['sand'], hazards: ['old-opaque'] },
  ignition: { always: ['spray'], acts: WITH_LIQUID, hazards: FLAMMABLE },
  phone: { always: ['spray'] },
  rags: { always: ['end-day'], acts: ['brush'], hazards: ['oil'] },
  overspray: { acts: ['spray', 'end-day'], hazards: ['nitrocellulose'] },
  static: { acts: ['mix'], hazards: FLAMMABLE },
  aerosol: { acts: ['spray'], hazards: ['aerosol'] },
  ventilation: { always: LAYING },
  mask: { always: ['spray'] },
  solvent: { acts: WITH_LIQUID, hazards: ['solvent'] },
  acid: { acts: WITH_LIQUID, hazards: ['acid'] },
  dust: { always: ['sand'] },
  skin: { always: WITH_LIQUID },
};

const ORDER = Object.keys(RULES) as readonly CautionId[];

/**
 * The cautions for an act, the gravest first.
 * @param hazards of everything in the jar, however it was mixed, or of the piece that is sanded
 * @param silenced what the person does not want to see again; counts only for what may be silenced
 */
export function cautionsFor(
  act: CautionAct,
  hazards: readonly Hazard[],
  silenced: readonly string[] = [],
): readonly Caution[] {
  return ORDER.filter((id) => !(mayBeSilenced(id) && silenced.includes(id)))
    .filter((id) => stands(RULES[id], act, hazards))
    .map(cautionOf);
}

function stands({ always, acts, hazards }: Rule, act: CautionAct, present: readonly Hazard[]): boolean {
  if (always?.includes(act)) return true;
  return acts?.includes(act) === true && hazards?.some((one) => present.includes(one)) === true;
}
