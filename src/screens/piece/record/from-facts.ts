import type { Outlook } from '../../../actions/outlook/outlook';
import type { OldFinishRecord } from '../../../logbook/fold/piece/old-finishes';
import { typedWords } from '../../../parts/fields/typed-words';
import { standingSign } from '../../../parts/verdict/sign';
import type { ZoneFacts } from '../../../shop/record/zone-facts';
import { sandingRule } from '../../../shop/stack/old-finish';
import type { Standing } from '../../../verdicts/standing';
import { isFullyHard } from '../../../words/piece/moments';
import { FROM_FACTS, RECORD } from '../../../words/piece/record';
import type { UnitSystem } from '../../../words/quantities';
import { dateWords } from '../../../words/times';
import { zoneLine } from '../zone/zone-line';

/** How a piece that is still in work stands, in the judge's own word. */
export const inWorkWords = (standing: Standing | undefined, nowMs: number): string =>
  `${RECORD.inWork}: ${standingSign(standing, nowMs).word}`;

/** One paragraph for a sale, from the facts alone: what was added, and what the old finish may hold. */
export function disclosureFrom(all: readonly ZoneFacts[], old: OldFinishRecord, units: UnitSystem): string {
  const said = [...all.flatMap((facts) => disclosed(facts, units)), ...leadDisclosed(old)];
  return said.length > 0 ? said.join(' ') : FROM_FACTS.none;
}

function disclosed(
  { stand: { zone }, own, materials, colour, tracers }: ZoneFacts,
  units: UnitSystem,
): string[] {
  const names = materials.map(({ jar }) => jar.name);
  if (!zone && own.length === 0) return [];
  const [first] = tracers;
  return [
    zone
      ? FROM_FACTS.place(zone.name, zoneLine(zone, units), own.length, names)
      : FROM_FACTS.all(own.length, names),
    ...(own.length > 0 ? [RECORD.colours[colour]] : []),
    ...(zone?.overspray ? [RECORD.overspray(typedWords(zone.overspray.typed, units))] : []),
    ...(first ? [tracerWords(tracers)] : []),
  ];
}

function leadDisclosed(old: OldFinishRecord): string[] {
  const { lead, seen } = old;
  if (sandingRule(old) === 'any') return [];
  return [
    FROM_FACTS.lead(leadWords(lead)),
    ...(seen?.layersSeen ? [FROM_FACTS.layers(seen.layersSeen)] : []),
  ];
}

/** "found, by swab"; how it was tested only where it was. */
export function leadWords(lead: OldFinishRecord['lead']): string {
  const finding = RECORD.leadFindings[lead?.finding ?? 'untested'];
  const isTested = lead?.finding === 'found' || lead?.finding === 'none-found';
  return isTested ? RECORD.leadLine(finding, lead.method) : finding;
}

/** "Tracer in coat 1 and coat 2, seen at 365 nm." */
export const tracerWords = (tracers: ZoneFacts['tracers']): string =>
  RECORD.tracer(
    tracers.map(({ coat }) => RECORD.coat(coat)),
    tracers[0]?.nm ?? 0,
  );

/** What the owner is to mind, with the date until which it is soft. */
export function careFrom(outlook: Outlook | undefined, nowMs: number, isSoft = false): string {
  const ready = outlook?.state === 'ready' ? outlook : undefined;
  const settled = ready?.estimate.milestones.settled;
  const dayOf = (afterS = Number.NaN): number => (ready?.startMs ?? 0) + afterS * 1000;
  const lateMs = dayOf(settled?.lateS);
  const likelyMs = dayOf(settled?.likelyS);
  const isCure = ready && 'law' in ready.estimate;
  const soft = Number.isFinite(lateMs)
    ? FROM_FACTS.soft(dateWords(lateMs, 0), isFullyHard({ isCure, lateMs }, nowMs))
    : ready
      ? FROM_FACTS.softLong(Number.isFinite(likelyMs) ? dateWords(likelyMs, 0) : undefined)
      : FROM_FACTS.softUnknown;
  const ofNew = outlook?.state === 'no-coats' ? [] : [isSoft ? FROM_FACTS.softFound : soft];
  return [...ofNew, FROM_FACTS.rubber, FROM_FACTS.cloth, FROM_FACTS.cold].join(' ');
}
