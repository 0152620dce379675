import type { Piece } from '../../logbook/fold/piece/pieces';
import { Button, LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Fold } from '../../parts/blocks/fold';
import { Page, Section } from '../../parts/blocks/page';
import { Row } from '../../parts/blocks/row';
import { PieceFace } from '../../parts/film/piece-face';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { BandTime } from '../../parts/time/band-time';
import { firstOpen } from '../../planner/compile';
import { BENCH_WORDS } from '../../words/bench';
import { PLAN_WORDS } from '../../words/plan/plan';
import { Faults } from './faults';
import { LeftOut } from './left-out';
import { Moved } from './moved';
import { NextSteps } from './next-steps';
import { promiseSign } from './promise/promise-sign';
import { readyBand } from './ready-band';
import { CalendarAct } from './reminders/calendar-act';
import { Timeline } from './timeline/timeline';
import { TimelineTable } from './timeline/timeline-table';
import { useNames, usePlan } from './use-plan';

/** The plan of the bench: a picture first, then what comes next, then each piece. */
export function PlanHome() {
  const { shop } = useShop();
  const { planned } = usePlan();
  const names = useNames();
  const { bench, plan } = planned.value;
  const open = [...shop.value.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  const isPlanned = ({ id }: { readonly id: string }) => shop.value.plans.has(id);
  const unplanned = open.filter((piece) => !isPlanned(piece));
  const onLine = plan.ok
    ? plan.value.pieces
        .filter(({ pieceId }) => isPlanned({ id: pieceId }) && !isDone(pieceId))
        .sort((one, other) => one.likely - other.likely)
    : [];
  function isDone(id: string): boolean {
    const steps = bench.pieces.find((piece) => piece.id === id)?.steps ?? [];
    return firstOpen(steps) === steps.length;
  }
  const shown = plan.ok && { plan: plan.value, bench, pieces: onLine, nameOf: names.piece };
  return (
    <Page title={PLAN_WORDS.title} backTo={linkTo('bench')} backLabel={PLAN_WORDS.back}>
      {!plan.ok && <Faults faults={plan.failure} />}
      <LeftOut />
      <Moved />
      {onLine.length === 0 && plan.ok && (
        <EmptyState
          title={PLAN_WORDS.emptyTitle}
          text={open.length === 0 ? PLAN_WORDS.noPieces : PLAN_WORDS.emptyText}
        >
          {open.length === 0 && (
            <LinkButton kind="main" icon="add" href={linkTo('piece', 'new')}>
              {BENCH_WORDS.start}
            </LinkButton>
          )}
        </EmptyState>
      )}
      {shown && onLine.length > 0 && (
        <>
          <Section title={PLAN_WORDS.timeline}>
            <Timeline {...shown} />
            <TimelineTable {...shown} />
            {!shop.value.hours && <p class="quiet small">{PLAN_WORDS.usualWeek}</p>}
            {!plan.value.isProved && <p class="quiet small">{PLAN_WORDS.unproved}</p>}
          </Section>
          <Section title={PLAN_WORDS.next}>
            <NextSteps plan={plan.value} />
          </Section>
        </>
      )}
      {open.some(isPlanned) && (
        <Section title={PLAN_WORDS.pieces}>
          <ul class="rows">
            {open.filter(isPlanned).map((piece) => (
              <PlannedRow key={piece.id} piece={piece} />
            ))}
          </ul>
        </Section>
      )}
      {unplanned.length > 0 && (
        <div class="not-printed">
          <Unplanned pieces={unplanned} />
        </div>
      )}
      <div class="acts">
        <LinkButton icon="clock" href={linkTo('plan', 'hours')}>
          {PLAN_WORDS.hours}
        </LinkButton>
        <LinkButton icon="bell" href={linkTo('plan', 'reminders')}>
          {PLAN_WORDS.reminders}
        </LinkButton>
        {onLine.length > 0 && (
          <Button icon="print" onClick={() => print()}>
            {PLAN_WORDS.print}
          </Button>
        )}
      </div>
      {onLine.length > 0 && <CalendarAct />}
    </Page>
  );
}

/** Pieces that could be planned. */
function Unplanned({ pieces }: { readonly pieces: readonly Piece[] }) {
  return (
    <Fold title={PLAN_WORDS.unplanned} brief={String(pieces.length)}>
      <ul class="rows">
        {pieces.map((piece) => (
          <Row
            key={piece.id}
            href={linkTo('plan', piece.id)}
            title={piece.name}
            face={<PieceFace piece={piece} />}
          >
            <p class="quiet">{PLAN_WORDS.planIt}</p>
          </Row>
        ))}
      </ul>
    </Fold>
  );
}

/** One planned piece: when it is ready, and whether its promise holds. */
function PlannedRow({ piece }: { readonly piece: Piece }) {
  const { nowMs } = useShop();
  const { bench, plan } = usePlan().planned.value;
  const found = plan.ok ? plan.value.pieces.find(({ pieceId }) => pieceId === piece.id) : undefined;
  const { steps, isLeftOut } = bench.pieces.find(({ id }) => id === piece.id) ?? { steps: [] };
  const isDone = steps.length > 0 && firstOpen(steps) === steps.length;
  const state = promiseSign(found, isDone, isLeftOut);
  return (
    <Row
      href={linkTo('plan', piece.id)}
      title={piece.name}
      face={<PieceFace piece={piece} />}
      {...(state && { state })}
    >
      {found && !isDone && (
        <BandTime label={PLAN_WORDS.readyAbout} size="row" {...readyBand(found, nowMs.value)} />
      )}
    </Row>
  );
}
