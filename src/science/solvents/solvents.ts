import { ALCOHOLS_AND_WATER } from './alcohols';
import { ESTERS } from './esters';
import { GLYCOL_ETHER_ESTERS } from './glycol-ether-esters';
import { GLYCOL_ETHERS } from './glycol-ethers';
import { HYDROCARBONS } from './hydrocarbons';
import { KETONES } from './ketones';
import type { SolventFacts, SolventRow, Sourced, ValueSource } from './solvent';
import { SOURCES } from './sources';

const ROWS = [
  ...KETONES,
  ...ESTERS,
  ...HYDROCARBONS,
  ...ALCOHOLS_AND_WATER,
  ...GLYCOL_ETHERS,
  ...GLYCOL_ETHER_ESTERS,
] as const;

export type SolventId = (typeof ROWS)[number]['id'];

/** A solvent of lacquer, thinner or retarder, with the source of every fact. */
export interface Solvent extends SolventFacts {
  readonly id: SolventId;
  readonly name: string;
  readonly cas: string;
  readonly sources: { readonly [Fact in keyof SolventFacts]?: ValueSource };
}

function toSolvent({ id, name, cas, ...facts }: SolventRow): Solvent {
  const entries = Object.entries(facts) as [keyof SolventFacts, Sourced<unknown>][];
  const values = Object.fromEntries(entries.map(([fact, [value]]) => [fact, value]));
  const sources = Object.fromEntries(
    entries.map(([fact, [, how, source, note]]) => [
      fact,
      { how, source: SOURCES[source], ...(note === undefined ? {} : { note }) },
    ]),
  );
  return { id, name, cas, ...values, sources } as Solvent;
}

/** The 25 solvents of lacquer thinners and retarders, by family. */
export const SOLVENTS: readonly Solvent[] = ROWS.map(toSolvent);

const BY_ID = new Map(SOLVENTS.map((row) => [row.id, row]));

/** One solvent of the table. */
export function solvent(id: SolventId): Solvent {
  return BY_ID.get(id) as Solvent; // every SolventId is a row
}

/** Whether a stored or typed word names a solvent of the table. */
export function isSolventId(word: string): word is SolventId {
  return BY_ID.has(word as SolventId);
}
