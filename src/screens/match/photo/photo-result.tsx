import { useSignal } from '@preact/signals';
import type { PhotoRead } from '../../../actions/match/photo-read';
import { readColour } from '../../../actions/match/read-colour';
import { parseNumber } from '../../../logbook/as-typed';
import { COUNTS } from '../../../logbook/limits';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { COLOUR_PHOTO_WORDS as WORDS } from '../../../words/match/colour-photo';
import { lightWords } from '../../../words/match/match';
import { READ_WORDS } from '../../../words/match/read';
import { percentWords } from '../../../words/quantities';
import { differenceText, labText } from '../colour-text';
import { ClearFields, isCount } from '../reading/count-fields';
import { ofSaid, pageOf, type ReadOf } from '../reading/read-of';
import { ColourFace } from '../swatch';
import type { OfMatch } from '../use-match';
import type { PhotoState } from './use-photo';

type Read = Extract<PhotoRead, { kind: 'read' }>;

interface ResultProps extends OfMatch {
  readonly of: ReadOf;
  readonly state: PhotoState;
  readonly against: 'chart' | 'grey-card';
}

/** What the photo says, how far to trust it, and logging it for ranking. */
export function PhotoResult({ state, ...rest }: ResultProps) {
  if (state.state === 'none') return null;
  if (state.state === 'reading') return <p>{WORDS.reading}</p>;
  if (state.state === 'lost' || state.read.kind === 'fault')
    return (
      <Notice kind="stop">
        <p>
          {state.state === 'read' && state.read.kind === 'fault'
            ? WORDS.faults[state.read.fault]
            : WORDS.lost}
        </p>
      </Notice>
    );
  return <Found read={state.read} {...rest} />;
}

/** A fit whose median residual is worse than this is not to be trusted even for ranking. Judgement. */
const POOR_E00 = 5;

function Found({ match, of, read, against }: Omit<ResultProps, 'state'> & { readonly read: Read }) {
  const { lab, spread, residualE00 } = read;
  const isRanked = of.as !== 'tint' && of.as !== 'toned';
  return (
    <div class="stack" data-took-ms={Math.round(read.tookMs)}>
      <div class="big-colour">
        <ColourFace colours={[lab]} />
        <p class="outcome-figure digits">{WORDS.result(labText(lab))}</p>
      </div>
      <p class="quiet">
        {WORDS.under}. {WORDS.spread(percentWords(spread, 1))}{' '}
        {residualE00
          ? WORDS.residual(differenceText(residualE00.median), differenceText(residualE00.worst))
          : WORDS.residualNone}
      </p>
      {residualE00 && residualE00.median > POOR_E00 && (
        <Notice kind="caution">
          <p>{WORDS.poor}</p>
        </Notice>
      )}
      {match.white !== lab.white && <p>{WORDS.otherLight(lightWords(match.white))}</p>}
      {isRanked && <LogIt match={match} of={of} read={read} against={against} />}
    </div>
  );
}

function LogIt({ match, of, read, against }: Omit<ResultProps, 'state'> & { readonly read: Read }) {
  const { needs, actions } = useShop();
  const coats = useSignal<string | undefined>(undefined);
  const takesClear = of.as === 'trial' || of.as === 'card';
  const form = useForm();
  async function logIt(): Promise<void> {
    const goOn = fromHere();
    const { white, L, a, b } = read.lab;
    const clearCoats = coats.value === undefined ? undefined : parseNumber(coats.value);
    const isWhole = clearCoats === undefined || isCount(coats.value ?? '', COUNTS.coats);
    const done = await form.send(isWhole, () =>
      readColour(needs, {
        match: match.id,
        of: ofSaid(of, { text: '', unit: '%' }, '1'),
        white,
        isDry: true,
        ...(clearCoats === undefined ? {} : { clearCoats }),
        readings: [{ as: 'photo', against, L, a, b, spread: read.spread }],
      }),
    );
    if (!done) return;
    showToast({ text: READ_WORDS.saved, onUndo: () => void actions.undo(done.id) });
    goOn(linkTo('match', match.id, ...pageOf(of)));
  }
  return (
    <>
      {takesClear && <ClearFields clearCoats={coats} isTried={form.isTried.value} />}
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button onClick={() => void logIt()}>{WORDS.log}</Button>
      </div>
    </>
  );
}
