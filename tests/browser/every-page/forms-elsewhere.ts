/** Forms that refuse nothing, or that another test walks. */
export const OTHERS: Readonly<Record<string, string>> = {
  'piece/start/piece-form.tsx': 'a part of piece/start/start-page.tsx and piece/start/change-page.tsx',
  'mix/jar/box-with.tsx': 'its button waits for a choice',
  'mix/weigh/fill-from-weigh-up.tsx': 'the fields of match/trial/trial-jar-page.tsx',
  'match/photo/photo-result.tsx': 'match-asks.test.ts',
  'piece/zone/toner-page.tsx': 'a list that is always answered',
  'piece/photo/photos-page.tsx': 'a file, refused beside its button',
  'piece/photo/draw-zone.tsx': 'its button waits for an outline',
  'piece/photo/mark-points.tsx': 'points that are always there',
  'plan/steps/coats-a-day.tsx': 'says it while it is typed; its button comes with a number',
  'plan/steps/add-step.tsx': 'lists that are always answered',
  'more/card/weigh-form.tsx': 'card.test.ts',
  'parts/verdict/why-anyway.tsx': 'old-finish.test.ts',
  'more/card/coat-alone.tsx': 'card.test.ts',
  'more/card/coats-on-it.tsx': 'its button comes with a choice',
  'more/hub/hub-home.tsx': 'hub.test.ts',
  'more/hub/join-found.tsx': 'hub.test.ts',
};

/** Buttons alone. */
export const NO_FIELDS: readonly string[] = [
  'mix/jar/life.tsx',
  'piece/zone/toner-passes.tsx',
  'piece/zone/drop-fill-section.tsx',
  'piece/zone/use-log-drop.ts',
  'piece/old-finish/finding.tsx',
  'air/cautions.tsx',
  'air/room/filters.tsx',
  'air/day-end.tsx',
  'lay/before-spraying.tsx',
];
