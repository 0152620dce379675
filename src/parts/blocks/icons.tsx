// Drawn for this app on a 24-unit square, in strokes 2 wide. A shape says what it is without its colour.
const SHAPES = {
  // places
  bench: 'M2 9h20M5 9v11M19 9v11M5 15h14M9 9V5h6v4',
  mix: 'M6 3h12M8 3v4L5 11v8a2 2 0 0 0 2 2h10a2 2 0 0 0 2-2v-8l-3-4V3M5 14h14',
  match: 'M3 5h10v10H3zM11 9h10v10H11zM11 15V9h2',
  air: 'M3 9h11a3 3 0 1 0-3-3M3 14h15a3 3 0 1 1-3 3M3 19h6',
  coat: 'M12 2c3 4 4.5 6 4.5 8a4.5 4.5 0 0 1-9 0c0-2 1.5-4 4.5-8zM3 18h18M3 22h18',
  more: 'M4 6h16M4 12h16M4 18h9',
  // acts
  back: 'M14 5l-7 7 7 7M7 12h14',
  next: 'M9 5l7 7-7 7',
  close: 'M5 5l14 14M19 5L5 19',
  add: 'M12 4v16M4 12h16',
  check: 'M4 13l5 5L20 6',
  undo: 'M8 4L3 9l5 5M3 9h11a6 6 0 0 1 0 12H8',
  edit: 'M4 20l1-5L16 4l4 4L9 19zM13 7l4 4',
  remove: 'M4 7h16M9 7V4h6v3M6 7l1 13h10l1-13',
  share: 'M12 3v12M7 8l5-5 5 5M5 13v7h14v-7',
  print: 'M7 9V3h10v6M7 17H3V9h18v8h-4M7 14h10v7H7z',
  board: 'M3 4h18v12H3zM8 21h8M12 16v5M12 7v3l2 1',
  up: 'M12 20V5M6 11l6-6 6 6',
  down: 'M12 4v15M6 13l6 6 6-6',
  bell: 'M6 17V11a6 6 0 0 1 12 0v6l2 2H4zM10 21h4M12 3v2',
  plan: 'M3 5h18v16H3zM3 10h18M8 3v4M16 3v4M7 14h5M12 17h5',
  sand: 'M3 8h18v6H3zM3 18h2M9 18h2M15 18h2M6 21h2M12 21h2M18 21h2',
  rub: 'M12 4a8 8 0 1 0 8 8M12 8a4 4 0 1 0 4 4M17 3l1.2 2.8L21 7l-2.8 1.2L17 11l-1.2-2.8L13 7l2.8-1.2z',
  // how things stand
  clock: 'M12 3a9 9 0 1 0 0 18 9 9 0 0 0 0-18zM12 7v5l4 2',
  ready: 'M3 12a9 9 0 1 0 18 0 9 9 0 0 0-18 0zM8 12l3 3 5-6',
  perhaps: 'M3 12a9 9 0 1 0 18 0 9 9 0 0 0-18 0zM12 3v18M12 6h4M12 10h7M12 14h7M12 18h4',
  waiting: 'M6 3h12M6 21h12M7 3c0 5 5 6 5 9s-5 4-5 9M17 3c0 5-5 6-5 9s5 4 5 9',
  // notices: a ring, a triangle, an eight-sided stop
  note: 'M3 12a9 9 0 1 0 18 0 9 9 0 0 0-18 0zM12 11v6M12 7v.5',
  caution: 'M12 3l10 18H2zM12 10v5M12 18v.5',
  stop: 'M8 2h8l6 6v8l-6 6H8l-6-6V8zM12 7v6M12 16.5v.5',
  fire: 'M12 2c1 4 6 6 6 12a6 6 0 0 1-12 0c0-3 2-4 2-7 2 1 3 2 3 4 1-2 1-6 1-9z',
} as const;

export type IconName = keyof typeof SHAPES;

/** A drawn sign. It is always beside a word, so it is hidden from a screen reader. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg class="icon" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
      <path
        d={SHAPES[name]}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linecap="round"
        stroke-linejoin="round"
      />
    </svg>
  );
}
