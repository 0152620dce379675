import type { Entry, EntryOf } from '../../../logbook/entry';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';
import { dropWords } from './drop-words';

/** A drop, a look or an answer about lead as a line of the history and the record; undefined for other entries. */
export function oldFinishLine(entry: Entry): readonly [what: string, how: string] | undefined {
  switch (entry.kind) {
    case 'spot-tested':
      return [WORDS.event.drop(WORDS.solvents[entry.solvent]), dropWords(entry)];
    case 'old-finish-seen':
      return [WORDS.event.look, lookWords(entry)];
    case 'lead-tested':
      return [WORDS.event.lead, leadWords(entry)];
    default:
      return undefined;
  }
}

function lookWords({ opaque, uv, layers, layersSeen, madeAbout, signs }: EntryOf<'old-finish-seen'>): string {
  const told = [
    opaque ? WORDS.opaque : WORDS.clear,
    layersSeen ?? (layers === undefined ? undefined : WORDS.event.layers(layers)),
    uv && WORDS.event.uv(WORDS.uvs[uv].label),
    ...signs.map((sign) => WORDS.sign[sign].toLowerCase()),
    madeAbout === undefined ? undefined : WORDS.event.made(madeAbout),
  ];
  return told.filter((one) => one !== undefined).join('; ');
}

function leadWords({ finding, method, correction }: EntryOf<'lead-tested'>): string {
  const { label } = WORDS.leadFindings[finding];
  const found = method === undefined ? label : WORDS.event.by(label, method);
  return correction === undefined ? found : `${found}; ${WORDS.event.corrected(correction)}`;
}
