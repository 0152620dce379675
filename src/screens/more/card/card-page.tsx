import { endCard } from '../../../actions/card/log-card';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { CautionNotice } from '../../../parts/blocks/caution';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { type TestCard, takesCoats } from '../../../shop/card/cards';
import { nextWeighing } from '../../../shop/card/next-weighing';
import { CARD_NEXT, CARD_WORDS, WARM_CAUTION } from '../../../words/piece/card';
import { whenWords } from '../../../words/times';
import { CoatAlone } from './coat-alone';
import { CoatsOnIt } from './coats-on-it';
import { WeighForm } from './weigh-form';
import { Weighings } from './weighings';
import { WhatItFound } from './what-it-found';

interface CardProps {
  readonly card: TestCard;
}

/** One test card: what comes next, the weight that is logged, and what it has told. */
export function CardPage({ card }: CardProps) {
  const { shop } = useShop();
  const piece = shop.value.pieces.get(card.pieceId ?? '');
  const isOpen = card.endedMs === undefined;
  return (
    <Page title={CARD_WORDS.one} backTo={linkTo('more', 'cards')} columns="two">
      <div class="stack">
        <p class="row-title">{piece ? CARD_WORDS.beside(piece.name) : CARD_WORDS.alone}</p>
        {isOpen ? <Next card={card} /> : <p class="quiet">{CARD_WORDS.ended}</p>}
        {!card.pieceId && takesCoats(card) && <CoatAlone key={card.coats.length} card={card} />}
        {isOpen && card.coats.length > 0 && <WeighForm key={card.weighings.length} card={card} />}
        <WhatItFound card={card} />
      </div>
      <div class="stack">
        <Weighings card={card} />
        <CoatsOnIt card={card} piece={piece} />
        <div class="acts">
          {piece && (
            <LinkButton icon="bench" href={linkTo('piece', piece.id)}>
              {CARD_WORDS.toPiece}
            </LinkButton>
          )}
          {isOpen && <End card={card} />}
        </div>
      </div>
    </Page>
  );
}

/** When the next weighing tells most, or what else comes next. */
function Next({ card }: CardProps) {
  const { cards, nowMs } = useShop();
  const outlook = cards.value.get(card.id);
  const next = outlook?.state === 'ready' ? nextWeighing(card, outlook, nowMs.value) : undefined;
  const words = (): string | undefined => {
    if (card.coats.length === 0) return card.pieceId ? CARD_NEXT.coat : CARD_NEXT.coatAlone;
    if (next?.do === 'dry-warm') return CARD_NEXT.warm;
    if (next?.do === 'nothing') return CARD_NEXT.nothing;
    if (!next) return undefined;
    const isNow = next.atMs <= nowMs.value;
    return isNow ? CARD_NEXT.now : CARD_NEXT.later(whenWords(next.atMs, nowMs.value));
  };
  const said = words();
  if (said === undefined) return null;
  return (
    <Section title={CARD_NEXT.title}>
      <p>
        <strong>{said}</strong> {next?.do === 'weigh' && next.atMs > nowMs.value && CARD_NEXT.anyTime}
      </p>
      {next?.do === 'dry-warm' && <CautionNotice caution={WARM_CAUTION} />}
      {card.coats.length === 0 && takesCoats(card) && card.pieceId !== undefined && (
        <div class="acts">
          <LinkButton kind="main" icon="coat" isWide href={`${linkTo('lay')}?piece=${card.pieceId}`}>
            {CARD_NEXT.lay}
          </LinkButton>
        </div>
      )}
    </Section>
  );
}

function End({ card }: CardProps) {
  const { needs, actions } = useShop();
  async function end(): Promise<void> {
    const ended = await endCard(needs, card.id);
    if (ended.ok) sayLogged(actions, ended.value.id, CARD_NEXT.endedToast, CARD_NEXT.endedToast);
    else sayRefused(ended.failure);
  }
  return (
    <Button kind="plain" onClick={() => void end()}>
      {CARD_NEXT.end}
    </Button>
  );
}
