import type { Match } from '../../../logbook/fold/piece/matches';
import { SelectField } from '../../../parts/fields/select-field';
import { WHITE_POINTS, type White } from '../../../science/colour/white-points';
import { lightWords } from '../../../words/match/match';
import { READ_WORDS as WORDS } from '../../../words/match/read';
import type { ReadDrafts } from './use-read-drafts';

const LIGHTS = (Object.keys(WHITE_POINTS) as White[]).map((value) => ({ value, label: lightWords(value) }));

/** The light of the reading: that of the match, unless the instrument says another. A file names its own. */
export function LightField({ match, drafts }: { readonly match: Match; readonly drafts: ReadDrafts }) {
  const { how, white } = drafts;
  if (how.value === 'file') return null;
  const shown = how.value === 'hex' ? 'D65/2' : white.value;
  const other = shown === match.white ? undefined : WORDS.lightOther(lightWords(match.white));
  if (how.value === 'hex')
    return (
      <p class="quiet">
        {WORDS.hexLight} {other}
      </p>
    );
  return (
    <SelectField
      label={WORDS.light}
      options={LIGHTS}
      value={white.value}
      onChange={(value) => {
        white.value = value;
      }}
      hint={other}
    />
  );
}
