import type { Piece } from '../../../logbook/fold/piece/pieces';
import { zonesOf } from '../../../logbook/fold/piece/zones';
import { LinkButton } from '../../../parts/blocks/button';
import { FewFirst } from '../../../parts/fields/few-first';
import { named } from '../../../parts/fields/select-field';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { BENCH_WORDS } from '../../../words/bench';
import { CAN_WORDS, LAY_WORDS } from '../../../words/piece/coat/lay';
import type { CoatDraft } from '../coat-draft';

interface PieceAndJarProps {
  readonly draft: CoatDraft;
  readonly onChange: (more: Partial<CoatDraft>) => void;
}

/** Which piece, and where on it. */
export function PieceFields({ draft, onChange }: PieceAndJarProps) {
  const openPieces = piecesToCoat(useShop().shop.value.pieces);
  return (
    <div class="stack wide-tiles">
      <FewFirst
        label={LAY_WORDS.piece}
        allWords={LAY_WORDS.allPieces}
        options={openPieces.map(({ id, name, coats }) => ({
          value: id,
          label: name,
          hint: coats.length === 0 ? BENCH_WORDS.noCoats : BENCH_WORDS.coats(coats.length),
        }))}
        value={draft.piece}
        onChange={(piece) => onChange({ piece, zone: undefined })}
      />
      <Place draft={draft} onChange={onChange} />
    </div>
  );
}

/** From which jar, and the way to another. */
export function JarFields({ draft, onChange }: PieceAndJarProps) {
  const { pieces, jars } = useShop().shop.value;
  const used = lastUse(piecesToCoat(pieces));
  const fullJars = latestFirst(
    [...jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined),
    ({ id, filledMs }) => used.get(id) ?? filledMs,
  );
  const isCan = jars.get(draft.jar ?? '')?.contains?.includes('aerosol');
  return (
    <div class="stack wide-tiles">
      <FewFirst
        label={isCan ? CAN_WORDS.can : LAY_WORDS.jar}
        allWords={LAY_WORDS.allJars}
        options={named(fullJars)}
        value={draft.jar}
        onChange={(jar) => onChange({ jar })}
      />
      <div class="acts">
        <LinkButton
          icon="mix"
          kind="plain"
          href={`${linkTo('mix', 'jar', 'new')}?back=${encodeURIComponent(location.hash || linkTo('lay'))}`}
        >
          {LAY_WORDS.otherJar}
        </LinkButton>
      </div>
    </div>
  );
}

/** The pieces that are not finished, the one worked on last first. */
const piecesToCoat = (pieces: ReadonlyMap<string, Piece>): readonly Piece[] =>
  latestFirst(
    [...pieces.values()].filter(({ closedMs }) => closedMs === undefined),
    ({ startedMs, coats }) => coats.at(-1)?.atMs ?? startedMs,
  );

const WHOLE = 'whole';

/** Where on the piece, if any place is marked on it. */
function Place({ draft, onChange }: PieceAndJarProps) {
  const zones = zonesOf(draft.piece ?? '', useShop().shop.value);
  if (zones.length === 0) return null;
  return (
    <FewFirst
      label={LAY_WORDS.place}
      allWords={LAY_WORDS.allPlaces}
      options={[
        { value: WHOLE, label: LAY_WORDS.wholePiece },
        ...zones.map(({ zoneId, name }) => ({ value: zoneId, label: name })),
      ]}
      value={draft.zone ?? WHOLE}
      onChange={(zone) => onChange({ zone: zone === WHOLE ? undefined : zone })}
    />
  );
}

const latestFirst = <Item,>(some: readonly Item[], usedMs: (item: Item) => number): readonly Item[] =>
  some.toSorted((one, other) => usedMs(other) - usedMs(one));

/** When a coat was last laid from each jar, on these pieces. */
function lastUse(pieces: readonly Piece[]): ReadonlyMap<string, number> {
  const used = new Map<string, number>();
  for (const { coats } of pieces)
    for (const { jar, atMs } of coats) used.set(jar, Math.max(atMs, used.get(jar) ?? atMs));
  return used;
}
