import { useSignal } from '@preact/signals';
import { readTyped } from '../../../logbook/as-typed';
import type { Room } from '../../../logbook/fold/shop/shop-air';
import { LIMITS } from '../../../logbook/limits';
import { LinkButton } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Page, Section } from '../../../parts/blocks/page';
import { Line } from '../../../parts/fields/line';
import { type Draft, TypedField } from '../../../parts/fields/typed-field';
import { typedWords } from '../../../parts/fields/typed-words';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { shopPressurePa } from '../../../shop/air/pressure';
import { flowFor, sessionSolvent } from '../../../shop/air/session-solvent';
import { AIR_WORDS } from '../../../words/air/air';
import { airVolumeWords, flowWords, gramWords } from '../../../words/air/flows';
import { ROOM_WORDS as WORDS } from '../../../words/air/room';
import { numberWords, percentWords } from '../../../words/quantities';
import { Facts } from '../facts';
import { jarsInUse } from '../jar/jars-in-use';
import { Clearance } from './clearance';
import { OwnExtraction } from './own-extraction';

const USUAL_MIX = { metric: { text: '300', unit: 'mL' }, us: { text: '10', unit: 'fl-oz-us' } } as const;
const USUAL_SESSION = { text: '30', unit: 'min' } as const;
/** A session is sprayed by the cup: smaller units than a jar's. */
const MIX_LIMIT = { ...LIMITS.volume, units: ['mL', 'fl-oz-us'] } as const;

/** The vapour of a planned session against fire and for breath, the room it goes into, and the clearance clock. */
export function RoomPage() {
  const { room } = useShop().shop.value;
  const units = useUnits();
  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      <p>{WORDS.intro}</p>
      {room ? (
        <Session room={room} />
      ) : (
        <Section title={WORDS.room}>
          <p>{WORDS.none}</p>
          <div class="acts">
            <LinkButton kind="main" href={linkTo('air', 'room-form')}>
              {WORDS.describe}
            </LinkButton>
          </div>
        </Section>
      )}
      <Section title={WORDS.clearance}>
        <Clearance />
      </Section>
      <div class="folds">
        {room && (
          <Fold title={WORDS.room} brief={typedWords(room.volume.typed, units)}>
            <RoomFacts room={room} />
            <div class="acts">
              <LinkButton href={linkTo('air', 'room-form')}>{WORDS.change}</LinkButton>
            </div>
          </Fold>
        )}
        <Fold title={WORDS.assumptions}>
          <ul class="plain-list small">
            {WORDS.assumptionList.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </Fold>
      </div>
    </Page>
  );
}

function RoomFacts({ room }: { readonly room: Room }) {
  const units = useUnits();
  return (
    <Facts
      rows={[
        { label: WORDS.volume, value: typedWords(room.volume.typed, units) },
        {
          label: WORDS.flow,
          value: typedWords(room.airFlow.typed, units),
          note: WORDS.flowOrigins[room.flowFrom].label,
        },
        { label: WORDS.mixing, value: room.mixing.typed.text },
      ]}
    />
  );
}

function Session({ room }: { readonly room: Room }) {
  const units = useUnits();
  const amount = useSignal<Draft<'mL' | 'fl-oz-us'>>(USUAL_MIX[units]);
  const lasting = useSignal<Draft<'min' | 'h'>>(USUAL_SESSION);
  const shop = useShop().shop.value;
  const [jar] = jarsInUse(shop);
  const mix = readTyped(amount.value, MIX_LIMIT);
  const span = readTyped(lasting.value, LIMITS.sprayTime);
  return (
    <Section title={WORDS.session}>
      {jar ? <p class="quiet">{jar.name}</p> : <p>{WORDS.needJar}</p>}
      {jar && mix.ok && span.ok && (
        <Figures
          session={sessionSolvent(jar, mix.value, room, shopPressurePa(shop.settings))}
          room={room}
          spanS={span.value}
        />
      )}
      <Line label={WORDS.amount} says={typedWords(amount.value, units)}>
        <TypedField
          label={WORDS.amount}
          limit={MIX_LIMIT}
          draft={amount.value}
          onDraft={(draft) => {
            amount.value = draft;
          }}
          isTried
        />
      </Line>
      <Line label={WORDS.minutes} says={typedWords(lasting.value, units)}>
        <TypedField
          label={WORDS.minutes}
          limit={LIMITS.sprayTime}
          draft={lasting.value}
          onDraft={(draft) => {
            lasting.value = draft;
          }}
          isTried
        />
      </Line>
    </Section>
  );
}

interface FiguresProps {
  readonly session: ReturnType<typeof sessionSolvent>;
  readonly room: Room;
  readonly spanS: number;
}

function Figures({ session, room, spanS }: FiguresProps) {
  if (session.massKg === 0) return <p>{WORDS.waterOnly}</p>;
  return (
    <>
      <AgainstFire session={session} room={room} spanS={spanS} />
      <ForBreath session={session} room={room} spanS={spanS} />
      <details class="folded">
        <summary>{WORDS.released(gramWords(session.massKg))}</summary>
        <Facts rows={session.parts.map(({ name, massKg }) => ({ label: name, value: gramWords(massKg) }))} />
      </details>
    </>
  );
}

function AgainstFire({ session, room, spanS }: FiguresProps) {
  const units = useUnits();
  const { fireAirM3, lelFraction, closedRoomShare, withoutLel } = session;
  if (fireAirM3 === undefined || lelFraction === undefined || closedRoomShare === undefined) return null;
  const flow = flowFor(fireAirM3, spanS);
  return (
    <>
      <h3>{WORDS.fire}</h3>
      <p>{WORDS.fireNeed(flowWords(flow, units), airVolumeWords(fireAirM3, units))}</p>
      <OwnExtraction neededM3S={flow} room={room} />
      <p>
        {WORDS.closed(percentWords(closedRoomShare))} {WORDS.fireLel(percentWords(lelFraction, 1))}
      </p>
      {withoutLel.length > 0 && <p class="quiet small">{WORDS.left(withoutLel.join(', '))}</p>}
    </>
  );
}

function ForBreath({ session, room, spanS }: FiguresProps) {
  const units = useUnits();
  const flow = flowFor(session.healthAirM3, spanS);
  return (
    <>
      <h3>{WORDS.health}</h3>
      <p>{WORDS.healthNeed(flowWords(flow, units), numberWords(room.mixing.si, 1))}</p>
      <OwnExtraction neededM3S={flow} room={room} />
      {session.withoutLimit.length > 0 && (
        <p class="quiet small">{WORDS.left(session.withoutLimit.join(', '))}</p>
      )}
    </>
  );
}
