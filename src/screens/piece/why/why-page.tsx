import type { Estimate } from '../../../estimator/estimate';
import { lawOf } from '../../../estimator/finishes/law-history';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { EmptyState } from '../../../parts/blocks/empty-state';
import { Fold } from '../../../parts/blocks/fold';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { LAW_UNKNOWN } from '../../../words/air/finishes';
import { glued } from '../../../words/glued';
import { PIECE_WORDS } from '../../../words/piece/piece';
import { INPUT_WORDS, UNKNOWN_WORDS, WHY_WORDS } from '../../../words/piece/why';
import { Headline } from '../headline';
import { usePiece } from '../use-piece';
import { HardnessChart, SolventChart } from './charts';
import { ColdNote } from './cold-note';
import { inputsOf } from './inputs';
import { WhatMoves } from './what-moves';

/** Why a time is what it is: the curves, the inputs and their origin, what would move it, and what is not known. */
export function WhyPage() {
  const { piece, outlook } = usePiece();
  const { nowMs } = useShop();
  const units = useUnits();
  const back = linkTo('piece', piece.id);
  if (outlook?.state !== 'ready')
    return (
      <Page title={WHY_WORDS.title} backTo={back}>
        <EmptyState title={WHY_WORDS.notYet} text={WHY_WORDS.notYetText} />
      </Page>
    );
  const curve = { piece, units, estimate: outlook.estimate, startMs: outlook.startMs, nowMs: nowMs.value };
  return (
    <Page title={WHY_WORDS.title} backTo={back} columns="two">
      <div class="stack">
        <p class="row-title">{piece.name}</p>
        <Headline isBrief piece={piece} outlook={outlook} />
        <Section title={WHY_WORDS.solvent}>
          <SolventChart {...curve} />
        </Section>
      </div>
      <div class="folds">
        <WhatMoves {...curve} />
        <Fold title={WHY_WORDS.hardness}>
          <HardnessChart {...curve} />
        </Fold>
        <InputList piece={piece} estimate={outlook.estimate} />
        <Fold title={PIECE_WORDS.meant}>
          <ColdNote piece={piece} />
          <p class="quiet small">{PIECE_WORDS.estimate}</p>
        </Fold>
        <Fold title={UNKNOWN_WORDS.title}>
          <ul class="lines">
            {(lawOf(outlook.estimate) ? LAW_UNKNOWN : UNKNOWN_WORDS.lines).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Fold>
      </div>
    </Page>
  );
}

/** What the estimate was worked out from, each with its origin. */
function InputList({ piece, estimate }: { readonly piece: Piece; readonly estimate: Estimate }) {
  const { shop } = useShop();
  return (
    <Fold title={INPUT_WORDS.title}>
      <dl class="fact-list">
        {inputsOf(piece, shop.value, estimate, useUnits()).map(({ key, term, text, origin }) => (
          <div key={key}>
            <dt>{term}</dt>
            <dd>
              {glued(text)} <span class="origin">{INPUT_WORDS.origins[origin]}</span>
            </dd>
          </div>
        ))}
      </dl>
    </Fold>
  );
}
