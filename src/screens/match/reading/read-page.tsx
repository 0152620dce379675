import { useSignal } from '@preact/signals';
import { type ColourSaid, farFromBefore, readColour } from '../../../actions/match/read-colour';
import type { Match } from '../../../logbook/fold/piece/matches';
import { LinkButton } from '../../../parts/blocks/button';
import { Page } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { useTime } from '../../../parts/fields/time/use-time';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import type { FarReading } from '../../../shop/colour/far-reading';
import { MATCH_WORDS } from '../../../words/match/match';
import { READ_WORDS as WORDS } from '../../../words/match/read';
import { NotHere, type OfMatch, pathOfPage, useNames } from '../use-match';
import { FarQuestion } from './far-question';
import { FileReadings } from './file-readings';
import { LightField } from './light-field';
import { pageOf, type ReadOf, readOf } from './read-of';
import { ReadingRows } from './reading-rows';
import { SurfaceFields } from './surface-fields';
import { readingsSaid, useReadDrafts } from './use-read-drafts';

/** Reads a surface: the target, a trial, a card, a draw-down. */
export function ReadPage({ match }: OfMatch) {
  const of = readOf(match, pathOfPage(), useNames());
  return of ? <ReadForm match={match} of={of} /> : <NotHere />;
}

interface ReadFormProps {
  readonly match: Match;
  readonly of: ReadOf;
}

/** What was asked about, and what the form said then: once it says something else, nothing is asked. */
interface Asked {
  readonly far: FarReading;
  readonly about: string;
}

function ReadForm({ match, of: named }: ReadFormProps) {
  const { needs, actions } = useShop();
  const name = useNames();
  const other = useSignal<ReadOf | undefined>(undefined);
  const asked = useSignal<Asked | undefined>(undefined);
  const of = other.value ?? named;
  const form = useForm();
  const time = useTime();
  const drafts = useReadDrafts(match);
  const { how } = drafts;
  const now = asked.value && JSON.stringify(readingsSaid(match, of, drafts));
  const far = asked.value?.about === now ? asked.value?.far : undefined;

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const said = readingsSaid(match, of, drafts);
    const found = said && !far ? farFromBefore(match, said) : undefined; // sent again: the answer is that it is so
    asked.value = found && { far: found, about: JSON.stringify(said) };
    if (found) return;
    const kept = await form.send(said !== undefined, () =>
      readColour(needs, said as ColourSaid, time.instantMs()),
    );
    if (!kept) return;
    showToast({ text: WORDS.saved, onUndo: () => void actions.undo(kept.id) });
    const back = of.as === 'trial' || of.as === 'target' ? [] : pageOf(of);
    goOn(linkTo('match', match.id, ...back));
  }

  return (
    <Page title={of.title} backTo={linkTo('match', match.id, ...pageOf(of))} backLabel={match.name}>
      <form class="stack" onSubmit={send} noValidate>
        <NewerTrial match={match} of={of} />
        <div class="tiles-4">
          <Choice
            label={WORDS.how}
            options={(['lab', 'xyz', 'hex', 'file'] as const).map((value) => ({
              value,
              label: WORDS.hows[value],
            }))}
            value={how.value}
            onChange={(value) => {
              how.value = value;
            }}
          />
        </div>
        {how.value === 'file' ? (
          <FileReadings match={match} drafts={drafts} isTried={form.isTried.value} />
        ) : (
          <ReadingRows drafts={drafts} isTried={form.isTried.value} />
        )}
        <SurfaceFields of={of} drafts={drafts} time={time} form={form} />
        <LightField match={match} drafts={drafts} />
        {far && (
          <FarQuestion
            match={match}
            of={of}
            far={far}
            onOther={(path) => {
              other.value = readOf(match, path, name);
              asked.value = undefined;
            }}
          />
        )}
        <LinkButton kind="plain" href={linkTo('match', match.id, 'photo', of.as, of.id)}>
          {WORDS.photo}
        </LinkButton>
        <Send form={form}>{far ? WORDS.saveFar : WORDS.save}</Send>
      </form>
    </Page>
  );
}

/** A newer trial that waits to be read: the reading in hand is probably of it. */
function NewerTrial({ match, of }: ReadFormProps) {
  const newest = match.trials.at(-1);
  if (of.as !== 'trial' || !newest || newest.id === of.id || newest.readings.length > 0) return null;
  return (
    <p>
      {WORDS.newer(newest.number)}{' '}
      <a href={linkTo('match', match.id, 'read', 'trial', newest.id)}>
        {MATCH_WORDS.readTrial(newest.number)}
      </a>
    </p>
  );
}
