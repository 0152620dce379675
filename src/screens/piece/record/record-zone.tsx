import type { Outlook } from '../../../actions/outlook/outlook';
import { HeadRow } from '../../../parts/blocks/head-row';
import { typedWords } from '../../../parts/fields/typed-words';
import { jarTint } from '../../../parts/film/jar-tint';
import { filmLayers, OLD_FINISH } from '../../../parts/film/piece-film';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import type { UsedMaterial } from '../../../shop/record/materials';
import type { ZoneFacts } from '../../../shop/record/zone-facts';
import { groundsOn } from '../../../shop/stack/grounds';
import { umToMetres } from '../../../units';
import { COAT_WORDS } from '../../../words/piece/piece';
import { RECORD as WORDS } from '../../../words/piece/record';
import { filmWords, numberWords } from '../../../words/quantities';
import { dateWords } from '../../../words/times';
import { filmAsTyped } from '../coat/film-as-typed';
import { groundName, groundWait } from '../ground/ground-words';
import { zoneLine } from '../zone/zone-line';
import { tracerWords } from './from-facts';

interface RecordZoneProps {
  readonly facts: ZoneFacts;
  /** 0 for the whole. */
  readonly number: number;
  readonly outlook: Outlook | undefined;
}

/** What is original at a place and what was added, layer by layer. */
export function RecordZone({ facts, number, outlook }: RecordZoneProps) {
  const { stand, own, sandedOff, materials, colour, tracers } = facts;
  const { zone, piece } = stand;
  const grounds = groundsOn(piece, useShop().shop.value).filter(
    ({ logged }) => logged?.zoneId === zone?.zoneId,
  );
  const units = useUnits();
  return (
    <section class="record-zone">
      <h4>{zone ? WORDS.zone(number, zone.name) : WORDS.whole}</h4>
      {zone && <p>{zoneLine(zone, units)}.</p>}
      {zone?.note && <p class="as-written">{zone.note}</p>}
      <p>
        {WORDS.original(WORDS.baseTexts[piece.base])}{' '}
        {own.length > 0 ? WORDS.colours[colour] : sandedOff === 0 && WORDS.nothing}{' '}
        {sandedOff > 0 && WORDS.sandedOff(sandedOff)}{' '}
        {zone?.overspray && WORDS.overspray(typedWords(zone.overspray.typed, units))}
      </p>
      {grounds.length > 0 && (
        <ul>
          {grounds.map(({ id, atMs, ground, logged }) => (
            <li key={id}>
              {dateWords(atMs, 0)}: {groundName({ ground, ...logged })}, {groundWait({ ...logged })}.
            </li>
          ))}
        </ul>
      )}
      {own.length > 0 && <Layers facts={facts} outlook={outlook} />}
      {tracers.length > 0 && <p>{tracerWords(tracers)}</p>}
      {materials.length > 0 && (
        <ul>
          {materials.map((material) => (
            <MaterialLine key={material.jar.id} material={material} />
          ))}
        </ul>
      )}
    </section>
  );
}

function Layers({ facts: { stand, own }, outlook }: Omit<RecordZoneProps, 'number'>) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const layers = filmLayers(stand.piece, outlook, shop.value.jars, nowMs.value);
  const nowOf = new Map(layers.map(({ key, dryUm, solventUm }) => [key, umToMetres(dryUm + solventUm)]));
  const newUm = layers.filter(({ key }) => key !== OLD_FINISH).reduce((sum, { dryUm }) => sum + dryUm, 0);
  const isOverWhole = stand.piece.coats.some(({ zoneId }) => zoneId !== stand.zone?.zoneId);
  return (
    <>
      <table>
        <caption>{WORDS.layersAdded}</caption>
        <HeadRow heads={[WORDS.layer, WORDS.when, WORDS.material, WORDS.how, WORDS.now]} />
        <tbody>
          {own.map((coat) => {
            const { id, atMs, jar, how, film } = coat;
            const now = nowOf.get(id);
            const tint = jarTint(jar, shop.value);
            return (
              <tr key={id}>
                <td data-head={WORDS.layer}>{stand.piece.coats.indexOf(coat) + 1}</td>
                <td data-head={WORDS.when}>{dateWords(atMs, 0)}</td>
                <td data-head={WORDS.material}>
                  {tint && (
                    <svg class="record-tint" width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
                      <rect width="12" height="12" fill={tint} stroke="#555" />
                    </svg>
                  )}
                  {shop.value.jars.get(jar)?.name ?? COAT_WORDS.gone}
                </td>
                <td data-head={WORDS.how}>
                  {COAT_WORDS.laid(COAT_WORDS.ways[how], filmAsTyped(film, units))}
                </td>
                <td data-head={WORDS.now}>{now === undefined ? '–' : filmWords(now, units)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {newUm > 0 && <p>{WORDS.filmNew(filmWords(umToMetres(newUm), units), isOverWhole)}</p>}
    </>
  );
}

const MaterialLine = ({ material: { jar, weighed } }: { readonly material: UsedMaterial }) => (
  <li>
    {jar.name}:{' '}
    {weighed.length === 0
      ? WORDS.notWeighed
      : weighed
          .map(({ name, grams, lot }) => WORDS.weighed(numberWords(grams, grams < 1 ? 3 : 2), name, lot))
          .join('; ')}
    .
  </li>
);
