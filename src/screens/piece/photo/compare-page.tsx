import { type Signal, useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { alignPhotos } from '../../../actions/photo/take-photo';
import { documented, type Photo } from '../../../logbook/fold/zones';
import { Choice } from '../../../parts/fields/choice';
import { SelectField } from '../../../parts/fields/select-field';
import { useForm } from '../../../parts/fields/use-form';
import { Page, Section } from '../../../parts/frame/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { OutlinedPhoto } from '../../../parts/photo/outlined-photo';
import { useKeptPhoto } from '../../../parts/photo/use-kept-photo';
import { alignment } from '../../../science/align';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { usePiece } from '../use-piece';
import { photoLine } from './photo-line';
import { Save } from './save';

type Place = readonly [x: number, y: number];
type Marks = readonly [Place, Place];
type Side = 'under' | 'over';

const CORNERS: Marks = [
  [0.1, 0.1],
  [0.9, 0.9],
];

/** Two photos over each other by two points each, with a slider between them. */
export function ComparePage({ photos }: { readonly photos: readonly Photo[] }) {
  const { piece } = usePiece();
  return (
    <Page title={WORDS.compare} backTo={linkTo('piece', piece.id, 'photos')} backLabel={WORDS.back}>
      {photos.length < 2 ? <p>{WORDS.two}</p> : <Compare photos={photos} />}
    </Page>
  );
}

function Compare({ photos }: { readonly photos: readonly Photo[] }) {
  const { shop, nowMs } = useShop();
  const { piece } = usePiece();
  const underId = useSignal(photos[0]?.photo ?? '');
  const overId = useSignal(photos.at(-1)?.photo ?? '');
  const of = (id: string): Photo | undefined => photos.find(({ photo }) => photo === id);
  const [under, over] = [of(underId.value), of(overId.value)];
  const known = documented(piece.id, shop.value).alignments.findLast(
    (one) => one.under === underId.value && one.over === overId.value,
  );
  const options = photos.map((photo, i) => ({
    value: photo.photo,
    label: WORDS.describe(i + 1, photoLine(photo, nowMs.value)),
  }));
  const choose = (label: string, id: Signal<string>) => (
    <SelectField
      label={label}
      options={options}
      value={id.value}
      onChange={(value) => {
        id.value = value;
      }}
    />
  );
  return (
    <>
      <Section title={WORDS.compare}>
        {choose(WORDS.under, underId)}
        {choose(WORDS.over, overId)}
        {under && over && <Overlay under={under} over={over} marks={known?.marks ?? both(CORNERS)} />}
      </Section>
      {under && over && (
        <MarkPoints
          key={`${under.photo} ${over.photo}`}
          under={under}
          over={over}
          marks={known?.marks ?? both(CORNERS)}
        />
      )}
    </>
  );
}

const both = (marks: Marks) => ({ under: marks, over: marks });

interface PairProps {
  readonly under: Photo;
  readonly over: Photo;
  readonly marks: Readonly<Record<Side, Marks>>;
}

const inPixels = ({ width, height }: Photo, [[ax, ay], [bx, by]]: Marks): Marks => [
  [ax * width, ay * height],
  [bx * width, by * height],
];

function Overlay({ under, over, marks }: PairProps) {
  const id = useId();
  const shown = useSignal(50);
  const [below, above] = [useKeptPhoto(under.photo), useKeptPhoto(over.photo)];
  const laid = alignment(inPixels(over, marks.over), inPixels(under, marks.under));
  const { width, height } = under;
  if (below === 'away' || above === 'away') return <p class="quiet">{WORDS.away}</p>;
  const edge = (width * shown.value) / 100;
  return (
    <>
      <svg class="outlined-photo" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={WORDS.compare}>
        <clipPath id={`${id}-clip`}>
          <rect width={edge} height={height} />
        </clipPath>
        {below && <image href={below} width={width} height={height} />}
        {above && laid && (
          <g clip-path={`url(#${id}-clip)`}>
            <image
              href={above}
              width={over.width}
              height={over.height}
              transform={`matrix(${laid.a} ${laid.b} ${-laid.b} ${laid.a} ${laid.e} ${laid.f})`}
            />
          </g>
        )}
        <line class="compare-edge" x1={edge} x2={edge} y2={height} stroke-width={width / 200} />
      </svg>
      {!laid && <p>{WORDS.samePoint}</p>}
      <label class="field" for={`${id}-slider`}>
        <span>{WORDS.slider}</span>
        <input
          id={`${id}-slider`}
          class="compare-slider"
          type="range"
          min="0"
          max="100"
          value={shown.value}
          onInput={({ currentTarget }) => {
            shown.value = Number(currentTarget.value);
          }}
        />
      </label>
    </>
  );
}

const POINTS = [
  { value: '0', label: WORDS.marks.first },
  { value: '1', label: WORDS.marks.second },
] as const;

function MarkPoints({ under, over, marks: known }: PairProps) {
  const { needs, actions } = useShop();
  const form = useForm();
  const marks = useSignal(known);
  const which = useSignal<'0' | '1'>('0');
  const laid = alignment(inPixels(over, marks.value.over), inPixels(under, marks.value.under));

  async function save(): Promise<void> {
    const said = { piece: under.piece, under: under.photo, over: over.photo, marks: marks.value };
    const kept = await form.send(true, () => alignPhotos(needs, said));
    if (kept) sayLogged(actions, kept.id, WORDS.alignedWhat, WORDS.aligned);
  }
  const put = (side: Side, place: Place): void => {
    const [first, second] = marks.value[side];
    marks.value = { ...marks.value, [side]: which.value === '0' ? [place, second] : [first, place] };
  };

  return (
    <Section title={WORDS.align}>
      <p>{WORDS.compareText}</p>
      <Choice
        label={WORDS.markWhich}
        options={POINTS}
        value={which.value}
        onChange={(value) => {
          which.value = value;
        }}
      />
      <Marked
        photo={under}
        at={marks.value.under[which.value]}
        side={WORDS.under}
        marks={marks.value.under}
        onPut={(at) => put('under', at)}
      />
      <Marked
        photo={over}
        at={marks.value.over[which.value]}
        side={WORDS.over}
        marks={marks.value.over}
        onPut={(at) => put('over', at)}
      />
      {!laid && <p role="status">{WORDS.samePoint}</p>}
      <Save form={form} onSave={save} disabled={!laid}>
        {WORDS.align}
      </Save>
    </Section>
  );
}

const STEP = 0.01;
const KEYS: Readonly<Record<string, Place>> = {
  ArrowLeft: [-STEP, 0],
  ArrowRight: [STEP, 0],
  ArrowUp: [0, -STEP],
  ArrowDown: [0, STEP],
};
const within01 = (share: number): number => Math.min(1, Math.max(0, share));

interface MarkedProps {
  readonly photo: Photo;
  /** Where the chosen point is now. */
  readonly at: Place;
  readonly side: string;
  readonly marks: Marks;
  readonly onPut: (place: Place) => void;
}

function Marked({ photo, at, side, marks, onPut }: MarkedProps) {
  const { width, height } = photo;
  const unit = Math.max(width, height) / 100;
  return (
    <button
      type="button"
      class="markable"
      aria-label={WORDS.markOn(WORDS.point, side)}
      onKeyDown={(event) => {
        const [dx, dy] = KEYS[event.key] ?? [0, 0];
        if (dx === 0 && dy === 0) return;
        event.preventDefault();
        onPut([within01(at[0] + dx), within01(at[1] + dy)]);
      }}
      onClick={(event) => {
        if (event.detail === 0) return; // by key: the arrows move the point
        const box = event.currentTarget.getBoundingClientRect();
        onPut([(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height]);
      }}
    >
      <OutlinedPhoto id={photo.photo} describe={side} width={width} height={height} zones={[]}>
        {marks.map(([x, y], i) => (
          <Mark
            key={i === 0 ? 'first' : 'second'}
            x={x * width}
            y={y * height}
            unit={unit}
            isFirst={i === 0}
          />
        ))}
      </OutlinedPhoto>
    </button>
  );
}

interface MarkProps {
  readonly x: number;
  readonly y: number;
  readonly unit: number;
  readonly isFirst: boolean;
}

/** A ring for the first point, a diamond for the second. */
function Mark({ x, y, unit, isFirst }: MarkProps) {
  const r = 2.6 * unit;
  const shape = isFirst
    ? `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`
    : `M${x} ${y - 1.3 * r}l${1.3 * r} ${1.3 * r}l${-1.3 * r} ${1.3 * r}l${-1.3 * r} ${-1.3 * r}z`;
  return <path class="compare-mark" d={shape} stroke-width={unit * 0.8} />;
}
