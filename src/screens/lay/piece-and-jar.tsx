import { LinkButton } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { linkTo } from '../../parts/route';
import { useShop } from '../../parts/shop-context';
import { BENCH_WORDS } from '../../words/bench';
import { LAY_WORDS } from '../../words/lay';
import type { CoatDraft } from './coat-draft';

interface PieceAndJarProps {
  readonly draft: CoatDraft;
  readonly onChange: (more: Partial<CoatDraft>) => void;
}

/** Which piece, and from which jar. */
export function PieceAndJar({ draft, onChange }: PieceAndJarProps) {
  const { pieces, jars } = useShop().shop.value;
  const openPieces = [...pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  const fullJars = [...jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined);
  return (
    <div class="stack wide-tiles">
      <Choice
        label={LAY_WORDS.piece}
        options={openPieces.map(({ id, name, coats }) => ({
          value: id,
          label: name,
          hint: coats.length === 0 ? BENCH_WORDS.noCoats : BENCH_WORDS.coats(coats.length),
        }))}
        value={draft.piece}
        onChange={(piece) => onChange({ piece })}
      />
      <Choice
        label={LAY_WORDS.jar}
        options={fullJars.map(({ id, name }) => ({ value: id, label: name }))}
        value={draft.jar}
        onChange={(jar) => onChange({ jar })}
      />
      <div class="acts">
        <LinkButton icon="mix" kind="plain" href={linkTo('mix', 'jar', 'new')}>
          {LAY_WORDS.otherJar}
        </LinkButton>
      </div>
    </div>
  );
}
