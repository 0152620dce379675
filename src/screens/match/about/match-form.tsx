import { useSignal } from '@preact/signals';
import { describeMatch } from '../../../actions/match/describe-match';
import type { Match } from '../../../logbook/fold/piece/matches';
import { LIMITS } from '../../../logbook/limits';
import { Page } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { SelectField } from '../../../parts/fields/select-field';
import { TextField } from '../../../parts/fields/text-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { fromHere, linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { WHITE_POINTS, type White } from '../../../science/colour/white-points';
import { FORM_WORDS as WORDS } from '../../../words/match/form';
import { lightWords, MATCH_WORDS } from '../../../words/match/match';
import type { OfMatch } from '../use-match';
import {
  candidates,
  draftOf,
  type FormPart,
  freshDraft,
  isWhole,
  type MatchDraft,
  saidOf,
} from './match-draft';
import { PieceFields } from './piece-fields';
import { ScaleFields } from './scale-fields';
import { TinterTicks } from './tinter-ticks';

/** Starts a match. */
export const NewMatch = () => <MatchForm piece={route.value.query.get('piece') ?? undefined} />;

/** Changes one. */
export const ChangeMatch = ({ match }: OfMatch) => <MatchForm match={match} />;

const LIGHTS = (Object.keys(WHITE_POINTS) as White[]).map((value) => ({ value, label: lightWords(value) }));

function MatchForm({ match, piece }: { readonly match?: Match; readonly piece?: string | undefined }) {
  const { shop, needs, actions } = useShop();
  const form = useForm();
  const draft = useSignal(match ? draftOf(match) : freshDraft(shop.value, piece));
  const patch = (some: Partial<MatchDraft>): void => {
    draft.value = { ...draft.value, ...some };
  };
  const part = { draft: draft.value, patch, isTried: form.isTried.value };

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const said = () => saidOf(draft.value, candidates(shop.value, match));
    const kept = await form.send(isWhole(draft.value), () => describeMatch(needs, said(), match?.id));
    if (!kept) return;
    showToast({
      text: match ? WORDS.saved : WORDS.started,
      onUndo: () => void actions.undo(kept.id),
    });
    goOn(linkTo('match', kept.match));
  }

  return (
    <Page
      title={match ? WORDS.changeTitle : WORDS.newTitle}
      backTo={match ? linkTo('match', match.id) : linkTo('match')}
      backLabel={match?.name ?? MATCH_WORDS.back}
    >
      <form class="stack" onSubmit={send} noValidate>
        <WhatFields {...part} match={match} />
        <TinterTicks {...part} match={match} />
        <ScaleFields {...part} />
        <details class="caution-more">
          <summary>{WORDS.more}</summary>
          <MoreFields {...part} />
        </details>
        <Send form={form}>{match ? WORDS.save : WORDS.start}</Send>
      </form>
    </Page>
  );
}

function WhatFields({ draft, patch, isTried, match }: FormPart & { readonly match: Match | undefined }) {
  return (
    <>
      <TextField
        label={WORDS.name}
        hint={WORDS.nameHint}
        text={draft.name}
        onText={(name) => patch({ name })}
        problem={isTried && draft.name.trim() === '' ? WORDS.noName : undefined}
      />
      <PieceFields {...{ draft, patch, isTried, match }} />
      <Choice
        label={WORDS.place}
        options={(['open-panel', 'edge', 'hidden'] as const).map((value) => ({
          value,
          label: MATCH_WORDS.places[value],
          hint: MATCH_WORDS.placeHints[value],
        }))}
        value={draft.place}
        onChange={(place) => patch({ place })}
      />
      <Choice
        label={WORDS.through}
        options={[
          { value: 'bare', ...WORDS.throughBare },
          { value: 'clear', ...WORDS.throughClear },
        ]}
        value={draft.through}
        onChange={(through) => patch({ through })}
      />
      <SelectField
        label={WORDS.white}
        hint={WORDS.whiteHint}
        options={LIGHTS}
        value={draft.white}
        onChange={(white) => patch({ white })}
      />
    </>
  );
}

function MoreFields({ draft, patch, isTried }: FormPart) {
  return (
    <div class="stack">
      <TypedField
        label={WORDS.jarHolds}
        hint={WORDS.jarHoldsHint}
        limit={LIMITS.mass}
        draft={draft.jarHolds}
        onDraft={(jarHolds) => patch({ jarHolds })}
        isOptional
        isTried={isTried}
      />
      <TypedField
        label={WORDS.tolerance}
        hint={WORDS.toleranceHint}
        limit={LIMITS.tolerance}
        draft={draft.tolerance}
        onDraft={(tolerance) => patch({ tolerance })}
        isOptional
        isTried={isTried}
      />
      <TypedField
        label={WORDS.yellowing}
        hint={WORDS.yellowingHint}
        limit={LIMITS.yellowing}
        draft={draft.yellowing}
        onDraft={(yellowing) => patch({ yellowing })}
        isOptional
        isTried={isTried}
      />
    </div>
  );
}
